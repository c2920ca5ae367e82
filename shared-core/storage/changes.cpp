#include "storage/changes.h"

namespace lapwright::storage {

std::int64_t changesByOthers(const Database& database)
{
    QSqlQuery query = database.query("PRAGMA data_version");
    return query.next() ? query.value(0).toLongLong() : 0;
}

} // namespace lapwright::storage
