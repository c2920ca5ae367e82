#include "documents/shop.h"
#include "mobile/field_bench.h"
#include "storage/document_file.h"

#include <QSignalSpy>
#include <QtTest>

#include <functional>

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// Three sides of an eave line, still open.
void threeRuns(FieldBench& bench)
{
    QVERIFY(bench.editor().newJob("Alder"));
    QVERIFY(bench.editor().startChain("eave"));
    bench.editor().entry()->slope()->setText("6");
    for (const char* length : {"40'", "24'", "40'"})
        QVERIFY(bench.add(length));
}

} // namespace

using Change = void (*)(site::Job&);

/// Guards: nothing a person can type makes a job that does not open again; what is set for one run, one job
/// or one screen does not stand in another.
class FieldEditor : public QObject {
    Q_OBJECT

private slots:
    void aCornerThatCannotBeIsNotKept_data();
    void aCornerThatCannotBeIsNotKept();
    void aPlanCornerThatCannotBeIsNotReady();
    void whatDoesNotReadBackIsNotKept();
    void whereverItIsWrongItIsFound_data();
    void whereverItIsWrongItIsFound();
    void actsReadBackAsTheWholeJobWould();
    void dividingRunsIsTakenBack();
    void nothingOfAnotherJobIsTyped();
    void aLimitLeftAloneStaysExact();
    void unitsAloneAreWrittenAgain();
    void badgesAreOfTheJobInHand();
    void thePieceInHandOutlivesTheFilter();
    void theWarningInHandOutlivesItsRow();
    void whatTheStorageRefusesIsSaid();
    void restoringBringsEverythingBack();
    void damageIsSaidAtTheStart();
};

void FieldEditor::aCornerThatCannotBeIsNotKept_data()
{
    QTest::addColumn<QString>("typed");
    for (const char* typed : {"", "0", "0.5", "359.5", "360", "400", "square"})
        QTest::newRow(typed) << typed;
}

/// Seen: "Another angle" with nothing typed closed the chain by 0°, which no schema takes: the job never
/// opened again.
void FieldEditor::aCornerThatCannotBeIsNotKept()
{
    QFETCH(QString, typed);
    FieldBench bench;
    threeRuns(bench);
    RunEntry& entry = *bench.editor().entry();
    entry.setCorner(RunEntry::Corner::Angle);
    entry.angle()->setText(typed);
    QVERIFY(!bench.editor().closeChain());
    QVERIFY(!bench.editor().isClosed());
    QVERIFY(!bench.app->message().isEmpty());
    entry.length()->setText("24'");
    QVERIFY(!bench.editor().keepRun());
    const QString id = bench.editor().jobId();
    bench.restart();
    QVERIFY(bench.editor().openJob(id));
    bench.editor().entry()->setCorner(RunEntry::Corner::Angle);
    bench.editor().entry()->angle()->setText("90");
    QVERIFY(bench.editor().closeChain());
}

void FieldEditor::aPlanCornerThatCannotBeIsNotReady()
{
    FieldBench bench;
    QVERIFY(bench.editor().newJob("Alder"));
    QVERIFY(bench.editor().startChain("hip"));
    RunEntry& entry = *bench.editor().entry();
    entry.length()->setText("21'");
    for (const char* typed : {"0", "360", "400"}) {
        entry.planCorner()->setText(typed);
        QVERIFY2(!entry.ready(), typed);
        QVERIFY(!bench.editor().keepRun());
    }
    entry.planCorner()->setText("135");
    QVERIFY(bench.editor().keepRun());
}

void FieldEditor::whatDoesNotReadBackIsNotKept()
{
    FieldBench bench;
    bench.house();
    const site::Job before = bench.editor().job();
    QVERIFY(!bench.editor().act("run.change", "a corner of nothing", [](site::Job& job) {
        job.chains[0].corners[0] = site::InteriorAngle{Angle(), "0"};
    }));
    QVERIFY(!bench.app->message().isEmpty());
    QVERIFY(bench.editor().job() == before);
    bench.restart();
    bench.app->jobs()->refresh();
    QVERIFY(bench.editor().openJob(QString::fromStdString(before.id)));
    QVERIFY(bench.editor().job() == before);
}

