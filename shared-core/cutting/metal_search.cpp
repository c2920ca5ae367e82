#include "cutting/metal_search.h"

#include "cutting/every_plan.h"
#include "cutting/exact_strips.h"
#include "cutting/level_counts.h"
#include "cutting/level_order.h"
#include "cutting/offcuts.h"
#include "cutting/ruin.h"
#include "cutting/value_correction.h"

#include <algorithm>
#include <limits>

namespace lapwright::cutting {

namespace {

/// Beyond this many kinds ruined patterns are too small a part of the plan.
constexpr std::size_t manyKinds = 300;

/// Up to so many the relaxation has few patterns, and whole ones leave little to round.
constexpr std::size_t fewKinds = 100;

} // namespace

MetalSearch::MetalSearch(const Instance& instance, const Settings& settings, Watch& watch, Listener listener)
    : instance_(instance), settings_(settings), watch_(watch), listener_(std::move(listener))
{
}

RawPlan MetalSearch::run(RawPlan plan)
{
    best_ = std::move(plan);
    watch_.enter("strips, then sheets");
    if (!over(0) && !listener_.proven())
        byStrips();
    if (!over(0) && !listener_.proven() && EveryPlan::takes(instance_))
        byEveryPlan();
    watch_.enter("patterns");
    if (!over(0) && !listener_.proven() && NestedPatterns::takes(instance_))
        byPatterns();
    return std::move(best_);
}

void MetalSearch::bound(const RawPlan& plan)
{
    best_ = plan;
    watch_.enter("bound");
    if (!over(0))
        byStrips();
    if (!over(0) && EveryPlan::takes(instance_))
        byEveryPlan();
    if (!over(0) && !listener_.proven() && NestedPatterns::takes(instance_))
        NestedPatterns(instance_, best_, start_, {settings_.seed, 0, MasterProgram::Columns::Nested},
                       listener())
            .relax();
}

void MetalSearch::byEveryPlan()
{
    watch_.enter("every plan");
    EveryPlan search(instance_, [this](std::int64_t ticks) { return over(ticks); });
    if (const auto found = search.search(costOf(instance_, best_)))
        take(*found);
    if (search.exhausted() && listener_.everyPlanTried)
        listener_.everyPlanTried();
}

void MetalSearch::take(const RawPlan& plan)
{
    if (listener_.plan(plan))
        best_ = plan;
    if (!gathers())
        return;
    if (RawPlan gathered = withGatheredOffcuts(plan); costOf(instance_, gathered) < costOf(instance_, best_))
        if (listener_.plan(gathered))
            best_ = std::move(gathered);
}

/// Larger offcuts are credited with more, and the plan is small enough to look for them each time.
bool MetalSearch::gathers() const
{
    return instance_.problem->creditsRemnants() && instance_.kinds.size() <= manyKinds;
}

RawPlan MetalSearch::withGatheredOffcuts(const RawPlan& plan)
{
    return withLargerOffcuts(instance_, plan, [this] { return watch_.interrupted(); });
}

/// The stock without limit that could hold all blanks at the least cost for its area; or the only one.
std::optional<int> MetalSearch::stockForAll() const
{
    std::optional<int> best;
    double least = 0.0;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        if (!holdsAll(instance_, static_cast<int>(index)) || (row.available >= 0 && !decomposes(instance_)))
            continue;
        const double price = static_cast<double>(instance_.costOf(row, row.along)) / row.along / row.across;
        if (!best || price < least) {
            best = static_cast<int>(index);
            least = price;
        }
    }
    return best;
}

void MetalSearch::byStrips()
{
    const std::optional<int> stock = stockForAll();
    if (!stock)
        return;
    StripsSearch search;
    search.stock = *stock;
    search.seed = settings_.seed;
    search.threads = std::max(1, settings_.threads);
    search.workLimit = watch_.ticksLeft();
    search.stop = [this] { return watch_.interrupted(); };
    StripsPlan found = cutByStrips(instance_, search);
    (void)over(found.work);
    take(found.plan);
    if (instance_.patterns == PatternClass::Exact && decomposes(instance_))
        listener_.certificate(found.certificate);
    start_ = std::move(found.start);
}

