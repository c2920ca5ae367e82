#pragma once

#include "desk.h"
#include "picture.h"

#include <QString>

namespace lapwright::model {

/// By what tablets know this shop: it signs its load lists, and who counts a load compares once the code that
/// the tablet names with the one that stands here.
class ShopCode : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    /// Twelve letters and digits in three groups; empty until the screen is in sight.
    Q_PROPERTY(QString code READ code NOTIFY codeChanged FINAL)
    /// The same as a QR code, black on white whatever the theme.
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY codeChanged FINAL)

public:
    using Desk::Desk;

    [[nodiscard]] QString code() const { return code_; }
    [[nodiscard]] look::Picture picture() const { return picture_; }

signals:
    void codeChanged();

protected:
    /// Makes the shop's key where it never had one.
    void reload() override;

private:
    QString code_;
    look::Picture picture_;
};

} // namespace lapwright::model
