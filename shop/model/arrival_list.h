#pragma once

#include "rows_model.h"
#include "storage/database.h"
#include "storage/lists.h"

#include <QString>

#include <vector>

/// What the Arrivals screen lists, as the database has it. All throw storage::StorageFailure.
namespace lapwright::model {

/// Those that wait for a person.
[[nodiscard]] std::vector<storage::WaitingOrder> waitingOrders(const storage::Database& database);
/// Those that are not finished, the first due first.
[[nodiscard]] std::vector<storage::OrderRow> openOrders(const storage::Database& database);
/// What a person typed or a scanner read finds among all orders there ever were; some hundred at most.
[[nodiscard]] std::vector<storage::OrderRow> searched(const storage::Database& database,
                                                      const QString& search);
/// One order that was taken in, as a line of a list.
[[nodiscard]] Row orderRow(const storage::OrderRow& found);

} // namespace lapwright::model
