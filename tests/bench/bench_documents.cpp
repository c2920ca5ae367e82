// Guards nothing by itself: runs the built program, `lapwright takeoff JOB -o ORDER`, on jobs of 10 to 100
// 000 runs, beside a program that only parses and re-writes the same two documents with the same JSON
// library, and reads each order back. Prints time and peak memory per run and the ratio; processor time, so
// that a busy machine does not matter. Ends with 1 if an order is not read back or the largest job takes more
// than four times as long as parsing and re-writing. Usage: bench_documents [most runs]
#include "bench/invented_houses.h"
#include "documents/order.h"

#include <nlohmann/json.hpp>

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace lapwright;

namespace {

struct Spent {
    int status = 0;
    double seconds = 0.0;
    double kilobytes = 0.0;
};

/// Runs a program to its end with its results thrown away.
Spent spend(std::vector<std::string> words)
{
    std::vector<char*> arguments;
    for (std::string& word : words)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    const pid_t child = fork();
    if (child == 0) {
        const int nowhere = open("/dev/null", O_WRONLY);
        dup2(nowhere, STDOUT_FILENO);
        dup2(nowhere, STDERR_FILENO);
        execv(arguments.front(), arguments.data());
        _exit(127);
    }
    Spent spent;
    rusage usage{};
    wait4(child, &spent.status, 0, &usage);
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
    };
    spent.seconds = seconds(usage.ru_utime) + seconds(usage.ru_stime);
    spent.kilobytes = static_cast<double>(usage.ru_maxrss);
    return spent;
}

std::string textOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void write(const std::string& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

int parseAndRewrite(int count, char** paths)
{
    for (int i = 0; i < count; ++i)
        write(std::string(paths[i]) + ".again", nlohmann::json::parse(textOf(paths[i])).dump());
    return EXIT_SUCCESS;
}

int readBack(const char* path)
{
    const auto order = documents::readOrder(textOf(path));
    if (order)
        return EXIT_SUCCESS;
    std::fprintf(stderr, "%s\n", order.errors().front().sentence().c_str());
    return EXIT_FAILURE;
}

/// False if the order could not be made and read back, or took too long.
bool measure(const std::string& self, const std::string& folder, std::size_t wanted, double mostRatio)
{
    const documents::JobDocument houses = invented::houses(wanted);
    const auto runs = static_cast<double>((wanted + invented::runsPerHouse - 1) / invented::runsPerHouse *
                                          invented::runsPerHouse);
    const std::string job = folder + "/job.json", order = folder + "/order.json";
    write(job, documents::writeJob(houses));
    std::filesystem::remove(order);
    const Spent command = spend({LAPWRIGHT_PROGRAM, "takeoff", job, "-o", order});
    const Spent plain = spend({self, "--rewrite", job, order});
    const Spent back = spend({self, "--read", order});
    const double ratio = command.seconds / plain.seconds;
    std::printf("%8.0f %9.2f %9.1f %9.2f %8.2f %9.2f %9.1f %9.1f %8.2f %8.0f %8.0f\n", runs, command.seconds,
                1e6 * command.seconds / runs, plain.seconds, ratio, back.seconds, command.kilobytes / runs,
                back.kilobytes / runs, plain.kilobytes / runs,
                static_cast<double>(std::filesystem::file_size(job)) / runs,
                static_cast<double>(std::filesystem::file_size(order)) / runs);
    std::fflush(stdout);
    return command.status == 0 && plain.status == 0 && back.status == 0 && ratio <= mostRatio;
}

} // namespace

int main(int count, char** arguments)
{
    const std::string first = count > 1 ? arguments[1] : "";
    if (first == "--rewrite")
        return parseAndRewrite(count - 2, arguments + 2);
    if (first == "--read")
        return readBack(arguments[2]);
    const std::size_t most = count > 1 ? std::strtoul(arguments[1], nullptr, 10) : 100'000;
    const std::string folder =
        std::filesystem::temp_directory_path() / ("bench_documents." + std::to_string(getpid()));
    std::filesystem::create_directory(folder);
    std::printf(
        "    runs   command    us per     plain    ratio      read   command      read    plain      job    order\n"
        "                 s       run         s              back s    kB/run    kB/run   kB/run    B/run    B/run\n");
    bool good = true;
    for (std::size_t runs = 10; runs <= most; runs *= 10)
        good = measure(std::filesystem::read_symlink("/proc/self/exe"), folder, runs,
                       runs >= 100'000 ? 4.0 : 1e9) &&
               good;
    std::filesystem::remove_all(folder);
    return good ? EXIT_SUCCESS : EXIT_FAILURE;
}
