#include "store/deliveries.h"

#include "store/values.h"

namespace lapwright::store {

std::vector<LoadLine> loads(const Connection& connection)
{
    Rows query = connection.query("SELECT id, truck, made_at FROM loads ORDER BY opened_at DESC, id");
    std::vector<LoadLine> all;
    while (query.next())
        all.push_back({string(query.value(0)), string(query.value(1)), string(query.value(2))});
    return all;
}

bool keepLoad(const Connection& connection, const schedule::Load& load, const std::string& document,
              const std::string& at)
{
    return connection.run("INSERT INTO loads (id, truck, made_at, opened_at, document) VALUES (?, ?, ?, ?, ?)"
                          " ON CONFLICT (id) DO NOTHING",
                          {text(load.id), text(load.truck), text(load.madeAt), text(at), bytes(document)}) ==
           1;
}

std::optional<std::string> loadText(const Connection& connection, const std::string& id)
{
    Rows query = connection.query("SELECT document FROM loads WHERE id = ?", {text(id)});
    if (!query.next())
        return std::nullopt;
    return raw(query.value(0));
}

void replaceLoad(const Connection& connection, const schedule::Load& load, const std::string& document)
{
    connection.run("UPDATE loads SET truck = ?, made_at = ?, document = ? WHERE id = ?",
                   {text(load.truck), text(load.madeAt), bytes(document), text(load.id)});
}

void acceptLoad(const Connection& connection, const std::string& id, const std::string& at)
{
    connection.run("UPDATE loads SET accepted_at = ? WHERE id = ?", {text(at), text(id)});
}

bool isAccepted(const Connection& connection, const std::string& id)
{
    return connection.query("SELECT 1 FROM loads WHERE id = ? AND accepted_at <> ''", {text(id)}).next();
}

std::vector<schedule::ReceiptEvent> eventsOf(const Connection& connection, const std::string& load)
{
    Rows query =
        connection.query("SELECT id, order_id, mark, found, count, at, person, note FROM receipt_events"
                         " WHERE load = ? AND withdrawn = 0 ORDER BY seq",
                         {text(load)});
    std::vector<schedule::ReceiptEvent> events;
    while (query.next()) {
        const auto found = schedule::pieceState(string(query.value(3)));
        if (!found.ok())
            throw StoreFailure(found.errors().front().sentence());
        events.push_back({string(query.value(0)), string(query.value(1)), string(query.value(2)), *found,
                          query.value(4).toLongLong(), string(query.value(5)), string(query.value(6)),
                          string(query.value(7))});
    }
    return events;
}

std::int64_t addEvents(const Connection& connection, const std::string& load,
                       const std::vector<schedule::ReceiptEvent>& events)
{
    return connection.write([&] {
        std::int64_t added = 0;
        for (const schedule::ReceiptEvent& event : events)
            added += connection.run(
                "INSERT INTO receipt_events (id, load, order_id, mark, found, count, at, person, note)"
                " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
                {text(event.id), text(load), text(event.order), text(event.mark),
                 text(schedule::name(event.found)), static_cast<qint64>(event.count), text(event.at),
                 text(event.person), text(event.note)});
        return added;
    });
}

std::optional<std::string> withdrawLast(const Connection& connection, const std::string& load)
{
    return connection.write([&]() -> std::optional<std::string> {
        Rows query = connection.query("SELECT seq, mark FROM receipt_events WHERE load = ? AND withdrawn = 0"
                                      " AND sent = 0 ORDER BY seq DESC LIMIT 1",
                                      {text(load)});
        if (!query.next())
            return std::nullopt;
        const qint64 seq = query.value(0).toLongLong();
        const std::string mark = string(query.value(1));
        query.finish();
        connection.run("UPDATE receipt_events SET withdrawn = 1 WHERE seq = ?", {seq});
        return mark;
    });
}

void markSent(const Connection& connection, const std::string& load)
{
    connection.run("UPDATE receipt_events SET sent = 1 WHERE load = ?", {text(load)});
}

} // namespace lapwright::store
