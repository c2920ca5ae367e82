#pragma once

#include "fold/machine.h"
#include "fold/plan.h"
#include "fold/section.h"
#include "fold/settings.h"

namespace lapwright::fold {

/// The flags of a plan, found by going through its steps once more with nothing kept from the search. The
/// checker (check.h) does the same in a way of its own.
[[nodiscard]] Feasibility replay(const FoldPlan& plan, const Blank& blank, const Machine& machine,
                                 const Settings& settings, Length pieceLength, Length capacity);

} // namespace lapwright::fold
