#include "remnants_to_label.h"

#include "cutting_desk.h"
#include "print/cut_ticket.h"
#include "shop.h"
#include "text.h"

#include <utility>

namespace lapwright::model {

void RemnantsToLabel::put(const QString& sheet, std::vector<print::KeptRemnant> remnants)
{
    if (remnants.empty())
        drop(sheet);
    else
        bySheet_[sheet] = std::move(remnants);
}

std::vector<print::KeptRemnant> RemnantsToLabel::all() const
{
    std::vector<print::KeptRemnant> all;
    for (const auto& [sheet, remnants] : bySheet_)
        all.insert(all.end(), remnants.begin(), remnants.end());
    return all;
}

QList<Row> RemnantsToLabel::rows(const Shop& shop) const
{
    const Style style = print::fine(shop.style());
    QList<Row> rows;
    for (const print::KeptRemnant& remnant : all()) {
        Row row;
        row.id = exact(remnant.label);
        row.title = shown(remnant.label);
        row.detail = shop.describe(remnant.material);
        row.trailing = CuttingDesk::tr("%1 × %2").arg(shown(write(remnant.width, style)),
                                                      shown(write(remnant.length, style)));
        row.swatch = shop.swatchOf(remnant.material.colour);
        rows.append(row);
    }
    return rows;
}

} // namespace lapwright::model
