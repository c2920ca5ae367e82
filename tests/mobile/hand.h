#pragma once

#include "app/window.h"
#include "documents/shop.h"
#include "look/message_count.h"
#include "look/seen_items.h"
#include "mobile/tablet_at.h"
#include "storage/document_file.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QTemporaryDir>
#include <QtTest>

namespace lapwright::field {

/// The field app on a window, worked by taps and keys on what a screen reader would name.
struct Hand {
    look::MessageCount counting;
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

    /// The visible thing whose name is `name`, or begins with it where `name` ends in "*"; what can be
    /// pressed before what only says so.
    QQuickItem* find(const QString& name) const
    {
        const bool begins = name.endsWith('*');
        QQuickItem* found = nullptr;
        for (QQuickItem* item : look::visibleItems(*window)) {
            const QString own = look::spokenName(item);
            if (own.isEmpty() || item->inherits("QQuickText") ||
                !(begins ? own.startsWith(name.chopped(1)) : own == name))
                continue;
            if (look::isPressable(item))
                return item;
            found = found == nullptr ? item : found;
        }
        return found;
    }
    /// The middle of what is to be tapped, once it stands still.
    static QPointF whereItStands(const QQuickItem& item)
    {
        const auto middle = [&item] { return item.mapToScene({item.width() / 2.0, item.height() / 2.0}); };
        for (QPointF before = middle();; before = middle()) {
            QTest::qWait(20);
            if (middle() == before)
                return before;
        }
    }
    bool tap(const QString& name)
    {
        QTest::qWait(20); // rows that a list has let go of are still there until then
        QQuickItem* item = nullptr;
        if (!QTest::qWaitFor([&] { return (item = find(name)) != nullptr && item->isEnabled(); }, 5000)) {
            qWarning("nothing to tap is called %s", qPrintable(name));
            return false;
        }
        const QPointF middle = whereItStands(*item);
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

/// Both ways up, and a small tablet.
inline void addSizes()
{
    QTest::addColumn<QSize>("size");
    QTest::newRow("landscape") << QSize(1280, 800);
    QTest::newRow("portrait") << QSize(800, 1280);
    QTest::newRow("7 inches") << QSize(1024, 600);
    QTest::newRow("7 inches, portrait") << QSize(600, 1024);
}

/// Two bundles for one invented house.
inline schedule::Load twoBundles()
{
    schedule::Load made;
    made.id = "00000000-0000-4000-8000-00000000aaaa";
    made.truck = "White truck";
    made.madeAt = "2026-11-25T08:00:00Z";
    const schedule::LoadedPiece piece{"E1.1", 2, "E1", "P1", Length::feet(10)};
    made.bundles = {{"B1",
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
    return made;
}

} // namespace lapwright::field
