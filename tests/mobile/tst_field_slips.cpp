#include "documents/order.h"
#include "documents/shop.h"
#include "mobile/field_bench.h"
#include "source_directory.h"
#include "storage/document_file.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::field;

namespace {

void openLoad(FieldBench& bench)
{
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    QVERIFY(bench.app->delivery()->openFile(path));
}

std::string jobOf(const QString& orderPath)
{
    const auto order = documents::readOrder(*storage::readDocument(orderPath.toStdString()));
    return order.ok() ? order->value.id : std::string();
}

} // namespace

/// Guards: what one hurried act must not do to another: two jobs of one name, a filter over what is counted,
/// a job put away from a list that has moved on, a run made anew under an old number.
class FieldSlips : public QObject {
    Q_OBJECT

private slots:
    void twoJobsOfOneNameAreTwoFiles();
    void noReceiptIsWrittenOver();
    void whatIsCountedIsStillOnTheLoad();
    void whatIsNotOnTheLoadIsSaid();
    void whatIsPutRightIsNoLongerRefused();
    void aJobGoesBackWhereItWas();
    void aDeletedJobTakenInAgainIsOpen();
    void aChosenRunIsOfThisJob();
    void whatShowsNothingIsFoundAgain();
    void whatShowsNothingStaysWhereNothingIsTyped();
    void twoChainsTakeTheLongestName();
    void whatWasSaidOfARunGoesWithIt();
    void whatWasSaidOfAChainGoesWithIt();
};

/// Seen: both were written to "alder-r1.order.json", and the first was gone.
void FieldSlips::twoJobsOfOneNameAreTwoFiles()
{
    FieldBench bench;
    OrderModel& order = *bench.app->order();
    bench.house();
    const std::string first = bench.editor().job().id;
    QVERIFY(order.send(bench.folder.path()));
    const QString firstPath = order.writtenTo();
    bench.house();
    QVERIFY(order.send(bench.folder.path()));
    QCOMPARE(QFileInfo(order.writtenTo()).fileName(), "alder-r1-2.order.json");
    QCOMPARE(jobOf(firstPath), first);
    QVERIFY2(order.send(bench.folder.path()), "the same again goes where it went");
    QCOMPARE(QFileInfo(order.writtenTo()).fileName(), "alder-r1-2.order.json");
}

/// Seen: two receipts of one minute were one file.
void FieldSlips::noReceiptIsWrittenOver()
{
    FieldBench bench;
    openLoad(bench);
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.countBundle("B1"));
    const QString first = delivery.writeReceipt(bench.folder.path());
    const auto text = storage::readDocument(first.toStdString());
    QVERIFY(delivery.countBundle("B2"));
    const QString second = delivery.writeReceipt(bench.folder.path());
    QVERIFY(!second.isEmpty());
    QVERIFY(first != second);
    QCOMPARE(*storage::readDocument(first.toStdString()), *text);
}

/// Seen: with what is counted filtered away, its label was said to be of another load.
void FieldSlips::whatIsCountedIsStillOnTheLoad()
{
    FieldBench bench;
    openLoad(bench);
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.countBundle("B1"));
    delivery.setOnlyMissing(true);
    QCOMPARE(delivery.rowOf("E2.1"), 0);
    QVERIFY2(delivery.onlyMissing(), "what is found among the missing leaves them alone");
    QCOMPARE(delivery.rowOf("E1.2"), 1);
    QVERIFY(!delivery.onlyMissing());
    QVERIFY(bench.app->message().isEmpty());
}

/// Seen: a mark that was typed wrong said nothing.
void FieldSlips::whatIsNotOnTheLoadIsSaid()
{
    FieldBench bench;
    openLoad(bench);
    QCOMPARE(bench.app->delivery()->rowOf(" "), -1);
    QVERIFY2(bench.app->message().isEmpty(), "nothing was asked for");
    QCOMPARE(bench.app->delivery()->rowOf("E9.9"), -1);
    QVERIFY(bench.app->message().contains("E9.9"));
}

