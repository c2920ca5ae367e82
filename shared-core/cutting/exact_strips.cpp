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
constexpr int attempts = 6, repackings = 20;

BarProblem girthProblem(const Instance& instance, int stock, std::size_t width)
{
    const Frame& frame = instance.frameAt(stock);
    BarProblem problem;
    problem.capacity = instance.stockAt(stock).along;
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
void place(const Instance& instance, int stock, const BarPattern& sheets, std::vector<StripSource>& sources,
           RawPlan& plan)
{
    const Frame& frame = instance.frameAt(stock);
    std::int64_t left = sheets.count;
    while (left > 0) {
        std::int64_t alike = left;
        for (const auto& [width, count] : sheets.pieces)
            alike = std::min(alike, sources[static_cast<std::size_t>(width)].left() / count);
        alike = std::max<std::int64_t>(1, alike);
        RawPattern pattern{stock, instance.stockAt(stock).along, alike, {}};
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
        if (instance.stockAt(stock).coil) {
            pattern.along = 0;
            for (const RawStrip& strip : pattern.strips)
                pattern.along = std::max(pattern.along, takenBy(frame, strip));
        }
        plan.push_back(std::move(pattern));
        left -= alike;
    }
}

/// The plans of all girths. Girths are handed out to the threads; only the calling thread asks whether to
/// stop.
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
            // One girth alone is the whole problem.
            const int often = problems.size() == 1 ? 10 * repackings : repackings;
            plans[girth] =
                cutBars(problems[girth], {attempts, often, search.seed + girth, 0.0, search.workLimit, stop});
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

/// The basis of one girth's relaxation; where none was needed, each kind alone in its strip, as often as
/// fits.
void addStart(const Instance& instance, int stock, std::size_t width, const BarProblem& problem,
              const BarPlan& plan, WarmStart& start)
{
    const Frame& frame = instance.frameAt(stock);
    const auto placement = [&](int item) { return frame.firstOfWidth[width] + item; };
    for (const auto& pieces : plan.basicBars) {
        RawStrip strip{static_cast<int>(width), {}};
        for (auto entry = pieces.rbegin(); entry != pieces.rend(); ++entry)
            strip.pieces.emplace_back(placement(entry->first), entry->second);
        start.strips.push_back(std::move(strip));
    }
    for (const int item : plan.slackItems)
        start.slackKinds.push_back(frame.placements[static_cast<std::size_t>(placement(item))].kind);
    if (!plan.basicBars.empty())
        return;
    for (std::size_t item = 0; item < problem.sizes.size(); ++item) {
        const auto count =
            std::min<std::int64_t>(problem.demands[item], problem.capacity / problem.sizes[item]);
        start.strips.push_back(
            {static_cast<int>(width), {{placement(static_cast<int>(item)), static_cast<int>(count)}}});
    }
}

BarProblem sheetProblem(const Instance& instance, int stock, const std::vector<BarPlan>& girths)
{
    const StockClass& row = instance.stockAt(stock);
    BarProblem sheets{row.across,
                      instance.frameAt(stock).widths,
                      {},
                      std::max(1, std::min(instance.mostStrips, row.across))};
    for (const BarPlan& girth : girths)
        sheets.demands.push_back(girth.bars);
    return sheets;
}

Certificate certificateOf(const Instance& instance, const Frame& frame, const std::vector<BarPlan>& girths,
                          const BarPlan& sheets)
{
    Certificate certificate;
    certificate.method = Certificate::Method::StripsThenSheets;
    certificate.patterns = PatternClass::Exact;
    certificate.blankValues.assign(instance.problem->blanks().size(), 0);
    certificate.perCost = sheets.mostValue;
    for (std::size_t width = 0; width < girths.size(); ++width) {
        certificate.girths.push_back({frame.girths[width], girths[width].mostValue, sheets.worth[width]});
        for (std::size_t item = 0; item < girths[width].worth.size(); ++item) {
            const auto index = static_cast<std::size_t>(frame.firstOfWidth[width]) + item;
            for (const std::size_t blank :
                 instance.kinds[static_cast<std::size_t>(frame.placements[index].kind)].blanks)
                certificate.blankValues[blank] = girths[width].worth[item];
        }
    }
    return certificate;
}

} // namespace

bool holdsAll(const Instance& instance, int stock)
{
    const StockClass& row = instance.stockAt(stock);
    const auto& placements = instance.frameAt(stock).placements;
    return row.along <= mostUnits && row.across <= mostUnits && placements.size() == instance.kinds.size() &&
           std::ranges::none_of(placements, [&row](const Placement& placement) {
               return placement.turned || placement.along > row.along || placement.across > row.across;
           });
}

bool decomposes(const Instance& instance)
{
    return instance.stocks.size() == 1 && !instance.stocks.front().coil && holdsAll(instance, 0);
}

StripsPlan cutByStrips(const Instance& instance, const StripsSearch& search)
{
    const Frame& frame = instance.frameAt(search.stock);
    std::vector<BarProblem> problems;
    for (std::size_t width = 0; width < frame.widths.size(); ++width)
        problems.push_back(girthProblem(instance, search.stock, width));
    const std::vector<BarPlan> girths = planGirths(problems, search);
    const BarProblem sheetsWanted = sheetProblem(instance, search.stock, girths);
    const BarPlan sheets =
        cutBars(sheetsWanted, {4 * attempts, repackings, search.seed, 0.0, search.workLimit, search.stop});

    StripsPlan result;
    result.certificate = certificateOf(instance, frame, girths, sheets);
    result.start.stock = search.stock;
    result.work = sheets.work;
    std::vector<StripSource> sources;
    for (std::size_t width = 0; width < girths.size(); ++width) {
        result.work += girths[width].work;
        addStart(instance, search.stock, width, problems[width], girths[width], result.start);
        sources.push_back({&girths[width]});
    }
    for (const BarPattern& pattern : sheets.patterns)
        place(instance, search.stock, pattern, sources, result.plan);
    result.start.sheets = sheets.basicBars;
    result.start.slackWidths = sheets.slackItems;
    for (std::size_t width = 0; sheets.basicBars.empty() && width < frame.widths.size(); ++width) {
        const std::int64_t wanted = sheetsWanted.demands[width];
        if (wanted == 0)
            result.start.slackWidths.push_back(static_cast<int>(width));
        else
            result.start.sheets.push_back(
                {{static_cast<int>(width), static_cast<int>(std::min<std::int64_t>(
                                               wanted, sheetsWanted.capacity / sheetsWanted.sizes[width]))}});
    }
    return result;
}

} // namespace lapwright::cutting
