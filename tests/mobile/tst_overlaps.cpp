#include "look/overlaps.h"

#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QtTest>

#include <memory>

using namespace lapwright::look;

/// Guards: that the self-test sees what lies over something else, and nothing else.
class Overlaps : public QObject {
    Q_OBJECT

private slots:
    void findsWhatLiesOverSomething_data();
    void findsWhatLiesOverSomething();
};

void Overlaps::findsWhatLiesOverSomething_data()
{
    QTest::addColumn<QByteArray>("items");
    QTest::addColumn<QStringList>("found");
    QTest::newRow("words beside words")
        << QByteArray("Text { text: 'one' } Text { y: 40; text: 'two' }") << QStringList();
    QTest::newRow("words over words") << QByteArray("Text { text: 'one' } Text { x: 4; text: 'two' }")
                                      << QStringList{"\"one\" and \"two\" lie over each other"};
    QTest::newRow("room that a text does not fill")
        << QByteArray(
               "Text { width: 200; text: 'one'; horizontalAlignment: Text.AlignRight } Text { text: 'two' }")
        << QStringList();
    QTest::newRow("the words of a button") << QByteArray("Button { text: 'press' }") << QStringList();
    QTest::newRow("words over a button they do not belong to")
        << QByteArray(
               "Button { text: 'press'; Accessible.name: text; width: 90; height: 40 } Text { x: 70; y: 30; "
               "text: 'two' }")
        << QStringList{"\"press\" and \"two\" lie over each other"};
    QTest::newRow("under a sheet")
        << QByteArray("Text { text: 'one' } Rectangle { width: 200; height: 200; Text { text: 'two' } }")
        << QStringList();
    QTest::newRow("under a sheet that is seen through")
        << QByteArray("Text { text: 'one' } Rectangle { color: '#80ffffff'; width: 200; height: 200; "
                      "Text { text: 'two' } }")
        << QStringList{"\"one\" and \"two\" lie over each other"};
    QTest::newRow("scrolled out of sight")
        << QByteArray(
               "Text { text: 'one' } Item { y: 60; clip: true; width: 90; height: 30; Text { y: -60; text: "
               "'two' } }")
        << QStringList();
}

void Overlaps::findsWhatLiesOverSomething()
{
    QFETCH(QByteArray, items);
    QFETCH(QStringList, found);
    QQmlEngine engine;
    QQmlComponent component(&engine);
    component.setData(
        "import QtQuick\nimport QtQuick.Controls\nWindow { width: 300; height: 300; visible: true; " + items +
            " }",
        QUrl());
    const std::unique_ptr<QObject> made(component.create());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    QVERIFY2(window != nullptr, qPrintable(component.errorString()));
    QVERIFY(QTest::qWaitForWindowExposed(window));
    QCOMPARE(overlaps(*window), found);
}

QTEST_MAIN(Overlaps)
#include "tst_overlaps.moc"
