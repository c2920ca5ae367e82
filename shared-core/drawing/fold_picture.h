#pragma once

#include "drawing/display_list.h"
#include "drawing/profile_picture.h"
#include "fold/picture.h"
#include "measure/writing.h"

#include <cstddef>
#include <string>

namespace lapwright::drawing {

/// What the picture of a fold step shows beside the step itself.
struct FoldStepPicture {
    std::size_t number = 1; ///< of this step, from 1
    std::size_t count = 1;
    std::string profile; ///< name
    std::string machine; ///< name
    Style style;
    AngleShown angles = AngleShown::Fold;
    Colour colour;
    std::string colourName;
    /// With the words of the step beside it. A screen that has them in larger letters leaves them out.
    bool framed = true;
    Length width = Length::millimetres(210);
    Length height = Length::millimetres(130);
};

/// What is done in a step: "Fold up".
[[nodiscard]] std::string stepAction(const fold::FoldStep& step);

/// One fold step: the section in the machine (operator to the right) with the sheet laid in (dashed) and
/// folded, the coloured face as a dotted band, the back gauge with its setting, the angle, and the beam where
/// it ends; beside it in large letters what to set and how to lay the sheet, and the step's cautions. The
/// sheet is drawn thicker than it is and the machine makes room for it; a long flat part behind is broken
/// out, and both are said.
[[nodiscard]] DisplayList foldStepPicture(const fold::FoldStep& step, const fold::StepPicture& section,
                                          const FoldStepPicture& picture);

} // namespace lapwright::drawing
