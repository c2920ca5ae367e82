#include "storage/postgres_address.h"

#include <QStringList>
#include <QUrl>
#include <QUrlQuery>

namespace lapwright::storage {

namespace {

const QStringList& knownOptions()
{
    static const QStringList known = {"sslmode", "sslrootcert", "sslcert",
                                      "sslkey",  "sslcrl",      "connect_timeout"};
    return known;
}

/// A value in single quotes. The driver takes a semicolon for the end of an option wherever it stands.
QString quoted(QString value)
{
    value.replace('\\', "\\\\").replace('\'', "\\'");
    return '\'' + value + '\'';
}

} // namespace

bool namesServer(const std::string& address)
{
    return address.rfind("postgresql://", 0) == 0 || address.rfind("postgres://", 0) == 0;
}

Result<PostgresAddress> readAddress(const std::string& address)
{
    const QUrl url(QString::fromStdString(address), QUrl::StrictMode);
    if (!url.password().isEmpty())
        return Error{"--db", "a password in the address",
                     "none there; PGPASSWORD or the password file (~/.pgpass) holds it"};
    const QString name = url.path().mid(1);
    if (!url.isValid() || name.isEmpty())
        return Error{address, "no database named", "postgresql://user@host:port/database"};
    PostgresAddress read{url.host(), url.port(5432), url.userName(), name, {}};
    QStringList options;
    for (const auto& [key, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded)) {
        if (key == "host") {
            read.host = value;
            continue;
        }
        if (!knownOptions().contains(key) || value.contains(';'))
            return Error{address, "option " + key.toStdString(),
                         "host, " + knownOptions().join(", ").toStdString()};
        options.append(key + '=' + quoted(value));
    }
    if (address.find("connect_timeout") == std::string::npos)
        options.append("connect_timeout=10");
    // A cable that is pulled says nothing: the connection is given up after half a minute without an answer.
    options.append(
        {"keepalives_idle=10", "keepalives_interval=5", "keepalives_count=3", "tcp_user_timeout=25000"});
    read.options = options.join(';');
    return read;
}

void apply(const PostgresAddress& address, QSqlDatabase& database)
{
    database.setHostName(address.host);
    database.setPort(address.port);
    database.setUserName(address.user);
    database.setDatabaseName(address.database);
    database.setConnectOptions(address.options);
}

} // namespace lapwright::storage
