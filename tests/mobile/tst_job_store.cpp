#include "source_directory.h"
#include "storage/spoilt_page.h"
#include "store/deliveries.h"
#include "store/orders.h"
#include "store/shops.h"
#include "store_bench.h"

#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QTemporaryDir>
#include <QtTest>

#include <set>

using namespace lapwright;
using namespace lapwright::store;

/// Guards: the tablet's database keeps every act, takes them back and makes them again over restarts, and
/// tells what is wrong with it in words.
class JobStore : public QObject {
    Q_OBJECT

private slots:
    void undoAndRedoAreByteForByte();
    void undoLivesOverARestart();
    void aNewActForgetsWhatWasUndone();
    void theJournalAloneMakesTheDocument();
    void anotherWindowDoesNotOverwrite();
    void pagesThroughThousands();
    void searchTakesEveryWord();
    void shelvesAndStates();
    void aNewerFileIsRefused();
    void noDatabaseIsSaidSo();
    void aReadOnlyFolderKeepsTheData();
    void aFullDiskKeepsTheData();
    void aJournalThatCannotBeReadIsNotTheEndOfIt();
    void aFileThatAnotherProgramKeepsIsSaidAndLosesNothing();
    void aClockSetBackAYearLosesNothing();
    void aTabletOfVersionOneOpens();
    void undoSkipsOnlyWhatIsDoneToTheJobItself();
};

void JobStore::undoAndRedoAreByteForByte()
{
    Desk desk;
    std::vector<std::string> states{desk.kept.document};
    for (const char* name : {"Ä house", "A longer name", "B"}) {
        desk.act(name);
        states.push_back(desk.kept.document);
    }
    for (std::size_t back = states.size() - 1; back > 0; --back) {
        QVERIFY(desk.step(Way::Undo));
        QCOMPARE(desk.kept.document, states[back - 1]);
    }
    QVERIFY(!desk.step(Way::Undo));
    for (std::size_t on = 1; on < states.size(); ++on) {
        QVERIFY(desk.step(Way::Redo));
        QCOMPARE(desk.kept.document, states[on]);
    }
    QVERIFY(!desk.step(Way::Redo));
}

void JobStore::undoLivesOverARestart()
{
    Desk desk;
    const std::string before = desk.kept.document;
    desk.act("changed");
    desk.connection = *Connection::open(desk.path);
    desk.kept = *keptJob(desk.connection, desk.job.id);
    QCOMPARE(undoState(desk.connection, desk.job.id).undo.value(), std::string("name"));
    QVERIFY(desk.step(Way::Undo));
    QCOMPARE(desk.kept.document, before);
    desk.connection = *Connection::open(desk.path);
    QVERIFY(undoState(desk.connection, desk.job.id).redo);
}

void JobStore::aNewActForgetsWhatWasUndone()
{
    Desk desk;
    desk.act("one");
    QVERIFY(desk.step(Way::Undo));
    desk.act("another");
    QVERIFY(!undoState(desk.connection, desk.job.id).redo);
}

void JobStore::theJournalAloneMakesTheDocument()
{
    Desk desk;
    desk.act("one");
    desk.act("two");
    QVERIFY(desk.step(Way::Undo));
    desk.act("three");
    QCOMPARE(documentFromJournal(desk.connection, desk.job.id), desk.kept.document);
}

void JobStore::anotherWindowDoesNotOverwrite()
{
    Desk desk;
    const KeptJob stale = desk.kept;
    desk.act("mine");
    site::Job theirs = desk.job;
    theirs.name = "theirs";
    QVERIFY_EXCEPTION_THROWN(
        commitAct(desk.connection, theirs, stale, textOf(theirs), {"head.name", "name", timeOf(9)}),
        StoreFailure);
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, desk.kept.document);
}

void JobStore::pagesThroughThousands()
{
    const QTemporaryDir folder;
    const Connection connection = *Connection::open(folder.filePath("tablet.db"));
    constexpr int jobs = 3'000;
    connection.run("PRAGMA synchronous = OFF"); // only here: the rows are made up and wanted quickly
    for (int number = 0; number < jobs; ++number)
        addJob(connection, invented(number), textOf(invented(number)),
               {"job.new", "started", timeOf(number / 2)});
    QCOMPARE(countJobs(connection, {}), jobs);
    std::optional<JobLine> last;
    std::set<std::string> seen;
    std::string before = "9";
    for (;;) {
        const std::vector<JobLine> page = jobPage(connection, {}, last, 250);
        if (page.empty())
            break;
        for (const JobLine& line : page) {
            QVERIFY(seen.insert(line.id).second);
            QVERIFY(line.changedAt <= before);
            before = line.changedAt;
        }
        last = page.back();
    }
    QCOMPARE(seen.size(), std::size_t{jobs});
}

