#pragma once

#include "measure/result.h"

#include <QSqlDatabase>
#include <QString>

#include <string>

/// Addresses of PostgreSQL databases; for the files of this folder only.
namespace lapwright::storage {

struct PostgresAddress {
    QString host;
    int port = 5432;
    QString user;
    QString database;
    QString options; ///< as the driver takes them: "sslmode='verify-full';…"
};

/// Whether an address names a server rather than a file.
[[nodiscard]] bool namesServer(const std::string& address);

/// Reads "postgresql://user@host:port/database?option=value&…" (RFC 3986). Options are those of the client
/// library that say how to connect: sslmode, sslrootcert, sslcert, sslkey, sslcrl, connect_timeout, host (a
/// folder with the server's socket). Errors: no database, an option that is not one of those, a password:
/// addresses end up in logs and in the list of processes.
[[nodiscard]] Result<PostgresAddress> readAddress(const std::string& address);

void apply(const PostgresAddress& address, QSqlDatabase& database);

} // namespace lapwright::storage
