#pragma once

#include "print/page.h"

#include <string>
#include <vector>

namespace lapwright::print {

/// What a PDF says of itself.
struct PdfHead {
    std::string title;
    std::string madeAt; ///< ISO 8601, UTC, to the second: "2026-11-25T14:05:00Z"
};

/// The bytes of a PDF with one page for each of `pages`, true to size, its fonts embedded. The same pages and
/// head give the same bytes. Needs a QGuiApplication (the offscreen platform will do). Precondition: all
/// pages are of one size; `pages` is not empty.
[[nodiscard]] std::string pdfOf(const std::vector<Page>& pages, const PdfHead& head);

} // namespace lapwright::print
