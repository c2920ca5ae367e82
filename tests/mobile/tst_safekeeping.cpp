#include "store/safekeeping.h"
#include "store_bench.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtTest>

using namespace lapwright;
using namespace lapwright::store;

/// Guards: a backup of the tablet brings everything back, and what is damaged, foreign or without room leaves
/// all as it was.
class Safekeeping : public QObject {
    Q_OBJECT

private slots:
    void aBackupBringsEverythingBack();
    void aFullStickRestoresToo();
    void aCopyThatFailsLeavesTheOneBefore();
    void aDamagedCopyLeavesNothing();
    void aDamagedBackupChangesNothing();
    void whatIsNoBackupChangesNothing();
};

void Safekeeping::aBackupBringsEverythingBack()
{
    Desk desk;
    desk.act("before the backup");
    const std::string before = desk.kept.document;
    const QString backup = backUp(desk.connection, desk.folder.path(), "2026-11-25");
    desk.act("after it");
    const std::string after = desk.kept.document;
    site::Job other = invented(2);
    addJob(desk.connection, other, textOf(other), {"job.new", "started", timeOf(9)});

    const QString kept = restore(desk.connection, backup, "2026-11-26");
    QCOMPARE(kept, desk.folder.filePath("lapwright-before-restore-2026-11-26.db"));
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, before);
    QCOMPARE(countJobs(desk.connection, {}), 1);
    QCOMPARE(documentFromJournal(desk.connection, desk.job.id), before);
    QVERIFY(desk.connection.damage().isEmpty());
    for (const QString& copy : {backup, kept})
        QCOMPARE(QFileInfo(copy).permissions() & ~(QFile::ReadUser | QFile::WriteUser),
                 QFile::ReadOwner | QFile::WriteOwner);
    QCOMPARE(QDir(desk.folder.path()).entryList({"*.part*"}), QStringList());
    QCOMPARE(keptJob(*Connection::open(kept), desk.job.id)->document, after);
    restore(desk.connection, kept, "2026-11-27");
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, after);
    QCOMPARE(QDir(desk.folder.path()).entryList({"lapwright-before-restore-*.db"}).size(), 2);
}

/// Seen: nothing was restored from a stick that had no room for a copy of what was there before.
void Safekeeping::aFullStickRestoresToo()
{
    Desk desk;
    const QString stick = desk.folder.filePath("stick");
    // Something where the copy would be written: the folder itself can be written, as that of a full stick.
    QVERIFY(QDir().mkpath(stick + "/lapwright-before-restore-2026-11-26.db.part/in the way"));
    const std::string before = desk.kept.document;
    const QString backup = backUp(desk.connection, stick, "2026-11-25");
    desk.act("after it");
    const QString kept = restore(desk.connection, backup, "2026-11-26");
    QCOMPARE(kept, desk.folder.filePath("lapwright-before-restore-2026-11-26.db"));
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, before);
    QCOMPARE(keptJob(*Connection::open(kept), desk.job.id)->document, desk.kept.document);
}

/// Seen: the copy that stood there was removed before the new one was made.
void Safekeeping::aCopyThatFailsLeavesTheOneBefore()
{
    Desk desk;
    const QString copy = desk.folder.filePath("copy.db");
    desk.connection.copyTo(copy);
    QVERIFY(QDir(desk.folder.path()).mkpath("copy.db.part/in the way"));
    QVERIFY_EXCEPTION_THROWN(desk.connection.copyTo(copy), StoreFailure);
    QCOMPARE(keptJob(*Connection::open(copy), desk.job.id)->document, desk.kept.document);
}

/// Seen: the copy that was found damaged stayed, with all names in it, under a name that nobody looks at.
void Safekeeping::aDamagedCopyLeavesNothing()
{
    Desk desk;
    const QString before = backUp(desk.connection, desk.folder.path(), "2026-11-25");
    // What SQLite copies as it stands, and finds when it looks for damage: a row that its table does not
    // allow.
    desk.connection.run("PRAGMA ignore_check_constraints = ON");
    desk.connection.run("UPDATE jobs SET shelf = 'nowhere'");
    QVERIFY_EXCEPTION_THROWN(backUp(desk.connection, desk.folder.path(), "2026-11-25"), StoreFailure);
    QCOMPARE(QDir(desk.folder.path()).entryList({"*.part*"}), QStringList());
    QCOMPARE(keptJob(*Connection::open(before), desk.job.id)->document, desk.kept.document);
}

void Safekeeping::aDamagedBackupChangesNothing()
{
    Desk desk;
    const QString backup = backUp(desk.connection, desk.folder.path(), "2026-11-25");
    desk.act("after it");
    QFile file(backup);
    QVERIFY(file.open(QIODevice::ReadWrite));
    file.seek(4096);
    file.write(QByteArray(8192, 'x'));
    file.close();
    QVERIFY_EXCEPTION_THROWN(restore(desk.connection, backup, "2026-11-26"), StoreFailure);
    QVERIFY_EXCEPTION_THROWN(restore(desk.connection, desk.folder.filePath("nothing.db"), "2026-11-26"),
                             StoreFailure);
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, desk.kept.document);
}

/// Seen: an empty file, or another program's database, was given our tables and restored as a tablet with
/// nothing on it.
void Safekeeping::whatIsNoBackupChangesNothing()
{
    Desk desk;
    const QString empty = desk.folder.filePath("empty.db");
    QVERIFY(QFile(empty).open(QIODevice::WriteOnly));
    const QString foreign = desk.folder.filePath("foreign.db");
    for (const char* version : {"0", "1"}) {
        QFile::remove(foreign);
        {
            const Connection other = *Connection::open(foreign);
            for (const char* table :
                 {"receipt_events", "loads", "orders", "acts", "job_documents", "jobs", "settings"})
                other.run(QString("DROP TABLE ") + table);
            other.run("CREATE TABLE songs (title TEXT)");
            other.run(QString("PRAGMA user_version = ") + version);
        }
        for (const QString& file : {empty, foreign}) {
            QVERIFY_EXCEPTION_THROWN(restore(desk.connection, file, "2026-11-26"), StoreFailure);
            QCOMPARE(keptJob(desk.connection, desk.job.id)->document, desk.kept.document);
            QVERIFY(QDir(desk.folder.path()).entryList({"*before-restore*"}).isEmpty());
        }
    }
}

QTEST_GUILESS_MAIN(Safekeeping)
#include "tst_safekeeping.moc"
