#include "storage/quarantine.h"

#include <QStringList>

namespace lapwright::storage {

std::vector<QuarantinedOrder> quarantinedOrders(const Database& database)
{
    Rows rows = database.query("SELECT hash, order_id, revision, reason, received_at, document"
                               " FROM quarantine WHERE dismissed = 0 ORDER BY received_at, hash");
    std::vector<QuarantinedOrder> waiting;
    while (rows.next()) {
        QuarantinedOrder order{rows.text(0), rows.text(1), rows.number(2), {}, rows.text(4), rows.text(5)};
        for (const QString& reason : QString::fromStdString(rows.text(3)).split('\n', Qt::SkipEmptyParts))
            order.reasons.push_back(reason.toStdString());
        waiting.push_back(std::move(order));
    }
    return waiting;
}

} // namespace lapwright::storage
