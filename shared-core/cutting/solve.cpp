#include "cutting/solve.h"

#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/exact_strips.h"
#include "cutting/first_fit.h"
#include "cutting/level_order.h"
#include "cutting/nested_patterns.h"
#include "cutting/ruin.h"
#include "cutting/setups.h"
#include "cutting/value_correction.h"
#include "cutting/watch.h"
#include "cutting/write_out.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

class Search {
public:
    Search(const Problem& problem, const Settings& settings, const Control& control)
        : problem_(problem), settings_(settings), watch_(settings, control), instance_(normalise(problem))
    {
    }

    Plan run()
    {
        // What the search for less metal may use up; the rest is for the setups.
        constexpr double metalShare = 0.85;
        watch_.allow(settings_.fewerSetups ? metalShare : 1.0);
        firstFit();
        if (goesOn("first fit"))
            byStrips();
        if (goesOn("patterns") && best_.notCut.empty() && NestedPatterns::takes(instance_))
            byPatterns();
        if (settings_.fewerSetups)
            fewerSetups();
        best_.work = watch_.work();
        best_.ending = watch_.ending().value_or(Ending::NothingBetterFound);
        if (best_.proof == Proof::ProvenLeast)
            best_.ending = Ending::Proven;
        best_.feasibility = check(problem_, best_).feasibility;
        return std::move(best_);
    }

private:
    void firstFit()
    {
        for (const Units units : {Units::Tabulated, Units::Finest}) {
            instance_ = normalise(problem_, units);
            std::vector<std::int64_t> residual, used(instance_.stocks.size(), 0);
            for (const Kind& kind : instance_.kinds)
                residual.push_back(kind.demand);
            raw_ = firstFitPlan(instance_, residual, used);
            if (std::ranges::all_of(residual, [](std::int64_t left) { return left == 0; }))
                break;
        }
        writeOut(instance_, raw_, best_);
        noteTrade(best_);
        best_.certificate.patterns = problem_.rules().patterns;
        best_.bound = provenBound(problem_, best_.certificate);
        judge();
        best_.feasibility = check(problem_, best_).feasibility;
    }

    /// A bound beyond the value would contradict itself; limited stock that does not suffice has no proof.
    void judge()
    {
        const std::int64_t gap = best_.value - best_.bound;
        best_.proof = gap <= 0 ? Proof::ProvenLeast : gap == 1 ? Proof::ProvenWithinOne : Proof::Gap;
        if (!best_.notCut.empty()) {
            best_.bound = 0;
            best_.proof = Proof::Gap;
        }
        watch_.show(best_.value, best_.bound);
    }

    bool goesOn(std::string_view phase)
    {
        watch_.enter(phase);
        return !watch_.over(0) && best_.proof != Proof::ProvenLeast;
    }

    /// The stock without limit that could hold all blanks at the least cost for its area.
    [[nodiscard]] std::optional<int> stockForAll() const
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

    void byStrips()
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
        (void)watch_.over(found.work);
        consider(found.plan);
        if (problem_.rules().patterns == PatternClass::Exact && decomposes(instance_))
            certify(found.certificate);
        judge();
        start_ = std::move(found.start);
    }

    NestedPatterns::Listener listener()
    {
        NestedPatterns::Listener listener;
        listener.stop = [this](std::int64_t ticks) { return watch_.over(ticks); };
        listener.plan = [this](const RawPlan& raw) {
            consider(raw);
            judge();
            return best_.proof == Proof::ProvenLeast;
        };
        listener.certificate = [this](const Certificate& certificate) {
            certify(certificate);
            judge();
            return best_.proof == Proof::ProvenLeast;
        };
        return listener;
    }

    /// Whole plans by value correction, as long as they are quick to make.
    void byCorrection()
    {
        watch_.enter("value correction");
        ValueCorrection search(instance_, settings_.seed, [this](std::int64_t ticks) { return watch_.over(ticks); });
        const int plans = instance_.kinds.size() <= 100 ? 100 : 2;
        for (int plan = 0; plan < plans && best_.proof != Proof::ProvenLeast; ++plan)
            if (const auto found = search.next(costOf(instance_, raw_))) {
                consider(*found);
                judge();
            }
    }

    void fewerSetups()
    {
        watch_.allow(1.0);
        watch_.enter("fewer setups");
        if (best_.setups > 1 && !watch_.over(0))
            consider(withFewerSetups(instance_, raw_, [this](std::int64_t ticks) { return watch_.over(ticks); }));
        judge();
    }

    void byOrder()
    {
        if (!LevelOrder::takes(instance_) || best_.proof == Proof::ProvenLeast)
            return;
        watch_.enter("order of blanks");
        LevelOrder search(instance_, settings_.seed, [this](std::int64_t ticks) { return watch_.over(ticks); });
        std::int64_t blanks = 0;
        for (const Kind& kind : instance_.kinds)
            blanks += kind.demand;
        const int starts = 6, changes = static_cast<int>(60'000'000 / (blanks * blanks));
        for (int start = 0; start < starts && !watch_.over(0); ++start)
            if (const auto found = search.search(changes, costOf(instance_, raw_))) {
                consider(*found);
                judge();
            }
    }

    void byPatterns()
    {
        using Columns = MasterProgram::Columns;
        const bool large = instance_.kinds.size() > 300;
        const bool coil = instance_.measure == Measure::CoilLength;
        NestedPatterns patterns(instance_, raw_, start_,
                                {settings_.seed, 0, coil && large ? Columns::Longest : Columns::Nested}, listener());
        if (!patterns.relax())
            return;
        // Large sheet plans are bettered best by giving strips back; coils by ruining whole levels.
        const int roundings = large && !coil ? 100'000 : large ? 6 : 30;
        for (int attempt = 0; attempt < roundings; ++attempt)
            if (!patterns.round(attempt))
                return;
        byCorrection();
        byOrder();
        watch_.enter("ruin and recreate");
        Ruin ruin(instance_, raw_, patterns.worths(), settings_.seed, listener());
        while (ruin.step()) {
        }
    }

    /// The better plan stays, and only one the checker agrees with can replace another.
    void consider(const RawPlan& raw)
    {
        Plan plan = best_;
        writeOut(instance_, raw, plan);
        plan.proof = Proof::Gap;
        plan.bound = 0;
        const bool better =
            plan.notCut.empty() && (!best_.notCut.empty() || plan.value < best_.value ||
                                    (plan.value == best_.value && plan.setups < best_.setups));
        if (!better || !check(problem_, plan).feasibility.all())
            return;
        plan.bound = best_.bound;
        noteTrade(plan);
        best_ = std::move(plan);
        raw_ = raw;
    }

    /// Keeps the pairs of value and setups that no other pair beats in both.
    static void noteTrade(Plan& plan)
    {
        auto& trades = plan.setupTrades;
        std::erase_if(trades, [&plan](const SetupTrade& trade) {
            return trade.value >= plan.value && trade.setups >= plan.setups;
        });
        trades.insert(trades.begin(), {plan.value, plan.setups});
    }

    void certify(const Certificate& certificate)
    {
        const std::int64_t bound = provenBound(problem_, certificate);
        if (bound > best_.bound) {
            best_.bound = bound;
            best_.certificate = certificate;
        }
    }

    const Problem& problem_;
    const Settings& settings_;
    Watch watch_;
    Instance instance_;
    RawPlan raw_;
    std::optional<WarmStart> start_;
    Plan best_;
};

} // namespace

Plan solve(const Problem& problem, const Settings& settings, const Control& control)
{
    return Search(problem, settings, control).run();
}

} // namespace lapwright::cutting
