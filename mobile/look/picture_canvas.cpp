#include "picture_canvas.h"

#include "measure/rounding.h"
#include "paint/painter.h"

#include <QPainter>

#include <algorithm>

namespace lapwright::look {

namespace {

constexpr double largestZoom = 40.0;

bool sameSize(const Picture& one, const Picture& other)
{
    return !one.empty() && !other.empty() && one.list().width == other.list().width &&
           one.list().height == other.list().height;
}

} // namespace

PictureCanvas::PictureCanvas(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void PictureCanvas::paint(QPainter* painter)
{
    const auto ground = static_cast<paint::Ground>(ground_);
    const drawing::Colour page = paint::pageColour(ground);
    painter->fillRect(QRectF(0.0, 0.0, width(), height()), QColor(page.red, page.green, page.blue));
    if (!picture_.empty())
        paint::paint(*painter, picture_.list(), place(), ground);
}

void PictureCanvas::setPicture(const Picture& picture)
{
    if (picture == picture_)
        return;
    const bool keepPlace = sameSize(picture, picture_);
    picture_ = picture;
    if (!keepPlace)
        fit();
    update();
    emit pictureChanged();
}

void PictureCanvas::setGround(Ground ground)
{
    if (ground == ground_)
        return;
    ground_ = ground;
    update();
    emit groundChanged();
}

void PictureCanvas::fit()
{
    zoom_ = 1.0;
    offset_ = {};
    update();
    emit placeChanged();
}

void PictureCanvas::zoomAt(QPointF at, double factor)
{
    const QPointF under = toPage(at);
    zoom_ = std::clamp(zoom_ * factor, 1.0, largestZoom);
    offset_ += at - place().map(under);
    holdInView();
}

void PictureCanvas::pan(QPointF by)
{
    offset_ += by;
    holdInView();
}

QPointF PictureCanvas::toPage(QPointF at) const
{
    return place().inverted().map(at);
}

void PictureCanvas::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.size() != before.size())
        holdInView();
}

QTransform PictureCanvas::place() const
{
    if (picture_.empty())
        return {};
    const QPointF centre(width() / 2.0, height() / 2.0);
    QTransform place = paint::placed(picture_.list(), QRectF(0.0, 0.0, width(), height()));
    place *= QTransform::fromTranslate(-centre.x(), -centre.y());
    place *= QTransform::fromScale(zoom_, zoom_);
    return place * QTransform::fromTranslate(centre.x() + offset_.x(), centre.y() + offset_.y());
}

void PictureCanvas::holdInView()
{
    if (!picture_.empty()) {
        const QRectF page(0.0, 0.0, inMillimetres(picture_.list().width),
                          inMillimetres(picture_.list().height));
        const QSizeF shown = place().mapRect(page).size();
        const double across = std::max(0.0, (shown.width() - width()) / 2.0);
        const double down = std::max(0.0, (shown.height() - height()) / 2.0);
        offset_ = {std::clamp(offset_.x(), -across, across), std::clamp(offset_.y(), -down, down)};
    }
    update();
    emit placeChanged();
}

} // namespace lapwright::look
