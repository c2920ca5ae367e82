#include "storage/reports.h"

#include "storage/rows.h"

namespace lapwright::storage {

std::vector<MetalUse> metalUse(const Database& database)
{
    Rows rows = database.query(
        "SELECT metal, gauge, colour, COUNT(*), CAST(SUM(pieces) AS BIGINT), SUM(stock_area), SUM(blank_area),"
        " SUM(remnant_area) FROM plans WHERE state = 'cut' GROUP BY metal, gauge, colour"
        " ORDER BY metal, gauge, colour");
    std::vector<MetalUse> uses;
    while (rows.next())
        uses.push_back({{rows.text(0), rows.text(1), rows.text(2)},
                        rows.number(3),
                        rows.number(4),
                        rows.real(5),
                        rows.real(6),
                        rows.real(7)});
    return uses;
}

std::vector<OrderDelivery> deliveries(const Database& database)
{
    Rows rows = database.query("SELECT " + summaryColumns() +
                               ", (SELECT MAX(e.at) FROM piece_events e WHERE e.order_id = o.id"
                               " AND e.kind = 'advance' AND e.state = 'loaded'),"
                               " o.unfinished - COALESCE((SELECT c.count FROM order_counts c"
                               " WHERE c.order_id = o.id AND c.state = 'loaded'), 0)"
                               " FROM current_orders o WHERE o.wanted_by <> '' AND o.cancelled = 0"
                               " ORDER BY o.due, o.job_name, o.id");
    std::vector<OrderDelivery> all;
    while (rows.next())
        all.push_back({summaryAt(rows, 0), rows.text(10), rows.number(11)});
    return all;
}

std::vector<RemakeCause> remakeCauses(const Database& database)
{
    Rows rows = database.query(
        "SELECT CASE WHEN kind = 'scrap' THEN 'scrap' ELSE state END AS cause, note, COUNT(*),"
        " CAST(SUM(count) AS BIGINT) FROM piece_events WHERE kind = 'scrap'"
        " OR (kind = 'advance' AND state IN ('short', 'damaged', 'wrong'))"
        " GROUP BY CASE WHEN kind = 'scrap' THEN 'scrap' ELSE state END, note ORDER BY cause, note");
    std::vector<RemakeCause> causes;
    while (rows.next())
        causes.push_back({rows.text(0), rows.text(1), rows.number(2), rows.number(3)});
    return causes;
}

} // namespace lapwright::storage
