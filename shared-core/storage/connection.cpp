#include "storage/connection.h"

#include "storage/database.h"
#include "storage/disk_refusal.h"
#include "storage/postgres_address.h"

#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlError>
#include <QThread>
#include <QUuid>

#include <utility>

namespace lapwright::storage {

namespace {

/// Any number, the same in every station: names the lock that writers take one after the other.
constexpr const char* writersLock = "7126021400";

/// What stations call to each other on.
constexpr const char* channel = "lapwright_wrote";

/// The last so many transactions that wrote can be asked for.
constexpr std::int64_t tokens = 4'096;

QString tokenKey(std::int64_t transaction)
{
    return QString("write/%1").arg(transaction % tokens);
}

/// How often, and how far apart in milliseconds, a server that is only just starting is asked again.
constexpr int openings = 20;
constexpr unsigned long openingApart = 500;

/// How long a database is waited for that another program holds, where a person looks on and where nobody
/// does; milliseconds.
constexpr int screensPatience = 5'000, commandsPatience = 60'000;

std::string describe(const QSqlError& error, const std::string& address)
{
    if (!namesServer(address))
        if (const auto refusal = diskRefusal(error, QString::fromStdString(address)))
            return *refusal == DiskRefusal::Full ? "no room left on the disk of the database"
                                                 : "a disk or folder that is read-only";
    // A connection that is gone says nothing at all, and what Qt adds to SQLite's words says nothing more.
    const QString own = error.databaseText().trimmed();
    const QString words = namesServer(address) || own.isEmpty() ? error.text().trimmed() : own;
    return words.isEmpty() ? "no answer" : words.toStdString();
}

/// The server ended the connection (SQLSTATE class 08, 57P0x, 25P03), or the error did not come from it.
bool isLost(const QSqlError& error)
{
    const QString code = error.nativeErrorCode();
    return code.isEmpty() || code.startsWith("08") || code.startsWith("57P0") || code == "25P03";
}

bool isHeld(const QSqlError& error, Backend backend)
{
    constexpr int busy = 5, primaryCode = 0xff;       // sqlite.org/rescode.html
    constexpr const char* lockNotAvailable = "55P03"; // PostgreSQL 15, Appendix A
    const QString code = error.nativeErrorCode();
    return backend == Backend::Sqlite ? (code.toInt() & primaryCode) == busy : code == lockNotAvailable;
}

/// A server that is not up yet, rather than one that does not let us in; in the words of libpq, which has no
/// number for it.
bool isStarting(const QString& error)
{
    for (const char* words : {"Connection refused", "starting up", "shutting down", "in recovery mode",
                              "closed the connection unexpectedly", "Connection reset"})
        if (error.contains(words))
            return true;
    return false;
}

} // namespace

Connection::Connection(QString name, std::string address, bool mayWait)
    : name_(std::move(name)), address_(std::move(address)),
      backend_(namesServer(address_) ? Backend::Postgres : Backend::Sqlite), mayWait_(mayWait)
{
}

Connection::~Connection()
{
    QSqlDatabase::database(name_, false).close();
    QSqlDatabase::removeDatabase(name_);
}

Result<std::unique_ptr<Connection>> Connection::open(const std::string& address, bool mayMake, bool mayWait)
{
    const bool isServer = namesServer(address);
    if (!isServer && !mayMake && !QFileInfo::exists(QString::fromStdString(address)))
        return Error{address, "no such file", "the shop's database; `lapwright receive` makes a new one"};
    if (isServer)
        if (const auto parts = readAddress(address); !parts.ok())
            return parts.errors();
    auto connection =
        std::make_unique<Connection>(QUuid::createUuid().toString(QUuid::WithoutBraces), address, mayWait);
    for (int left = isServer && mayWait ? openings : 0;; --left) {
        try {
            connection->reopen();
            return connection;
        } catch (const ConnectionLost& lost) {
            if (left == 0 || !(connection->wasOpen_ || isStarting(lost.what())))
                return Error{address, lost.what(),
                             isServer ? "a PostgreSQL server that answers"
                                      : "a database file that can be opened and written"};
        } catch (const StorageFailure& failure) {
            return Error{address, failure.what(), "a Lapwright database that can be written"};
        }
        QThread::msleep(openingApart);
    }
}

void Connection::add()
{
    QSqlDatabase database =
        QSqlDatabase::addDatabase(backend_ == Backend::Postgres ? "QPSQL" : "QSQLITE", name_);
    if (backend_ == Backend::Postgres)
        apply(readAddress(address_).value(), database);
    else
        database.setDatabaseName(QString::fromStdString(address_));
}

void Connection::fail(const QSqlError& error)
{
    lost_ = backend_ == Backend::Postgres && isLost(error);
    if (lost_)
        throw ConnectionLost(describe(error, address_));
    if (isHeld(error, backend_))
        throw HeldTooLong();
    throw StorageFailure(describe(error, address_));
}

void Connection::secure()
{
    const int patience = mayWait_ ? commandsPatience : screensPatience;
    if (backend_ == Backend::Postgres) {
        (void)query(QString("SET lock_timeout = %1").arg(patience), {});
        // As the station gives up a line that says nothing, the server does: a write that it holds open for a
        // station that is gone holds up all others.
        for (const char* setting : {"SET synchronous_commit = on", "SET client_min_messages = error",
                                    "SET tcp_user_timeout = 25000", "SET tcp_keepalives_idle = 10",
                                    "SET tcp_keepalives_interval = 5", "SET tcp_keepalives_count = 3"})
            (void)query(setting, {});
        return;
    }
    (void)query(QString("PRAGMA busy_timeout = %1").arg(patience), {});
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
    told_ = std::move(told);
    subscribe();
    return true;
}

void Connection::subscribe()
{
    QSqlDriver* driver = QSqlDatabase::database(name_, false).driver();
    QObject::connect(driver, &QSqlDriver::notification, [this] { told_(); });
    if (!driver->subscribeToNotification(channel))
        throw StorageFailure("the server does not tell what other stations do");
}

void Connection::tellOthers()
{
    if (backend_ == Backend::Postgres)
        (void)query(QString("NOTIFY ") + channel, {});
}

void Connection::reopen()
{
    lost_ = inTransaction_ = false;
    // With the driver gone, what it had prepared is let go of without asking a server that is not there.
    QSqlDatabase::database(name_, false).close();
    QSqlDatabase::removeDatabase(name_);
    idle_.clear();
    gone_.clear();
    add();
    QSqlDatabase database = QSqlDatabase::database(name_, false);
    if (!database.open())
        throw ConnectionLost(describe(database.lastError(), address_));
    wasOpen_ = true;
    secure();
    if (told_)
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
        fail(query.lastError());
    return query;
}

Rows Connection::query(const QString& statement, const QVariantList& values)
{
    if (values.isEmpty()) {
        QSqlQuery plain(QSqlDatabase::database(name_, false));
        plain.setForwardOnly(backend_ == Backend::Sqlite);
        if (!plain.exec(statement))
            fail(plain.lastError());
        return Rows(*this, QString(), std::move(plain));
    }
    QSqlQuery query = prepared(statement);
    for (int index = 0; index < values.size(); ++index)
        query.bindValue(index, values[index]);
    if (!query.exec()) {
        const QSqlError why = query.lastError();
        // Kept: a server in a failed transaction would not let go of it.
        takeBack(statement, std::move(query));
        fail(why);
    }
    return Rows(*this, statement, std::move(query));
}

void Connection::takeBack(const QString& statement, QSqlQuery query)
{
    if (query.driver() == nullptr)
        return; // of a connection that was lost since
    if (lost_) {
        gone_.push_back(std::move(query));
        return;
    }
    query.finish();
    if (!statement.isEmpty())
        idle_.insert_or_assign(statement, std::move(query));
}

void Connection::begin()
{
    committing_ = false;
    transaction_ = 0;
    if (backend_ == Backend::Sqlite) {
        (void)query("BEGIN IMMEDIATE", {});
        inTransaction_ = true;
        return;
    }
    (void)query("BEGIN", {});
    inTransaction_ = true;
    // A station that is cut off in the middle of a write lets go before those that can wait for it give up;
    // for one who reads nobody waits.
    Rows number = query(QString("SELECT txid_current(), pg_advisory_xact_lock(") + writersLock +
                            "), set_config('idle_in_transaction_session_timeout', '20s', true)",
                        {});
    if (number.next())
        transaction_ = number.number(0);
}

void Connection::beginReading()
{
    (void)query(backend_ == Backend::Sqlite ? "BEGIN" : "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY",
                {});
    inTransaction_ = true;
}

void Connection::commit()
{
    if (transaction_ != 0) {
        // A server that crashes may give the number of a transaction it lost to another one: the token tells
        // them apart.
        token_ = QUuid::createUuid().toString(QUuid::WithoutBraces);
        (void)query("INSERT INTO settings (key, value) VALUES (?, ?)"
                    " ON CONFLICT (key) DO UPDATE SET value = excluded.value",
                    {tokenKey(transaction_), token_});
        committing_ = true;
    }
    (void)query("COMMIT", {});
    inTransaction_ = false;
}

void Connection::rollBack()
{
    inTransaction_ = false;
    if (lost_)
        return;
    try {
        (void)query("ROLLBACK", {});
    } catch (const StorageFailure&) {
        // The database has rolled back by itself already (disk full, input/output error, server gone); the
        // failure that led here is on its way to the caller.
        return;
    }
}

void Connection::waitForTheEnd()
{
    const auto goesOn = [this] {
        Rows rows = query("SELECT txid_status(?)", {qint64(transaction_)});
        return rows.next() && rows.text(0) == "in progress";
    };
    try {
        // Its old connection ends within the server's patience.
        while (goesOn())
            QThread::msleep(100);
    } catch (const ConnectionLost&) {
        throw;
    } catch (const StorageFailure&) {
        return; // no such number: the server crashed and does not know it any more
    }
}

bool Connection::hadCommitted()
{
    if (!committing_)
        return false;
    waitForTheEnd();
    Rows rows = query("SELECT (SELECT value FROM settings WHERE key = ?),"
                      " txid_snapshot_xmax(txid_current_snapshot())",
                      {tokenKey(transaction_)});
    if (rows.next() && rows.text(0) == token_.toStdString())
        return true;
    if (rows.number(1) - transaction_ >= tokens)
        throw StorageFailure(
            "the server was gone while it committed, and too much was written since to say whether "
            "this counts: look, and do it again if it does not");
    return false;
}

std::vector<std::string> Connection::faults()
{
    std::vector<std::string> faults;
    if (backend_ == Backend::Postgres)
        return faults;
    try {
        Rows pages = query("PRAGMA integrity_check", {});
        while (pages.next())
            if (pages.text(0) != "ok")
                faults.push_back(pages.text(0));
        Rows keys = query("PRAGMA foreign_key_check", {});
        while (keys.next())
            faults.push_back("table " + keys.text(0) + " refers to a row of " + keys.text(2) +
                             " that is not there");
    } catch (const HeldTooLong&) {
        throw;
    } catch (const StorageFailure& failure) {
        faults.emplace_back(failure.what()); // so far damaged that it cannot be looked through
    }
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

bool Rows::next()
{
    if (query_.next())
        return true;
    if (const QSqlError why = query_.lastError(); why.isValid())
        connection_->fail(why);
    return false;
}

Rows::~Rows()
{
    if (connection_ != nullptr)
        connection_->takeBack(statement_, std::move(query_));
}

} // namespace lapwright::storage
