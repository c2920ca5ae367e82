#pragma once

#include "drawing/display_list.h"
#include "print/code.h"

#include <vector>

namespace lapwright::print {

/// A code and where it stands: its upper left dark module and the side of one module, millimetres.
struct PlacedCode {
    Code code;
    drawing::Point corner;
    double module = 0.0;

    [[nodiscard]] double side() const { return module * static_cast<double>(code.size); }
};

/// One page, ready to be painted.
struct Page {
    drawing::DisplayList list;
    std::vector<PlacedCode> codes;
};

} // namespace lapwright::print
