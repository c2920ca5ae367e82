#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace lapwright::look {

/// One of our signs (icon_shapes.h) in one colour. Decoration only: what it stands beside has the name.
class Icon : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY changed FINAL)

public:
    explicit Icon(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] QColor colour() const { return colour_; }
    void setColour(const QColor& colour);

signals:
    void changed();

private:
    QString name_;
    QColor colour_ = Qt::black;
};

} // namespace lapwright::look
