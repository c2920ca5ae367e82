#include "storage/rows.h"

namespace lapwright::storage {

QString pieceColumns()
{
    return "p.mark, p.run, p.profile, p.metal, p.gauge, p.colour, p.girth_nm, p.length_nm, p.grams, p.count, p.make";
}

OrderedPiece pieceAt(const QSqlQuery& query, int first)
{
    const auto string = [&](int column) { return query.value(first + column).toString().toStdString(); };
    const auto length = [&](int column) {
        return Length::nanometres(query.value(first + column).toLongLong());
    };
    return {string(0),
            string(1),
            string(2),
            string(3),
            string(4),
            string(5),
            length(6),
            length(7),
            query.value(first + 8).toLongLong(),
            query.value(first + 9).toLongLong(),
            string(10)};
}

} // namespace lapwright::storage
