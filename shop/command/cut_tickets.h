#pragma once

#include "measure/writing.h"
#include "storage/database.h"
#include "ticket_folder.h"

namespace lapwright::command {

/// For every plan that waits to be cut a cut ticket in words, and a cut map of each of its patterns. Throws
/// storage::StorageFailure where one cannot be written or a stored plan does not hold.
void printCutTickets(const storage::Database& database, const Style& style, TicketFolder& folder);

} // namespace lapwright::command
