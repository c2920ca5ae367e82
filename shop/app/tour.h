#pragma once

#include <QString>
#include <QStringList>

class QObject;
class QQuickWindow;

namespace lapwright::shop_app {

/// Shows every screen once, keeps pictures of them, and knows whether Qt warned of anything meanwhile. One at
/// a time: it listens to Qt's messages as long as it lives.
class Tour {
public:
    /// `pictures` is the folder for the pictures; empty: none are kept.
    explicit Tour(QString pictures);
    ~Tour();
    Tour(const Tour&) = delete;
    Tour& operator=(const Tour&) = delete;
    Tour(Tour&&) = delete;
    Tour& operator=(Tour&&) = delete;

    /// True if every screen showed and nothing warned; what did is written to standard error.
    [[nodiscard]] bool walk(QObject& window) const;

private:
    void look(QQuickWindow& window, const char* sight) const;

    QString pictures_;
};

} // namespace lapwright::shop_app
