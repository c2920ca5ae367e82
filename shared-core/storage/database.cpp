#include "storage/database.h"

#include "storage/migrations.h"

#include <QSqlError>
#include <QUuid>

#include <utility>

namespace lapwright::storage {

namespace {

std::string describe(const QSqlError& error)
{
    return error.text().toStdString();
}

int versionOf(const Database& database)
{
    QSqlQuery query = database.query("PRAGMA user_version");
    query.next();
    return query.value(0).toInt();
}

void secure(const Database& database)
{
    database.run("PRAGMA busy_timeout = 10000");
    QSqlQuery mode = database.query("PRAGMA journal_mode = WAL");
    if (!mode.next() || mode.value(0).toString() != "wal")
        throw StorageFailure("the file system does not allow a write-ahead log (is it a network share?)");
    mode.finish();
    database.run("PRAGMA synchronous = FULL");
    database.run("PRAGMA foreign_keys = ON");
}

void migrate(const Database& database)
{
    while (versionOf(database) < schemaVersion)
        database.write([&] {
            const int version = versionOf(database);
            if (version >= schemaVersion)
                return;
            for (const QString& statement : migration(version))
                database.run(statement);
            database.run(QString("PRAGMA user_version = %1").arg(version + 1));
        });
}

} // namespace

Result<Database> Database::open(const std::string& path)
{
    const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
    Database database(name);
    QSqlDatabase connection = QSqlDatabase::addDatabase("QSQLITE", name);
    connection.setDatabaseName(QString::fromStdString(path));
    if (!connection.open())
        return Error{path, describe(connection.lastError()), "a database file that can be opened"};
    try {
        secure(database);
        const int version = versionOf(database);
        if (version > schemaVersion)
            return Error{path, "a database of schema " + std::to_string(version),
                         "schema " + std::to_string(schemaVersion) +
                             " or older: a newer Lapwright made this file"};
        migrate(database);
    } catch (const StorageFailure& failure) {
        return Error{path, failure.what(), "a Lapwright database"};
    }
    return database;
}

Database::Database(Database&& other) noexcept : connection_(std::exchange(other.connection_, {})) {}

Database& Database::operator=(Database&& other) noexcept
{
    std::swap(connection_, other.connection_);
    return *this;
}

Database::~Database()
{
    if (connection_.isEmpty())
        return;
    QSqlDatabase::database(connection_, false).close();
    QSqlDatabase::removeDatabase(connection_);
}

void Database::run(const QString& statement, const QVariantList& values) const
{
    [[maybe_unused]] const QSqlQuery done = query(statement, values);
}

QSqlQuery Database::query(const QString& statement, const QVariantList& values) const
{
    QSqlQuery query(QSqlDatabase::database(connection_));
    query.setForwardOnly(true);
    if (!query.prepare(statement))
        throw StorageFailure(describe(query.lastError()));
    for (const QVariant& value : values)
        query.addBindValue(value);
    if (!query.exec())
        throw StorageFailure(describe(query.lastError()));
    return query;
}

Database::Transaction::Transaction(const Database& database) : database_(database)
{
    database_.run("BEGIN IMMEDIATE");
}

Database::Transaction::~Transaction()
{
    if (!open_)
        return;
    try {
        database_.run("ROLLBACK");
    } catch (const StorageFailure&) {
        // The database has rolled back by itself already (disk full, input/output error); the failure that
        // led here is on its way to the caller.
        open_ = false;
    }
}

void Database::Transaction::commit()
{
    database_.run("COMMIT");
    open_ = false;
}

} // namespace lapwright::storage
