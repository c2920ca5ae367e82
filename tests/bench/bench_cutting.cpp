// Guards nothing by itself: prints how near the plans are to their bounds and how long they take, for the
// trim batches of LAPWRIGHT_CUTTING_DATA. Every plan is checked; a broken one ends the program with 1.
#include "cutting/checker.h"
#include "cutting/solve.h"

#include <cctype>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <set>
#include <string>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

Length eighths(std::int64_t count)
{
    return Length::sixtyFourths(8 * count);
}

std::optional<Problem> trimBatch(const std::string& file, PatternClass patterns, StockKind kind)
{
    std::ifstream in(file);
    std::int64_t width = 0, length = 0, types = 0;
    if (!(in >> width >> length >> types))
        return std::nullopt;
    ProblemBuilder builder;
    ShopRules rules;
    rules.patterns = patterns;
    builder.rules(rules);
    std::optional<Length> crosscut;
    if (kind == StockKind::Coil)
        crosscut = eighths(length);
    builder.stock({"stock", kind, eighths(width),
                   kind == StockKind::Coil ? Length::millimetres(1'000'000) : eighths(length), std::nullopt,
                   std::nullopt, crosscut});
    for (std::int64_t type = 0; type < types; ++type) {
        std::int64_t girth = 0, along = 0, count = 0;
        in >> girth >> along >> count;
        builder.blank({std::to_string(type), eighths(girth), eighths(along), count, false, 0, 0});
    }
    auto built = builder.build();
    return built.ok() ? std::optional<Problem>(*built) : std::nullopt;
}

std::optional<Problem> severalStocks(const std::string& file)
{
    std::ifstream in(file);
    std::int64_t stocks = 0, types = 0;
    if (!(in >> stocks))
        return std::nullopt;
    ProblemBuilder builder;
    for (std::int64_t stock = 0; stock < stocks; ++stock) {
        std::int64_t width = 0, length = 0, cost = 0, available = 0;
        in >> width >> length >> cost >> available;
        builder.stock({std::to_string(stock), available < 0 ? StockKind::Sheet : StockKind::Remnant,
                       eighths(width), eighths(length), std::nullopt, cost, std::nullopt});
    }
    in >> types;
    for (std::int64_t type = 0; type < types; ++type) {
        std::int64_t girth = 0, along = 0, count = 0;
        in >> girth >> along >> count;
        builder.blank({std::to_string(type), eighths(girth), eighths(along), count, false, 0, 0});
    }
    auto built = builder.build();
    return built.ok() ? std::optional<Problem>(*built) : std::nullopt;
}

std::int64_t secondsAllowed()
{
    const char* given = std::getenv("LAPWRIGHT_BENCHMARK_SECONDS");
    return given != nullptr ? std::atoll(given) : 20;
}

std::size_t girthsOf(const Problem& problem)
{
    std::set<Length> girths;
    for (const Blank& blank : problem.blanks())
        girths.insert(blank.girth);
    return girths.size();
}

bool measure(const Problem& problem, const std::string& name)
{
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t processor = std::clock();
    Settings settings;
    settings.threads = 2;
    settings.timeLimit = std::chrono::seconds(secondsAllowed());
    settings.workLimit = 1'000'000;
    if (const char* seed = std::getenv("LAPWRIGHT_BENCHMARK_SEED"))
        settings.seed = static_cast<std::uint64_t>(std::atoll(seed));
    Control control;
    double first = -1.0;
    const auto seconds = [start] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    control.clock = [] {
        return std::chrono::duration_cast<std::chrono::microseconds>(
            std::chrono::steady_clock::now().time_since_epoch());
    };
    std::int64_t value = -1;
    double bettered = 0.0;
    double asked = 0.0, silence = 0.0;
    const bool tell = std::getenv("LAPWRIGHT_BENCHMARK_TELL") != nullptr;
    control.progress = [&](const Progress& progress) {
        first = first < 0.0 ? seconds() : first;
        silence = std::max(silence, seconds() - asked);
        asked = seconds();
        if (progress.value != value) {
            value = progress.value;
            bettered = seconds();
            if (tell)
                std::printf("    %.3f s %.*s value %lld bound %lld\n", seconds(),
                            static_cast<int>(progress.phase.size()), progress.phase.data(),
                            static_cast<long long>(progress.value), static_cast<long long>(progress.bound));
        }
        return true;
    };
    const Plan plan = solve(problem, settings, control);
    const Verdict verdict = check(problem, plan);
    std::printf(
        "%-14s value %13lld bound %13lld over %.3f%% first %.3f s last %.2f s all %.2f s (processor %.2f s) "
        "longest silence %.3f s work %lld setups %lld of %zu girths\n",
        name.c_str(), static_cast<long long>(plan.value), static_cast<long long>(verdict.bound),
        100.0 * plan.gap(), first, bettered, seconds(),
        static_cast<double>(std::clock() - processor) / static_cast<double>(CLOCKS_PER_SEC), silence,
        static_cast<long long>(plan.work), static_cast<long long>(plan.setups), girthsOf(problem));
    return verdict.feasibility.all();
}

/// All of a sort, or with its number one alone.
bool isWanted(const std::string& title, const std::string& wanted)
{
    const bool numbered = !wanted.empty() && std::isdigit(static_cast<unsigned char>(wanted.back())) != 0;
    return numbered && wanted.size() > 2 ? title == wanted : title.find(wanted) == 0;
}

} // namespace

/// Cases whose name holds the first argument; all without one.
int main(int argc, char** argv)
{
    const std::string wanted = argc > 1 ? argv[1] : "";
    const char* given = std::getenv("LAPWRIGHT_CUTTING_DATA");
    if (given == nullptr) {
        std::fputs("LAPWRIGHT_CUTTING_DATA names no folder with the instances\n", stderr);
        return 2;
    }
    const std::string folder = std::string(given) + "/trim-batches/";
    bool sound = true, any = false;
    for (const int pieces : {50, 200, 1'000, 5'000, 20'000, 100'000}) {
        const std::string file = folder + "trim_" + std::to_string(pieces) + ".in";
        for (const auto& [name, patterns, kind] :
             {std::tuple{"2e ", PatternClass::Exact, StockKind::Sheet},
              std::tuple{"2n ", PatternClass::NonExact, StockKind::Sheet},
              std::tuple{"coil ", PatternClass::NonExact, StockKind::Coil}}) {
            const std::string title = name + std::to_string(pieces);
            if (!isWanted(title, wanted))
                continue;
            if (const auto problem = trimBatch(file, patterns, kind)) {
                any = true;
                sound = measure(*problem, title) && sound;
            }
        }
    }
    for (const int pieces : {200, 1'000, 5'000}) {
        const std::string title = "stocks " + std::to_string(pieces);
        if (!isWanted(title, wanted))
            continue;
        if (const auto problem = severalStocks(folder + "multi_" + std::to_string(pieces) + ".in")) {
            any = true;
            sound = measure(*problem, title) && sound;
        }
    }
    if (!any)
        std::printf("skipped: no such trim batches in %s\n", folder.c_str());
    return sound ? 0 : 1;
}
