#include "mobile/field_bench.h"

#include <QtTest>

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

/// Guards: nothing a person can type makes a job that does not open again; what is set for one run, one job
/// or one screen does not stand in another.
class FieldEditor : public QObject {
    Q_OBJECT

private slots:
    void aCornerThatCannotBeIsNotKept_data();
    void aCornerThatCannotBeIsNotKept();
    void aPlanCornerThatCannotBeIsNotReady();
    void whatDoesNotReadBackIsNotKept();
    void dividingRunsIsTakenBack();
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

QTEST_MAIN(FieldEditor)
#include "tst_field_editor.moc"
