#pragma once

#include "drawing/display_list.h"
#include "fold/plan.h"

#include <string>
#include <vector>

namespace lapwright::drawing {

/// How the sheet is moved before a step, in words: "turn over".
[[nodiscard]] std::string wordsFor(fold::Move move);
/// The same as a drawing about 26 × 14 mm from its upper left corner. Turn over: the sheet in section, its
/// coloured upper side going below. Spin: the sheet from above, its marked end going round.
void addMoveMark(std::vector<Shape>& onto, Point corner, fold::Move move, Colour colour);

} // namespace lapwright::drawing
