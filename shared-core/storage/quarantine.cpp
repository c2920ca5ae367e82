#include "storage/quarantine.h"

#include <QStringList>

namespace lapwright::storage {

std::vector<QuarantinedOrder> quarantinedOrders(const Database& database)
{
    QSqlQuery query = database.query("SELECT hash, order_id, revision, reason, received_at, document"
                                     " FROM quarantine ORDER BY received_at, hash");
    std::vector<QuarantinedOrder> waiting;
    while (query.next()) {
        const auto string = [&](int column) { return query.value(column).toString().toStdString(); };
        QuarantinedOrder order{string(0), string(1), query.value(2).toLongLong(), {}, string(4), string(5)};
        for (const QString& reason : query.value(3).toString().split('\n', Qt::SkipEmptyParts))
            order.reasons.push_back(reason.toStdString());
        waiting.push_back(std::move(order));
    }
    return waiting;
}

} // namespace lapwright::storage
