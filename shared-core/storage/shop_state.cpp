#include "storage/shop_state.h"

#include "storage/rows.h"

namespace lapwright::storage {

namespace {

constexpr const char* stockKey = "stock";
constexpr const char* floorKey = "floor";
constexpr const char* scheduleKey = "schedule";

std::optional<std::string> firstText(QSqlQuery query)
{
    if (!query.next())
        return std::nullopt;
    return query.value(0).toString().toStdString();
}

std::optional<std::string> setting(const Database& database, const char* key)
{
    return firstText(database.query("SELECT value FROM settings WHERE key = ?", {key}));
}

void saveSetting(const Database& database, const char* key, const std::string& document)
{
    database.run("INSERT INTO settings (key, value) VALUES (?, ?)"
                 " ON CONFLICT (key) DO UPDATE SET value = excluded.value",
                 {key, text(document)});
}

/// Inserts a row of `table` unless its id is there.
bool insertOnce(const Database& database, const QString& statement, const QVariantList& values)
{
    return database.query(statement + " ON CONFLICT (id) DO NOTHING", values).numRowsAffected() > 0;
}

} // namespace

std::optional<std::string> stockDocument(const Database& database)
{
    return setting(database, stockKey);
}

void saveStockDocument(const Database& database, const std::string& document)
{
    saveSetting(database, stockKey, document);
}

std::optional<std::string> floorDocument(const Database& database)
{
    return setting(database, floorKey);
}

void saveFloorDocument(const Database& database, const std::string& document)
{
    saveSetting(database, floorKey, document);
}

std::optional<std::string> scheduleDocument(const Database& database)
{
    return setting(database, scheduleKey);
}

void saveScheduleDocument(const Database& database, const std::string& document)
{
    saveSetting(database, scheduleKey, document);
}

void replacePlans(const Database& database, const std::vector<StoredPlan>& plans, const Stamp& stamp)
{
    database.write([&] {
        database.run("UPDATE plans SET state = 'replaced' WHERE state = 'planned'");
        for (const StoredPlan& plan : plans)
            database.run("INSERT INTO plans (id, metal, gauge, colour, state, made_at, document)"
                         " VALUES (?, ?, ?, ?, 'planned', ?, ?)",
                         {text(plan.id), text(plan.material.metal), text(plan.material.gauge),
                          text(plan.material.colour), text(stamp.at), text(plan.document)});
    });
}

std::vector<StoredPlan> waitingPlans(const Database& database)
{
    QSqlQuery query =
        database.query("SELECT id, metal, gauge, colour, document FROM plans WHERE state = 'planned'"
                       " ORDER BY made_at, metal, gauge, colour, id");
    std::vector<StoredPlan> plans;
    while (query.next()) {
        const auto string = [&](int column) { return query.value(column).toString().toStdString(); };
        plans.push_back({string(0), {string(1), string(2), string(3)}, string(4)});
    }
    return plans;
}

void markCut(const Database& database, const std::string& plan)
{
    database.run("UPDATE plans SET state = 'cut' WHERE id = ?", {text(plan)});
}

bool saveLoad(const Database& database, const std::string& id, const std::string& document,
              const Stamp& stamp)
{
    return insertOnce(database, "INSERT INTO loads (id, made_at, document) VALUES (?, ?, ?)",
                      {text(id), text(stamp.at), text(document)});
}

std::optional<std::string> loadDocument(const Database& database, const std::string& id)
{
    return firstText(database.query("SELECT document FROM loads WHERE id = ?", {text(id)}));
}

std::vector<std::string> loadDocuments(const Database& database)
{
    QSqlQuery query = database.query("SELECT document FROM loads ORDER BY made_at, id");
    std::vector<std::string> documents;
    while (query.next())
        documents.push_back(query.value(0).toString().toStdString());
    return documents;
}

bool saveReceipt(const Database& database, const std::string& id, const std::string& load,
                 const std::string& document, const Stamp& stamp)
{
    return insertOnce(database,
                      "INSERT INTO receipts (id, load_id, received_at, document) VALUES (?, ?, ?, ?)",
                      {text(id), text(load), text(stamp.at), text(document)});
}

std::optional<std::string> derivedOrder(const Database& database, const std::string& order)
{
    return firstText(database.query("SELECT derived FROM orders WHERE id = ? ORDER BY revision DESC LIMIT 1",
                                    {text(order)}));
}

std::optional<std::int64_t> currentRevision(const Database& database, const std::string& order)
{
    QSqlQuery query = database.query("SELECT MAX(revision) FROM orders WHERE id = ?", {text(order)});
    if (!query.next() || query.value(0).isNull())
        return std::nullopt;
    return query.value(0).toLongLong();
}

} // namespace lapwright::storage
