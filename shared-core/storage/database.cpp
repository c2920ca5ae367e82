#include "storage/database.h"

#include "storage/connection.h"
#include "storage/migrations.h"

#include <QDeadlineTimer>
#include <QThread>

#include <algorithm>
#include <utility>

namespace lapwright::storage {

namespace {

constexpr const char* nextVersion = "UPDATE data_version SET version = version + 1";

/// How long a server that does not answer is waited for, and how far apart it is tried; milliseconds.
constexpr int patience = 60'000;
constexpr unsigned long firstPause = 20, longestPause = 1'000;
/// So often may the line break in one act; the server answers again each time.
constexpr int mostBreaks = 50;

/// The open transaction; undone at the end unless it was committed.
class Open {
public:
    explicit Open(Connection& connection) : connection_(connection) {}
    Open(const Open&) = delete;
    Open& operator=(const Open&) = delete;
    Open(Open&&) = delete;
    Open& operator=(Open&&) = delete;
    ~Open()
    {
        if (connection_.inTransaction())
            connection_.rollBack();
    }

private:
    Connection& connection_;
};

} // namespace

Result<Database> Database::open(const std::string& address, WhenMissing whenMissing, WhenLost whenLost)
{
    const bool mayMake = whenMissing == WhenMissing::Make;
    auto connection = Connection::open(address, mayMake, whenLost == WhenLost::Wait);
    if (!connection.ok())
        return connection.errors();
    Database database(*std::move(connection), whenLost);
    try {
        int version = 0;
        database.persist([&] { version = database.connection_->schemaVersion(); });
        if (version > schemaVersion)
            return Error{address, "a database of schema " + std::to_string(version),
                         "schema " + std::to_string(schemaVersion) +
                             " or older: a newer Lapwright made this"};
        if (version == 0 && !mayMake)
            return Error{address, "a database with nothing in it",
                         "the shop's database; `lapwright receive` makes a new one"};
        if (version < schemaVersion)
            database.migrate();
        database.migrated_ = true;
    } catch (const StorageFailure& failure) {
        return Error{address, failure.what(), "a Lapwright database that can be written"};
    }
    return database;
}

void Database::migrate() const
{
    for (int version = 0; version < schemaVersion;)
        writeAll([&] {
            version = connection_->schemaVersion(); // another station may be first
            if (version >= schemaVersion)
                return;
            for (const QString& statement : migration(version))
                run(connection_->inItsWords(statement));
            connection_->setSchemaVersion(++version);
        });
}

Database::Database(std::unique_ptr<Connection> connection, WhenLost whenLost)
    : connection_(std::move(connection)), whenLost_(whenLost)
{
}
Database::Database(Database&& other) noexcept = default;
Database& Database::operator=(Database&& other) noexcept = default;
Database::~Database() = default;

void Database::run(const QString& statement, const QVariantList& values) const
{
    [[maybe_unused]] const Rows done = query(statement, values);
}

Rows Database::query(const QString& statement, const QVariantList& values) const
{
    if (connection_->inTransaction())
        return connection_->query(statement, values);
    std::optional<Rows> rows;
    persist([&] { rows.emplace(connection_->query(statement, values)); });
    return *std::move(rows);
}

bool Database::isOnServer() const
{
    return connection_->backend() == Backend::Postgres;
}

bool Database::listen(std::function<void()> told) const
{
    return connection_->listen(std::move(told));
}

void Database::reconnect() const
{
    connection_->reopen();
}

std::int64_t Database::dataVersion() const
{
    Rows rows = query("SELECT version FROM data_version");
    return rows.next() ? rows.number(0) : 0;
}

std::vector<std::string> Database::engineFaults() const
{
    return connection_->faults();
}

void Database::persist(const std::function<void()>& attempt) const
{
    for (int breaks = 1;; ++breaks) {
        try {
            return attempt();
        } catch (const ConnectionLost&) {
            if (whenLost_ == WhenLost::Tell || breaks > mostBreaks)
                throw;
        }
        awaitServer();
    }
}

void Database::awaitServer() const
{
    const QDeadlineTimer deadline(patience);
    for (unsigned long pause = firstPause;; pause = std::min(2 * pause, longestPause)) {
        QThread::msleep(pause);
        try {
            return connection_->reopen();
        } catch (const ConnectionLost&) {
            if (deadline.hasExpired())
                throw;
        }
    }
}

void Database::writeAll(const std::function<void()>& work) const
{
    bool begun = false;
    persist([&] {
        if (begun && connection_->hadCommitted())
            return;
        begun = true;
        const Open transaction(*connection_);
        connection_->begin();
        work();
        if (migrated_) {
            run(nextVersion);
            connection_->tellOthers();
        }
        connection_->commit();
    });
}

void Database::readAll(const std::function<void()>& work) const
{
    persist([&] {
        const Open reading(*connection_);
        connection_->beginReading();
        work();
    });
}

} // namespace lapwright::storage
