#include "documents/order.h"
#include "documents/signature.h"
#include "mobile/field_bench.h"
#include "storage/document_file.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::field;

/// Guards: what is sent is signed by this tablet, carries its reasons and says what changed since the last
/// revision; what blocks is not sent.
class FieldOrders : public QObject {
    Q_OBJECT

private slots:
    void whatIsSentIsSignedByThisTablet();
    void aReasonTravelsWithTheOrder();
    void revisionsSayWhatChanged();
    void whatBlocksIsNotSent();
};

void FieldOrders::whatIsSentIsSignedByThisTablet()
{
    FieldBench bench;
    bench.house();
    QVERIFY(bench.app->order()->send(bench.folder.path()));
    const QString code = bench.app->settings()->pairingCode();
    const auto signature =
        documents::checkSignature(*storage::readDocument(bench.app->order()->writtenTo().toStdString()));
    QVERIFY(signature.ok() && signature->key && signature->holds);
    QCOMPARE(QString::fromStdString(documents::pairingCode(*signature->key)), code);
    bench.restart();
    QCOMPARE(bench.app->settings()->pairingCode(), code);
    FieldBench other;
    QVERIFY(other.app->settings()->pairingCode() != code);
    QVERIFY(!other.app->restore(bench.app->backUp(bench.folder.path())).isEmpty());
    QCOMPARE(other.app->settings()->pairingCode(), code);
}

void FieldOrders::aReasonTravelsWithTheOrder()
{
    FieldBench bench;
    bench.house();
    bench.editor().setRun(0);
    bench.editor().entry()->length()->setText("40' 2\"");
    QVERIFY(bench.editor().repeatMeasure()); // spreads over half an inch: a warning
    CheckList& check = *bench.app->check();
    check.refresh();
    int row = 0;
    while (row < check.rowCount() && check.index(row).data(CheckList::WeightRole).toInt() != 1)
        ++row;
    QVERIFY2(row < check.rowCount(), "a warning to acknowledge");
    const int open = check.openWarnings();
    check.take(row);
    QVERIFY(check.acknowledge("gutter in the way"));
    QCOMPARE(check.openWarnings(), open - 1);
    bench.app->order()->refresh();
    QVERIFY(bench.app->order()->send(bench.folder.path()));
    const auto order =
        documents::readOrder(*storage::readDocument(bench.app->order()->writtenTo().toStdString()));
    QVERIFY(order.ok());
    QCOMPARE(order->value.job.acknowledgements.front().reason, std::string("gutter in the way"));
}

void FieldOrders::revisionsSayWhatChanged()
{
    FieldBench bench;
    bench.house();
    OrderModel& order = *bench.app->order();
    QVERIFY(order.send(bench.folder.path()));
    QCOMPARE(order.revision(), 1);
    QVERIFY(order.isSent());
    const QString first = order.writtenTo();
    QVERIFY2(order.send(bench.folder.path()), "the same again is the same revision");
    QCOMPARE(order.revision(), 1);
    bench.app->form()->setColour("Copper");
    order.refresh();
    QVERIFY(!order.isSent());
    QCOMPARE(order.revision(), 2);
    QVERIFY(order.changes()->count() >= 1);
    QVERIFY(order.send(bench.folder.path()));
    const auto before = documents::readOrder(*storage::readDocument(first.toStdString()));
    const auto now = documents::readOrder(*storage::readDocument(order.writtenTo().toStdString()));
    QCOMPARE(now->value.previousHash, documents::revisionHash(*before));
}

void FieldOrders::whatBlocksIsNotSent()
{
    FieldBench bench;
    bench.house();
    bench.editor().setRun(2);
    QVERIFY(bench.add("500'")); // longer than any run may be
    OrderModel& order = *bench.app->order();
    QVERIFY(!order.send(bench.folder.path()));
    QVERIFY(!bench.app->message().isEmpty());
    QVERIFY(!order.isSent());
}

QTEST_MAIN(FieldOrders)
#include "tst_field_orders.moc"
