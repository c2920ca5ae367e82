#include "app/seen_items.h"

#include <QAccessible>

namespace lapwright::field {

std::vector<QQuickItem*> visibleItems(const QQuickWindow& window)
{
    std::vector<QQuickItem*> all, open{window.contentItem()};
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

QString spokenName(QQuickItem* item)
{
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(item);
    return accessible == nullptr ? QString() : accessible->text(QAccessible::Name);
}

bool isPressable(const QQuickItem* item)
{
    return item->inherits("QQuickAbstractButton") || item->inherits("QQuickComboBox") ||
           item->inherits("QQuickTextField");
}

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
    }
    return wrong;
}

} // namespace lapwright::field
