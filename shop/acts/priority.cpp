#include "acts/priority.h"

#include "storage/piece_events.h"

namespace lapwright::acts {

std::optional<schedule::Date> dateOf(const storage::OrderSummary& order)
{
    const auto date = schedule::readDate(order.wantedBy);
    return date.ok() ? std::optional(*date) : std::nullopt;
}

int priorityOf(const storage::Database& database, const std::string& order)
{
    return storage::orderCounts(database, order).remade > 0 ? 1 : 0;
}

} // namespace lapwright::acts