void FieldEditor::whereverItIsWrongItIsFound_data()
{
    QTest::addColumn<Change>("change");
    QTest::newRow("first corner") << Change([](site::Job& job) {
        job.chains[0].corners.front() = site::InteriorAngle{Angle(), "0"};
    });
    QTest::newRow("closing corner") << Change([](site::Job& job) {
        job.chains[0].corners.back() = site::InteriorAngle{Angle(), "0"};
    });
    QTest::newRow("run with the id of another")
        << Change([](site::Job& job) { job.chains[0].runs[3].id = job.chains[0].runs[0].id; });
    QTest::newRow("run without an id") << Change([](site::Job& job) { job.chains[0].runs[2].id.clear(); });
    QTest::newRow("measure that counts and is not there")
        << Change([](site::Job& job) { job.chains[0].runs[1].counts = 7; });
    QTest::newRow("corner too few") << Change([](site::Job& job) { job.chains[0].corners.pop_back(); });
    QTest::newRow("chain twice") << Change([](site::Job& job) { job.chains.push_back(job.chains[0]); });
    QTest::newRow("chain's name") << Change(
        [](site::Job& job) { job.chains[0].name = std::string(500, 'x'); });
    QTest::newRow("length beyond all measure")
        << Change([](site::Job& job) { job.chains[0].runs[1].lengths[0].value = Length::feet(-1); });
}

void FieldEditor::whereverItIsWrongItIsFound()
{
    QFETCH(Change, change);
    FieldBench bench;
    bench.house();
    const site::Job before = bench.editor().job();
    site::Job wrong = before;
    change(wrong);
    QVERIFY2(!documents::readJob(documents::writeJob({wrong, {}})).ok(), "the whole job would be refused");
    QVERIFY(!bench.editor().act("run.change", "wrong", change));
    QVERIFY(!bench.app->message().isEmpty());
    QVERIFY(bench.editor().job() == before);
}

/// What stays of a chain whose runs are taken out, put in between, opened and closed is read in part only.
void FieldEditor::actsReadBackAsTheWholeJobWould()
{
    FieldBench bench;
    bench.house();
    JobEditor& editor = bench.editor();
    const auto reads = [&editor] {
        return documents::readJob(documents::writeJob(editor.document(), documents::Layout::Canonical)).ok();
    };
    editor.setRun(1);
    QVERIFY(editor.removeRun() && reads());
    QVERIFY(editor.openChain() && reads());
    editor.setRun(0);
    QVERIFY(editor.removeRun() && reads());
    QVERIFY(bench.add("12'") && bench.add("9'") && reads());
    QVERIFY(editor.closeChain() && reads());
    QVERIFY(editor.renameChain("Back") && editor.startChain("ridge") && bench.add("20'") && reads());
    QVERIFY(editor.removeChain() && editor.undo() && editor.undo() && reads());
}

/// Seen: the act was filed under the jobs' own kinds, which undo skips; what was undone then was the act
/// before it, out of place.
void FieldEditor::dividingRunsIsTakenBack()
{
    FieldBench bench;
    bench.house();
    bench.app->order()->setPolicy(1);
    bench.app->order()->setSpares(2);
    QCOMPARE(bench.editor().job().policy, site::PiecePolicy::EqualLengths);
    QVERIFY(bench.editor().undo());
    QVERIFY(bench.editor().undo());
    QCOMPARE(bench.editor().job().policy, site::PiecePolicy::FullAndRemainder);
    QVERIFY(bench.editor().redo());
    QCOMPARE(bench.editor().job().policy, site::PiecePolicy::EqualLengths);
    QCOMPARE(bench.editor().job().spares, std::int64_t{0});
}

