#pragma once

#include "message_count.h"

#include <QString>

class QObject;
class QQuickWindow;

namespace lapwright::shop_app {

/// Shows every screen once, keeps pictures of them, and knows whether Qt warned of anything meanwhile. One at
/// a time: it listens to Qt's messages as long as it lives.
class Tour {
public:
    /// `pictures` is the folder for the pictures; empty: none are kept.
    explicit Tour(QString pictures);

    /// True if every screen showed and nothing warned; what did is written to standard error.
    [[nodiscard]] bool walk(QObject& window) const;

private:
    /// False if a screen does not show or its picture could not be kept.
    [[nodiscard]] bool visit(QQuickWindow& window, const char* sight) const;

    look::MessageCount counting_;
    QString pictures_;
};

} // namespace lapwright::shop_app