void JobStore::searchTakesEveryWord()
{
    const QTemporaryDir folder;
    const Connection connection = *Connection::open(folder.filePath("tablet.db"));
    for (int number = 0; number < 20; ++number)
        addJob(connection, invented(number), textOf(invented(number)),
               {"job.new", "started", timeOf(number)});
    QCOMPARE(countJobs(connection, {"even builders", Shelf::Open, {}}), 10);
    QCOMPARE(countJobs(connection, {"HOUSE 13", Shelf::Open, {}}), 1);
    QCOMPARE(countJobs(connection, {"even 13", Shelf::Open, {}}), 0);
    QCOMPARE(countJobs(connection, {"100%", Shelf::Open, {}}), 0);
}

void JobStore::shelvesAndStates()
{
    Desk desk;
    keepSent(desk.connection, desk.job.id, {1, "hash", timeOf(1), "{}"});
    QCOMPARE(countJobs(desk.connection, {"", Shelf::Open, JobState::Sent}), 1);
    desk.act("changed after");
    QCOMPARE(countJobs(desk.connection, {"", Shelf::Open, JobState::Changed}), 1);
    moveJob(desk.connection, desk.job.id, Shelf::Deleted, {"job.delete", "deleted", timeOf(3)});
    QCOMPARE(countJobs(desk.connection, {}), 0);
    QVERIFY(keptJob(desk.connection, desk.job.id));
    moveJob(desk.connection, desk.job.id, Shelf::Open, {"job.reopen", "back", timeOf(4)});
    QCOMPARE(countJobs(desk.connection, {}), 1);
    QCOMPARE(undoState(desk.connection, desk.job.id).undo.value(), std::string("name"));
}

void JobStore::aNewerFileIsRefused()
{
    Desk desk;
    desk.connection.run("PRAGMA user_version = 99");
    const auto opened = Connection::open(desk.path);
    QVERIFY(!opened.ok());
    QVERIFY(opened.errors().front().sentence().find("newer") != std::string::npos);
}

void JobStore::noDatabaseIsSaidSo()
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("tablet.db"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(4096, 'x'));
    file.close();
    const auto opened = Connection::open(file.fileName());
    QVERIFY(!opened.ok());
    QVERIFY(opened.errors().front().sentence().find("no database") != std::string::npos);
}

void JobStore::aReadOnlyFolderKeepsTheData()
{
    Desk desk;
    const std::string before = desk.kept.document;
    desk.connection.run("PRAGMA query_only = ON"); // root may write anywhere: SQLite itself refuses here
    QVERIFY_EXCEPTION_THROWN(desk.act("not kept"), StoreFailure);
    desk.connection.run("PRAGMA query_only = OFF");
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, before);
    QVERIFY(desk.connection.damage().isEmpty());
}

void JobStore::aFullDiskKeepsTheData()
{
    Desk desk;
    const std::string before = desk.kept.document;
    const auto pages = [&desk] {
        Rows count = desk.connection.query("PRAGMA page_count");
        count.next();
        return count.value(0).toInt();
    };
    desk.connection.run(QString("PRAGMA max_page_count = %1").arg(pages())); // SQLITE_FULL, as on a full disk
    std::string said;
    try {
        desk.act(std::string(100'000, 'n'));
    } catch (const StoreFailure& failure) {
        said = failure.what();
    }
    QVERIFY2(said.find("no room") != std::string::npos, said.c_str());
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, before);
    desk.connection.run("PRAGMA max_page_count = 1073741823");
    desk.job.name = "room again";
    desk.act("room again");
    QVERIFY(desk.connection.damage().isEmpty());
}

void JobStore::aJournalThatCannotBeReadIsNotTheEndOfIt()
{
    Desk desk;
    for (int number = 1; number <= 300; ++number)
        desk.act(std::string(60, number % 2 == 0 ? 'e' : 'o') + std::to_string(number)); // none like the last
    desk.connection = *Connection::open(desk.folder.filePath("other.db")); // lets go of the file
    QVERIFY(tests::spoilPage(desk.path, "ee150"));
    const Connection again = *Connection::open(desk.path);
    QVERIFY_EXCEPTION_THROWN((void)documentFromJournal(again, desk.job.id), StoreFailure);
}

void JobStore::aFileThatAnotherProgramKeepsIsSaidAndLosesNothing()
{
    Desk desk;
    desk.act("before");
    const std::string before = desk.kept.document;
    const Connection other = *Connection::open(desk.path);
    desk.connection.run("PRAGMA busy_timeout = 50");
    other.run("BEGIN IMMEDIATE");
    std::string said;
    try {
        desk.act("while it is kept");
    } catch (const StoreFailure& failure) {
        said = failure.what();
    }
    QVERIFY2(said.find("another program") != std::string::npos, said.c_str());
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, before);
    other.run("ROLLBACK");
    desk.act("afterwards");
    QCOMPARE(keptJob(desk.connection, desk.job.id)->document, desk.kept.document);
    QVERIFY(desk.connection.damage().isEmpty());
}

