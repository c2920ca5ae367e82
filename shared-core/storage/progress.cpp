#include "storage/progress.h"

#include "storage/rows.h"

namespace lapwright::storage {

std::optional<PlanProgress> planProgress(const Database& database, const std::string& plan)
{
    Rows rows = database.query("SELECT state FROM plans WHERE id = ?", {text(plan)});
    if (!rows.next())
        return std::nullopt;
    PlanProgress progress;
    const std::string state = rows.text(0);
    if (state != "planned")
        progress.state = state == "cut" ? PlanProgress::State::Cut : PlanProgress::State::TakenBack;
    Rows ticks = database.query("SELECT pattern FROM cut_ticks WHERE plan_id = ?", {text(plan)});
    while (ticks.next())
        progress.ticked.insert(static_cast<std::size_t>(ticks.number(0)));
    return progress;
}

std::map<std::string, std::int64_t> unfoldedPieces(const Database& database)
{
    Rows rows =
        database.query("SELECT c.order_id, p.profile, CAST(SUM(c.count) AS BIGINT) FROM piece_counts c"
                       " JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
                       " WHERE c.count > 0 AND c.state IN ('ordered', 'cut')"
                       " GROUP BY c.order_id, p.profile");
    std::map<std::string, std::int64_t> pieces;
    while (rows.next())
        pieces[rows.text(0) + "/" + rows.text(1)] = rows.number(2);
    return pieces;
}

std::set<std::string> foldedProfiles(const Database& database, const std::string& order)
{
    Rows rows = database.query("SELECT DISTINCT p.profile FROM piece_counts c"
                               " JOIN pieces p ON p.order_id = c.order_id AND p.mark = c.mark"
                               " WHERE c.order_id = ? AND c.count > 0"
                               " AND c.state NOT IN ('ordered', 'cut', 'remade')",
                               {text(order)});
    std::set<std::string> profiles;
    while (rows.next())
        profiles.insert(rows.text(0));
    return profiles;
}

} // namespace lapwright::storage
