#pragma once

#include "measure/writing.h"
#include "model/tablet.h"

#include <QObject>
#include <QString>
#include <QStringList>
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
    /// What the shop pairs this tablet by: "K7QD-2M4X-9TPR".
    Q_PROPERTY(QString pairingCode READ pairingCode NOTIFY changed FINAL)
    /// Codes of the shops whose load lists are taken without asking.
    Q_PROPERTY(QStringList trustedShops READ trustedShops NOTIFY changed FINAL)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed FINAL)
    /// Codes of the languages the program speaks: "en"; first the empty one, which follows the tablet.
    Q_PROPERTY(QStringList languages READ languages CONSTANT FINAL)
    /// The same in words, each in its own language.
    Q_PROPERTY(QStringList languageNames READ languageNames NOTIFY languageChanged FINAL)
    /// Where files were last written to or read from.
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY changed FINAL)

public:
    explicit Settings(const Tablet& tablet, QObject* parent = nullptr);

    [[nodiscard]] bool metric() const { return values_.metric; }
    [[nodiscard]] int fraction() const { return values_.fraction; }
    [[nodiscard]] bool leftHanded() const { return values_.leftHanded; }
    [[nodiscard]] QString theme() const { return values_.theme; }
    [[nodiscard]] double textScale() const { return values_.textScale; }
    [[nodiscard]] QString person() const { return values_.person; }
    [[nodiscard]] QString pairingCode();
    [[nodiscard]] QStringList trustedShops();
    [[nodiscard]] QString language() const { return values_.language; }
    [[nodiscard]] QStringList languages() const;
    [[nodiscard]] QStringList languageNames() const;
    [[nodiscard]] QString folder() const { return values_.folder; }
    [[nodiscard]] Style style() const;

    void setMetric(bool metric);
    void setFraction(int fraction);
    void setLeftHanded(bool left);
    void setTheme(const QString& theme);
    void setTextScale(double scale);
    void setPerson(const QString& person);
    void setLanguage(const QString& language);
    void setFolder(const QString& folder);
    /// What the shop of this code signs is questioned from now on.
    Q_INVOKABLE bool refuseShop(const QString& code);
    /// What is signed with this public key (KnownShop::key) is taken from now on.
    bool trustShop(const std::string& key);

    /// Reads what is kept once more: another file was put in the tablet's place.
    void reload();

signals:
    void changed();
    /// Units or fraction: what is written in them is to be written again.
    void styleChanged();
    void languageChanged();
    /// The setting could not be kept.
    void failed(const QString& why);

private:
    template <class T>
    bool keep(const char* key, T& field, const T& value);

    /// As a tablet is before anybody chose.
    struct Values {
        bool metric = false;
        int fraction = 16;
        bool leftHanded = false;
        QString theme = "sunlight";
        double textScale = 1.0;
        QString person;
        QString language;
        QString folder;
    };

    const Tablet& tablet_;
    Values values_;
    QString pairingCode_; ///< empty: not asked for since the last reload
};

} // namespace lapwright::field
