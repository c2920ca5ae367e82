#include "overlaps.h"

#include "seen_items.h"

#include <QColor>

#include <algorithm>

namespace lapwright::look {

namespace {

/// Rounding of places and of a text's own size, in pixels.
constexpr double hair = 1.5;

struct Seen {
    QQuickItem* item = nullptr;
    QRectF where; ///< in the window, what is left of it there
    QString name;
};

bool isText(const QQuickItem& item)
{
    return item.inherits("QQuickText");
}

/// Where the ink of a text is, which has more room than it fills; everything of another item.
QRectF inked(const QQuickItem& item)
{
    const QRectF room(0.0, 0.0, item.width(), item.height());
    if (!isText(item))
        return room;
    QRectF ink(0.0, 0.0, std::min(item.property("contentWidth").toDouble(), room.width()),
               std::min(item.property("contentHeight").toDouble(), room.height()));
    const int across = item.property("effectiveHorizontalAlignment").toInt();
    const int down = item.property("verticalAlignment").toInt();
    if (across == Qt::AlignRight)
        ink.moveRight(room.right());
    if (across == Qt::AlignHCenter)
        ink.moveLeft((room.width() - ink.width()) / 2.0);
    if (down == Qt::AlignBottom)
        ink.moveBottom(room.bottom());
    if (down == Qt::AlignVCenter)
        ink.moveTop((room.height() - ink.height()) / 2.0);
    return ink;
}

QRectF whereSeen(const QQuickItem& item, const QQuickWindow& window)
{
    QRectF where = item.mapRectToScene(inked(item)) & QRectF(0.0, 0.0, window.width(), window.height());
    for (const QQuickItem* outer = item.parentItem(); outer != nullptr; outer = outer->parentItem())
        if (outer->clip())
            where &= outer->mapRectToScene(QRectF(0.0, 0.0, outer->width(), outer->height()));
    return where;
}

bool isOpaque(const QQuickItem& item)
{
    return item.inherits("QQuickRectangle") && item.isVisible() && item.opacity() == 1.0 &&
           item.property("color").value<QColor>().alpha() == 255;
}

/// Whether something painted later, beside the item or beside what it lies in, hides it.
bool isCovered(const QQuickItem& item, const QRectF& where)
{
    for (const QQuickItem* inner = &item; inner->parentItem() != nullptr; inner = inner->parentItem()) {
        const QList<QQuickItem*> beside = inner->parentItem()->childItems();
        for (auto later = beside.indexOf(const_cast<QQuickItem*>(inner)) + 1; later < beside.size(); ++later)
            if (isOpaque(*beside[later]) && beside[later]->z() >= inner->z() &&
                beside[later]
                    ->mapRectToScene(QRectF(0.0, 0.0, beside[later]->width(), beside[later]->height()))
                    .contains(where))
                return true;
    }
    return false;
}

std::vector<Seen> readOrHit(const QQuickWindow& window)
{
    std::vector<Seen> all;
    for (QQuickItem* item : visibleItems(window)) {
        const QString words = isText(*item) ? item->property("text").toString() : QString();
        if (words.isEmpty() && !isPressable(item))
            continue;
        const QRectF where = whereSeen(*item, window);
        if (where.width() > hair && where.height() > hair && !isCovered(*item, where))
            all.push_back({item, where, words.isEmpty() ? spokenName(item) : words});
    }
    return all;
}

bool belongs(const QQuickItem* inner, const QQuickItem* outer)
{
    for (; inner != nullptr; inner = inner->parentItem())
        if (inner == outer)
            return true;
    return false;
}

} // namespace

QStringList overlaps(const QQuickWindow& window)
{
    const std::vector<Seen> all = readOrHit(window);
    QStringList found;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const QRectF both = all[i].where & all[j].where;
            if (both.width() > hair && both.height() > hair && !belongs(all[i].item, all[j].item) &&
                !belongs(all[j].item, all[i].item))
                found << QString("\"%1\" and \"%2\" lie over each other").arg(all[j].name, all[i].name);
        }
    return found;
}

} // namespace lapwright::look
