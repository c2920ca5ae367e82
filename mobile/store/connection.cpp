#include "store/connection.h"

#include "storage/disk_refusal.h"
#include "storage/owner_file.h"
#include "store/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QSqlError>
#include <QUuid>

namespace lapwright::store {

namespace {

/// Primary result codes of SQLite that a person can do something about (sqlite.org/rescode.html).
constexpr int busy = 5;
constexpr int diskIo = 10;
constexpr int corrupt = 11;
constexpr int cannotOpen = 14;
constexpr int noDatabase = 26;

std::string describe(const QSqlError& error, const QString& file)
{
    if (const auto refusal = storage::diskRefusal(error, file))
        return *refusal == storage::DiskRefusal::Full
                   ? "there is no room left on this tablet: nothing of this entry was kept, everything before it was"
                   : "the folder or file is read-only: nothing of this entry was kept, everything before it was";
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case busy:
        return "another program keeps this file to itself: nothing of this entry was kept; try again";
    case diskIo:
        return "the storage does not answer as it should: nothing of this entry was kept";
    case corrupt:
        return "the file is damaged: restore a backup";
    case noDatabase:
        return "this is no database of Lapwright";
    case cannotOpen:
        return "the file cannot be opened";
    default:
        return error.databaseText().toStdString();
    }
}

QString readBack(const Connection& connection, const QString& pragma)
{
    Rows query = connection.query("PRAGMA " + pragma);
    return query.next() ? query.value(0).toString() : QString();
}

void secure(const Connection& connection)
{
    connection.run("PRAGMA busy_timeout = 5000");
    const QString mode = readBack(connection, "journal_mode = WAL");
    connection.run("PRAGMA synchronous = FULL");
    connection.run("PRAGMA foreign_keys = ON");
    // The log is taken into the file when nobody is typing (tidy()); so large, it is at once.
    connection.run("PRAGMA wal_autocheckpoint = 10000");
    if (mode != "wal" || readBack(connection, "synchronous") != "2" ||
        readBack(connection, "foreign_keys") != "1")
        throw StoreFailure("the file system does not allow a write-ahead log (is it a network share?)");
}

int versionOf(const Connection& connection)
{
    return readBack(connection, "user_version").toInt();
}

void migrate(const Connection& connection)
{
    if (const int version = versionOf(connection); version > 0 && version < newestSchema) {
        const QString copy = connection.path() + QString(".schema-%1").arg(version);
        if (!QFile::exists(copy))
            connection.copyTo(copy);
    }
    while (versionOf(connection) < newestSchema)
        connection.write([&] {
            const int version = versionOf(connection);
            for (const QString& statement : schemaAfter(version))
                connection.run(statement);
            connection.run(QString("PRAGMA user_version = %1").arg(version + 1));
        });
}

} // namespace

bool Rows::next()
{
    if (query_.next())
        return true;
    if (const QSqlError why = query_.lastError(); why.isValid())
        throw StoreFailure(describe(why, file_));
    return false;
}

Result<Connection> Connection::open(const QString& path, WhenEmpty whenEmpty)
{
    const std::string place = path.toStdString();
    const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
    Connection connection(name, path);
    QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", name);
    database.setDatabaseName(path);
    if (!QDir().mkpath(QFileInfo(path).absolutePath()) || !database.open())
        return Error{place, describe(database.lastError(), path), "a database file that can be opened"};
    try {
        secure(connection);
        const int version = versionOf(connection);
        if (version > newestSchema)
            return Error{place, "a database of schema " + std::to_string(version),
                         "schema " + std::to_string(newestSchema) +
                             " or older: a newer Lapwright made this file"};
        if (version == 0 && whenEmpty == WhenEmpty::Refuse)
            return Error{place, "a file that holds nothing of Lapwright", "a backup of the field app"};
        migrate(connection);
    } catch (const StoreFailure& failure) {
        return Error{place, failure.what(), "a database of the field app"};
    }
    return connection;
}

Connection::Connection(Connection&& other) noexcept
    : name_(std::exchange(other.name_, {})), path_(std::exchange(other.path_, {}))
{
}

Connection& Connection::operator=(Connection&& other) noexcept
{
    std::swap(name_, other.name_);
    std::swap(path_, other.path_);
    return *this;
}

Connection::~Connection()
{
    if (name_.isEmpty())
        return;
    QSqlDatabase::database(name_, false).close();
    QSqlDatabase::removeDatabase(name_);
}

int Connection::run(const QString& statement, const QVariantList& values) const
{
    return query(statement, values).changed();
}

Rows Connection::query(const QString& statement, const QVariantList& values) const
{
    QSqlQuery query(QSqlDatabase::database(name_));
    query.setForwardOnly(true);
    if (!query.prepare(statement))
        throw StoreFailure(describe(query.lastError(), path_));
    for (const QVariant& value : values)
        query.addBindValue(value);
    if (!query.exec())
        throw StoreFailure(describe(query.lastError(), path_));
    return {std::move(query), path_};
}

QStringList Connection::damage() const
{
    QStringList found;
    try {
        Rows query = this->query("PRAGMA integrity_check");
        while (query.next())
            if (query.value(0).toString() != "ok")
                found << query.value(0).toString();
    } catch (const StoreFailure& failure) {
        found << QString::fromUtf8(failure.what());
    }
    return found;
}

void Connection::tidy() const
{
    run("PRAGMA wal_checkpoint(PASSIVE)");
}

void Connection::copyTo(const QString& path, const std::function<void(const QString&)>& check) const
{
    const bool copied = storage::fillInPlace(path, [&](const QString& scratch) {
        run("VACUUM INTO ?", {scratch});
        if (check)
            check(scratch);
    });
    if (!copied)
        throw StoreFailure("no copy can be written to " + path.toStdString());
}

Connection::Transaction::Transaction(const Connection& connection) : connection_(connection)
{
    connection_.run("BEGIN IMMEDIATE");
}

Connection::Transaction::~Transaction()
{
    if (!open_)
        return;
    try {
        connection_.run("ROLLBACK");
    } catch (const StoreFailure&) {
        // SQLite has rolled back by itself already (disk full, input/output error); the failure that led here
        // is on its way to the caller.
        open_ = false;
    }
}

void Connection::Transaction::commit()
{
    connection_.run("COMMIT");
    open_ = false;
}

} // namespace lapwright::store
