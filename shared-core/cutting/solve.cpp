#include "cutting/solve.h"

#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/exact_strips.h"
#include "cutting/first_fit.h"
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
        writeOut(instance_, firstFitPlan(instance_, residual, used), best_);
        best_.certificate.patterns = problem_.rules().patterns;
        best_.bound = provenBound(problem_, best_.certificate);
        judge();
        best_.feasibility = check(problem_, best_).feasibility;
        if (goesOn("first fit") && decomposes(instance_))
            byStrips();
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
        best_ = std::move(plan);
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
    std::optional<std::chrono::microseconds> end_;
    Plan best_;
};

} // namespace

Plan solve(const Problem& problem, const Settings& settings, const Control& control)
{
    return Search(problem, settings, control).run();
}

} // namespace lapwright::cutting
