#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace lapwright::model {

class Shop;

/// What one screen works with. It reads the database when its screen is in sight, and again when somebody
/// changes something while it is.
class Desk : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    /// The screen is in sight.
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY activeChanged FINAL)

public:
    explicit Desk(Shop& shop);

    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active);
    /// What is shown may be old: read at once, or when the screen comes into sight.
    void noteChange();

signals:
    void activeChanged();

protected:
    virtual void reload() = 0;
    [[nodiscard]] Shop& shop() const { return shop_; }

private:
    void reloadSafely();

    Shop& shop_;
    bool active_ = false;
    bool stale_ = true;
};

} // namespace lapwright::model