void JobStore::aClockSetBackAYearLosesNothing()
{
    Desk desk;
    desk.act("by the right clock");
    const std::string first = desk.kept.document;
    desk.job.name = "a year ago";
    desk.kept = commitAct(desk.connection, desk.job, desk.kept, textOf(desk.job),
                          {"head.name", "name", "2025-11-25T10:00:00.000Z"});
    const std::string second = desk.kept.document;
    QCOMPARE(documentFromJournal(desk.connection, desk.job.id), second);
    QVERIFY(desk.step(Way::Undo));
    QCOMPARE(desk.kept.document, first);
    QVERIFY(desk.step(Way::Redo));
    QCOMPARE(desk.kept.document, second);
    QCOMPARE(countJobs(desk.connection, {}), 1);
    QCOMPARE(jobPage(desk.connection, {}, std::nullopt, 10).size(), 1U);
}

void JobStore::aTabletOfVersionOneOpens()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath("tablet.db");
    QFile script(QString::fromStdString(sourceDirectory() + "/tests/mobile/cases/version-1.sql"));
    QVERIFY(script.open(QIODevice::ReadOnly));
    {
        QSqlDatabase old = QSqlDatabase::addDatabase("QSQLITE", "old");
        old.setDatabaseName(path);
        QVERIFY(old.open());
        for (const QString& statement : QString::fromUtf8(script.readAll()).split(";\n", Qt::SkipEmptyParts))
            QVERIFY2(old.exec(statement).isActive(), qPrintable(statement));
    }
    QSqlDatabase::removeDatabase("old");
    const auto connection = Connection::open(path);
    QVERIFY2(connection.ok(), connection.ok() ? "" : connection.errors().front().sentence().c_str());
    const std::vector<JobLine> jobs = jobPage(*connection, {}, std::nullopt, 10);
    QCOMPARE(jobs.size(), 1U);
    const auto kept = keptJob(*connection, jobs.front().id);
    QVERIFY(documents::readJob(kept->document).ok());
    QCOMPARE(documentFromJournal(*connection, jobs.front().id), kept->document);
    QVERIFY(undoState(*connection, jobs.front().id).undo.has_value());
    QCOMPARE(loads(*connection).size(), 1U);
    QVERIFY(!isAccepted(*connection, loads(*connection).front().id));
    QVERIFY(!eventsOf(*connection, loads(*connection).front().id).empty());
    QVERIFY(knownShops(*connection).empty());
    QVERIFY2(QFile::exists(path + ".schema-1"), "a copy is kept before the file is changed");
}

/// Seen: "job.policy-of-pieces" changes the document and was skipped with the acts on the job itself.
/// Journals that hold it are still there.
void JobStore::undoSkipsOnlyWhatIsDoneToTheJobItself()
{
    Desk desk;
    const std::string before = desk.kept.document;
    desk.act("a name");
    desk.job.policy = site::PiecePolicy::EqualLengths;
    desk.kept = commitAct(desk.connection, desk.job, desk.kept, textOf(desk.job),
                          {"job.policy-of-pieces", "how runs are divided", timeOf(++desk.acts)});
    moveJob(desk.connection, desk.job.id, Shelf::Archived, {"job.archive", "archived", timeOf(++desk.acts)});
    moveJob(desk.connection, desk.job.id, Shelf::Open, {"job.back", "archived", timeOf(++desk.acts)});
    QCOMPARE(undoState(desk.connection, desk.job.id).undo.value(), std::string("how runs are divided"));
    QVERIFY(desk.step(Way::Undo));
    QVERIFY(desk.step(Way::Undo));
    QCOMPARE(desk.kept.document, before);
    QVERIFY(!desk.step(Way::Undo));
}

QTEST_GUILESS_MAIN(JobStore)
#include "tst_job_store.moc"
