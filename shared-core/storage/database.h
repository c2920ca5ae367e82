#pragma once

#include "measure/result.h"
#include "storage/result_rows.h"

#include <QString>
#include <QVariantList>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <type_traits>
#include <vector>

namespace lapwright::storage {

/// The database would not do what it must: disk full, locked too long, file damaged, server gone. Not an
/// error in anybody's data.
class StorageFailure : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// The server is gone, or the connection to it.
class ConnectionLost : public StorageFailure {
public:
    using StorageFailure::StorageFailure;
};

/// Another program, or another station, held the database for longer than this one waits: nothing was done.
class HeldTooLong : public StorageFailure {
public:
    HeldTooLong() : StorageFailure("another program holds the database: nothing of this was done; try again")
    {
    }
};

/// What to do about a database that is not there.
enum class WhenMissing { Make, Refuse };

/// What to do about a server that is gone or a database that another program holds: tell soon, as a screen
/// must that stays alive meanwhile, or wait for it and do again what it had not done.
enum class WhenLost { Tell, Wait };

/// One connection to the shop's database, opened, migrated and safe: every commit on the disk before it
/// returns, foreign keys enforced, one writer at a time. One Database belongs to one thread.
class Database {
public:
    /// Opens the SQLite file at a path, or for many stations the PostgreSQL database at an address,
    /// "postgresql://user@host:port/database?sslmode=verify-full&sslrootcert=…", and brings it to the newest
    /// schema. A password comes from PGPASSWORD or the password file, never from the address. With
    /// WhenLost::Wait a server that is starting is given ten seconds, and one that is lost later a minute, up
    /// to fifty times in one act. A database that another program holds is waited for five seconds, or with
    /// WhenLost::Wait a minute. Errors: it cannot be opened or is not there, is no database of this program,
    /// or a newer program made it.
    [[nodiscard]] static Result<Database> open(const std::string& address,
                                               WhenMissing whenMissing = WhenMissing::Make,
                                               WhenLost whenLost = WhenLost::Tell);

    Database(Database&& other) noexcept;
    Database& operator=(Database&& other) noexcept;
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// Runs one statement with its values in order. Throws StorageFailure if the database refuses,
    /// HeldTooLong if another program holds it.
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
    /// on the disk when this returns, or none of it if `work` throws. Where the connection is lost and this
    /// waits for it, `work` runs again if the server had not committed: it changes nothing but the database.
    template <class Work>
    auto write(Work&& work) const
    {
        return resultOf(work, [this](const std::function<void()>& all) { writeAll(all); });
    }

    /// Runs `work`, which only reads, on one state of the data, whatever other stations write meanwhile.
    template <class Work>
    auto readSteadily(Work&& work) const
    {
        return resultOf(work, [this](const std::function<void()>& all) { readAll(all); });
    }

private:
    Database(std::unique_ptr<Connection> connection, WhenLost whenLost);

    /// What `work` gave when `around` ran it last.
    template <class Work, class Around>
    static auto resultOf(Work& work, const Around& around)
    {
        if constexpr (std::is_void_v<decltype(work())>) {
            around([&work] { work(); });
        } else {
            std::optional<decltype(work())> result;
            around([&work, &result] { result.emplace(work()); });
            return *std::move(result);
        }
    }

    void writeAll(const std::function<void()>& work) const;
    void readAll(const std::function<void()>& work) const;
    /// Runs `attempt`, and again after each connection that is lost and comes back, where this waits.
    void persist(const std::function<void()>& attempt) const;
    /// Until a connection can be made again. Throws ConnectionLost if none can for too long.
    void awaitServer() const;
    /// Runs the migrations that are missing.
    void migrate() const;

    std::unique_ptr<Connection> connection_;
    WhenLost whenLost_;
    bool migrated_ = false; ///< the table of the data version is there
};

} // namespace lapwright::storage
