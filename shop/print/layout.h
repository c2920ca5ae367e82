#pragma once

#include "print/page.h"
#include "print/paper.h"
#include "print/sheet.h"

#include <vector>

namespace lapwright::print {

/// The sheet on pages of `paper`: title and subject at the head, the foot and "page 2 of 5" at the foot of
/// each. A table goes on under its titles, and under its group's band; no row is cut in two unless it is
/// higher than a page, none stands alone. No text lies on a line or another text, and none leaves the page.
/// At least one page. Text is measured with drawing/text.h.
[[nodiscard]] std::vector<Page> layOut(const Sheet& sheet, const Paper& paper);

} // namespace lapwright::print
