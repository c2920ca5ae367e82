#pragma once

#include "drawing/display_list.h"
#include "measure/writing.h"
#include "site/job.h"

#include <map>
#include <string>

namespace lapwright::drawing {

/// What a plan of a job shows beside its chains.
struct PlanPicture {
    Style style;
    /// Marks of the pieces on a run, by run id, as they are to be read: "E3.1 to E3.3".
    std::map<std::string, std::string> marks;
    Length width = Length::millimetres(297);
    /// At least; a job of very many chains gets a longer sheet.
    Length height = Length::millimetres(210);
};

/// The chains of a job as measured, all to one scale, each in a panel of its own under its name, north (the
/// top of the plan) marked: runs with id, length, kind, slope and marks; square corners by a square, other
/// corners by their interior angle; the start and the way the chain is walked. A chain that does not close is
/// drawn as measured with the gap, its size and direction, and the first run or corner that would explain it;
/// one that closes within tolerance is drawn adjusted. Chains that cannot be drawn (a length missing, only
/// upright runs) are named at the foot. No label stands on a line or another label.
[[nodiscard]] DisplayList planPicture(const site::Job& job, const PlanPicture& picture);

} // namespace lapwright::drawing
