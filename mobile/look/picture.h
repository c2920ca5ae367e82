#pragma once

#include "drawing/display_list.h"
#include "drawing/text.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <utility>

namespace lapwright::look {

/// A picture on its way from a view model to a PictureView. Copies share the shapes.
struct Picture {
    Q_GADGET
    QML_VALUE_TYPE(picture)
    Q_PROPERTY(bool empty READ empty FINAL)
    Q_PROPERTY(QString title READ title FINAL)
    Q_PROPERTY(QString description READ description FINAL)

public:
    Picture() = default;
    Picture(drawing::DisplayList list) : list_(std::make_shared<const drawing::DisplayList>(std::move(list)))
    {
    }

    [[nodiscard]] bool empty() const { return list_ == nullptr; }
    [[nodiscard]] QString title() const
    {
        return list_ ? QString::fromStdString(drawing::harmless(list_->title)) : QString();
    }
    [[nodiscard]] QString description() const
    {
        return list_ ? QString::fromStdString(drawing::harmless(list_->description)) : QString();
    }
    /// Precondition: not empty.
    [[nodiscard]] const drawing::DisplayList& list() const { return *list_; }

    friend bool operator==(const Picture&, const Picture&) = default;

private:
    std::shared_ptr<const drawing::DisplayList> list_;
};

} // namespace lapwright::look
