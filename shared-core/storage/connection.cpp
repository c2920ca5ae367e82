#include "storage/connection.h"

#include "storage/database.h"
#include "storage/postgres_address.h"

#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlError>
#include <QUuid>

#include <utility>

namespace lapwright::storage {

namespace {

/// Any number, the same in every station: names the lock that writers take one after the other.
constexpr const char* writersLock = "7126021400";

/// What stations call to each other on.
constexpr const char* channel = "lapwright_wrote";

std::string describe(const QSqlError& error)
{
    // A connection that is gone says nothing at all.
    const QString words = error.text().trimmed();
    return words.isEmpty() ? "no answer" : words.toStdString();
}

} // namespace

Connection::~Connection()
{
    idle_.clear();
    QSqlDatabase::database(name_, false).close();
    QSqlDatabase::removeDatabase(name_);
}

Result<std::unique_ptr<Connection>> Connection::open(const std::string& address, bool mayMake)
{
    const bool isServer = namesServer(address);
    if (!isServer && !mayMake && !QFileInfo::exists(QString::fromStdString(address)))
        return Error{address, "no such file", "the shop's database; `lapwright receive` makes a new one"};
    auto connection = std::make_unique<Connection>(QUuid::createUuid().toString(QUuid::WithoutBraces),
                                                   isServer ? Backend::Postgres : Backend::Sqlite);
    QSqlDatabase database = QSqlDatabase::addDatabase(isServer ? "QPSQL" : "QSQLITE", connection->name_);
    if (isServer) {
        const auto parts = readAddress(address);
        if (!parts.ok())
            return parts.errors();
        apply(*parts, database);
    } else {
        database.setDatabaseName(QString::fromStdString(address));
    }
    if (!database.open())
        return Error{address, describe(database.lastError()),
                     isServer ? "a PostgreSQL server that answers" : "a database file that can be opened"};
    try {
        connection->secure();
    } catch (const StorageFailure& failure) {
        return Error{address, failure.what(), "a Lapwright database"};
    }
    return connection;
}

void Connection::secure()
{
    if (backend_ == Backend::Postgres) {
        for (const char* setting :
             {"SET lock_timeout = '30s'", "SET synchronous_commit = on", "SET client_min_messages = warning"})
            (void)query(setting, {});
        return;
    }
    (void)query("PRAGMA busy_timeout = 30000", {});
    {
        Rows mode = query("PRAGMA journal_mode = WAL", {});
        if (!mode.next() || mode.text(0) != "wal")
            throw StorageFailure("the file system does not allow a write-ahead log (is it a network share?)");
    }
    (void)query("PRAGMA synchronous = FULL", {});
    (void)query("PRAGMA foreign_keys = ON", {});
}

bool Connection::listen(std::function<void()> told)
{
    if (backend_ == Backend::Sqlite)
        return false;
    QObject::connect(QSqlDatabase::database(name_, false).driver(), &QSqlDriver::notification,
                     [told = std::move(told)] { told(); });
    listening_ = true;
    subscribe();
    return true;
}

void Connection::subscribe()
{
    if (!QSqlDatabase::database(name_, false).driver()->subscribeToNotification(channel))
        throw StorageFailure("the server does not tell what other stations do");
}

void Connection::tellOthers()
{
    if (backend_ == Backend::Postgres)
        (void)query(QString("NOTIFY ") + channel, {});
}

void Connection::reopen()
{
    idle_.clear();
    QSqlDatabase database = QSqlDatabase::database(name_, false);
    database.close();
    if (!database.open())
        throw StorageFailure(describe(database.lastError()));
    secure();
    if (listening_)
        subscribe();
}

QSqlQuery Connection::prepared(const QString& statement)
{
    if (auto idle = idle_.extract(statement); !idle.empty())
        return std::move(idle.mapped());
    QSqlQuery query(QSqlDatabase::database(name_, false));
    // PostgreSQL's driver gives up the rows of a forward-only query when the next one begins.
    query.setForwardOnly(backend_ == Backend::Sqlite);
    if (!query.prepare(statement))
        throw StorageFailure(describe(query.lastError()));
    return query;
}

Rows Connection::query(const QString& statement, const QVariantList& values)
{
    if (values.isEmpty()) {
        QSqlQuery plain(QSqlDatabase::database(name_, false));
        plain.setForwardOnly(backend_ == Backend::Sqlite);
        if (!plain.exec(statement))
            throw StorageFailure(describe(plain.lastError()));
        return Rows(*this, QString(), std::move(plain));
    }
    QSqlQuery query = prepared(statement);
    for (int index = 0; index < values.size(); ++index)
        query.bindValue(index, values[index]);
    if (!query.exec()) {
        const std::string why = describe(query.lastError());
        // Kept: a server in a failed transaction would not let go of it.
        takeBack(statement, std::move(query));
        throw StorageFailure(why);
    }
    return Rows(*this, statement, std::move(query));
}

void Connection::takeBack(const QString& statement, QSqlQuery query)
{
    query.finish();
    if (!statement.isEmpty())
        idle_.insert_or_assign(statement, std::move(query));
}

void Connection::begin()
{
    if (backend_ == Backend::Sqlite) {
        (void)query("BEGIN IMMEDIATE", {});
        return;
    }
    (void)query("BEGIN", {});
    (void)query(QString("SELECT pg_advisory_xact_lock(") + writersLock + ")", {});
}

void Connection::beginReading()
{
    (void)query(backend_ == Backend::Sqlite ? "BEGIN" : "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY",
                {});
}

std::vector<std::string> Connection::faults()
{
    std::vector<std::string> faults;
    if (backend_ == Backend::Postgres)
        return faults;
    Rows pages = query("PRAGMA integrity_check", {});
    while (pages.next())
        if (pages.text(0) != "ok")
            faults.push_back(pages.text(0));
    Rows keys = query("PRAGMA foreign_key_check", {});
    while (keys.next())
        faults.push_back("table " + keys.text(0) + " refers to a row of " + keys.text(2) +
                         " that is not there");
    return faults;
}

int Connection::schemaVersion()
{
    if (backend_ == Backend::Sqlite) {
        Rows rows = query("PRAGMA user_version", {});
        return rows.next() ? static_cast<int>(rows.number(0)) : 0;
    }
    {
        Rows there = query("SELECT to_regclass('lapwright_schema')", {});
        if (!there.next() || there.missing(0))
            return 0;
    }
    Rows rows = query("SELECT MAX(version) FROM lapwright_schema", {});
    return rows.next() ? static_cast<int>(rows.number(0)) : 0;
}

void Connection::setSchemaVersion(int version)
{
    if (backend_ == Backend::Sqlite) {
        (void)query(QString("PRAGMA user_version = %1").arg(version), {});
        return;
    }
    (void)query("CREATE TABLE IF NOT EXISTS lapwright_schema (version BIGINT PRIMARY KEY)", {});
    (void)query(QString("INSERT INTO lapwright_schema (version) VALUES (%1)").arg(version), {});
}

QString Connection::inItsWords(QString statement) const
{
    if (backend_ == Backend::Sqlite)
        return statement;
    statement.replace("INTEGER PRIMARY KEY AUTOINCREMENT", "BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY");
    statement.replace(" INTEGER", " BIGINT");
    statement.replace(" WITHOUT ROWID", "");
    // Only a file that an older program made has rows to number at that point.
    statement.replace("= rowid", "= 0");
    return statement;
}

Rows::Rows(Connection& connection, QString statement, QSqlQuery query)
    : connection_(&connection), statement_(std::move(statement)), query_(std::move(query))
{
}

Rows::Rows(Rows&& other) noexcept
    : connection_(std::exchange(other.connection_, nullptr)), statement_(std::move(other.statement_)),
      query_(std::move(other.query_))
{
}

Rows::~Rows()
{
    if (connection_ != nullptr)
        connection_->takeBack(statement_, std::move(query_));
}

} // namespace lapwright::storage
