#include "strip_rows.h"

#include "cutting_desk.h"
#include "print/cut_ticket.h"
#include "text.h"

#include <QStringList>

namespace lapwright::model {

namespace {

/// "2 × E1.2 at 10' 0", trimmed to 5 1/2"".
QString crosscutInWords(const cutting::Crosscut& crosscut, const cutting::Lying& lying, Length strip,
                        const std::string& name, const Style& style)
{
    const QString cut = CuttingDesk::tr("%1 × %2 at %3")
                            .arg(crosscut.count)
                            .arg(shown(name), shown(write(lying.along, style)));
    return lying.across < strip
               ? CuttingDesk::tr("%1, trimmed to %2").arg(cut, shown(write(lying.across, style)))
               : cut;
}

} // namespace

QList<Row> stripRows(const documents::CutPlan& plan, std::size_t pattern,
                     const std::vector<std::string>& names, const Style& style)
{
    const Style finely = print::fine(style);
    QList<Row> rows;
    const cutting::CutOrder order = plan.plan.patterns[pattern].order;
    for (const cutting::Strip& strip : plan.plan.patterns[pattern].strips) {
        Row row;
        row.id = QString::number(rows.size());
        row.title = CuttingDesk::tr("%1   %2").arg(rows.size() + 1).arg(shown(write(strip.width, finely)));
        QStringList blanks;
        for (const cutting::Crosscut& crosscut : strip.crosscuts) {
            const cutting::Lying lying =
                cutting::lyingIn(order, plan.problem.blanks[crosscut.blank], crosscut.turned);
            blanks.append(crosscutInWords(crosscut, lying, strip.width, names[crosscut.blank], finely));
        }
        row.detail = blanks.join(QStringLiteral("; "));
        if (strip.rest > Length())
            row.trailing = CuttingDesk::tr("left %1").arg(shown(write(strip.rest, finely)));
        rows.append(row);
    }
    return rows;
}

} // namespace lapwright::model
