#include "print/pdf_finish.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <stdexcept>

namespace lapwright::print {

namespace {

/// PDF measures in points of 1/72 in (ISO 32000-1, 8.3.2.3).
constexpr double pointsPerInch = 72.0;

std::string number(double value)
{
    char text[32]; // a length of paper has at most five figures before the point
    std::snprintf(text, sizeof text, "%.3f", value);
    return text;
}

/// Puts `to` in place of what stands between `opening` and `closing`, blanks behind it: nothing else in the
/// file moves, so that its table of contents stays right. Returns where it is done; npos where there is none.
std::size_t replaceFrom(std::string& pdf, std::size_t from, const std::string& opening, char closing,
                        std::string to)
{
    const std::size_t found = pdf.find(opening, from);
    if (found == std::string::npos)
        return found;
    const std::size_t at = found + opening.size(), length = pdf.find(closing, at) - at;
    if (to.size() > length)
        throw std::logic_error("a PDF with no room for " + to);
    to.resize(length, ' ');
    pdf.replace(at, length, to);
    return at;
}

/// "20261125140500" of an ISO 8601 time.
std::string digitsOf(std::string time)
{
    time.erase(std::remove_if(time.begin(), time.end(), [](char c) { return c < '0' || c > '9'; }),
               time.end());
    time.resize(14, '0');
    return time;
}

} // namespace

std::string finishedPdf(std::string pdf, Length width, Length height, const std::string& madeAt)
{
    // A date may not hold blanks: where Qt wrote an offset from UTC there is room for one.
    const std::string date = "/CreationDate (D:";
    const std::size_t at = pdf.find(date);
    const bool hasOffset = at != std::string::npos && pdf.find(')', at) - at - date.size() > 15;
    if (replaceFrom(pdf, 0, date, ')', digitsOf(madeAt) + (hasOffset ? "+00'00'" : "Z")) == std::string::npos)
        throw std::logic_error("a PDF that does not say when it was made");
    // Qt counts down from the top of a page rounded to whole points.
    const double wide = inInches(width) * pointsPerInch, high = inInches(height) * pointsPerInch;
    const double top = std::round(high);
    const std::string box = "0 " + number(top - high) + " " + number(wide) + " " + number(top);
    for (std::size_t page = 0; page != std::string::npos;)
        page = replaceFrom(pdf, page, "/MediaBox [", ']', box);
    return pdf;
}

} // namespace lapwright::print
