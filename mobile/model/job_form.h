#pragma once

#include "model/choice_list.h"
#include "model/job_editor.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lapwright::field {

/// What stands at the head of a job: whose it is, what it is made of, what limits its pieces. Every field is
/// kept as it is left.
class JobForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString customer READ customer WRITE setCustomer NOTIFY changed FINAL)
    Q_PROPERTY(QString address READ address WRITE setAddress NOTIFY changed FINAL)
    /// ISO 8601 date, or empty.
    Q_PROPERTY(QString wantedBy READ wantedBy WRITE setWantedBy NOTIFY changed FINAL)
    Q_PROPERTY(QString measuredBy READ measuredBy WRITE setMeasuredBy NOTIFY changed FINAL)
    Q_PROPERTY(QStringList metals READ metals CONSTANT FINAL)
    Q_PROPERTY(int metal READ metal WRITE setMetal NOTIFY changed FINAL)
    Q_PROPERTY(QStringList gauges READ gauges NOTIFY changed FINAL)
    Q_PROPERTY(int gauge READ gauge WRITE setGauge NOTIFY changed FINAL)
    Q_PROPERTY(QStringList colours READ colours CONSTANT FINAL)
    Q_PROPERTY(QString colour READ colour WRITE setColour NOTIFY changed FINAL)
    /// Place of the colour among those offered; -1 for a shop's own.
    Q_PROPERTY(int colourIndex READ colourIndex NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* ruleSets READ ruleSets CONSTANT FINAL)
    Q_PROPERTY(QString foldingLength READ foldingLength WRITE setFoldingLength NOTIFY changed FINAL)
    Q_PROPERTY(QString stockLength READ stockLength WRITE setStockLength NOTIFY changed FINAL)
    Q_PROPERTY(QString transportLength READ transportLength WRITE setTransportLength NOTIFY changed FINAL)
    Q_PROPERTY(QString shortestPiece READ shortestPiece WRITE setShortestPiece NOTIFY changed FINAL)
    /// Whole pounds per square foot; empty while nobody gave it.
    Q_PROPERTY(QString windPressure READ windPressure WRITE setWindPressure NOTIFY changed FINAL)

public:
    JobForm(const Tablet& tablet, JobEditor& editor, const Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] QString customer() const;
    void setCustomer(const QString& customer);
    [[nodiscard]] QString address() const;
    void setAddress(const QString& address);
    [[nodiscard]] QString wantedBy() const;
    void setWantedBy(const QString& date);
    [[nodiscard]] QString measuredBy() const;
    void setMeasuredBy(const QString& person);
    [[nodiscard]] QStringList metals() const;
    [[nodiscard]] int metal() const;
    void setMetal(int metal);
    [[nodiscard]] QStringList gauges() const;
    [[nodiscard]] int gauge() const;
    void setGauge(int gauge);
    [[nodiscard]] QStringList colours() const;
    [[nodiscard]] QString colour() const;
    void setColour(const QString& colour);
    [[nodiscard]] int colourIndex() const { return static_cast<int>(colours().indexOf(colour())); }
    [[nodiscard]] ChoiceList* ruleSets() { return &ruleSets_; }
    [[nodiscard]] QString foldingLength() const;
    void setFoldingLength(const QString& length);
    [[nodiscard]] QString stockLength() const;
    void setStockLength(const QString& length);
    [[nodiscard]] QString transportLength() const;
    void setTransportLength(const QString& length);
    [[nodiscard]] QString shortestPiece() const;
    void setShortestPiece(const QString& length);
    [[nodiscard]] QString windPressure() const;
    void setWindPressure(const QString& psf);

    /// Holds the job to the rule set, or no longer.
    Q_INVOKABLE bool toggleRuleSet(const QString& id);

signals:
    void changed();
    void failed(const QString& why);

private:
    void refresh();
    void setText(const char* kind, const QString& words, std::string site::Job::*field, const QString& text);
    [[nodiscard]] QString shownLength(const std::optional<Length>& length) const;
    void setLimit(const QString& words, const QString& text, const std::optional<Length>& now,
                  const std::function<void(site::PieceLimits&, std::optional<Length>)>& set, bool mayBeEmpty);

    const Tablet& tablet_;
    JobEditor& editor_;
    const Settings& settings_;
    ChoiceList ruleSets_;
};

} // namespace lapwright::field
