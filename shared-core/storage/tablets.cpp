#include "storage/tablets.h"

#include "storage/rows.h"

namespace lapwright::storage {

namespace {

Tablet tabletAt(const Rows& rows)
{
    return {rows.text(0), rows.text(1), rows.text(2), rows.text(3)};
}

} // namespace

std::vector<Tablet> tablets(const Database& database)
{
    Rows rows = database.query("SELECT key, name, paired_at, revoked_at FROM tablets ORDER BY name, key");
    std::vector<Tablet> all;
    while (rows.next())
        all.push_back(tabletAt(rows));
    return all;
}

std::optional<Tablet> tabletOf(const Database& database, const std::string& key)
{
    Rows rows =
        database.query("SELECT key, name, paired_at, revoked_at FROM tablets WHERE key = ?", {text(key)});
    return rows.next() ? std::optional(tabletAt(rows)) : std::nullopt;
}

void pairTablet(const Database& database, const std::string& key, const std::string& name, const Stamp& stamp)
{
    database.write([&] {
        database.run("INSERT INTO tablets (key, name, paired_at, person, revoked_at) VALUES (?, ?, ?, ?, '')"
                     " ON CONFLICT (key) DO UPDATE SET name = excluded.name, paired_at = excluded.paired_at,"
                     " person = excluded.person, revoked_at = ''",
                     {text(key), text(name), text(stamp.at), text(stamp.person)});
    });
}

bool revokeTablet(const Database& database, const std::string& key, const Stamp& stamp)
{
    return database.write([&] {
        return database
                   .query("UPDATE tablets SET revoked_at = ?, person = ? WHERE key = ? AND revoked_at = ''",
                          {text(stamp.at), text(stamp.person), text(key)})
                   .changed() > 0;
    });
}

std::vector<std::string> waitingDocuments(const Database& database)
{
    Rows rows =
        database.query("SELECT document FROM quarantine WHERE dismissed = 0 ORDER BY received_at, hash");
    std::vector<std::string> documents;
    while (rows.next())
        documents.push_back(rows.text(0));
    return documents;
}

} // namespace lapwright::storage
