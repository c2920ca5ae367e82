#include "seen_items.h"

#include <QAccessible>

namespace lapwright::look {

namespace {

/// A row that its list keeps for later use: not drawn, though it calls itself visible.
bool isKeptForLater(QQuickItem* item)
{
    QQuickItem* list = item->parentItem() == nullptr ? nullptr : item->parentItem()->parentItem();
    if (list == nullptr || !list->property("reuseItems").toBool() ||
        list->property("contentItem").value<QQuickItem*>() != item->parentItem())
        return false;
    for (int index = 0; index < list->property("count").toInt(); ++index) {
        QQuickItem* row = nullptr;
        if (QMetaObject::invokeMethod(list, "itemAtIndex", Q_RETURN_ARG(QQuickItem*, row),
                                      Q_ARG(int, index)) &&
            row == item)
            return false;
    }
    return true;
}

} // namespace

std::vector<QQuickItem*> visibleItems(const QQuickWindow& window)
{
    std::vector<QQuickItem*> all, open{window.contentItem()};
    while (!open.empty()) {
        QQuickItem* item = open.back();
        open.pop_back();
        if (!item->isVisible() || item->opacity() == 0.0 || isKeptForLater(item))
            continue;
        all.push_back(item);
        for (QQuickItem* child : item->childItems())
            open.push_back(child);
    }
    return all;
}

QString spokenName(QQuickItem* item)
{
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(item);
    return accessible == nullptr ? QString() : accessible->text(QAccessible::Name);
}

QQuickItem* listNamed(const QQuickWindow& window, const QString& name)
{
    for (QQuickItem* item : visibleItems(window))
        if (item->inherits("QQuickListView") && spokenName(item) == name)
            return item;
    return nullptr;
}

bool isPressable(const QQuickItem* item)
{
    return item->inherits("QQuickAbstractButton") || item->inherits("QQuickComboBox") ||
           item->inherits("QQuickTextField");
}

namespace {

bool scrolls(const QQuickItem& item)
{
    for (const QQuickItem* outer = item.parentItem(); outer != nullptr; outer = outer->parentItem())
        if (outer->inherits("QQuickFlickable"))
            return true;
    return false;
}

bool isWithin(const QQuickItem& item, const QQuickWindow& window)
{
    const QRectF where = item.mapRectToScene(QRectF(0.0, 0.0, item.width(), item.height()));
    return QRectF(0.0, 0.0, window.width(), window.height()).adjusted(-1.0, -1.0, 1.0, 1.0).contains(where);
}

} // namespace

QStringList hardToHit(const QQuickWindow& window)
{
    QStringList wrong;
    for (QQuickItem* item : visibleItems(window)) {
        if (!isPressable(item))
            continue;
        const QString name = spokenName(item);
        if (name.isEmpty())
            wrong << QString("a %1 without a name").arg(item->metaObject()->className());
        if (item->width() < leastTouch || item->height() < leastTouch)
            wrong << QString("\"%1\" is %2 by %3").arg(name).arg(item->width()).arg(item->height());
        if (!scrolls(*item) && !isWithin(*item, window))
            wrong << QString("\"%1\" reaches beyond the window").arg(name);
    }
    return wrong;
}

namespace {

/// Rounding of a text's own size, in pixels.
constexpr double hair = 1.0;

bool scrollsSideways(const QQuickItem& item)
{
    for (const QQuickItem* outer = item.parentItem(); outer != nullptr; outer = outer->parentItem())
        if (outer->inherits("QQuickFlickable") &&
            (outer->property("orientation").toInt() == Qt::Horizontal ||
             outer->property("contentWidth").toDouble() > outer->width() + hair))
            return true;
    return false;
}

/// Whether anything of it is on the window: what a screen holds ready but does not show has no size.
bool takesRoom(const QQuickItem& item)
{
    for (const QQuickItem* outer = &item; outer->parentItem() != nullptr; outer = outer->parentItem())
        if (outer->width() < hair || outer->height() < hair)
            return false;
    return true;
}

bool isWhole(const QQuickItem& text, const QQuickWindow& window)
{
    if (text.property("truncated").toBool() ||
        text.property("contentHeight").toDouble() > text.height() + hair ||
        text.property("contentWidth").toDouble() > text.width() + hair)
        return false;
    const QRectF seen = text.mapRectToScene(QRectF(0.0, 0.0, text.width(), text.height()));
    return scrollsSideways(text) || (seen.left() >= -hair && seen.right() <= window.width() + hair);
}

QString wordsOf(const QQuickItem& item)
{
    return item.inherits("QQuickText") ? item.property("text").toString() : QString();
}

} // namespace

QStringList cutOff(const QQuickWindow& window)
{
    QStringList cut;
    for (QQuickItem* item : visibleItems(window)) {
        const QString words = wordsOf(*item);
        if (!words.isEmpty() && takesRoom(*item) && !isWhole(*item, window))
            cut << QString("\"%1\" is cut off").arg(words);
    }
    return cut;
}

} // namespace lapwright::look