/// Seen: the slope of the last job stood in the first run of the next, the plan corner of a hip in the hip
/// after it.
void FieldEditor::nothingOfAnotherJobIsTyped()
{
    FieldBench bench;
    QVERIFY(bench.editor().newJob("Alder"));
    QVERIFY(bench.editor().startChain("hip"));
    RunEntry& entry = *bench.editor().entry();
    entry.slope()->setText("8");
    entry.planCorner()->setText("135");
    QVERIFY(bench.add("21'"));
    QCOMPARE(entry.slope()->text(), "8 in 12");
    QVERIFY(entry.planCorner()->empty());
    QVERIFY(bench.editor().newJob("Birch"));
    QVERIFY(entry.slope()->empty());
    QCOMPARE(entry.kind(), "eave");
}

/// Seen: leaving the field rounded 3001 mm to the sixteenth it is shown by.
void FieldEditor::aLimitLeftAloneStaysExact()
{
    FieldBench bench;
    bench.house();
    bench.app->settings()->setMetric(true);
    bench.app->form()->setTransportLength("3001");
    bench.app->settings()->setMetric(false);
    const QString shownInInches = bench.app->form()->transportLength();
    const QString undo = bench.editor().undoWords();
    bench.app->form()->setTransportLength(shownInInches);
    QCOMPARE(bench.editor().job().limits.transportLength, Length::millimetres(3001));
    QCOMPARE(bench.editor().undoWords(), undo);
    bench.app->form()->setTransportLength("");
    QVERIFY(!bench.editor().job().limits.transportLength);
    bench.app->form()->setFoldingLength("");
    QVERIFY2(!bench.app->message().isEmpty(), "there must be a folding length");
}

void FieldEditor::unitsAloneAreWrittenAgain()
{
    FieldBench bench;
    bench.house();
    const QSignalSpy drawn(bench.app->editor(), &JobEditor::jobChanged);
    bench.app->settings()->setPerson("Robin");
    bench.app->settings()->setTextScale(1.2);
    QCOMPARE(drawn.count(), 0);
    bench.app->settings()->setMetric(true);
    QCOMPARE(drawn.count(), 1);
}

/// Seen: counts in the rail and the path of the order written were those of the job before.
void FieldEditor::badgesAreOfTheJobInHand()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.app->order()->send(bench.folder.path()));
    QVERIFY(!bench.app->order()->writtenTo().isEmpty());
    bench.editor().setRun(2);
    QVERIFY(bench.add("500'"));
    bench.app->check()->refresh();
    QVERIFY(bench.app->check()->blocking() > 0);
    QVERIFY(bench.editor().newJob("Birch"));
    QCOMPARE(bench.app->check()->blocking(), 0);
    QVERIFY(bench.app->order()->writtenTo().isEmpty());
    QVERIFY(bench.editor().startChain("ridge"));
    QVERIFY(bench.add("12'"));
    QCOMPARE(bench.app->trim()->bare(), 1);
}

/// Seen: with only what is missing shown, the row in hand stood for another mark as soon as the first was
/// counted.
void FieldEditor::thePieceInHandOutlivesTheFilter()
{
    FieldBench bench;
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.openFile(path));
    delivery.setOnlyMissing(true);
    delivery.take(1);
    QVERIFY(delivery.count(DeliveryCheck::Found::Received, 1, ""));
    QCOMPARE(delivery.rowCount(), 2);
    QVERIFY(delivery.hasInHand());
    QVERIFY2(!delivery.count(DeliveryCheck::Found::Received, 1, ""), "the piece in hand is counted already");
    QCOMPARE(delivery.missing(), 6);
    QVERIFY(delivery.undo());
    QVERIFY(delivery.count(DeliveryCheck::Found::Damaged, 1, "bent"));
    QCOMPARE(delivery.index(delivery.rowOf("E1.1")).data(DeliveryCheck::LeftRole).toInt(), 4);
}

