#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace lapwright::look {

/// A plate with one corner cut off at 45 degrees, as sheet is notched before it is folded: the ground of
/// everything that can be pressed.
class Plate : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY changed FINAL)
    Q_PROPERTY(QColor edge READ edge WRITE setEdge NOTIFY changed FINAL)
    Q_PROPERTY(double edgeWidth READ edgeWidth WRITE setEdgeWidth NOTIFY changed FINAL)
    /// How far the cut reaches along each side of the corner; 0 leaves the corner square.
    Q_PROPERTY(double notch READ notch WRITE setNotch NOTIFY changed FINAL)

public:
    explicit Plate(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] QColor colour() const { return colour_; }
    void setColour(const QColor& colour) { set(colour_, colour); }
    [[nodiscard]] QColor edge() const { return edge_; }
    void setEdge(const QColor& edge) { set(edge_, edge); }
    [[nodiscard]] double edgeWidth() const { return edgeWidth_; }
    void setEdgeWidth(double width) { set(edgeWidth_, width); }
    [[nodiscard]] double notch() const { return notch_; }
    void setNotch(double notch) { set(notch_, notch); }

signals:
    void changed();

private:
    template <class Value>
    void set(Value& kept, const Value& value)
    {
        if (kept == value)
            return;
        kept = value;
        update();
        emit changed();
    }

    QColor colour_ = Qt::white;
    QColor edge_ = Qt::transparent;
    double edgeWidth_ = 0.0;
    double notch_ = 0.0;
};

} // namespace lapwright::look
