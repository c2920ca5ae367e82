#include "plate.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace lapwright::look {

Plate::Plate(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void Plate::paint(QPainter* painter)
{
    const double inset = edgeWidth_ / 2.0;
    const QRectF box = QRectF(0.0, 0.0, width(), height()).adjusted(inset, inset, -inset, -inset);
    const double cut = std::min({notch_, box.width() / 2.0, box.height() / 2.0});
    const QPolygonF outline({box.topLeft(), QPointF(box.right() - cut, box.top()),
                             QPointF(box.right(), box.top() + cut), box.bottomRight(), box.bottomLeft()});
    painter->setPen(edgeWidth_ > 0.0 ? QPen(edge_, edgeWidth_, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin)
                                     : QPen(Qt::NoPen));
    painter->setBrush(colour_);
    painter->drawPolygon(outline);
}

} // namespace lapwright::look
