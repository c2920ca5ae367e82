#pragma once

#include "measure/rounding.h"

#include <cstdint>
#include <string>

namespace lapwright::print {

/// A sheet of paper, upright.
struct Paper {
    Length width;
    Length height;

    friend bool operator==(const Paper&, const Paper&) = default;
};

/// Source: ANSI/ASME Y14.1 (8.5 × 11 in) and ISO 216 (A4).
inline constexpr Paper letterPaper{Length::inches(17) / 2, Length::inches(11)};
inline constexpr Paper a4Paper{Length::millimetres(210), Length::millimetres(297)};

/// Kept free on every side of a page, millimetres: what office printers cannot print and a thumb covers.
inline constexpr double pageMargin = 12.0;
/// What the title at the head and the line at the foot take of a page, millimetres.
inline constexpr double headHeight = 12.0;
inline constexpr double footHeight = 7.0;

/// What is left for a sheet's blocks, millimetres.
[[nodiscard]] constexpr double contentWidth(const Paper& paper)
{
    return inMillimetres(paper.width) - 2.0 * pageMargin;
}
[[nodiscard]] constexpr double contentHeight(const Paper& paper)
{
    return inMillimetres(paper.height) - 2.0 * pageMargin - headHeight - footHeight;
}

/// What every paper says of where and when it was printed.
struct Printing {
    std::string shop; ///< name; may be empty
    std::string at;   ///< when, as people read it: "2026-11-25 14:05"
    Paper paper = a4Paper;
};

/// "revision 2 · printed 2026-11-25 14:05 · Larkfield House · Invented Folding Shop": the foot of every page,
/// what may be long last. Empty parts and revision 0 are left out.
[[nodiscard]] std::string footOf(const std::string& job, std::int64_t revision, const Printing& printing);

} // namespace lapwright::print