NestedPatterns::Listener MetalSearch::listener()
{
    NestedPatterns::Listener listener;
    listener.stop = [this](std::int64_t ticks) { return over(ticks); };
    listener.plan = [this](const RawPlan& plan) {
        take(plan);
        return listener_.proven();
    };
    listener.certificate = [this](const Certificate& certificate) {
        listener_.certificate(certificate);
        return listener_.proven();
    };
    return listener;
}

void MetalSearch::byPatterns()
{
    using Columns = MasterProgram::Columns;
    const bool large = instance_.kinds.size() > manyKinds;
    const bool coil =
        std::ranges::any_of(instance_.stocks, [](const StockClass& stock) { return stock.coil; });
    // Levels of a coil may have any length: their relaxation says much about the bound and little about
    // plans. Of several stocks or blanks that turn it takes long.
    constexpr int plans = 250, firstPlans = 2;
    constexpr std::size_t fewStocks = 30;
    if (coil)
        byCorrection(plans);
    else if (!decomposes(instance_) && instance_.stocks.size() <= fewStocks)
        byCorrection(firstPlans);
    watch_.enter("patterns");
    NestedPatterns patterns(instance_, best_, start_, {settings_.seed, 0, Columns::Nested}, listener());
    if (!patterns.relax())
        return;
    // Large sheet plans are bettered best by giving strips back; plans whose remnants are credited by ruining
    // whole patterns.
    const int roundings = coil ? 0 : !large ? 30 : instance_.problem->creditsRemnants() ? 6 : 100'000;
    int attempt = 0;
    const auto round = [&](NestedPatterns& relaxed) {
        watch_.enter("patterns");
        for (int one = 0; one < roundings; ++one)
            if (!relaxed.round(attempt + one))
                return false;
        return true;
    };
    if (!round(patterns))
        return;
    if (!coil)
        byCorrection(plans);
    byOrder();
    byLevelCounts();
    std::optional<NestedPatterns> wholes;
    if (!coil && instance_.kinds.size() <= fewKinds) {
        wholes.emplace(instance_, best_, start_, NestedPatterns::Effort{settings_.seed, 0, Columns::Whole},
                       listener());
        if (!wholes->relax())
            return;
    }
    while ((!wholes || round(*wholes)) && byRuin(patterns.worths())) {
        attempt += roundings;
        if (!round(patterns))
            return;
    }
}

/// Some steps from the best plan. False once nothing more is wanted.
bool MetalSearch::byRuin(const std::vector<double>& worths)
{
    watch_.enter("ruin and recreate");
    constexpr int steps = 100;
    Ruin ruin(instance_, best_, worths, settings_.seed + ruins_++, listener());
    for (int step = 0; step < steps; ++step)
        if (!ruin.step())
            return false;
    return true;
}

/// Whole plans by value correction.
void MetalSearch::byCorrection(int plans)
{
    watch_.enter("value correction");
    ValueCorrection search(instance_, settings_.seed, [this](std::int64_t ticks) { return over(ticks); });
    constexpr std::int64_t anyCost = std::numeric_limits<std::int64_t>::max();
    for (int plan = 0; plan < plans && !over(0) && !listener_.proven(); ++plan)
        if (const auto found = search.next(gathers() ? anyCost : costOf(instance_, best_)))
            take(*found);
}

/// Better plans of small batches come easily; where none is proven least, mostly the bound falls short.
void MetalSearch::byLevelCounts()
{
    if (!LevelCounts::takes(instance_) || listener_.proven())
        return;
    watch_.enter("number of levels");
    LevelCounts search(instance_, best_, [this](std::int64_t ticks) { return over(ticks); });
    if (const auto certificate = search.certificate())
        listener_.certificate(*certificate);
}

void MetalSearch::byOrder()
{
    if (!LevelOrder::takes(instance_) || listener_.proven())
        return;
    watch_.enter("order of blanks");
    LevelOrder search(instance_, settings_.seed, [this](std::int64_t ticks) { return over(ticks); });
    std::int64_t blanks = 0;
    for (const Kind& kind : instance_.kinds)
        blanks += kind.demand;
    const int starts = 6, changes = static_cast<int>(60'000'000 / (blanks * blanks));
    for (int start = 0; start < starts && !over(0); ++start)
        if (const auto found = search.search(std::min(changes, 40'000), costOf(instance_, best_)))
            take(*found);
}

} // namespace lapwright::cutting
