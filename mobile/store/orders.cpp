#include "store/orders.h"

#include "store/values.h"

namespace lapwright::store {

std::optional<SentOrder> lastSent(const Connection& connection, const std::string& job)
{
    Rows query = connection.query("SELECT revision, hash, sent_at, document FROM orders WHERE job = ?"
                                  " ORDER BY revision DESC LIMIT 1",
                                  {text(job)});
    if (!query.next())
        return std::nullopt;
    return SentOrder{query.value(0).toLongLong(), string(query.value(1)), string(query.value(2)),
                     raw(query.value(3))};
}

void keepSent(const Connection& connection, const std::string& job, const SentOrder& order)
{
    connection.write([&] {
        connection.run("INSERT INTO orders (job, revision, hash, sent_at, document) VALUES (?, ?, ?, ?, ?)"
                       " ON CONFLICT (job, revision) DO NOTHING",
                       {text(job), static_cast<qint64>(order.revision), text(order.hash), text(order.sentAt),
                        bytes(order.document)});
        const auto kept = lastSent(connection, job);
        if (!kept || kept->hash != order.hash)
            throw StoreFailure("another order of this revision was sent before");
        connection.run("UPDATE jobs SET state = 'sent' WHERE id = ?", {text(job)});
    });
}

} // namespace lapwright::store
