#include "storage/changes.h"

namespace lapwright::storage {

std::int64_t changesByOthers(const Database& database)
{
    return database.dataVersion();
}

} // namespace lapwright::storage
