#include "documents/job.h"
#include "store/jobs.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QThread>
#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::store;

/// Guards: nothing acknowledged is lost. A scripted person works in a process of its own and is killed at a
/// random moment, 200 times; each time the database is whole, holds the last act that was acknowledged or a
/// later one, and its journal alone gives the same document.
class Kills : public QObject {
    Q_OBJECT

private slots:
    void nothingAcknowledgedIsMissing();
};

namespace {

struct Acknowledged {
    std::int64_t act = 0;
    std::size_t size = 0;
};

/// The last whole line that came out before the kill.
Acknowledged lastOf(const QByteArray& output)
{
    const QByteArray whole = output.left(output.lastIndexOf('\n'));
    const QList<QByteArray> words = whole.mid(whole.lastIndexOf('\n') + 1).split(' ');
    if (words.size() != 3)
        return {};
    return {words[1].toLongLong(), static_cast<std::size_t>(words[2].toULongLong())};
}

QByteArray workAndKill(const QString& path, const std::string& id, unsigned seed, unsigned long milliseconds)
{
    QProcess writer;
    writer.start(STORE_WRITER, {path, QString::fromStdString(id), QString::number(seed)});
    if (!writer.waitForStarted() || !writer.waitForReadyRead(30'000))
        return {};
    QThread::msleep(milliseconds);
    writer.kill();
    writer.waitForFinished();
    return writer.readAllStandardOutput();
}

} // namespace

void Kills::nothingAcknowledgedIsMissing()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath("tablet.db");
    site::Job job;
    job.id = "00000000-0000-4000-8000-000000000001";
    job.material = {"galvanised-steel", "24 ga", "Slate"};
    addJob(*Connection::open(path), job, documents::writeJob({job, {}}, documents::Layout::Canonical),
           {"job.new", "started", "2026-11-25T09:00:00.000Z"});
    std::mt19937 random(7);
    constexpr unsigned kills = 200;
    for (unsigned round = 0; round < kills; ++round) {
        const Acknowledged said = lastOf(workAndKill(path, job.id, round, random() % 25));
        QVERIFY2(said.act > 0, "the writer acknowledged nothing before it was killed");
        const auto connection = Connection::open(path);
        QVERIFY(connection.ok());
        const auto kept = keptJob(*connection, job.id);
        QVERIFY(kept);
        QVERIFY(kept->lastAct >= said.act);
        if (kept->lastAct == said.act)
            QCOMPARE(kept->document.size(), said.size);
        QVERIFY(documents::readJob(kept->document).ok());
        if (round % 20 == 19) {
            QVERIFY(connection->damage().isEmpty());
            QCOMPARE(documentFromJournal(*connection, job.id), kept->document);
        }
    }
}

QTEST_GUILESS_MAIN(Kills)
#include "tst_kills.moc"
