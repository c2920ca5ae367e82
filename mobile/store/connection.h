#pragma once

#include "measure/result.h"

#include <QSqlQuery>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include <cstdint>
#include <functional>
#include <stdexcept>
#include <utility>

/// What the tablet keeps. One SQLite file, and pictures beside it.
namespace lapwright::store {

/// The database would not do what it must: disk full, folder read-only, file damaged. The sentence is for a
/// person. Not an error in anybody's data.
class StoreFailure : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// What a statement answers: rows to step through. Of the connection's thread, and never outlives it.
class Rows {
public:
    Rows(QSqlQuery query, QString file) : query_(std::move(query)), file_(std::move(file)) {}

    /// Steps to the first or next row; false after the last. Throws StoreFailure if it cannot be read.
    bool next(); // NOLINT(modernize-use-nodiscard): there is always one row of a count
    /// Of the current row; columns count from 0.
    [[nodiscard]] QVariant value(int column) const { return query_.value(column); }
    /// Lets go of what is not read yet.
    void finish() { query_.finish(); }
    /// How many rows an insert or update changed, and the number of the last one.
    [[nodiscard]] int changed() const { return query_.numRowsAffected(); }
    [[nodiscard]] std::int64_t lastNumber() const { return query_.lastInsertId().toLongLong(); }

private:
    QSqlQuery query_;
    QString file_;
};

/// What becomes of a file that holds nothing of ours yet: the tablet's own gets its tables, a backup is
/// refused.
enum class WhenEmpty { Make, Refuse };

/// One connection to an SQLite file: write-ahead log, every commit on the disk before it returns, foreign
/// keys enforced, each of these read back. One Connection belongs to one thread.
class Connection {
public:
    /// Opens or makes the file and brings it to the newest schema (schema.h); before a migration of a file
    /// that holds data, a copy "FILE.schema-N" is made. Errors: it cannot be opened or written, is no
    /// database, is damaged, was made by a newer program, or is empty (schema 0) where that is refused.
    [[nodiscard]] static Result<Connection> open(const QString& path, WhenEmpty whenEmpty = WhenEmpty::Make);

    Connection(Connection&& other) noexcept;
    Connection& operator=(Connection&& other) noexcept;
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// Runs one statement with its values in order; how many rows it changed. Throws StoreFailure.
    // NOLINTNEXTLINE(modernize-use-nodiscard): most do not ask how many
    int run(const QString& statement, const QVariantList& values = {}) const;
    /// The same, for rows to step through.
    [[nodiscard]] Rows query(const QString& statement, const QVariantList& values = {}) const;

    /// Runs `work` in one write transaction: all of it is on the disk when this returns, or none of it if
    /// `work` throws.
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

    /// What SQLite finds wrong with the whole file; empty if nothing.
    [[nodiscard]] QStringList damage() const;
    /// Takes what is committed from the write-ahead log into the file: for a moment when nobody waits. What
    /// is committed is safe before and after. Throws StoreFailure.
    void tidy() const;
    /// A copy of everything in one file that is whole by itself and on the disk, in place of what stood
    /// there, once `check` has seen it; that stays if there can be no copy, or `check` throws. Throws
    /// StoreFailure.
    void copyTo(const QString& path, const std::function<void(const QString& copy)>& check = {}) const;

    [[nodiscard]] const QString& path() const { return path_; }

private:
    Connection(QString name, QString path) : name_(std::move(name)), path_(std::move(path)) {}

    class Transaction {
    public:
        explicit Transaction(const Connection& connection);
        Transaction(const Transaction&) = delete;
        Transaction& operator=(const Transaction&) = delete;
        Transaction(Transaction&&) = delete;
        Transaction& operator=(Transaction&&) = delete;
        ~Transaction();
        void commit();

    private:
        const Connection& connection_;
        bool open_ = true;
    };

    QString name_;
    QString path_;
};

} // namespace lapwright::store
