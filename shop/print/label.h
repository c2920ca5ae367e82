#pragma once

#include "drawing/display_list.h"
#include "measure/length.h"
#include "print/page.h"
#include "trim/profile.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::print {

/// What a label says.
struct Label {
    std::string mark;   ///< large: "E1.2", "B3"
    std::string beside; ///< after it: "1 of 3", "12 pieces"
    std::string where;  ///< where it goes: "Eave S1, roof edge"
    /// What it is, line by line; the first is the most important.
    std::vector<std::string> lines;
    std::string material; ///< "Slate · 24 ga galvanised steel": the colour's name in words
    std::string job;
    std::string foot; ///< revision, when printed, which label of how many
    bool twoPeople = false;
    std::string code; ///< text of its QR code; empty for none
    /// Drawn in section.
    std::optional<trim::Profile> profile;
    Length thickness;
};

/// Label stock: labels of one size on a roll, each a page of its own, or in rows and columns on a sheet.
struct LabelStock {
    std::string name;
    Length pageWidth, pageHeight;
    int columns = 1;
    int rows = 1;
    Length left, top; ///< of the first label, from the page's edges
    Length width, height;
    Length acrossStep, downStep; ///< from one label's left or top to the next one's
};

/// Common sizes, no source: 100 × 50 mm and 4 × 2 in on rolls; two columns of five 4 × 2 in labels on a
/// Letter sheet, two of seven 99.1 × 38.1 mm labels on A4.
[[nodiscard]] const LabelStock& roll100By50();
[[nodiscard]] const LabelStock& roll4By2();
[[nodiscard]] const LabelStock& letterSheetOf10();
[[nodiscard]] const LabelStock& a4SheetOf14();

/// Least side of a code's module, millimetres: three dots of a label printer with 203 dots to the inch.
inline constexpr double printerDot = 25.4 / 203.0;
inline constexpr double leastModule = 3.0 * printerDot;

/// The labels in their order on as many pages as they take, true to size; every module of a code a whole
/// number of printer dots and not less than leastModule, with four modules left white around it. A code that
/// finds no room so is left out, and the label says so. No text lies on a line or another text.
[[nodiscard]] std::vector<Page> labelPages(const std::vector<Label>& labels, const LabelStock& stock);

} // namespace lapwright::print
