#include "storage/backup.h"

#include "storage/owner_file.h"
#include "storage/rows.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <vector>

namespace lapwright::storage {

namespace {

Error onServer()
{
    return {"", "a database on a server", "a SQLite file; a server is backed up with pg_dump and pg_restore"};
}

/// What others refer to first: a copied row is not checked against rows that refer to it.
std::vector<QString> tablesOf(const Database& database)
{
    std::vector<QString> tables;
    Rows rows = database.query("SELECT name FROM main.sqlite_master WHERE type = 'table'"
                               " AND name NOT LIKE 'sqlite!_%' ESCAPE '!'"
                               " ORDER BY sql LIKE '% REFERENCES %', name");
    while (rows.next())
        tables.push_back(text(rows.text(0)));
    return tables;
}

/// The other database under the name "kept", as long as this lives.
class Attached {
public:
    Attached(const Database& database, const QString& path) : database_(database)
    {
        database_.run("ATTACH DATABASE ? AS kept", {path});
    }
    Attached(const Attached&) = delete;
    Attached& operator=(const Attached&) = delete;
    Attached(Attached&&) = delete;
    Attached& operator=(Attached&&) = delete;
    ~Attached()
    {
        try {
            database_.run("DETACH DATABASE kept");
        } catch (const StorageFailure&) {
            return; // closed with the connection
        }
    }

private:
    const Database& database_;
};

/// Throws StorageFailure where the other database is not whole.
void refuseDamaged(const Database& database)
{
    Rows faults = database.query("PRAGMA kept.integrity_check");
    while (faults.next())
        if (faults.text(0) != "ok")
            throw StorageFailure("the copy is damaged: " + faults.text(0));
}

/// Whether the database itself lies there.
bool isItself(const Database& database, const QString& path)
{
    Rows files = database.query("SELECT file FROM pragma_database_list WHERE name = 'main'");
    return files.next() && QFileInfo(text(files.text(0))) == QFileInfo(path);
}

void copyTables(const Database& database)
{
    const std::vector<QString> tables = tablesOf(database);
    database.write([&] {
        const std::int64_t version = database.dataVersion();
        database.run("PRAGMA defer_foreign_keys = ON");
        for (auto table = tables.rbegin(); table != tables.rend(); ++table)
            database.run("DELETE FROM main." + *table);
        for (const QString& table : tables)
            database.run("INSERT INTO main." + table + " SELECT * FROM kept." + table);
        // Whatever the copy counted: every station has to see that this is new.
        database.run("UPDATE data_version SET version = ?", {qint64(version)});
    });
}

} // namespace

Result<bool> backUp(const Database& database, const std::string& path)
{
    if (database.isOnServer())
        return onServer();
    const QString place = QString::fromStdString(path);
    if (isItself(database, place))
        return Error{path, "the database itself", "another file to copy it to"};
    try {
        const bool written = fillInPlace(place, [&database](const QString& scratch) {
            database.run("VACUUM INTO ?", {scratch});
            const Attached attached(database, scratch);
            refuseDamaged(database);
        });
        if (!written)
            return Error{path, "a place that cannot be written", "a file name"};
    } catch (const StorageFailure& failure) {
        return Error{path, failure.what(), "a whole database, and a place that can be written"};
    }
    return true;
}

Result<bool> restore(const Database& database, const std::string& path)
{
    if (database.isOnServer())
        return onServer();
    const QTemporaryDir folder;
    const QString copy = folder.filePath("kept.db");
    if (QFileInfo(QString::fromStdString(path)).size() == 0 ||
        !QFile::copy(QString::fromStdString(path), copy))
        return Error{path, "no file, or an empty one", "a copy that this program wrote"};
    if (const auto opened = Database::open(copy.toStdString(), WhenMissing::Refuse); !opened.ok())
        return Error{path, opened.errors().front().found, "a copy that this program wrote"};
    try {
        const Attached attached(database, copy);
        refuseDamaged(database);
        copyTables(database);
    } catch (const StorageFailure& failure) {
        return Error{path, failure.what(), "a copy that this program wrote"};
    }
    return true;
}

} // namespace lapwright::storage
