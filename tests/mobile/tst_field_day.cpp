#include "app/message_count.h"
#include "app/window.h"
#include "documents/shop.h"
#include "mobile/tablet_at.h"
#include "storage/document_file.h"

#include <QAccessible>
#include <QDir>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QTemporaryDir>
#include <QtTest>

using namespace lapwright;
using namespace lapwright::field;

namespace {

/// Smallest side of what is to be hit with a glove: 9 mm at 160 dpi.
constexpr double leastTouch = 48.0;

QString nameOf(QQuickItem* item)
{
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(item);
    return accessible == nullptr ? QString() : accessible->text(QAccessible::Name);
}

bool isPressable(QQuickItem* item)
{
    return item->inherits("QQuickAbstractButton");
}

/// The field app on a window, worked by taps and keys on what a screen reader would name.
struct Hand {
    MessageCount counting;
    QTemporaryDir folder;
    Tablet tablet = tabletAt(folder.filePath("tablet.db"));
    FieldApp app{tablet};
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;
    int taps = 0;

    Hand()
    {
        app.settings()->setFolder(folder.path());
        window = openWindow(engine, app);
    }

    std::vector<QQuickItem*> visibleItems() const
    {
        std::vector<QQuickItem*> all, open{window->contentItem()};
        while (!open.empty()) {
            QQuickItem* item = open.back();
            open.pop_back();
            if (!item->isVisible() || item->opacity() == 0.0)
                continue;
            all.push_back(item);
            for (QQuickItem* child : item->childItems())
                open.push_back(child);
        }
        return all;
    }
    /// The visible thing whose name is `name`, or begins with it where `name` ends in "*".
    QQuickItem* find(const QString& name) const
    {
        const bool begins = name.endsWith('*');
        for (QQuickItem* item : visibleItems()) {
            const QString own = nameOf(item);
            if (own.isEmpty() || item->inherits("QQuickText"))
                continue;
            if (begins ? own.startsWith(name.chopped(1)) : own == name)
                return item;
        }
        return nullptr;
    }
    bool tap(const QString& name)
    {
        QQuickItem* item = nullptr;
        if (!QTest::qWaitFor([&] { return (item = find(name)) != nullptr && item->isEnabled(); }, 5000)) {
            qWarning("nothing to tap is called %s", qPrintable(name));
            return false;
        }
        QTest::qWait(20);
        const QPointF middle = item->mapToScene({item->width() / 2.0, item->height() / 2.0});
        QTest::mouseClick(window, Qt::LeftButton, {}, middle.toPoint());
        ++taps;
        QTest::qWait(20);
        return true;
    }
    bool tapAll(const QStringList& names)
    {
        for (const QString& name : names)
            if (!tap(name))
                return false;
        return true;
    }
    void typeKeys(const QString& keys)
    {
        for (const QChar key : keys)
            QTest::keyClick(window, key.toLatin1());
    }
    bool isOn() const { return window != nullptr; }
};

} // namespace

/// Guards: the installer's whole day and the crew lead's check through the real screens, by taps and keys on
/// what is named for screen readers; how few taps a run takes; that nothing typed is lost by turning the
/// tablet; that what is to be hit is large enough and has a name; that no screen says a warning.
class FieldDay : public QObject {
    Q_OBJECT

private slots:
    void theInstallersDay();
    void aRunTakesEightTapsAtMost();
    void theKeyboardDoesTheSame();
    void turningTheTabletKeepsWhatIsTyped();
    void undoAndRedo();
    void theCrewLeadsCheck();
    void everythingToTapIsLargeAndNamed_data();
    void everythingToTapIsLargeAndNamed();
    void cleanup();
};

void FieldDay::cleanup()
{
    QCOMPARE(MessageCount::warnings(), QStringList());
}

void FieldDay::theInstallersDay()
{
    Hand hand;
    QVERIFY(hand.isOn());
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

void FieldDay::theCrewLeadsCheck()
{
    Hand hand;
    schedule::Load load;
    load.id = "00000000-0000-4000-8000-00000000aaaa";
    load.truck = "White truck";
    load.madeAt = "2026-11-25T08:00:00Z";
    const schedule::LoadedPiece piece{"E1.1", 2, "E1", "P1", Length::feet(10)};
    load.bundles = {{"B1",
                     "00000000-0000-4000-8000-00000000bbbb",
                     "Alder",
                     {"galvanised-steel", "24 ga", "Slate"},
                     {piece},
                     9.0,
                     false},
                    {"B2",
                     "00000000-0000-4000-8000-00000000bbbb",
                     "Alder",
                     {"galvanised-steel", "24 ga", "Slate"},
                     {{"E2.1", 1, "E2", "P1", Length::feet(9)}},
                     9.0,
                     false}};
    const QString path = hand.folder.filePath("truck.json");
    QVERIFY(storage::writeDocument(path.toStdString(), documents::writeLoad({load, {}})).ok());
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
    int found = 0;
    for (QQuickItem* item : hand.visibleItems()) {
        if (!isPressable(item))
            continue;
        ++found;
        QVERIFY2(!nameOf(item).isEmpty(), item->metaObject()->className());
        const QByteArray what = nameOf(item).toUtf8() + " " + QByteArray::number(item->width()) + " x " +
                                QByteArray::number(item->height());
        QVERIFY2(item->width() >= leastTouch && item->height() >= leastTouch, what.constData());
    }
    QVERIFY(found >= 5);
}

QTEST_MAIN(FieldDay)
#include "tst_field_day.moc"
