#pragma once

#include "measure/result.h"
#include "storage/result_rows.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QString>
#include <QVariantList>

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

/// What differs between the two databases, and nothing else; for the files of this folder only.
namespace lapwright::storage {

enum class Backend { Sqlite, Postgres };

/// An open connection with the statements it has prepared.
class Connection {
public:
    Connection(QString name, std::string address, bool mayWait);
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    Connection(Connection&&) = delete;
    Connection& operator=(Connection&&) = delete;
    ~Connection();

    /// Opens it. Errors: as Database::open().
    [[nodiscard]] static Result<std::unique_ptr<Connection>> open(const std::string& address, bool mayMake,
                                                                  bool mayWait);

    [[nodiscard]] Backend backend() const { return backend_; }
    /// Throws StorageFailure if the database refuses, ConnectionLost if it is gone, HeldTooLong.
    [[nodiscard]] Rows query(const QString& statement, const QVariantList& values);
    /// Takes a prepared statement back to use it again.
    void takeBack(const QString& statement, QSqlQuery query);

    /// Calls `told` from the event loop whenever a station said that it wrote. False where nobody says so.
    [[nodiscard]] bool listen(std::function<void()> told);
    /// Says, once the open transaction is committed, that this station wrote.
    void tellOthers();
    /// Closes the connection and makes it anew. Throws StorageFailure if it cannot be made.
    void reopen();

    /// Begins a transaction that holds off every other writer.
    void begin();
    /// Begins one that sees a single state of the data.
    void beginReading();
    void commit();
    /// Undoes the open transaction, also where it is gone with its connection.
    void rollBack();
    [[nodiscard]] bool inTransaction() const { return inTransaction_; }
    /// After commit() found the connection lost, and reopen(): whether the server had committed all the same.
    [[nodiscard]] bool hadCommitted();
    [[nodiscard]] int schemaVersion();
    /// As Database::engineFaults().
    [[nodiscard]] std::vector<std::string> faults();
    void setSchemaVersion(int version);
    /// A statement of a migration in this database's words.
    [[nodiscard]] QString inItsWords(QString statement) const;

    /// Throws what went wrong, as query() does.
    [[noreturn]] void fail(const QSqlError& error);

private:
    [[nodiscard]] QSqlQuery prepared(const QString& statement);
    void add();
    void secure();
    void subscribe();
    /// Until the server has either committed the last transaction or given it up.
    void waitForTheEnd();

    QString name_;
    std::string address_;
    Backend backend_;
    bool mayWait_;
    std::function<void()> told_;
    bool wasOpen_ = false;
    bool lost_ = false; ///< until reopen()
    bool inTransaction_ = false;
    bool committing_ = false;      ///< the last transaction was to be committed
    std::int64_t transaction_ = 0; ///< the server's number of the last one that wrote; 0 on SQLite
    QString token_;                ///< under which it left its word
    std::unordered_map<QString, QSqlQuery> idle_;
    std::vector<QSqlQuery> gone_; ///< of a connection that is lost; let go of with its driver
};

} // namespace lapwright::storage
