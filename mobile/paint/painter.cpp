#include "paint/painter.h"

#include "drawing/text.h"
#include "measure/rounding.h"
#include "paint/face.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPen>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::paint {

namespace {

using drawing::Anchor;
using drawing::Dash;
using drawing::Fill;
using drawing::Hatch;
using drawing::Role;
using drawing::Stroke;

/// Text is set this large and then scaled: whole pixel sizes would round a 3 mm letter.
constexpr int setSize = 100;

/// A hatch pattern's pitch and the width of its lines, in millimetres, as in the SVG.
constexpr double linePitch = 2.0;
constexpr double lineWidth = 0.2;
constexpr double dotPitch = 1.5;
constexpr double dotRadius = 0.25;

QColor colourOf(drawing::Colour colour)
{
    return QColor(colour.red, colour.green, colour.blue);
}

QPointF pointOf(drawing::Point point)
{
    return QPointF(point.x, point.y);
}

double degrees(double radians)
{
    return radians * 180.0 / std::numbers::pi;
}

/// Dash lengths in widths of the line, the same on the page as in the SVG, where they are in millimetres.
QList<qreal> dashes(const Stroke& stroke)
{
    const double unit = std::max(stroke.width, 0.2) / stroke.width;
    switch (stroke.dash) {
    case Dash::Solid:
        return {};
    case Dash::Dashed:
        return {6.0 * unit, 4.0 * unit};
    case Dash::Dotted:
        // A dash of no length is not drawn; with its round ends this one is a dot.
        return {0.01, 5.0 * unit};
    case Dash::DashDot:
        return {10.0 * unit, 3.0 * unit, 2.0 * unit, 3.0 * unit};
    }
    return {};
}

class ShapePainter {
public:
    ShapePainter(QPainter& painter, Ground ground) : painter_(painter), ground_(ground) {}

    void operator()(const drawing::Path& path) const
    {
        if (path.points.size() < 2)
            return;
        QPainterPath outline(pointOf(path.points.front()));
        for (std::size_t at = 1; at < path.points.size(); ++at)
            outline.lineTo(pointOf(path.points[at]));
        if (path.closed)
            outline.closeSubpath();
        draw(outline, path.role, path.stroke, path.fill);
    }

    void operator()(const drawing::Circle& circle) const
    {
        QPainterPath outline;
        outline.addEllipse(pointOf(circle.centre), circle.radius, circle.radius);
        draw(outline, circle.role, circle.stroke, circle.fill);
    }

    void operator()(const drawing::Arc& arc) const
    {
        const QRectF around(arc.centre.x - arc.radius, arc.centre.y - arc.radius, 2.0 * arc.radius,
                            2.0 * arc.radius);
        QPainterPath outline;
        outline.arcMoveTo(around, degrees(arc.start));
        outline.arcTo(around, degrees(arc.start), degrees(arc.sweep));
        draw(outline, arc.role, arc.stroke, std::nullopt);
    }

    void operator()(const drawing::Text& text) const
    {
        const QString words = QString::fromStdString(drawing::harmless(text.text));
        QFont face = pictureFace(text.bold);
        face.setPixelSize(setSize);
        const double advance = QFontMetricsF(face).horizontalAdvance(words);
        double start = 0.0;
        if (text.anchor == Anchor::Middle)
            start = -advance / 2.0;
        if (text.anchor == Anchor::End)
            start = -advance;
        painter_.save();
        painter_.translate(pointOf(text.at));
        painter_.rotate(-degrees(text.rotation));
        painter_.scale(text.size / setSize, text.size / setSize);
        painter_.setFont(face);
        painter_.setPen(colourOf(inkOn(ground_, text.role).line));
        painter_.drawText(QPointF(start, 0.0), words);
        painter_.restore();
    }

private:
    void draw(const QPainterPath& outline, Role role, const std::optional<Stroke>& stroke,
              const std::optional<Fill>& fill) const
    {
        if (fill && fill->ground)
            painter_.fillPath(outline, colourOf(fill->colour.value_or(inkOn(ground_, role).fill)));
        if (fill && fill->hatch != Hatch::None)
            hatch(outline, fill->hatch, colourOf(inkOn(ground_, role).line));
        if (stroke && stroke->width > 0.0)
            painter_.strokePath(outline, pen(*stroke, role));
    }

    [[nodiscard]] QPen pen(const Stroke& stroke, Role role) const
    {
        QPen made(colourOf(stroke.colour.value_or(inkOn(ground_, role).line)), stroke.width);
        made.setJoinStyle(Qt::RoundJoin);
        made.setCapStyle(stroke.dash == Dash::Dotted ? Qt::RoundCap : Qt::FlatCap);
        if (const QList<qreal> pattern = dashes(stroke); !pattern.isEmpty())
            made.setDashPattern(pattern);
        return made;
    }

    /// The pattern turned by an eighth, clipped to the outline, over a square about its bounds.
    void hatch(const QPainterPath& outline, Hatch hatch, const QColor& colour) const
    {
        const QRectF bounds = outline.boundingRect();
        const double reach = std::hypot(bounds.width(), bounds.height()) / 2.0;
        painter_.save();
        painter_.setClipPath(outline, Qt::IntersectClip);
        painter_.translate(bounds.center());
        painter_.rotate(45.0);
        if (hatch == Hatch::Dotted) {
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(colour);
            for (double y = -reach; y <= reach; y += dotPitch)
                for (double x = -reach; x <= reach; x += dotPitch)
                    painter_.drawEllipse(QPointF(x, y), dotRadius, dotRadius);
        } else {
            painter_.setPen(QPen(colour, lineWidth));
            for (double at = -reach; at <= reach; at += linePitch) {
                painter_.drawLine(QPointF(at, -reach), QPointF(at, reach));
                if (hatch == Hatch::Crossed)
                    painter_.drawLine(QPointF(-reach, at), QPointF(reach, at));
            }
        }
        painter_.restore();
    }

    QPainter& painter_;
    Ground ground_;
};

QRectF pageOf(const drawing::DisplayList& list)
{
    return QRectF(0.0, 0.0, inMillimetres(list.width), inMillimetres(list.height));
}

} // namespace

QTransform placed(const drawing::DisplayList& list, const QRectF& into)
{
    const QRectF page = pageOf(list);
    if (page.isEmpty() || into.isEmpty())
        return {};
    const double scale = std::min(into.width() / page.width(), into.height() / page.height());
    const QPointF corner = into.center() - scale * page.center();
    return QTransform(scale, 0.0, 0.0, scale, corner.x(), corner.y());
}

void paint(QPainter& painter, const drawing::DisplayList& list, const QRectF& into, Ground ground)
{
    paint(painter, list, placed(list, into), ground);
}

void paint(QPainter& painter, const drawing::DisplayList& list, const QTransform& place, Ground ground)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setTransform(place, true);
    painter.setClipRect(pageOf(list), Qt::IntersectClip);
    painter.fillRect(pageOf(list), colourOf(pageColour(ground)));
    const ShapePainter shapePainter(painter, ground);
    for (const drawing::Shape& shape : list.shapes)
        std::visit(shapePainter, shape);
    painter.restore();
}

} // namespace lapwright::paint
