// Measures the documents side of a take-off: reading a job, taking it off and writing the order, beside only
// parsing and re-writing the same two documents with the same JSON library. Prints time and memory per run.
// Usage: bench_documents [most runs, default 100000]
#include "documents/catalogue.h"
#include "documents/job.h"
#include "documents/order.h"
#include "pieces/takeoff.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

using namespace lapwright;

namespace {

double seconds()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

std::string textOf(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

pieces::Catalogue catalogue()
{
    documents::CatalogueBuilder builder;
    for (const char* folder : {"metal-library", "trim-library", "rule-sets"})
        for (const auto& entry : std::filesystem::directory_iterator(
                 std::filesystem::path(LAPWRIGHT_SOURCE_DIR) / "shared-core" / folder))
            if (entry.path().extension() == ".json")
                builder.add(entry.path().filename().string(), textOf(entry.path()));
    const Result<pieces::Catalogue> built = builder.build();
    if (!built) {
        std::fprintf(stderr, "%s\n", built.errors().front().sentence().c_str());
        std::exit(3);
    }
    return *built;
}

/// Rectangles of eave and rake, ten chains of four runs to a hundred.
std::string jobOf(std::size_t runs)
{
    documents::JobDocument job;
    job.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e21";
    job.value.material = {"galvanised-steel", "24 ga", "Slate"};
    job.value.ruleSets = {"irc-flashing"};
    for (std::size_t made = 0; made < runs; made += 4) {
        site::Chain chain;
        chain.id = "C" + std::to_string(made / 4);
        chain.closed = true;
        chain.corners.assign(4, site::SquareOutside());
        for (std::size_t side = 0; side < 4; ++side) {
            site::Run run;
            run.id = "E" + std::to_string(made + side);
            const auto feet = static_cast<std::int64_t>(20 + (made / 4 + side % 2 * 7) % 30);
            run.lengths = {{Length::feet(feet), std::to_string(feet) + "'"}};
            run.slope = Slope::twelfths(6);
            run.start = run.end = site::EndKind::Mitre;
            site::TrimChoice choice;
            choice.trim = "eave-drip-edge";
            run.trims = {choice};
            chain.runs.push_back(run);
        }
        job.value.chains.push_back(chain);
    }
    return documents::writeJob(job);
}

long peakKilobytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.rfind("VmHWM:", 0) == 0)
            return std::atol(line.c_str() + 6);
    return 0;
}

void measure(std::size_t runs, const pieces::Catalogue& library)
{
    const std::string jobText = jobOf(runs);
    const double begin = seconds();
    const auto job = documents::readJob(jobText);
    if (!job) {
        std::fprintf(stderr, "%s\n", job.errors().front().sentence().c_str());
        std::exit(3);
    }
    const double read = seconds();
    documents::OrderDocument order{pieces::takeoff(job->value, library), {}};
    order.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e22";
    const double taken = seconds();
    const std::string orderText = documents::writeOrder(order);
    const double written = seconds();
    const long peak = peakKilobytes();
    std::size_t bytes = 0;
    const double plainBegin = seconds();
    for (const std::string* text : {&jobText, &orderText})
        bytes += nlohmann::json::parse(*text).dump().size();
    const double plain = seconds() - plainBegin;
    const double count = static_cast<double>(runs);
    std::printf(
        "%7zu runs: read %.3f + take off %.3f + write %.3f s = %.1f us per run; parse and re-write only "
        "%.3f s; ratio %.2f; %zu findings; job %zu, order %zu bytes (re-written %zu); peak %.1f kB per run\n",
        runs, read - begin, taken - read, written - taken, (written - begin) / count * 1e6, plain,
        (written - begin) / plain, order.value.findings.size(), jobText.size(), orderText.size(), bytes,
        static_cast<double>(peak) / count);
}

} // namespace

int main(int count, char** arguments)
{
    const std::size_t most = count > 1 ? std::strtoul(arguments[1], nullptr, 10) : 100'000;
    const pieces::Catalogue library = catalogue();
    for (std::size_t runs = 100; runs <= most; runs *= 10)
        measure(runs, library);
    return 0;
}
