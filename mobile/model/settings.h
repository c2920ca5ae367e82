#pragma once

#include "measure/writing.h"
#include "model/tablet.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace lapwright::field {

/// What a person chose for this tablet; each choice is kept at once.
class Settings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(bool metric READ metric WRITE setMetric NOTIFY changed FINAL)
    /// Smallest fraction of an inch shown: 8, 16, 32 or 64.
    Q_PROPERTY(int fraction READ fraction WRITE setFraction NOTIFY changed FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed FINAL)
    /// "sunlight", "light" or "dark".
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY changed FINAL)
    /// 1 is the usual size; 0.9 to 1.4.
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed FINAL)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY changed FINAL)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed FINAL)
    Q_PROPERTY(bool guideSeen READ guideSeen WRITE setGuideSeen NOTIFY changed FINAL)
    /// Where files were last written to or read from.
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY changed FINAL)

public:
    explicit Settings(const Tablet& tablet, QObject* parent = nullptr);

    [[nodiscard]] bool metric() const { return metric_; }
    [[nodiscard]] int fraction() const { return fraction_; }
    [[nodiscard]] bool leftHanded() const { return leftHanded_; }
    [[nodiscard]] QString theme() const { return theme_; }
    [[nodiscard]] double textScale() const { return textScale_; }
    [[nodiscard]] QString person() const { return person_; }
    [[nodiscard]] QString language() const { return language_; }
    [[nodiscard]] bool guideSeen() const { return guideSeen_; }
    [[nodiscard]] QString folder() const { return folder_; }
    [[nodiscard]] Style style() const;

    void setMetric(bool metric);
    void setFraction(int fraction);
    void setLeftHanded(bool left);
    void setTheme(const QString& theme);
    void setTextScale(double scale);
    void setPerson(const QString& person);
    void setLanguage(const QString& language);
    void setGuideSeen(bool seen);
    void setFolder(const QString& folder);

signals:
    void changed();
    /// The setting could not be kept.
    void failed(const QString& why);

private:
    template <class T>
    void keep(const char* key, T& field, const T& value);

    const Tablet& tablet_;
    bool metric_ = false;
    int fraction_ = 16;
    bool leftHanded_ = false;
    QString theme_ = "sunlight";
    double textScale_ = 1.0;
    QString person_;
    QString language_;
    bool guideSeen_ = false;
    QString folder_;
};

} // namespace lapwright::field
