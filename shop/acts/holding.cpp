#include "acts/holding.h"

#include "acts/making.h"
#include "storage/piece_events.h"

namespace lapwright::acts {

Result<bool> holdOrder(const storage::Database& database, const std::string& order, bool held,
                       const storage::Stamp& stamp)
{
    if (held)
        if (auto errors = settleTicks(database, order, stamp); !errors.empty())
            return errors;
    return storage::holdOrder(database, order, held);
}

Result<bool> holdPiece(const storage::Database& database, const std::string& order, const std::string& mark,
                       bool held, const storage::Stamp& stamp)
{
    if (held)
        if (auto errors = settleTicks(database, order, stamp); !errors.empty())
            return errors;
    return storage::holdPiece(database, order, mark, held);
}

Result<storage::Arrival> cancelOrder(const storage::Database& database, const std::string& order,
                                     const storage::Stamp& stamp, bool accept)
{
    if (auto errors = settleTicks(database, order, stamp); !errors.empty())
        return errors;
    return storage::cancelOrder(database, order, stamp, accept);
}

} // namespace lapwright::acts
