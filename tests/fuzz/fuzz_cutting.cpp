// Any cutting problem: what cannot be right is refused, the rest is planned within its work limit, and the
// plan passes the independent check.
#include "cutting/checker.h"
#include "cutting/solve.h"
#include "documents/cut.h"
#include "must.h"

#include <cstdint>

using namespace lapwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const auto document = documents::readCutProblem({reinterpret_cast<const char*>(data), size});
    if (!document.ok())
        return 0;
    const cutting::Admission admission = documents::admit(document->value);
    must(admission.problem || !admission.refusals.empty() || document->value.blanks.empty(),
         "a problem, a refusal or nothing to cut");
    if (!admission.problem)
        return 0;
    cutting::Settings settings;
    settings.workLimit = 100;
    const cutting::Plan plan = cutting::solve(*admission.problem, settings);
    const cutting::Verdict verdict = cutting::check(*admission.problem, plan);
    must(verdict.faults.empty() || !plan.notCut.empty(), "the plan holds");
    must(verdict.feasibility.cuttable(), "and can be cut");
    return 0;
}
