#include "mobile/hand.h"

#include <QDir>
#include <QProcess>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::field;

/// Guards: the installer's whole day and the crew lead's check through the real screens, by taps and keys on
/// what is named for screen readers; how few taps a run takes; that nothing typed is lost by turning the
/// tablet; that what is to be hit is large enough and has a name; that no screen says a warning.
class FieldDay : public QObject {
    Q_OBJECT

private slots:
    void theInstallersDay_data();
    void theInstallersDay();
    void aRunTakesEightTapsAtMost();
    void theKeyboardDoesTheSame();
    void returnKeepsTheRunAfterATap_data();
    void returnKeepsTheRunAfterATap();
    void turningTheTabletKeepsWhatIsTyped();
    void undoAndRedo();
    void anotherLanguageReachesEveryWord();
    void aLegIsChangedInSight();
    void theCrewLeadsCheck_data();
    void theCrewLeadsCheck();
    void everythingToTapIsLargeAndNamed_data();
    void everythingToTapIsLargeAndNamed();
    void cleanup();
};

void FieldDay::cleanup()
{
    QCOMPARE(look::MessageCount::warnings(), QStringList());
}

void FieldDay::theInstallersDay_data()
{
    addSizes();
}

void FieldDay::theInstallersDay()
{
    QFETCH(QSize, size);
    Hand hand;
    QVERIFY(hand.isOn());
    hand.window->resize(size);
    QVERIFY(hand.tap("New job"));
    QVERIFY(hand.tap("Name of the job"));
    hand.typeKeys("Alder Cottage");
    QVERIFY(hand.tapAll({"House", "Eave line*"}));
    QCOMPARE(hand.app.editor()->name(), "Alder Cottage");
    QVERIFY(hand.tapAll({"4", "0", "Feet", "Slope*", "6 in 12", "Add run E1"}));
    QVERIFY(hand.tapAll(
        {"2", "4", "Feet", "Add run E2", "4", "0", "Feet", "Add run E3", "2", "4", "Feet", "Add run E4"}));
    QVERIFY(hand.tap("Close the chain"));
    QCOMPARE(hand.app.editor()->closure(), JobEditor::Closure::Closes);
    QVERIFY(hand.tapAll({"Trim*", "Usual trim*", "Check"}));
    QTRY_COMPARE(hand.app.check()->blocking(), 0);
    QVERIFY(hand.tapAll({"Order", "Send the order", "Write alder-cottage-r1.order.json here"}));
    QTRY_VERIFY(hand.app.order()->isSent());

    QProcess shop;
    shop.start(LAPWRIGHT_PROGRAM,
               {"receive", hand.app.order()->writtenTo(), "--db", hand.folder.filePath("shop.db")});
    QVERIFY(shop.waitForFinished(60'000));
    const QByteArray said = shop.readAllStandardOutput() + shop.readAllStandardError();
    QVERIFY2(shop.exitCode() == 0 && said.contains("taken in"), said.constData());
}

void FieldDay::aRunTakesEightTapsAtMost()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Taps"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "4", "0", "Feet", "Slope*", "6 in 12", "Add run E1"}));
    hand.taps = 0;
    QVERIFY(hand.tapAll({"2", "4", "Feet", "1", "0", "3/8 inch", "One sixteenth more", "Add run E2"}));
    const site::Run& run = hand.app.editor()->job().chains[0].runs[1];
    QCOMPARE(run.lengths[0].value, Length::feet(24) + Length::inches(10) + Length::sixtyFourths(28));
    QCOMPARE(run.slope.value(), Slope::twelfths(6));
    QVERIFY(std::holds_alternative<site::SquareOutside>(hand.app.editor()->job().chains[0].corners[0]));
    QVERIFY2(hand.taps <= 8, qPrintable(QString::number(hand.taps)));
}

void FieldDay::theKeyboardDoesTheSame()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Keys"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tap("Ridge"));
    hand.window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(hand.window));
    hand.typeKeys("12' 6 3/8");
    QTRY_COMPARE(hand.app.editor()->entry()->length()->text(), "12' 6 3/8");
    QTest::keyClick(hand.window, Qt::Key_Backspace);
    QTest::keyClick(hand.window, Qt::Key_Return);
    QTRY_COMPARE(hand.app.editor()->job().chains[0].runs.size(), std::size_t{1});
    QCOMPARE(hand.app.editor()->job().chains[0].runs[0].lengths[0].entered, std::string("12' 6"));
}

void FieldDay::returnKeepsTheRunAfterATap_data()
{
    QTest::addColumn<QStringList>("taps");
    QTest::newRow("kind") << QStringList{"Kind*", "Fascia"};
    QTest::newRow("square corner") << QStringList{"Corner before it*", "Square, inside"};
    QTest::newRow("chip") << QStringList{"Kind*", "Length*"};
}

/// Seen: the kind or corner that was tapped kept the focus out of sight, and Return pressed it again.
void FieldDay::returnKeepsTheRunAfterATap()
{
    QFETCH(QStringList, taps);
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Keys"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "4", "0", "Feet", "Slope*", "6 in 12", "Add run E1"}));
    QVERIFY(hand.tapAll(taps));
    hand.typeKeys("12' 6");
    QTest::keyClick(hand.window, Qt::Key_Return);
    QTRY_COMPARE(hand.app.editor()->job().chains[0].runs.size(), std::size_t{2});
    QCOMPARE(hand.app.editor()->job().chains[0].runs[1].lengths[0].entered, std::string("12' 6"));
}

