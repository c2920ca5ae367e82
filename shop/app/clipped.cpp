#include "clipped.h"

#include <QQuickItem>
#include <QQuickWindow>

namespace lapwright::shop_app {

namespace {

/// Rounding of a text's own size, pixels.
constexpr double hair = 1.0;

bool isReadable(const QQuickItem& text, const QRectF& window)
{
    if (text.property("truncated").toBool() ||
        text.property("contentHeight").toDouble() > text.height() + hair ||
        (text.property("contentWidth").toDouble() > text.width() + hair &&
         text.property("horizontalAlignment").toInt() == Qt::AlignLeft))
        return false;
    return window.adjusted(-hair, -hair, hair, hair)
        .contains(text.mapRectToScene(QRectF(0.0, 0.0, text.width(), text.height())));
}

void collect(const QQuickItem& item, const QRectF& window, QStringList& clipped)
{
    if (!item.isVisible() || item.inherits("QQuickFlickable"))
        return;
    if (item.inherits("QQuickText")) {
        const QString words = item.property("text").toString();
        if (!words.isEmpty() && !isReadable(item, window))
            clipped.append(words);
    }
    for (const QQuickItem* child : item.childItems())
        collect(*child, window, clipped);
}

} // namespace

QStringList clippedWords(QQuickWindow& window)
{
    QStringList clipped;
    collect(*window.contentItem(), QRectF(0.0, 0.0, window.width(), window.height()), clipped);
    return clipped;
}

} // namespace lapwright::shop_app
