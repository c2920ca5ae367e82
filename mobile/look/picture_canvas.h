#pragma once

#include "paint/inks.h"
#include "picture.h"

#include <QPointF>
#include <QQuickPaintedItem>
#include <QTransform>
#include <QtQml/qqmlregistration.h>

namespace lapwright::look {

/// Paints a picture, fitted or zoomed. PictureView.qml adds the fingers, the wheel and the keys.
class PictureCanvas : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwright::look::Picture picture READ picture WRITE setPicture NOTIFY pictureChanged FINAL)
    Q_PROPERTY(Ground ground READ ground WRITE setGround NOTIFY groundChanged FINAL)
    /// 1 is the whole page in view.
    Q_PROPERTY(double zoom READ zoom NOTIFY placeChanged FINAL)

public:
    /// paint::Ground for QML, value for value.
    enum class Ground { Paper, Dark, HighContrast };
    Q_ENUM(Ground)

    explicit PictureCanvas(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] Picture picture() const { return picture_; }
    /// Fits the new picture into view if its page has another size than the one before.
    void setPicture(const Picture& picture);
    [[nodiscard]] Ground ground() const { return ground_; }
    void setGround(Ground ground);
    [[nodiscard]] double zoom() const { return zoom_; }

    /// The whole page in view.
    Q_INVOKABLE void fit();
    /// Zooms by `factor` so that what lies under `at` stays there; between 1 and 40.
    Q_INVOKABLE void zoomAt(QPointF at, double factor);
    /// Moves the page by item pixels; it cannot leave the view.
    Q_INVOKABLE void pan(QPointF by);
    /// Item pixels to millimetres on the page.
    Q_INVOKABLE [[nodiscard]] QPointF toPage(QPointF at) const;

signals:
    void pictureChanged();
    void groundChanged();
    void placeChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    [[nodiscard]] QTransform place() const;
    void holdInView();

    Picture picture_;
    Ground ground_ = Ground::Paper;
    double zoom_ = 1.0;
    QPointF offset_;
};

} // namespace lapwright::look