/// Seen: the refusal stood on over the date, the file and the mark that were right.
void FieldSlips::whatIsPutRightIsNoLongerRefused()
{
    FieldBench bench;
    bench.house();
    FieldApp& app = *bench.app;
    app.form()->setWantedBy("12/18/2026");
    QVERIFY(app.message().contains("12/18/2026"));
    app.delivery()->refresh();
    QVERIFY2(!app.message().isEmpty(), "to look elsewhere puts nothing right");
    app.form()->setWantedBy("2026-12-18");
    QCOMPARE(app.message(), "");

    const std::string demo = sourceDirectory() + "/demo/larkfield.job.json";
    QVERIFY(!app.openFile(QString::fromStdString(sourceDirectory() + "/README.md")));
    QVERIFY(!app.message().isEmpty());
    QVERIFY(app.openFile(QString::fromStdString(demo)));
    QCOMPARE(app.message(), "");

    QVERIFY(!app.openFile(bench.folder.filePath("none.json")));
    openLoad(bench);
    QCOMPARE(app.message(), "");
    QCOMPARE(app.delivery()->rowOf("E9.9"), -1);
    QVERIFY(!app.message().isEmpty());
    QVERIFY(app.delivery()->rowOf("E2.1") >= 0);
    QCOMPARE(app.message(), "");

    app.handOn("somewhere.json");
    QVERIFY(app.delivery()->countBundle("B1"));
    QVERIFY2(app.message().contains("somewhere.json"), "what is no refusal stands until it is seen");
}

/// Seen: taken in hand among the open jobs and deleted from under another filter, a job was called by its id
/// and put back among the archived ones.
void FieldSlips::aJobGoesBackWhereItWas()
{
    FieldBench bench;
    bench.house();
    JobList& jobs = *bench.app->jobs();
    jobs.setShown(JobList::Shown::Archived);
    jobs.remove(bench.editor().jobId());
    QCOMPARE(jobs.undoWords(), "Alder deleted");
    jobs.undo();
    QCOMPARE(jobs.total(), 0);
    jobs.setShown(JobList::Shown::Open);
    QCOMPARE(jobs.total(), 1);
}

/// Seen: it was opened, and was to be found among the deleted ones only.
void FieldSlips::aDeletedJobTakenInAgainIsOpen()
{
    FieldBench bench;
    const QString demo = QString::fromStdString(sourceDirectory() + "/demo/larkfield.job.json");
    QVERIFY(bench.app->openFile(demo));
    bench.app->jobs()->remove(bench.editor().jobId());
    QCOMPARE(bench.app->jobs()->total(), 0);
    QVERIFY(bench.app->openFile(demo));
    QCOMPARE(bench.app->jobs()->total(), 1);
    QVERIFY(bench.editor().isOpen());
}

/// Seen: a run chosen in one job, or removed since, stayed chosen: trim went on one run, or on none.
void FieldSlips::aChosenRunIsOfThisJob()
{
    FieldBench bench;
    TrimModel& trim = *bench.app->trim();
    bench.house();
    trim.setRun("E4");
    bench.editor().setRun(3);
    QVERIFY(bench.editor().removeRun());
    trim.refresh();
    QCOMPARE(trim.run(), "");
    trim.setRun("E1");
    bench.house();
    trim.refresh();
    QCOMPARE(trim.run(), "");
}

/// Seen: a run, a piece or a bundle was asked for by its name as the screen shows it, and there was none.
void FieldSlips::whatShowsNothingIsFoundAgain()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.editor().act("run.change", "named elsewhere",
                               [](site::Job& job) { job.chains[0].runs[1].id = "E\u200B2"; }));
    TrimModel& trim = *bench.app->trim();
    trim.refresh();
    const Choice second = trim.runs()->choices()[2];
    QCOMPARE(second.words, "E 2");
    trim.setRun(second.key);
    QCOMPARE(trim.run(), second.key);
    QVERIFY(trim.toggle());
    QCOMPARE(bench.editor().job().chains[0].runs[0].trims.size(), std::size_t{1});
    QVERIFY(bench.editor().job().chains[0].runs[1].trims.empty());
    QVERIFY(trim.toggle());

    OrderModel& order = *bench.app->order();
    order.refresh();
    int row = 0;
    while (row < order.pieces()->rowCount() &&
           !order.pieces()->index(row).data(PieceList::RunRole).toString().contains("E 2"))
        ++row;
    QVERIFY(row < order.pieces()->rowCount());
    QVERIFY(!order.why(row).isEmpty());
    QCOMPARE(order.why(order.pieces()->rowCount()), "");

    schedule::Load load = inventedLoad();
    load.bundles[0].label = "B\u200B1";
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({load, {}})).ok());
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.openFile(path));
    QVERIFY(delivery.countBundle(delivery.index(0).data(DeliveryCheck::BundleRole).toString()));
    QCOMPARE(delivery.received(), 5);
}

