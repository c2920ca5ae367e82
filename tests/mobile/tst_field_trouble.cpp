#include "documents/job.h"
#include "documents/order.h"
#include "mobile/hand.h"
#include "mobile/invented_house.h"

#include <QDir>
#include <QProcess>

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// The house is measured and on its screen.
bool hasHouse(Hand& hand)
{
    const bool made = measureHouse(hand.app);
    hand.window->setProperty("place", "house");
    QTest::qWait(50);
    return made;
}

/// The sign over the words that stand where nothing is to be typed; empty if they are not in sight.
QString signOf(const Hand& hand, const QString& title)
{
    for (const QQuickItem* item : look::visibleItems(*hand.window))
        if (item->property("title").toString() == title)
            return item->property("sign").toString();
    return {};
}

} // namespace

/// Guards, by taps on the real screens, the days that do not go straight: a corner that is not square is
/// taped; a run is measured again; a chain misses its start and the run to blame is named; a warning stands
/// with a reason; an order is sent, changed and sent again; a job comes from another tablet; two tablets
/// count in one load.
class FieldTrouble : public QObject {
    Q_OBJECT

private slots:
    void aCornerIsTaped();
    void aRunIsMeasuredAgain();
    void aChainThatMissesNamesTheRun();
    void aWarningStandsWithAReason();
    void eachWarningHasItsOwnReason();
    void aSizeBeingTypedIsKept();
    void aJobInHandIsPutDownByTheFilter();
    void aChangedOrderSaysWhatChanged();
    void aJobComesFromAnotherTablet();
    void twoTabletsCountOneLoad();
    void whatIsSaidOfOnePieceIsNotSaidOfTheNext();
    void cleanup();
};

void FieldTrouble::cleanup()
{
    QCOMPARE(look::MessageCount::warnings(), QStringList());
}

void FieldTrouble::aCornerIsTaped()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Taped"));
    hand.window->setProperty("place", "house");
    QVERIFY(
        hand.tapAll({"Eave line*", "4", "0", "Feet", "Slope*", "6 in 12", "Add run E1", "2", "4", "Feet"}));
    // 3, 4, 6: acos((9 + 16 - 36) / 24) = 117.28 degrees, by the law of cosines.
    QVERIFY(hand.tapAll({"Corner before it*", "Two sides and a diagonal", "3", "Feet", "Side after*", "4",
                         "Feet", "Diagonal*", "6", "Feet"}));
    QCOMPARE(hand.app.editor()->entry()->cornerWords(), "117.28°");
    QVERIFY(hand.tap("Add run E2"));
    const auto* taped = std::get_if<site::TapedTriangle>(&hand.app.editor()->job().chains[0].corners[0]);
    QVERIFY(taped != nullptr);
    QCOMPARE(taped->diagonal.entered, std::string("6'"));
}

void FieldTrouble::aRunIsMeasuredAgain()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"E1, *", "Clear", "4", "0", "Feet", "1/2 inch", "Measured again"}));
    QCOMPARE(hand.app.editor()->spread(), "1/2\"");
    QVERIFY(hand.find("40' 0\" counts") != nullptr);
    QVERIFY(hand.tap("Let 40' 0 1/2\" count"));
    QCOMPARE(hand.app.editor()->job().chains[0].runs[0].counts, std::size_t{1});
    QVERIFY(hand.tap("Forget the measure that counts"));
    QCOMPARE(hand.app.editor()->job().chains[0].runs[0].lengths.size(), std::size_t{1});
    QCOMPARE(hand.app.editor()->job().chains[0].runs[0].lengths[0].entered, std::string("40'"));
}

void FieldTrouble::aChainThatMissesNamesTheRun()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Misses"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "4", "0", "Feet", "Slope*", "6 in 12", "Add run E1"}));
    for (const char* run : {"E2", "E3", "E4"})
        QVERIFY(hand.tapAll(
            {run[1] == '3' ? "3" : "2", run[1] == '3' ? "9" : "4", "Feet", QString("Add run ") + run}));
    QVERIFY(hand.tap("Close the chain"));
    QCOMPARE(hand.app.editor()->closure(), JobEditor::Closure::Off);
    QCOMPARE(signOf(hand, "It does not come back to its start"), "blocks");
    QVERIFY(hand.tap("Measure E3 again: it would close at 40' 0\""));
    QCOMPARE(hand.app.editor()->runId(), "E3");
    QVERIFY(hand.tapAll({"Clear", "4", "0", "Feet", "Keep"}));
    QCOMPARE(hand.app.editor()->closure(), JobEditor::Closure::Closes);
}

