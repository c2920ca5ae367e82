#include "acts/checked_plan.h"

#include "cutting/checker.h"

#include <utility>

namespace lapwright::acts {

Result<CheckedPlan> readChecked(const storage::StoredPlan& stored)
{
    auto cut = documents::readCutPlan(stored.document);
    if (!cut.ok())
        return cut.errors();
    CheckedPlan checked{std::move(cut->value), std::nullopt};
    cutting::Admission admission = documents::admit(checked.cut.problem);
    if (admission.problem && cutting::check(*admission.problem, checked.cut.plan).feasibility.cuttable())
        checked.problem = std::move(admission.problem);
    return checked;
}

} // namespace lapwright::acts
