#pragma once

// What stands on laid-out pages, for the tests of the papers.
#include "drawing/overlaps.h"
#include "drawing/pictures.h"
#include "print/page.h"

#include <string>
#include <vector>

namespace lapwright::print {

/// All texts of all pages, one per line.
inline std::string textsOf(const std::vector<Page>& pages)
{
    std::string all;
    for (const Page& page : pages)
        all += drawing::textsOf(page.list);
    return all;
}

/// How often a line of `text` is `line`.
inline int countOf(const std::string& text, const std::string& line)
{
    int count = 0;
    const std::string framed = "\n" + text, wanted = "\n" + line + "\n";
    for (std::size_t at = framed.find(wanted); at != std::string::npos; at = framed.find(wanted, at + 1))
        ++count;
    return count;
}

/// Texts over lines, over each other or off the page, in one line; a picture set into a sheet answers for
/// itself.
inline QString faultsOf(const std::vector<Page>& pages)
{
    QString faults;
    for (std::size_t number = 0; number < pages.size(); ++number) {
        for (const std::string& fault : drawing::faultsOf(pages[number].list, {drawing::Role::Machine}))
            faults += QString("page %1: %2; ").arg(number + 1).arg(QString::fromStdString(fault));
        drawing::keepPicture(pages[number].list, QString("paper-%1").arg(number + 1));
    }
    return faults;
}

} // namespace lapwright::print