void FieldTrouble::aWarningStandsWithAReason()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"E1, *", "Clear", "4", "0", "Feet", "2", "Inches", "Measured again", "Check*"}));
    const int open = hand.app.check()->openWarnings();
    QVERIFY(open > 0);
    QVERIFY(hand.tap("Go on, with a reason"));
    hand.typeKeys("gutter in the way");
    QVERIFY(hand.tap("Go on"));
    QCOMPARE(hand.app.check()->openWarnings(), open - 1);
    QVERIFY(hand.find("Change the reason") != nullptr);
    QVERIFY(hand.tapAll({"Order", "Send the order", "Write alder-r1.order.json here"}));
    QTRY_VERIFY(hand.app.order()->isSent());
    const auto order =
        documents::readOrder(*storage::readDocument(hand.app.order()->writtenTo().toStdString()));
    QVERIFY(order.ok());
    QCOMPARE(order->value.job.acknowledgements.at(0).reason, std::string("gutter in the way"));
}

/// Seen: what was typed for one warning was still there when the next was taken in hand, and became its
/// reason.
void FieldTrouble::eachWarningHasItsOwnReason()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"E1, *", "Clear", "4", "0", "Feet", "2", "Inches", "Measured again"}));
    QVERIFY(hand.tapAll({"E3, *", "Clear", "4", "0", "Feet", "3", "Inches", "Measured again"}));
    QVERIFY(hand.tap("Check*"));
    QVERIFY(hand.tap("Go on, with a reason"));
    const QString first = hand.app.check()->statementInHand();
    hand.typeKeys("gutter in the way");
    std::vector<QQuickItem*> offers = look::visibleItems(*hand.window);
    const auto isNone = [](QQuickItem* item) {
        return look::spokenName(item) != "Go on, with a reason" || !look::isPressable(item);
    };
    offers.erase(std::remove_if(offers.begin(), offers.end(), isNone), offers.end());
    QVERIFY(offers.size() > 1);
    for (const QQuickItem* offer : offers)
        if (hand.app.check()->statementInHand() == first)
            QTest::mouseClick(hand.window, Qt::LeftButton, {}, Hand::whereItStands(*offer).toPoint());
    QVERIFY(hand.app.check()->hasInHand());
    QVERIFY(hand.app.check()->statementInHand() != first);
    hand.typeKeys("as drawn");
    QVERIFY(hand.tap("Go on"));
    QCOMPARE(hand.app.editor()->job().acknowledgements.size(), std::size_t{1});
    QCOMPARE(hand.app.editor()->job().acknowledgements[0].reason, std::string("as drawn"));
}

/// Seen: the row that was tapped took no focus, so the size was not told before another trim's was shown.
void FieldTrouble::aSizeBeingTypedIsKept()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"Trim*", "Kick"}));
    QTest::keySequence(hand.window, QKeySequence::SelectAll);
    hand.typeKeys("3/4");
    QVERIFY(hand.tap("Fascia cover*"));
    QCOMPARE(hand.app.trim()->trim(), "fascia-cover");
    hand.app.trim()->setTrim("eave-drip-edge");
    const TrimSizes& sizes = *hand.app.trim()->sizes();
    QCOMPARE(sizes.index(2).data(TrimSizes::LabelRole).toString(), "Kick");
    QCOMPARE(sizes.index(2).data(TrimSizes::ValueRole).toString(), "3/4\"");
}

void FieldTrouble::aJobInHandIsPutDownByTheFilter()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"Jobs", "More about Alder"}));
    QVERIFY(hand.find("Delete") != nullptr);
    QVERIFY(hand.tap("Archived"));
    QTRY_VERIFY(hand.find("Delete") == nullptr);
}

