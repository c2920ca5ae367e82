#include "cutting/solve.h"

#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/first_fit.h"
#include "cutting/write_out.h"

namespace lapwright::cutting {

Plan solve(const Problem& problem, const Settings& settings, const Control& control)
{
    (void)settings;
    (void)control;
    const Instance instance = normalise(problem);
    std::vector<std::int64_t> residual, used(instance.stocks.size(), 0);
    for (const Kind& kind : instance.kinds)
        residual.push_back(kind.demand);
    const RawPlan raw = firstFitPlan(instance, residual, used);
    Plan plan;
    writeOut(instance, raw, plan);
    plan.certificate.patterns = problem.rules().patterns;
    plan.bound = provenBound(problem, plan.certificate);
    plan.proof = plan.value <= plan.bound ? Proof::ProvenLeast : Proof::Gap;
    plan.feasibility = check(problem, plan).feasibility;
    return plan;
}

} // namespace lapwright::cutting
