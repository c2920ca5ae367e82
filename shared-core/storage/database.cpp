#include "storage/database.h"

#include "storage/connection.h"
#include "storage/migrations.h"

#include <utility>

namespace lapwright::storage {

namespace {

constexpr const char* nextVersion = "UPDATE data_version SET version = version + 1";

} // namespace

Result<Database> Database::open(const std::string& address, WhenMissing whenMissing)
{
    const bool mayMake = whenMissing == WhenMissing::Make;
    auto connection = Connection::open(address, mayMake);
    if (!connection.ok())
        return connection.errors();
    Database database(*std::move(connection));
    try {
        const int version = database.connection_->schemaVersion();
        if (version > schemaVersion)
            return Error{address, "a database of schema " + std::to_string(version),
                         "schema " + std::to_string(schemaVersion) +
                             " or older: a newer Lapwright made this"};
        if (version == 0 && !mayMake)
            return Error{address, "a database with nothing in it",
                         "the shop's database; `lapwright receive` makes a new one"};
        database.migrate();
        database.migrated_ = true;
    } catch (const StorageFailure& failure) {
        return Error{address, failure.what(), "a Lapwright database"};
    }
    return database;
}

void Database::migrate() const
{
    while (connection_->schemaVersion() < schemaVersion) {
        Transaction transaction(*this);
        const int version = connection_->schemaVersion();
        if (version < schemaVersion) {
            for (const QString& statement : migration(version))
                run(connection_->inItsWords(statement));
            connection_->setSchemaVersion(version + 1);
        }
        transaction.commit();
    }
}

Database::Database(std::unique_ptr<Connection> connection) : connection_(std::move(connection)) {}
Database::Database(Database&& other) noexcept = default;
Database& Database::operator=(Database&& other) noexcept = default;
Database::~Database() = default;

void Database::run(const QString& statement, const QVariantList& values) const
{
    [[maybe_unused]] const Rows done = query(statement, values);
}

Rows Database::query(const QString& statement, const QVariantList& values) const
{
    return connection_->query(statement, values);
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

Database::SteadyReading::SteadyReading(const Database& database) : database_(database)
{
    database_.connection_->beginReading();
}

Database::SteadyReading::~SteadyReading()
{
    try {
        database_.run("ROLLBACK");
    } catch (const StorageFailure&) {
        // The connection is gone, and its transaction with it.
        return;
    }
}

Database::Transaction::Transaction(const Database& database) : database_(database)
{
    database_.connection_->begin();
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
    if (database_.migrated_) {
        database_.run(nextVersion);
        database_.connection_->tellOthers();
    }
    database_.run("COMMIT");
    open_ = false;
}

} // namespace lapwright::storage