void FieldTrouble::aChangedOrderSaysWhatChanged()
{
    Hand hand;
    QVERIFY(hasHouse(hand));
    QVERIFY(hand.tapAll({"Order", "Send the order", "Write alder-r1.order.json here"}));
    QTRY_VERIFY(hand.app.order()->isSent());
    QVERIFY(hand.tapAll({"House", "E2, *", "Clear", "2", "5", "Feet", "Keep", "Order"}));
    QCOMPARE(hand.app.order()->revision(), 2);
    QVERIFY(hand.app.order()->changes()->count() >= 1);
    const QModelIndex change = hand.app.order()->changes()->index(0);
    const QString words = QString("%1: %2").arg(change.data(ChoiceList::WordsRole).toString(),
                                                change.data(ChoiceList::DetailRole).toString());
    const std::vector<QQuickItem*> items = look::visibleItems(*hand.window);
    QVERIFY2(std::any_of(items.begin(), items.end(),
                         [&](const QQuickItem* item) { return item->property("text").toString() == words; }),
             qPrintable(words));
    QVERIFY(hand.tapAll({"House", "E4, *", "Clear", "2", "5", "Feet", "Keep", "Order", "Send the order",
                         "Write alder-r2.order.json here"}));
    QTRY_VERIFY(hand.app.order()->isSent());

    QProcess shop;
    shop.start(LAPWRIGHT_PROGRAM,
               {"receive", hand.folder.filePath("alder-r1.order.json"),
                hand.folder.filePath("alder-r2.order.json"), "--db", hand.folder.filePath("shop.db")});
    QVERIFY(shop.waitForFinished(60'000));
    const QByteArray said = shop.readAllStandardOutput() + shop.readAllStandardError();
    QVERIFY2(shop.exitCode() == 0 && said.contains("revision 2"), said.constData());
}

void FieldTrouble::aJobComesFromAnotherTablet()
{
    std::string text;
    {
        Hand first;
        QVERIFY(hasHouse(first));
        text = documents::writeJob(first.app.editor()->document());
    }
    Hand second;
    QVERIFY(storage::writeDocument(second.folder.filePath("alder.job.json").toStdString(), text).ok());
    QVERIFY(second.tapAll({"Take in a file", "alder.job.json*"}));
    QCOMPARE(second.app.editor()->name(), "Alder");
    QVERIFY(second.tapAll({"E1, *", "Clear", "4", "1", "Feet", "Keep"}));
    QCOMPARE(second.app.editor()->job().chains[0].runs[0].lengths[0].entered, std::string("41'"));
    QVERIFY2(second.tapAll({"Jobs", "Take in a file", "alder.job.json*"}),
             "as the first tablet still has it");
    QCOMPARE(second.app.editor()->name(), "Alder (from another tablet)");
    QVERIFY(second.tapAll({"Jobs", "Alder, *"}));
    QCOMPARE(second.app.editor()->job().chains[0].runs[0].lengths[0].entered, std::string("41'"));
}

void FieldTrouble::whatIsSaidOfOnePieceIsNotSaidOfTheNext()
{
    Hand hand;
    QVERIFY(storage::writeDocument(hand.folder.filePath("truck.json").toStdString(),
                                   documents::writeLoad({twoBundles(), {}}))
                .ok());
    QVERIFY(hand.tapAll({"Delivery*", "Open a load list", "truck.json*", "E2.1*", "One more",
                         "Put the piece down uncounted", "E1.1*", "Came"}));
    QCOMPARE(hand.app.delivery()->received(), 1);
}

void FieldTrouble::twoTabletsCountOneLoad()
{
    const QTemporaryDir between;
    const auto bringTruck = [](const Hand& hand, const char* file = "truck.json", const char* id = nullptr) {
        schedule::Load load = twoBundles();
        load.id = id == nullptr ? load.id : id;
        return storage::writeDocument(hand.folder.filePath(file).toStdString(),
                                      documents::writeLoad({load, {}}))
            .ok();
    };
    {
        Hand first;
        QVERIFY(bringTruck(first));
        first.app.setHandingOn({HandingOn::Way::ShowFolder, [](const QString&) { return true; }});
        QVERIFY(first.tapAll({"Delivery*", "Open a load list", "truck.json*", "E1.1*", "Came",
                              "Write the receipt", "Write the receipt here"}));
        const QStringList written = QDir(first.folder.path()).entryList({"receipt-*.json"});
        QCOMPARE(written.size(), 1);
        QVERIFY(QFile::copy(first.folder.filePath(written[0]), between.filePath("other.json")));
        QVERIFY(first.find("Show the folder") != nullptr);
        QVERIFY(bringTruck(first, "next.json", "00000000-0000-4000-8000-00000000cccc"));
        QVERIFY(first.tapAll({"Take in a load list, or another tablet's receipt", "next.json*"}));
        QTRY_VERIFY2(first.find("Show the folder") == nullptr, "that was the receipt of another load");
    }
    Hand second;
    QVERIFY(bringTruck(second));
    QVERIFY(QFile::copy(between.filePath("other.json"), second.folder.filePath("other.json")));
    QVERIFY(second.tapAll({"Delivery*", "Open a load list", "truck.json*", "All of bundle B2 came"}));
    QCOMPARE(second.app.delivery()->received(), 1);
    for (int time = 0; time < 2; ++time) {
        QVERIFY(second.tapAll({"Take in a load list, or another tablet's receipt", "other.json*"}));
        QTRY_COMPARE(second.app.delivery()->received(), 2);
        QCOMPARE(second.app.delivery()->missing(), 1);
    }
}

QTEST_MAIN(FieldTrouble)
#include "tst_field_trouble.moc"
