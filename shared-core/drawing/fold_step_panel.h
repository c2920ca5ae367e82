#pragma once

#include "drawing/display_list.h"
#include "drawing/fold_picture.h"
#include "drawing/geometry.h"

#include <string>
#include <vector>

/// The words of a fold step, as they stand beside its picture and in the ticket's table.
namespace lapwright::drawing {

/// "90°", or "90° included" where included angles are shown.
[[nodiscard]] std::string writeAngle(Angle foldAngle, AngleShown shown);

/// Whether the step is set further than it is folded, by more than is shown.
[[nodiscard]] bool isOverbent(const fold::FoldStep& step);

/// What a hem is pressed to: "closed", or its gap.
[[nodiscard]] std::string writeGap(const fold::FoldStep& step, const Style& style);

/// "colour up".
[[nodiscard]] std::string writeFace(const fold::FoldStep& step);

/// What to do in a step, in large letters from the top of `room` down: action, gauge and what touches it (or
/// the mark), angle and what to set for it, face, movement, cautions.
void addStepPanel(const fold::FoldStep& step, const FoldStepPicture& picture, bool hasGauge, Rectangle room,
                  std::vector<Shape>& shapes);

} // namespace lapwright::drawing
