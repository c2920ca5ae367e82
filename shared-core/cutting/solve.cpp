#include "cutting/solve.h"

#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/exact_strips.h"
#include "cutting/first_fit.h"
#include "cutting/nested_patterns.h"
#include "cutting/write_out.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

class Search {
public:
    Search(const Problem& problem, const Settings& settings, const Control& control)
        : problem_(problem), settings_(settings), control_(control), instance_(normalise(problem))
    {
        if (control_.clock && settings_.timeLimit)
            end_ = control_.clock() + *settings_.timeLimit;
    }

    Plan run()
    {
        std::vector<std::int64_t> residual, used(instance_.stocks.size(), 0);
        for (const Kind& kind : instance_.kinds)
            residual.push_back(kind.demand);
        raw_ = firstFitPlan(instance_, residual, used);
        writeOut(instance_, raw_, best_);
        noteTrade(best_);
        best_.certificate.patterns = problem_.rules().patterns;
        best_.bound = provenBound(problem_, best_.certificate);
        judge();
        best_.feasibility = check(problem_, best_).feasibility;
        if (goesOn("first fit") && decomposes(instance_))
            byStrips();
        if (goesOn("patterns") && best_.notCut.empty() && NestedPatterns::takes(instance_))
            byPatterns();
        if (best_.proof == Proof::ProvenLeast)
            best_.ending = Ending::Proven;
        best_.feasibility = check(problem_, best_).feasibility;
        return std::move(best_);
    }

private:
    /// A bound beyond the value would contradict itself; limited stock that does not suffice has no proof.
    void judge()
    {
        if (!best_.notCut.empty()) {
            best_.bound = 0;
            best_.proof = Proof::Gap;
            return;
        }
        const std::int64_t gap = best_.value - best_.bound;
        best_.proof = gap <= 0 ? Proof::ProvenLeast : gap == 1 ? Proof::ProvenWithinOne : Proof::Gap;
    }

    bool goesOn(std::string_view phase)
    {
        if (best_.ending == Ending::Cancelled)
            return false;
        if (control_.progress && !control_.progress({best_.work, best_.value, best_.bound, phase}))
            best_.ending = Ending::Cancelled;
        else if (end_ && control_.clock() >= *end_)
            best_.ending = Ending::TimeLimit;
        else if (best_.work >= settings_.workLimit)
            best_.ending = Ending::WorkLimit;
        else
            return best_.proof != Proof::ProvenLeast;
        return false;
    }

    void byStrips()
    {
        StripsPlan found = cutByStrips(instance_, settings_.seed, std::max(1, settings_.threads));
        best_.work += found.work;
        consider(found.plan);
        if (problem_.rules().patterns == PatternClass::Exact)
            certify(found.certificate);
        judge();
        (void)goesOn("strips, then sheets");
    }

    void byPatterns()
    {
        NestedPatterns::Listener listener;
        listener.stop = [this](std::int64_t work) {
            best_.work += work;
            return !goesOn("patterns");
        };
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
        listener.bound = [this] { return best_.bound; };
        NestedPatterns(instance_, raw_, settings_.seed, std::move(listener)).run();
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
    const Control& control_;
    Instance instance_;
    RawPlan raw_;
    std::optional<std::chrono::microseconds> end_;
    Plan best_;
};

} // namespace

Plan solve(const Problem& problem, const Settings& settings, const Control& control)
{
    return Search(problem, settings, control).run();
}

} // namespace lapwright::cutting
