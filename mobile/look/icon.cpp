#include "icon.h"

#include "icon_shapes.h"

#include <QPainter>

#include <algorithm>

namespace lapwright::look {

namespace {

constexpr double grid = 24.0;
constexpr double strokeWidth = 2.0;

} // namespace

Icon::Icon(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    setImplicitSize(grid, grid);
}

void Icon::setName(const QString& name)
{
    if (name == name_)
        return;
    name_ = name;
    update();
    emit changed();
}

void Icon::setColour(const QColor& colour)
{
    if (colour == colour_)
        return;
    colour_ = colour;
    update();
    emit changed();
}

void Icon::paint(QPainter* painter)
{
    const double scale = std::min(width(), height()) / grid;
    painter->translate((width() - grid * scale) / 2.0, (height() - grid * scale) / 2.0);
    painter->scale(scale, scale);
    painter->strokePath(iconPath(name_),
                        QPen(colour_, strokeWidth, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
}

} // namespace lapwright::look
