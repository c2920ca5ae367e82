#include "documents/shop.h"
#include "documents/signature.h"
#include "mobile/field_bench.h"
#include "schedule/label_text.h"
#include "storage/document_file.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::field;

/// Guards: a load is counted in by mark, label and bundle, over a restart and once by two tablets, and its
/// receipt is signed.
class FieldLoads : public QObject {
    Q_OBJECT

private slots:
    void countingALoadIn();
    void twoTabletsCountOnce();
};

void FieldLoads::countingALoadIn()
{
    FieldBench bench;
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.openFile(path));
    QCOMPARE(delivery.expected(), 7);
    QCOMPARE(delivery.rowOf(" e1.2 "), 1);
    QCOMPARE(delivery.rowOf("b2"), 2);
    QCOMPARE(delivery.rowOf("E9.9"), -1);
    const auto label = schedule::labelText({inventedLoad().bundles[0].order, 1, "E2.1", "", 2});
    QCOMPARE(delivery.rowOf(QString::fromStdString(*label)), 2);
    const auto stranger = schedule::labelText({"00000000-0000-4000-8000-00000000eeee", 1, "E2.1", "", 2});
    QCOMPARE(delivery.rowOf(QString::fromStdString(*stranger)), -1);
    QVERIFY2(!delivery.count(DeliveryCheck::Found::Received, 1, ""), "nothing is in hand");
    delivery.take(0);
    QVERIFY(delivery.count(DeliveryCheck::Found::Received, 3, ""));
    QVERIFY(delivery.count(DeliveryCheck::Found::Damaged, 1, "bent"));
    QVERIFY2(!delivery.count(DeliveryCheck::Found::Received, 1, ""), "all four are counted");
    QVERIFY(delivery.countBundle("B2"));
    QCOMPARE(delivery.missing(), 1);
    QVERIFY(delivery.undo());
    QCOMPARE(delivery.missing(), 3);
    bench.restart();
    bench.app->delivery()->refresh();
    QCOMPARE(bench.app->delivery()->missing(), 3);
    const QString receipt = bench.app->delivery()->writeReceipt(bench.folder.path());
    const auto read = documents::readReceipt(*storage::readDocument(receipt.toStdString()));
    QVERIFY(read.ok());
    QVERIFY(documents::checkSignature(*storage::readDocument(receipt.toStdString()))->holds);
    QCOMPARE(read->value.events.size(), std::size_t{2});
    QCOMPARE(read->value.events[1].note, std::string("bent"));
    QVERIFY2(!bench.app->delivery()->undo(), "what a receipt carried away stays");
}

void FieldLoads::twoTabletsCountOnce()
{
    FieldBench bench;
    const QString path = bench.folder.filePath("load.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({inventedLoad(), {}})).ok());
    DeliveryCheck& delivery = *bench.app->delivery();
    QVERIFY(delivery.openFile(path));
    const schedule::Receipt other{
        "00000000-0000-4000-8000-00000000cccc",
        inventedLoad().id,
        {{"00000000-0000-4000-8000-00000000dddd", inventedLoad().bundles[0].order, "E1.1",
          schedule::PieceState::Received, 2, "2026-11-25T09:00:00Z", "other", ""}}};
    const QString receipt = bench.folder.filePath("receipt.json");
    QVERIFY(storage::writeDocument(receipt.toStdString(), documents::writeReceipt({other, {}})).ok());
    QVERIFY(bench.app->openFile(receipt));
    QVERIFY(bench.app->openFile(receipt));
    QCOMPARE(delivery.received(), 2);
}

QTEST_MAIN(FieldLoads)
#include "tst_field_loads.moc"
