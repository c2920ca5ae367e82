#pragma once

#include <QSqlQuery>
#include <QString>

#include <cstdint>
#include <string>

namespace lapwright::storage {

class Connection;

/// What a statement answers: rows to step through, or how many it changed. Goes back to the connection, to
/// be used again, when it is done with; never outlives it.
class Rows {
public:
    Rows(Connection& connection, QString statement, QSqlQuery query);
    Rows(Rows&& other) noexcept;
    Rows& operator=(Rows&&) = delete;
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;
    ~Rows();

    /// Steps to the first or next row; false after the last. Throws StorageFailure if it cannot be read.
    [[nodiscard]] bool next();
    /// Of the current row; columns count from 0.
    [[nodiscard]] std::string text(int column) const { return query_.value(column).toString().toStdString(); }
    [[nodiscard]] std::int64_t number(int column) const { return query_.value(column).toLongLong(); }
    [[nodiscard]] double real(int column) const { return query_.value(column).toDouble(); }
    [[nodiscard]] bool missing(int column) const { return query_.value(column).isNull(); }
    /// How many rows an insert or update changed.
    [[nodiscard]] std::int64_t changed() const { return query_.numRowsAffected(); }

private:
    Connection* connection_;
    QString statement_;
    QSqlQuery query_;
};

} // namespace lapwright::storage
