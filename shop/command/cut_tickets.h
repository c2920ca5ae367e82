#pragma once

#include "paperwork.h"
#include "storage/database.h"
#include "ticket_folder.h"

namespace lapwright::command {

/// For every plan that waits to be cut a cut ticket as PDF and in words, a cut map of each of its patterns,
/// and labels for the remnants it keeps. Throws storage::StorageFailure where one cannot be written or a
/// stored plan does not hold.
void printCutTickets(const storage::Database& database, const Paperwork& work, TicketFolder& folder);

} // namespace lapwright::command
