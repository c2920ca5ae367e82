#pragma once

#include "source_directory.h"
#include "storage/database.h"

#include <QProcess>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <QtTest>

#include <string>

/// Fresh databases for tests: every test of storage runs on a SQLite file and on a real PostgreSQL server.
namespace lapwright::tests {

/// A server of this test program alone; it ends with it.
class PostgresServer {
public:
    PostgresServer()
    {
        qputenv("PGPASSWORD", "for-tests-only");
        process_.start(QString::fromStdString(sourceDirectory() + "/tests/tools/postgres.sh"), {"fsync=off"});
        if (!process_.waitForStarted() || !process_.waitForReadyRead(60'000))
            return;
        port_ = process_.readLine().trimmed().toInt();
    }
    PostgresServer(const PostgresServer&) = delete;
    PostgresServer& operator=(const PostgresServer&) = delete;
    PostgresServer(PostgresServer&&) = delete;
    PostgresServer& operator=(PostgresServer&&) = delete;
    ~PostgresServer()
    {
        process_.closeWriteChannel();
        process_.waitForFinished(30'000);
    }

    [[nodiscard]] bool runs() const { return port_ > 0; }
    [[nodiscard]] QString why() { return QString::fromUtf8(process_.readAllStandardError()); }

    /// Makes a database and gives its address.
    [[nodiscard]] std::string freshDatabase()
    {
        const QString name = QString("shop%1").arg(++databases_);
        {
            QSqlDatabase all = QSqlDatabase::addDatabase("QPSQL", "maintenance");
            all.setHostName("127.0.0.1");
            all.setPort(port_);
            all.setUserName("owner");
            all.setDatabaseName("postgres");
            if (!all.open())
                qFatal("%s", qPrintable(all.lastError().text()));
            QSqlQuery create(all);
            if (!create.exec("CREATE DATABASE " + name))
                qFatal("%s", qPrintable(create.lastError().text()));
        }
        QSqlDatabase::removeDatabase("maintenance");
        return addressOf(name, "owner").toStdString();
    }
    /// Ends it as a crash does, and starts it again.
    [[nodiscard]] bool restart()
    {
        process_.write("again\n");
        return process_.waitForReadyRead(60'000) && process_.readLine().trimmed().toInt() == port_;
    }
    [[nodiscard]] int port() const { return port_; }
    [[nodiscard]] QString addressOf(const QString& name, const QString& user) const
    {
        return QString("postgresql://%1@127.0.0.1:%2/%3?sslmode=prefer").arg(user).arg(port_).arg(name);
    }

private:
    QProcess process_;
    int port_ = 0;
    int databases_ = 0;
};

/// Base of a test class: each of its tests runs once on each database.
class OnBothDatabases : public QObject {
    Q_OBJECT

protected:
    /// Where a new database goes.
    [[nodiscard]] std::string freshAddress()
    {
        if (onServer())
            return server_.freshDatabase();
        return folder_.filePath(QString("%1.db").arg(++files_)).toStdString();
    }
    [[nodiscard]] storage::Database fresh() { return storage::Database::open(freshAddress()).value(); }
    [[nodiscard]] static bool onServer()
    {
        QFETCH_GLOBAL(QString, database);
        return database == "PostgreSQL";
    }
    [[nodiscard]] PostgresServer& server() { return server_; }
    [[nodiscard]] QString filePath(const QString& name) const { return folder_.filePath(name); }

private slots:
    void initTestCase_data()
    {
        QTest::addColumn<QString>("database");
        QTest::newRow("SQLite") << "SQLite";
        QTest::newRow("PostgreSQL") << "PostgreSQL";
    }
    void init()
    {
        if (onServer() && !server_.runs())
            QSKIP(qPrintable("no PostgreSQL server could be started: " + server_.why()));
    }

private:
    QTemporaryDir folder_;
    int files_ = 0;
    PostgresServer server_;
};

} // namespace lapwright::tests
