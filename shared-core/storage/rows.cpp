#include "storage/rows.h"

namespace lapwright::storage {

QString pieceColumns()
{
    return "p.mark, p.run, p.profile, p.metal, p.gauge, p.colour, p.girth_nm, p.length_nm, p.grams, p.count, p.make";
}

OrderedPiece pieceAt(const Rows& rows, int first)
{
    const auto string = [&](int column) { return rows.text(first + column); };
    const auto length = [&](int column) { return Length::nanometres(rows.number(first + column)); };
    return {string(0),
            string(1),
            string(2),
            string(3),
            string(4),
            string(5),
            length(6),
            length(7),
            rows.number(first + 8),
            rows.number(first + 9),
            string(10)};
}

} // namespace lapwright::storage