/// Seen: a field that was left as it stood wrote what it showed.
void FieldSlips::whatShowsNothingStaysWhereNothingIsTyped()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.editor().act("head.name", "named elsewhere", [](site::Job& job) {
        job.name = "Al\u200Bder";
        job.material.colour = "Sla\u200Bte";
        job.chains[0].name = "Eave\u202E line";
    }));
    const site::Job before = bench.editor().job();
    JobForm& form = *bench.app->form();
    form.setName(form.name());
    form.setColour(form.colour());
    QVERIFY(bench.editor().renameChain(bench.editor().chainName()));
    QVERIFY(bench.editor().job() == before);
    form.setName("Alder");
    QCOMPARE(bench.editor().job().name, std::string("Alder"));
}

/// Seen: with a number behind it the name was longer than a document takes.
void FieldSlips::twoChainsTakeTheLongestName()
{
    FieldBench bench;
    bench.house();
    const QString longest(300, 'a');
    QVERIFY(bench.editor().renameChain(longest));
    QVERIFY(bench.editor().startChain("ridge"));
    QVERIFY(bench.editor().renameChain(longest));
    QCOMPARE(bench.editor().chainName(), bench.editor().job().chains[0].name.c_str() + QString(" 2"));
}

/// Seen: the next run of that number had the reasons of the one removed.
void FieldSlips::whatWasSaidOfARunGoesWithIt()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.editor().act("finding.acknowledge", "said", [](site::Job& job) {
        for (const char* place : {"chain Eave line, run E4, eave drip edge", "chain Eave line, run E3",
                                  "chain Eave line, corner E4 to E1", "chain Eave line"})
            job.acknowledgements.push_back({"trim.lap", place, "as drawn"});
        job.photos.push_back({std::string(64, 'a'), "chain Eave line, run E4", "trim.lap"});
    }));
    bench.editor().setRun(3);
    QVERIFY(bench.editor().removeRun());
    const site::Job& job = bench.editor().job();
    QVERIFY(job.photos.empty());
    QCOMPARE(job.acknowledgements.size(), std::size_t{2});
    QCOMPARE(job.acknowledgements[0].place, std::string("chain Eave line, run E3"));
    QCOMPARE(job.acknowledgements[1].place, std::string("chain Eave line"));
}

void FieldSlips::whatWasSaidOfAChainGoesWithIt()
{
    FieldBench bench;
    bench.house();
    const std::string chain = "chain " + bench.editor().job().chains[0].name;
    QVERIFY(bench.editor().act("finding.acknowledge", "said", [&](site::Job& job) {
        for (const std::string& place : {chain + ", run E2", chain, std::string("chain Porch")})
            job.acknowledgements.push_back({"trim.lap", place, "as drawn"});
        job.photos.push_back({std::string(64, 'a'), "run E1", ""});
    }));
    QVERIFY(bench.editor().removeChain());
    QVERIFY(bench.editor().job().photos.empty());
    QCOMPARE(bench.editor().job().acknowledgements.size(), std::size_t{1});
    QCOMPARE(bench.editor().job().acknowledgements[0].place, std::string("chain Porch"));
    QVERIFY(bench.editor().undo());
    QCOMPARE(bench.editor().job().photos.size(), std::size_t{1});
}

QTEST_MAIN(FieldSlips)
#include "tst_field_slips.moc"
