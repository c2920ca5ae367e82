#include "cutting/exact_strips.h"

#include "cutting/one_dimension.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace lapwright::cutting {

namespace {

constexpr int mostUnits = 20'000;
constexpr int attempts = 6;

BarProblem girthProblem(const Instance& instance, std::size_t width)
{
    const Frame& frame = instance.frames.front();
    BarProblem problem;
    problem.capacity = instance.stocks.front().along;
    problem.mostPieces = problem.capacity;
    for (int index = frame.firstOfWidth[width]; index < frame.firstOfWidth[width + 1]; ++index) {
        const Placement& placement = frame.placements[static_cast<std::size_t>(index)];
        problem.sizes.push_back(placement.along);
        problem.demands.push_back(instance.kinds[static_cast<std::size_t>(placement.kind)].demand);
    }
    return problem;
}

/// Hands out the strips of one width, pattern by pattern.
struct StripSource {
    const BarPlan* plan = nullptr;
    std::size_t pattern = 0;
    std::int64_t taken = 0;

    [[nodiscard]] std::int64_t left() const
    {
        return pattern < plan->patterns.size() ? plan->patterns[pattern].count - taken : 0;
    }
    void take(std::int64_t count)
    {
        taken += count;
        if (left() == 0) {
            ++pattern;
            taken = 0;
        }
    }
};

/// Puts real strips into the widths of one sheet pattern; equal sheets stay together.
void place(const Instance& instance, const BarPattern& sheets, std::vector<StripSource>& sources,
           RawPlan& plan)
{
    const Frame& frame = instance.frames.front();
    std::int64_t left = sheets.count;
    while (left > 0) {
        std::int64_t alike = left;
        for (const auto& [width, count] : sheets.pieces)
            alike = std::min(alike, sources[static_cast<std::size_t>(width)].left() / count);
        alike = std::max<std::int64_t>(1, alike);
        RawPattern pattern{0, instance.stocks.front().along, alike, {}};
        for (auto entry = sheets.pieces.rbegin(); entry != sheets.pieces.rend(); ++entry) {
            const auto width = static_cast<std::size_t>(entry->first);
            StripSource& source = sources[width];
            for (int piece = 0; piece < entry->second && source.left() >= alike; ++piece) {
                RawStrip strip{entry->first, {}};
                for (const auto& [item, count] : source.plan->patterns[source.pattern].pieces)
                    strip.pieces.emplace_back(frame.firstOfWidth[width] + item, count);
                std::ranges::reverse(strip.pieces);
                pattern.strips.push_back(std::move(strip));
                source.take(alike);
            }
        }
        plan.push_back(std::move(pattern));
        left -= alike;
    }
}

/// The plans of all girths. Girths are handed out to the threads; only the calling thread asks whether to stop.
std::vector<BarPlan> planGirths(const std::vector<BarProblem>& problems, const StripsSearch& search)
{
    std::vector<BarPlan> plans(problems.size());
    std::atomic<std::size_t> next = 0, done = 0;
    std::atomic<bool> stopped = false;
    std::mutex mutex;
    std::condition_variable finished;
    const auto ask = [&] {
        if (!stopped && search.stop && search.stop())
            stopped = true;
        return stopped.load();
    };
    const auto work = [&](const std::function<bool()>& stop) {
        for (std::size_t girth = next++; girth < problems.size(); girth = next++) {
            plans[girth] = cutBars(problems[girth], {attempts, search.seed + girth, search.workLimit, stop});
            const std::lock_guard lock(mutex);
            ++done;
            finished.notify_all();
        }
    };
    std::vector<std::thread> helpers;
    for (int helper = 1; helper < search.threads; ++helper)
        helpers.emplace_back(work, [&stopped] { return stopped.load(); });
    work(ask);
    constexpr std::chrono::milliseconds between(20);
    std::unique_lock lock(mutex);
    while (!finished.wait_for(lock, between, [&] { return done == problems.size(); }))
        ask();
    lock.unlock();
    for (std::thread& helper : helpers)
        helper.join();
    return plans;
}

void addColumns(const Instance& instance, std::size_t width, const BarPlan& plan, RawPlan& columns)
{
    const Frame& frame = instance.frames.front();
    for (const auto& pieces : plan.columns) {
        RawStrip strip{static_cast<int>(width), {}};
        for (const auto& [item, count] : pieces)
            strip.pieces.emplace_back(frame.firstOfWidth[width] + item, count);
        std::ranges::reverse(strip.pieces);
        columns.push_back({0, instance.stocks.front().along, 1, {std::move(strip)}});
    }
}

} // namespace

bool decomposes(const Instance& instance)
{
    if (instance.stocks.size() != 1 || instance.stocks.front().coil)
        return false;
    const StockClass& stock = instance.stocks.front();
    const auto& placements = instance.frames.front().placements;
    return stock.along <= mostUnits && stock.across <= mostUnits &&
           placements.size() == instance.kinds.size() &&
           std::ranges::none_of(placements, [](const Placement& placement) { return placement.turned; });
}

StripsPlan cutByStrips(const Instance& instance, const StripsSearch& search)
{
    const Frame& frame = instance.frames.front();
    const std::size_t widths = frame.widths.size();
    std::vector<BarProblem> problems;
    for (std::size_t width = 0; width < widths; ++width)
        problems.push_back(girthProblem(instance, width));
    const std::vector<BarPlan> plans = planGirths(problems, search);

    StripsPlan result;
    Certificate& certificate = result.certificate;
    certificate.method = Certificate::Method::StripsThenSheets;
    certificate.patterns = PatternClass::Exact;
    certificate.blankValues.assign(instance.problem->blanks().size(), 0);
    BarProblem sheets{instance.stocks.front().across,
                      frame.widths,
                      {},
                      std::min(instance.mostStrips, instance.stocks.front().across)};
    for (std::size_t width = 0; width < widths; ++width) {
        sheets.demands.push_back(plans[width].bars);
        result.work += plans[width].work;
        addColumns(instance, width, plans[width], result.columns);
        for (std::size_t item = 0; item < plans[width].worth.size(); ++item) {
            const auto index = static_cast<std::size_t>(frame.firstOfWidth[width]) + item;
            for (const std::size_t blank :
                 instance.kinds[static_cast<std::size_t>(frame.placements[index].kind)].blanks)
                certificate.blankValues[blank] = plans[width].worth[item];
        }
    }
    const BarPlan top = cutBars(sheets, {4 * attempts, search.seed, search.workLimit, search.stop});
    result.work += top.work;
    certificate.perCost = top.mostValue;
    std::vector<StripSource> sources;
    for (std::size_t width = 0; width < widths; ++width) {
        certificate.girths.push_back({frame.girths[width], plans[width].mostValue, top.worth[width]});
        sources.push_back({&plans[width]});
    }
    for (const BarPattern& pattern : top.patterns)
        place(instance, pattern, sources, result.plan);
    for (const auto& pieces : top.columns) {
        RawPattern column{0, instance.stocks.front().along, 1, {}};
        for (const auto& [width, count] : pieces)
            column.strips.insert(column.strips.end(), static_cast<std::size_t>(count), RawStrip{width, {}});
        result.columns.push_back(std::move(column));
    }
    return result;
}

} // namespace lapwright::cutting
