#pragma once

#include "measure/result.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariantList>

#include <stdexcept>
#include <string>

namespace lapwright::storage {

/// The database would not do what it must: disk full, locked too long, file damaged. Not an error in
/// anybody's data.
class StorageFailure : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// One connection to the shop's database, opened, migrated and safe: write-ahead log, every commit on the
/// disk before it returns, foreign keys enforced. One Database belongs to one thread.
class Database {
public:
    /// Opens or makes the SQLite file at `path` and brings it to the newest schema. Errors: the path cannot
    /// be opened, the file is no database, or a newer program made it.
    [[nodiscard]] static Result<Database> open(const std::string& path);

    Database(Database&& other) noexcept;
    Database& operator=(Database&& other) noexcept;
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// Runs one statement with its values in order. Throws StorageFailure if the database refuses.
    void run(const QString& statement, const QVariantList& values = {}) const;
    /// The same, for what it answers: rows to step through, or how many it changed.
    [[nodiscard]] QSqlQuery query(const QString& statement, const QVariantList& values = {}) const;

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

private:
    explicit Database(QString connection) : connection_(std::move(connection)) {}

    class Transaction {
    public:
        explicit Transaction(const Database& database);
        Transaction(const Transaction&) = delete;
        Transaction& operator=(const Transaction&) = delete;
        Transaction(Transaction&&) = delete;
        Transaction& operator=(Transaction&&) = delete;
        ~Transaction();
        void commit();

    private:
        const Database& database_;
        bool open_ = true;
    };

    QString connection_;
};

} // namespace lapwright::storage
