// Guards: the field app started twice on one tablet loses nothing of either: who comes second is told so,
// opens the job again and goes on; counts of one load add up.
#include "documents/shop.h"
#include "mobile/field_bench.h"
#include "storage/document_file.h"
#include "store/jobs.h"

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// The same tablet's file in a second program.
struct SecondApp {
    explicit SecondApp(const FieldBench& first) : tablet(*Tablet::open(first.path, {})), app(tablet) {}

    Tablet tablet;
    FieldApp app;
};

bool add(FieldApp& app, const QString& length)
{
    app.editor()->entry()->length()->setText(length);
    return app.editor()->keepRun();
}

} // namespace

class TwoFieldAppsTest : public QObject {
    Q_OBJECT
private slots:
    void whoComesSecondIsToldAndGoesOn()
    {
        FieldBench first;
        QVERIFY(first.editor().newJob("Alder"));
        QVERIFY(first.editor().startChain("eave"));
        first.editor().entry()->slope()->setText("6");
        QVERIFY(first.add("40'"));
        SecondApp second(first);
        const QString job = QString::fromStdString(first.editor().job().id);
        QVERIFY(second.app.editor()->openJob(job));
        second.app.editor()->setChain(0);
        second.app.editor()->entry()->slope()->setText("6");
        QVERIFY(first.add("24'"));
        QVERIFY(!add(second.app, "12'"));
        QVERIFY2(second.app.message().contains("another window"), qPrintable(second.app.message()));
        QVERIFY(!second.app.editor()->undo());

        QVERIFY(second.app.editor()->openJob(job));
        second.app.editor()->setChain(0);
        second.app.editor()->entry()->slope()->setText("6");
        QVERIFY(add(second.app, "12'"));
        QCOMPARE(second.app.editor()->job().chains.front().runs.size(), 3U);
        const store::Connection& database = first.tablet->database();
        QCOMPARE(store::documentFromJournal(database, job.toStdString()),
                 store::keptJob(database, job.toStdString())->document);
        QVERIFY(database.damage().isEmpty());
    }
    void countsOfOneLoadAddUp()
    {
        FieldBench first;
        SecondApp second(first);
        const QString file = first.folder.filePath("load.json");
        QVERIFY(storage::writeDocument(file.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
        QVERIFY(first.app->openFile(file) && second.app.openFile(file));
        first.app->delivery()->take(0);
        QVERIFY(first.app->delivery()->count(DeliveryCheck::Found::Received, 3, ""));
        second.app.delivery()->setLoad(second.app.delivery()->load());
        second.app.delivery()->take(0);
        QVERIFY(!second.app.delivery()->count(DeliveryCheck::Found::Received, 2, ""));
        QVERIFY(second.app.delivery()->count(DeliveryCheck::Found::Damaged, 1, ""));
        first.app->delivery()->setLoad(first.app->delivery()->load());
        QCOMPARE(first.app->delivery()->received(), 3);
        QCOMPARE(first.app->delivery()->faulty(), 1);
    }
};

QTEST_MAIN(TwoFieldAppsTest)
#include "tst_two_field_apps.moc"
