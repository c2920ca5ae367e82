#pragma once

#include "measure/result.h"
#include "storage/result_rows.h"

#include <QString>
#include <QVariantList>

#include <cstdint>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace lapwright::storage {

/// The database would not do what it must: disk full, locked too long, file damaged, server gone. Not an
/// error in anybody's data.
class StorageFailure : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// What to do about a database that is not there.
enum class WhenMissing { Make, Refuse };

/// One connection to the shop's database, opened, migrated and safe: every commit on the disk before it
/// returns, foreign keys enforced, one writer at a time. One Database belongs to one thread.
class Database {
public:
    /// Opens the SQLite file at a path, or for many stations the PostgreSQL database at an address,
    /// "postgresql://user@host:port/database?sslmode=verify-full&sslrootcert=…", and brings it to the newest
    /// schema. A password comes from PGPASSWORD or the password file, never from the address. Errors: it
    /// cannot be opened or is not there, is no database of this program, or a newer program made it.
    [[nodiscard]] static Result<Database> open(const std::string& address,
                                               WhenMissing whenMissing = WhenMissing::Make);

    Database(Database&& other) noexcept;
    Database& operator=(Database&& other) noexcept;
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// Runs one statement with its values in order. Throws StorageFailure if the database refuses.
    void run(const QString& statement, const QVariantList& values = {}) const;
    /// The same, for what it answers: rows to step through, or how many it changed.
    [[nodiscard]] Rows query(const QString& statement, const QVariantList& values = {}) const;

    /// On a PostgreSQL server rather than in a file.
    [[nodiscard]] bool isOnServer() const;

    /// A number that grows with every write of any station: unchanged, nothing a list shows has changed.
    [[nodiscard]] std::int64_t dataVersion() const;

    /// What the database itself finds wrong with its file; nothing where all is well, or where it is a server
    /// that looks after its own.
    [[nodiscard]] std::vector<std::string> engineFaults() const;

    /// Calls `told` from this thread's event loop soon after any station wrote. False where nobody can say
    /// so, in a SQLite file: look at dataVersion() now and then. Throws StorageFailure if the server will not
    /// tell.
    [[nodiscard]] bool listen(std::function<void()> told) const;
    /// Connects anew to a server that was gone, and listens again where it did. Throws StorageFailure if it
    /// is still gone.
    void reconnect() const;

    /// Runs `work` in one write transaction, taken at once so that two stations never deadlock: all of it is
    /// on the disk when this returns, or none of it if `work` throws.
    template <class Work>
    auto write(Work&& work) const
    {
        Transaction transaction(*this);
        if constexpr (std::is_void_v<decltype(work())>) {
            work();
            transaction.commit();
        } else {
            auto result = work();
            transaction.commit();
            return result;
        }
    }

    /// Runs `work`, which only reads, on one state of the data, whatever other stations write meanwhile.
    template <class Work>
    auto readSteadily(Work&& work) const
    {
        const SteadyReading reading(*this);
        return work();
    }

private:
    explicit Database(std::unique_ptr<Connection> connection);

    /// Runs the migrations that are missing.
    void migrate() const;

    class SteadyReading {
    public:
        explicit SteadyReading(const Database& database);
        SteadyReading(const SteadyReading&) = delete;
        SteadyReading& operator=(const SteadyReading&) = delete;
        SteadyReading(SteadyReading&&) = delete;
        SteadyReading& operator=(SteadyReading&&) = delete;
        ~SteadyReading();

    private:
        const Database& database_;
    };

    class Transaction {
    public:
        explicit Transaction(const Database& database);
        Transaction(const Transaction&) = delete;
        Transaction& operator=(const Transaction&) = delete;
        Transaction(Transaction&&) = delete;
        Transaction& operator=(Transaction&&) = delete;
        ~Transaction();
        /// Moves the data version on, and commits.
        void commit();

    private:
        const Database& database_;
        bool open_ = true;
    };

    std::unique_ptr<Connection> connection_;
    bool migrated_ = false; ///< the table of the data version is there
};

} // namespace lapwright::storage
