#pragma once

#include "cutting/plan.h"
#include "drawing/display_list.h"
#include "measure/writing.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::drawing {

/// What a cut map shows beside the cuts.
struct CutMapPicture {
    Style style;
    /// What each blank of the problem is to be called, by index; its key where there is none.
    std::vector<std::string> names;
    std::string material; ///< "Galvanised steel, 26 ga, slate blue"; may be empty
    /// With a title, facts and the scale around the map. A screen that says them beside it leaves them out.
    bool framed = true;
    Length width = Length::millimetres(297);
    /// At least; where blanks are too small for their names the list of them below may need more.
    Length height = Length::millimetres(210);
};

/// One pattern of a plan: the stock lying with its lead end to the left and its left edge up; strips numbered
/// in the order they are cut, with their widths on the right and the knife settings from the stock's edge on
/// the left (crosscut first: the same along the top); blanks with name and length, and with their girth where
/// they are narrower than their strip; new remnants hatched with label and size; waste hatched crosswise.
/// True to scale lengthwise; where the stock is long and narrow its width is drawn larger and the picture
/// says so. Names that do not fit are listed below by strip. Precondition: the plan is one of the problem's
/// that its checker passes; `pattern` < plan.patterns.size().
[[nodiscard]] DisplayList cutMap(const cutting::Problem& problem, const cutting::Plan& plan,
                                 std::size_t pattern, const CutMapPicture& picture);

} // namespace lapwright::drawing
