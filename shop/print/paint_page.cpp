#include "print/paint_page.h"

#include "paint/painter.h"

#include <QPainter>
#include <QPainterPath>

namespace lapwright::print {

namespace {

/// All dark modules as one path, so that no seam shows between neighbours.
QPainterPath outlineOf(const PlacedCode& placed)
{
    QPainterPath outline;
    outline.setFillRule(Qt::WindingFill);
    for (std::size_t row = 0; row < placed.code.size; ++row)
        for (std::size_t column = 0; column < placed.code.size;) {
            std::size_t end = column;
            while (end < placed.code.size && placed.code.at(end, row))
                ++end;
            if (end > column)
                outline.addRect(placed.corner.x + static_cast<double>(column) * placed.module,
                                placed.corner.y + static_cast<double>(row) * placed.module,
                                static_cast<double>(end - column) * placed.module, placed.module);
            column = std::max(end, column + 1);
        }
    return outline;
}

} // namespace

void paint(QPainter& painter, const Page& page, const QRectF& into)
{
    paint::paint(painter, page.list, into);
    painter.save();
    painter.setTransform(paint::placed(page.list, into), true);
    for (const PlacedCode& code : page.codes)
        painter.fillPath(outlineOf(code), Qt::black);
    painter.restore();
}

} // namespace lapwright::print