void FieldDay::turningTheTabletKeepsWhatIsTyped()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Turned"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "1", "7", "Feet"}));
    hand.window->resize(800, 1280);
    QTest::qWait(100);
    QVERIFY(hand.tap("4"));
    QCOMPARE(hand.app.editor()->entry()->length()->text(), "17' 4");
    hand.window->resize(1280, 800);
    QTest::qWait(100);
    QVERIFY(hand.tapAll({"Add run E1"}));
    QCOMPARE(hand.app.editor()->job().chains[0].runs[0].lengths[0].entered, std::string("17' 4"));
}

void FieldDay::undoAndRedo()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Undone"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "9", "Feet", "Add run E1", "Undo: run E1 added"}));
    QVERIFY(hand.app.editor()->job().chains[0].runs.empty());
    QVERIFY(hand.tap("Redo: run E1 added"));
    QCOMPARE(hand.app.editor()->job().chains[0].runs.size(), std::size_t{1});
}

void FieldDay::anotherLanguageReachesEveryWord()
{
    Hand hand;
    QVERIFY(hand.app.editor()->newJob("Spoken"));
    hand.window->setProperty("place", "house");
    QVERIFY(hand.tapAll({"Eave line*", "1", "7", "Feet", "Settings"}));
    const int language = static_cast<int>(hand.app.settings()->languages().indexOf("eo"));
    QVERIFY(language > 0);
    QVERIFY(hand.tap("Language"));
    QVERIFY(hand.tap(hand.app.settings()->languageNames()[language]));
    QCOMPARE(hand.app.settings()->language(), "eo");
    QVERIFY(hand.tap("Domo"));
    QCOMPARE(hand.app.editor()->entry()->length()->text(), "17' ");
    QVERIFY(hand.tapAll({"Start another chain", "Tegmentrando*"}));
    QVERIFY(hand.find("Laboroj") != nullptr);
    hand.app.settings()->setLanguage("en");
    QTRY_VERIFY(hand.find("Jobs") != nullptr);
    QVERIFY(hand.tapAll({"Start another chain", "Eave line*"}));
}

void FieldDay::aLegIsChangedInSight()
{
    Hand hand;
    QVERIFY(hand.app.openSample());
    hand.window->setProperty("place", "trim");
    QTest::qWait(100);
    TrimModel& trim = *hand.app.trim();
    int row = 0;
    while (row < trim.sizes()->rowCount() && trim.sizes()->index(row).data(TrimSizes::KindRole).toInt() !=
                                                 static_cast<int>(TrimSizes::Kind::Leg))
        ++row;
    const QModelIndex leg = trim.sizes()->index(row);
    const QString label = leg.data(TrimSizes::LabelRole).toString();
    const QString girth = trim.girth();
    const look::Picture section = trim.section();
    QVERIFY(hand.tap(label + " longer"));
    QTRY_VERIFY(trim.girth() != girth);
    QVERIFY(!(trim.section() == section));
    QVERIFY(trim.sizes()->index(row).data(TrimSizes::ByHandRole).toBool());
    for (int i = 0; i < 40; ++i)
        trim.stepSize(row, 8);
    const QString most = trim.sizes()->index(row).data(TrimSizes::ValueRole).toString();
    QVERIFY2(trim.sizes()->index(row).data(TrimSizes::LimitsRole).toString().endsWith(most),
             "no longer than its limit");
}

void FieldDay::theCrewLeadsCheck_data()
{
    addSizes();
}

void FieldDay::theCrewLeadsCheck()
{
    QFETCH(QSize, size);
    Hand hand;
    hand.window->resize(size);
    const QString path = hand.folder.filePath("truck.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({twoBundles(), {}})).ok());
    QVERIFY(
        hand.tapAll({"Delivery", "Open a load list", "truck.json*", "E1.1*", "Came", "E1.1*", "Damaged"}));
    QVERIFY(hand.tapAll({"All of bundle B2 came"}));
    QCOMPARE(hand.app.delivery()->missing(), 0);
    QCOMPARE(hand.app.delivery()->faulty(), 1);
    QVERIFY(hand.tapAll({"Write the receipt", "Write the receipt here"}));
    const QStringList written = QDir(hand.folder.path()).entryList({"receipt-*.json"});
    QCOMPARE(written.size(), 1);
    const auto read =
        documents::readReceipt(*storage::readDocument(hand.folder.filePath(written[0]).toStdString()));
    QVERIFY(read.ok());
    QCOMPARE(read->value.events.size(), std::size_t{3});
}

void FieldDay::everythingToTapIsLargeAndNamed_data()
{
    QTest::addColumn<QString>("place");
    QTest::addColumn<QSize>("size");
    for (const char* place : {"jobs", "form", "house", "trim", "check", "order", "delivery", "settings"}) {
        QTest::addRow("%s, landscape", place) << place << QSize(1280, 800);
        QTest::addRow("%s, portrait", place) << place << QSize(800, 1280);
        QTest::addRow("%s, 7 inches", place) << place << QSize(1024, 600);
    }
}

void FieldDay::everythingToTapIsLargeAndNamed()
{
    QFETCH(QString, place);
    QFETCH(QSize, size);
    Hand hand;
    QVERIFY(hand.app.openSample());
    hand.app.editor()->setChain(1);
    hand.window->resize(size);
    hand.window->setProperty("place", place);
    QTest::qWait(150);
    QCOMPARE(look::hardToHit(*hand.window), QStringList());
    const std::vector<QQuickItem*> items = look::visibleItems(*hand.window);
    QVERIFY(std::count_if(items.begin(), items.end(), look::isPressable) >= 5);
}

QTEST_MAIN(FieldDay)
#include "tst_field_day.moc"
