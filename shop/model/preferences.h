#pragma once

#include "drawing/profile_picture.h"
#include "measure/writing.h"

#include <QObject>
#include <QSettings>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lapwright::model {

/// What this station and the person at it have chosen; kept on this machine, written as it is chosen.
class Preferences : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made in main()")
    Q_PROPERTY(QString station READ station WRITE setStation NOTIFY changed FINAL)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY changed FINAL)
    /// What the person may do here.
    Q_PROPERTY(Duty duty READ duty WRITE setDuty NOTIFY changed FINAL)
    /// Index of the theme: light, dark, sunlight, shop floor.
    Q_PROPERTY(int scheme READ scheme WRITE setScheme NOTIFY changed FINAL)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed FINAL)
    Q_PROPERTY(bool touch READ touch WRITE setTouch NOTIFY changed FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed FINAL)
    Q_PROPERTY(bool millimetres READ millimetres WRITE setMillimetres NOTIFY changed FINAL)
    /// The languages there are, each in its own, first the machine's own; and which of them is spoken here.
    Q_PROPERTY(QStringList languageNames READ languageNames NOTIFY languageChanged FINAL)
    Q_PROPERTY(int languageIndex READ languageIndex WRITE setLanguageIndex NOTIFY changed FINAL)
    /// Orders put into this folder are taken in; empty: none is watched.
    Q_PROPERTY(QString watchedFolder READ watchedFolder WRITE setWatchedFolder NOTIFY changed FINAL)
    /// Seconds the planner looks for a better plan, for each metal.
    Q_PROPERTY(int planSeconds READ planSeconds WRITE setPlanSeconds NOTIFY changed FINAL)

    /// Label stock that is printed on.
    Q_PROPERTY(Labels labelStock READ labels WRITE setLabels NOTIFY changed FINAL)
    /// Angles are read between the legs rather than as how far a bend turns.
    Q_PROPERTY(bool includedAngles READ includedAngles WRITE setIncludedAngles NOTIFY changed FINAL)
    /// Confirmations say what the order costs, where the shop keeps its rates.
    Q_PROPERTY(
        bool costOnConfirmations READ costOnConfirmations WRITE setCostOnConfirmations NOTIFY changed FINAL)

public:
    enum class Labels { Sheets, Roll100By50, Roll4By2 };
    Q_ENUM(Labels)
    enum class Duty { Viewer, Operator, Planner };
    Q_ENUM(Duty)

    /// Kept in the INI file at `path`.
    explicit Preferences(const QString& path, QObject* parent = nullptr);

    [[nodiscard]] QString station() const { return text("station", QStringLiteral("office")); }
    void setStation(const QString& station) { keep("station", station); }
    [[nodiscard]] QString person() const { return text("person", {}); }
    void setPerson(const QString& person) { keep("person", person); }
    [[nodiscard]] Duty duty() const { return static_cast<Duty>(number("duty", 2, 0, 2)); }
    void setDuty(Duty duty) { keep("duty", static_cast<int>(duty)); }
    [[nodiscard]] int scheme() const { return number("scheme", 0, 0, 3); }
    void setScheme(int scheme) { keep("scheme", scheme); }
    [[nodiscard]] int textPercent() const { return number("text_percent", 100, 80, 200); }
    void setTextPercent(int percent) { keep("text_percent", percent); }
    [[nodiscard]] bool touch() const { return settings_.value("touch", false).toBool(); }
    void setTouch(bool touch) { keep("touch", touch); }
    [[nodiscard]] bool leftHanded() const { return settings_.value("left_handed", false).toBool(); }
    void setLeftHanded(bool leftHanded) { keep("left_handed", leftHanded); }
    [[nodiscard]] bool millimetres() const { return settings_.value("millimetres", false).toBool(); }
    void setMillimetres(bool millimetres) { keep("millimetres", millimetres); }
    /// Code of the language spoken here; empty: the machine's own.
    [[nodiscard]] QString language() const { return text("language", {}); }
    void setLanguage(const QString& language);
    [[nodiscard]] QStringList languageNames() const;
    [[nodiscard]] int languageIndex() const;
    void setLanguageIndex(int index);
    [[nodiscard]] QString watchedFolder() const { return text("watched_folder", {}); }
    void setWatchedFolder(const QString& folder) { keep("watched_folder", folder); }
    [[nodiscard]] int planSeconds() const { return number("plan_seconds", 5, 0, 600); }
    void setPlanSeconds(int seconds) { keep("plan_seconds", seconds); }

    [[nodiscard]] Labels labels() const { return static_cast<Labels>(number("labels", 0, 0, 2)); }
    void setLabels(Labels labels) { keep("labels", static_cast<int>(labels)); }
    [[nodiscard]] bool includedAngles() const { return settings_.value("included_angles", false).toBool(); }
    void setIncludedAngles(bool included) { keep("included_angles", included); }

    [[nodiscard]] bool costOnConfirmations() const
    {
        return settings_.value("cost_on_confirmations", true).toBool();
    }
    void setCostOnConfirmations(bool shown) { keep("cost_on_confirmations", shown); }

    /// How this person reads measures, in which language, and angles.
    [[nodiscard]] Style style() const;
    [[nodiscard]] drawing::AngleShown angles() const
    {
        return includedAngles() ? drawing::AngleShown::Included : drawing::AngleShown::Fold;
    }

signals:
    void changed();
    void languageChanged();

private:
    [[nodiscard]] QString text(const char* key, const QString& otherwise) const;
    /// Held to its limits: the file may have been edited by hand.
    [[nodiscard]] int number(const char* key, int otherwise, int least, int most) const;
    void keep(const char* key, const QVariant& value);

    QSettings settings_;
};

} // namespace lapwright::model
