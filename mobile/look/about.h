#pragma once

#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace lapwright::look {

/// The version of the program, "0.1.0".
[[nodiscard]] QString version();

/// What a program says of itself: its version, and whose work is in it (made_with.json).
class About : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString version READ version CONSTANT FINAL)
    /// Maps of "name", "use" and "licence".
    Q_PROPERTY(QVariantList libraries READ libraries CONSTANT FINAL)

public:
    explicit About(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString version() const { return look::version(); }
    [[nodiscard]] QVariantList libraries() const;
    /// What a library is used for, in the language that is spoken.
    Q_INVOKABLE [[nodiscard]] QString used(const QString& use) const;
};

} // namespace lapwright::look
