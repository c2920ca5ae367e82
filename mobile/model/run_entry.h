#pragma once

#include "model/choice_list.h"
#include "model/measure_entry.h"
#include "site/chain.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace lapwright::field {

/// One run with the corner before it while a person types it: new, or one of the chain that is changed.
class RunEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed FINAL)
    Q_PROPERTY(QString kindWords READ kindInWords NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* kinds READ kinds CONSTANT FINAL)
    Q_PROPERTY(Corner corner READ corner WRITE setCorner NOTIFY changed FINAL)
    Q_PROPERTY(bool tapedInside READ tapedInside WRITE setTapedInside NOTIFY changed FINAL)
    Q_PROPERTY(QString cornerWords READ cornerWords NOTIFY changed FINAL)
    Q_PROPERTY(QString start READ start WRITE setStart NOTIFY changed FINAL)
    Q_PROPERTY(QString end READ end WRITE setEnd NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* starts READ starts CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::ChoiceList* ends READ ends CONSTANT FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed FINAL)
    Q_PROPERTY(bool asksForSlope READ asksForSlope NOTIFY changed FINAL)
    Q_PROPERTY(bool asksForOtherSlope READ asksForOtherSlope NOTIFY changed FINAL)
    Q_PROPERTY(bool asksForPlanCorner READ asksForPlanCorner NOTIFY changed FINAL)
    Q_PROPERTY(bool asksForLevelRun READ asksForLevelRun NOTIFY changed FINAL)
    Q_PROPERTY(bool asksForExposure READ asksForExposure NOTIFY changed FINAL)
    /// A run of the chain stands before this one, so that they meet in a corner.
    Q_PROPERTY(bool hasCorner READ hasCorner NOTIFY changed FINAL)
    /// Everything that is typed can be used, and there is a length or a level run.
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    /// The first thing that cannot be used, or that is missing.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* length READ length CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* levelRun READ levelRun CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* slope READ slope CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* otherSlope READ otherSlope CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* planCorner READ planCorner CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* exposure READ exposure CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* angle READ angle CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* sideBefore READ sideBefore CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* sideAfter READ sideAfter CONSTANT FINAL)
    Q_PROPERTY(lapwright::field::MeasureEntry* diagonal READ diagonal CONSTANT FINAL)

public:
    enum class Corner { SquareOutside, SquareInside, Straight, Angle, Taped };
    Q_ENUM(Corner)

    explicit RunEntry(QObject* parent = nullptr);

    [[nodiscard]] QString kind() const;
    void setKind(const QString& kind);
    [[nodiscard]] QString kindInWords() const;
    [[nodiscard]] ChoiceList* kinds() { return &kinds_; }
    [[nodiscard]] Corner corner() const { return corner_; }
    void setCorner(Corner corner);
    [[nodiscard]] bool tapedInside() const { return tapedInside_; }
    void setTapedInside(bool inside);
    [[nodiscard]] QString cornerWords() const;
    [[nodiscard]] QString start() const;
    void setStart(const QString& end);
    [[nodiscard]] QString end() const;
    void setEnd(const QString& end);
    [[nodiscard]] ChoiceList* starts() { return &starts_; }
    [[nodiscard]] ChoiceList* ends() { return &ends_; }
    [[nodiscard]] QString note() const { return note_; }
    void setNote(const QString& note);
    [[nodiscard]] bool asksForSlope() const;
    [[nodiscard]] bool asksForOtherSlope() const;
    [[nodiscard]] bool asksForPlanCorner() const;
    [[nodiscard]] bool asksForLevelRun() const;
    [[nodiscard]] bool asksForExposure() const;
    [[nodiscard]] bool hasCorner() const { return hasCorner_; }
    [[nodiscard]] bool ready() const { return problem().isEmpty(); }
    [[nodiscard]] QString problem() const;
    /// Why the corner typed cannot be one; empty if it can.
    [[nodiscard]] QString problemOfCorner() const;
    [[nodiscard]] MeasureEntry* length() { return &length_; }
    [[nodiscard]] MeasureEntry* levelRun() { return &levelRun_; }
    [[nodiscard]] MeasureEntry* slope() { return &slope_; }
    [[nodiscard]] MeasureEntry* otherSlope() { return &otherSlope_; }
    [[nodiscard]] MeasureEntry* planCorner() { return &planCorner_; }
    [[nodiscard]] MeasureEntry* exposure() { return &exposure_; }
    [[nodiscard]] MeasureEntry* angle() { return &angle_; }
    [[nodiscard]] MeasureEntry* sideBefore() { return &sideBefore_; }
    [[nodiscard]] MeasureEntry* sideAfter() { return &sideAfter_; }
    [[nodiscard]] MeasureEntry* diagonal() { return &diagonal_; }

    void setStyle(const Style& style);
    /// Kind and slopes are those of another house: nothing of them stays.
    void forget();
    /// A new run after `before`, of its kind and slopes and at a square outside corner; the first of a chain
    /// keeps kind and slopes of the run typed last.
    void begin(const site::Run* before);
    /// Kind and slopes of the run, its counting measure, and the corner before it if there is one.
    void load(const site::Run& run, const site::Corner* before);

    /// Kinds and ends to choose from, in words.
    void showChoices();

    /// What is typed, put on `base` (the run that is changed, or an empty one). Precondition: ready().
    [[nodiscard]] site::Run run(site::Run base) const;
    /// Precondition: problemOfCorner() is empty.
    [[nodiscard]] site::Corner cornerGiven() const;

signals:
    void changed();

private:
    site::RunKind kind_ = site::RunKind::Eave;
    Corner corner_ = Corner::SquareOutside;
    bool tapedInside_ = false;
    bool hasCorner_ = false;
    site::EndKind start_ = site::EndKind::Free;
    site::EndKind end_ = site::EndKind::Free;
    QString note_;
    ChoiceList kinds_;
    ChoiceList starts_;
    ChoiceList ends_;
    MeasureEntry length_{MeasureEntry::What::Length};
    MeasureEntry levelRun_{MeasureEntry::What::Length};
    MeasureEntry slope_{MeasureEntry::What::Slope};
    MeasureEntry otherSlope_{MeasureEntry::What::Slope};
    MeasureEntry planCorner_{MeasureEntry::What::Angle};
    MeasureEntry exposure_{MeasureEntry::What::Length};
    MeasureEntry angle_{MeasureEntry::What::Angle};
    MeasureEntry sideBefore_{MeasureEntry::What::Length};
    MeasureEntry sideAfter_{MeasureEntry::What::Length};
    MeasureEntry diagonal_{MeasureEntry::What::Length};
};

} // namespace lapwright::field
