#include "acts/words.h"

#include <QDateTime>
#include <QString>

#include <algorithm>

namespace lapwright::acts {

namespace {

/// Weights of findings stand in a column of their own.
constexpr std::size_t weightColumn = 8;

} // namespace

std::string describe(const rules::Finding& finding, const Style& style)
{
    const char* weight = finding.weight == rules::Weight::Blocks  ? "BLOCKS"
                         : finding.weight == rules::Weight::Warns ? "warns"
                                                                  : "note";
    std::string line = translated(weight, style);
    line.resize(std::max(line.size() + 1, weightColumn), ' ');
    line += (finding.place.empty() ? "" : translated(finding.place, style) + ": ") +
            say(finding.statement, style);
    if (!finding.remedy.text.empty())
        line += "; " + say(finding.remedy, style);
    if (finding.clause) {
        line += " [" + finding.clause->number;
        line += finding.clause->edition.empty() ? "]" : ", " + finding.clause->edition + "]";
    }
    return line;
}

std::string describe(const site::Material& material)
{
    return material.gauge + " " + material.metal + ", " + material.colour;
}

std::string onTheWall(const std::string& utc)
{
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate);
    return time.isValid() ? time.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString()
                          : utc;
}

} // namespace lapwright::acts
