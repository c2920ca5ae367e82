#pragma once

#include "drawing/display_list.h"
#include "fold/machine.h"
#include "measure/writing.h"

namespace lapwright::drawing {

/// What the picture of a machine shows beside the machine itself.
struct MachinePicture {
    Style style;
    Length width = Length::millimetres(210);
    Length height = Length::millimetres(140);
};

/// The folding machine in section, operator to the right: bed, clamp, folding beam with the usual face, other
/// faces dashed, the beam that folds down where there is one, a sheet folded as far as the clamp lets it
/// dashed, and beside it in words what the machine can do. For whoever types a machine in or checks one.
[[nodiscard]] DisplayList machinePicture(const fold::Machine& machine, const MachinePicture& picture);

} // namespace lapwright::drawing
