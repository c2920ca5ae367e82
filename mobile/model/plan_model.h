#pragma once

#include "drawing/plan_sketch.h"
#include "look/picture.h"

#include <QObject>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <memory>
#include <optional>
#include <string>

namespace lapwright::field {

/// One chain as a picture, and what lies under a finger.
class PlanModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] look::Picture picture() const { return picture_; }

    /// The page the plan is drawn on: the room on the screen in millimetres at its usual size.
    Q_INVOKABLE void setPage(double widthMillimetres, double heightMillimetres);
    /// The run under a point of the page (millimetres), -1 if there is none within a finger's width at this
    /// zoom.
    Q_INVOKABLE [[nodiscard]] int runAt(QPointF page, double zoom) const;

    /// The chain is held on to, and must not change; `report` is of it.
    void show(std::shared_ptr<const site::Chain> chain, const site::ClosureReport& report,
              std::optional<std::size_t> chosen, const Style& style,
              std::map<std::string, std::string> marks = {});
    void clear();

signals:
    void changed();

private:
    void draw();

    std::shared_ptr<const site::Chain> chain_;
    site::ClosureReport report_;
    drawing::SketchWish wish_;
    drawing::PlanSketch sketch_;
    look::Picture picture_;
};

} // namespace lapwright::field
