#include "store/safekeeping.h"

#include "store/pictures.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

namespace lapwright::store {

namespace {

/// Parents before children, as foreign keys want it.
const QStringList tables = {"settings", "jobs",  "job_documents",  "acts",
                            "orders",   "loads", "receipt_events", "shops"};

Connection opened(const QString& copy)
{
    auto connection = Connection::open(copy, WhenEmpty::Refuse);
    if (!connection.ok())
        throw StoreFailure(connection.errors().front().sentence());
    return *std::move(connection);
}

/// A database of another program may count its schemas as we do.
void refuseForeign(const Connection& connection)
{
    for (const QString& table : tables)
        if (!connection.query("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = ?", {table})
                 .next())
            throw StoreFailure("this is no backup of Lapwright: it has no " + table.toStdString());
}

void refuseDamaged(const Connection& connection)
{
    const QStringList damage = connection.damage();
    if (!damage.isEmpty())
        throw StoreFailure("this backup is damaged: " + damage.front().toStdString());
}

/// Takes the attached database away again however the work ends.
class Attached {
public:
    Attached(const Connection& connection, const QString& path) : connection_(connection)
    {
        connection_.run("ATTACH DATABASE ? AS backup", {path});
    }
    Attached(const Attached&) = delete;
    Attached& operator=(const Attached&) = delete;
    Attached(Attached&&) = delete;
    Attached& operator=(Attached&&) = delete;
    ~Attached()
    {
        try {
            connection_.run("DETACH DATABASE backup");
        } catch (const StoreFailure&) {
            // It goes with the connection; what was restored is committed already.
            return;
        }
    }

private:
    const Connection& connection_;
};

void copyAll(const Connection& connection)
{
    connection.write([&] {
        for (auto table = tables.crbegin(); table != tables.crend(); ++table)
            connection.run("DELETE FROM main." + *table);
        for (const QString& table : tables)
            connection.run(QString("INSERT INTO main.%1 SELECT * FROM backup.%1").arg(table));
    });
}

/// Photos are named by what they show: one that is there is the right one. One that was damaged stays away.
void copyPictures(const PictureFolder& from, const PictureFolder& to)
{
    for (const std::string& hash : from.all()) {
        if (to.has(hash))
            continue;
        const auto bytes = from.read(hash);
        const auto kept = bytes.ok() ? to.keep(*bytes) : Result<std::string>(hash);
        if (!kept.ok())
            throw StoreFailure(kept.errors().front().sentence());
    }
}

/// A copy of what is here, beside the backup: where a person chose one they can choose another, not in the
/// hidden folder of the tablet's own file. There all the same if the backup's folder takes none, as a stick
/// that is full.
QString keepBefore(const Connection& connection, const QString& backup, const QString& name)
{
    QString path = QFileInfo(backup).absoluteDir().filePath(name);
    try {
        connection.copyTo(path);
    } catch (const StoreFailure&) {
        path = QFileInfo(connection.path()).absoluteDir().filePath(name);
        connection.copyTo(path);
    }
    return path;
}

} // namespace

QString backUp(const Connection& connection, const QString& folder, const QString& stamp)
{
    QString path = QDir(folder).filePath("lapwright-backup-" + stamp + ".db");
    connection.copyTo(path, [](const QString& copy) { refuseDamaged(opened(copy)); });
    copyPictures(PictureFolder(connection.path()), PictureFolder(path));
    return path;
}

QString restore(const Connection& connection, const QString& backup, const QString& stamp)
{
    const QTemporaryDir scratch;
    const QString copy = scratch.filePath("backup.db");
    if (!QFile::copy(backup, copy))
        throw StoreFailure("the backup cannot be read");
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    {
        const Connection kept = opened(copy);
        refuseDamaged(kept);
        refuseForeign(kept);
    }
    copyPictures(PictureFolder(backup), PictureFolder(connection.path()));
    QString before = keepBefore(connection, backup, "lapwright-before-restore-" + stamp + ".db");
    const Attached attached(connection, copy);
    copyAll(connection);
    return before;
}

} // namespace lapwright::store