void FieldEditor::theWarningInHandOutlivesItsRow()
{
    FieldBench bench;
    bench.house();
    bench.editor().setRun(0);
    bench.editor().entry()->length()->setText("40' 2\"");
    QVERIFY(bench.editor().repeatMeasure());
    CheckList& check = *bench.app->check();
    check.refresh();
    int row = 0;
    while (row < check.rowCount() && check.index(row).data(CheckList::WeightRole).toInt() != 1)
        ++row;
    check.take(row);
    QVERIFY(check.hasInHand());
    const QString statement = check.statementInHand();
    bench.editor().setRun(2);
    QVERIFY(bench.add("500'")); // blocks: stands before every warning
    check.refresh();
    QCOMPARE(check.statementInHand(), statement);
    QVERIFY(bench.editor().undo());
    QVERIFY(bench.editor().undo());
    check.refresh();
    QVERIFY2(!check.hasInHand(), "what it was about is gone");
    QVERIFY(!check.acknowledge("too late"));
}

/// Seen: a table that cannot be read ended the program through the event loop.
void FieldEditor::whatTheStorageRefusesIsSaid()
{
    FieldBench bench;
    bench.house();
    const auto saidBy = [&bench](const std::function<void()>& act) {
        bench.app->seen();
        act();
        return !bench.app->message().isEmpty();
    };
    bench.tablet->database().run("DROP TABLE orders");
    bench.editor().entry()->length()->setText("17' 4");
    QVERIFY(saidBy([&] { bench.app->check()->refresh(); }));
    QVERIFY(saidBy([&] { bench.app->order()->refresh(); }));
    QVERIFY(saidBy([&] { bench.app->order()->send(bench.folder.path()); }));
    QVERIFY(saidBy([&] { (void)bench.app->order()->why(0); }));
    QCOMPARE(bench.editor().entry()->length()->text(), "17' 4");
    bench.tablet->database().run("DROP TABLE settings");
    QVERIFY(saidBy([&] { bench.app->settings()->setMetric(true); }));
    QVERIFY(!bench.app->settings()->metric());
    bench.tablet->database().run("DROP TABLE loads");
    QVERIFY(saidBy([&] { bench.app->delivery()->refresh(); }));
}

/// Seen: after a restore the settings, the load in hand and the job to take back were those of before.
void FieldEditor::restoringBringsEverythingBack()
{
    FieldBench bench;
    bench.house();
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    bench.app->settings()->setPerson("Robin");
    const QString backup = bench.app->backUp(bench.folder.path());
    QVERIFY(!backup.isEmpty());
    bench.app->settings()->setPerson("Somebody else");
    bench.app->settings()->setMetric(true);
    QVERIFY(bench.app->delivery()->openFile(path));
    bench.app->jobs()->refresh();
    bench.app->jobs()->archive(bench.editor().jobId());
    QVERIFY(!bench.app->restore(backup).isEmpty());
    QCOMPARE(bench.app->settings()->person(), "Robin");
    QVERIFY(!bench.app->settings()->metric());
    QVERIFY(bench.app->delivery()->load().isEmpty());
    QCOMPARE(bench.app->delivery()->rowCount(), 0);
    QVERIFY(bench.app->jobs()->undoWords().isEmpty());
    QCOMPARE(bench.app->jobs()->total(), 1);
}

void FieldEditor::damageIsSaidAtTheStart()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.app->message().isEmpty());
    bench.testers.clear();
    bench.app.reset();
    bench.tablet.reset();
    QFile file(bench.path);
    QVERIFY(file.open(QIODevice::ReadWrite));
    constexpr qint64 page = 4096;
    QVERIFY(file.seek(file.size() - page));
    QCOMPARE(file.write(QByteArray(page, '\xa5')), page);
    file.close();
    bench.restart();
    QVERIFY2(bench.app->message().contains("damaged"), qPrintable(bench.app->message()));
}

QTEST_MAIN(FieldEditor)
#include "tst_field_editor.moc"
