#pragma once

#include "look/picture.h"
#include "model/choice_list.h"
#include "model/measure_entry.h"
#include "model/take_off.h"

#include <QAbstractListModel>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <string>
#include <vector>

namespace lapwright::field {

/// Measures and legs of the trim in hand, with what they may be.
class TrimSizes : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")

public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        LabelRole,
        ValueRole,
        LimitsRole,
        KindRole,
        ByHandRole, ///< set by the person, not by the trim
        MissingRole
    };
    Q_ENUM(Role)
    /// A measure the trim asks for, a leg of the section, how far a piece covers the one before.
    enum class Kind { Measure, Leg, Lap };
    Q_ENUM(Kind)

    struct Size {
        std::string name;
        QString label;
        QString value;
        QString limits;
        Kind kind = Kind::Measure;
        Length least;
        Length most;
        bool byHand = false;
        bool missing = false;

        friend bool operator==(const Size&, const Size&) = default;
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    void show(std::vector<Size> sizes);
    [[nodiscard]] const std::vector<Size>& sizes() const { return sizes_; }

private:
    std::vector<Size> sizes_;
};

/// Trim for the runs of the job in hand: kind of run by kind of run, all of a kind at once or one alone.
class TrimModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    /// Kinds of run in the job; key: the kind, detail: what they have. Chosen: the kind in hand.
    Q_PROPERTY(lapwright::field::ChoiceList* kinds READ kinds CONSTANT FINAL)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed FINAL)
    /// Runs of that kind; an empty key stands for all of them.
    Q_PROPERTY(lapwright::field::ChoiceList* runs READ runs CONSTANT FINAL)
    Q_PROPERTY(QString run READ run WRITE setRun NOTIFY changed FINAL)
    /// Trims that suit; chosen: all runs in hand have it.
    Q_PROPERTY(lapwright::field::ChoiceList* trims READ trims CONSTANT FINAL)
    Q_PROPERTY(QString trim READ trim WRITE setTrim NOTIFY changed FINAL)
    Q_PROPERTY(QString trimName READ trimName NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)
    Q_PROPERTY(bool chosen READ isChosen NOTIFY changed FINAL)
    Q_PROPERTY(lapwright::field::TrimSizes* sizes READ sizes CONSTANT FINAL)
    /// The section as it would be folded for the first run in hand.
    Q_PROPERTY(lapwright::look::Picture section READ section NOTIFY changed FINAL)
    Q_PROPERTY(QString girth READ girth NOTIFY changed FINAL)
    /// Where girth, legs and angles come from, a line each, indented by what follows from what.
    Q_PROPERTY(QString why READ why NOTIFY changed FINAL)
    /// What is wrong with it; empty if nothing.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// Runs without any trim.
    Q_PROPERTY(int bare READ bare NOTIFY changed FINAL)

public:
    TrimModel(TakeOff& takeOff, const Settings& settings, QObject* parent = nullptr);

    [[nodiscard]] ChoiceList* kinds() { return &kinds_; }
    [[nodiscard]] QString kind() const;
    void setKind(const QString& kind);
    [[nodiscard]] ChoiceList* runs() { return &runs_; }
    [[nodiscard]] QString run() const;
    void setRun(const QString& run);
    [[nodiscard]] ChoiceList* trims() { return &trims_; }
    [[nodiscard]] QString trim() const;
    void setTrim(const QString& trim);
    [[nodiscard]] QString trimName() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] bool isChosen() const;
    [[nodiscard]] TrimSizes* sizes() { return &sizes_; }
    [[nodiscard]] look::Picture section() const { return section_; }
    [[nodiscard]] QString girth() const { return girth_; }
    [[nodiscard]] QString why() const { return why_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] int bare() const { return bare_; }

    Q_INVOKABLE void refresh();
    /// Takes a trim of a run in hand, for all runs of its kind.
    Q_INVOKABLE void goTo(const QString& run, const QString& trim);
    /// The page the section is drawn on: the room on the screen in millimetres at its usual size.
    Q_INVOKABLE void setPage(double widthMillimetres, double heightMillimetres);
    /// Puts the trim in hand on the runs in hand, or takes it off where all have it.
    Q_INVOKABLE bool toggle();
    /// The first trim that suits, on every run that has none.
    Q_INVOKABLE bool suggestAll();
    /// A measure, a leg or the lap of the trim in hand on the runs in hand. Empty text: what the trim has by
    /// itself.
    Q_INVOKABLE bool setSize(int row, const QString& text);
    /// Any of them longer or shorter by a step: 1/8 in or 2 mm, inside its limits.
    Q_INVOKABLE bool stepSize(int row, int steps);

signals:
    void changed();
    void failed(const QString& why);

private:
    [[nodiscard]] bool inHand(const site::Run& run) const;
    [[nodiscard]] const site::Run* firstRun(std::size_t* chain) const;
    [[nodiscard]] const trim::Template* templateInHand() const;
    [[nodiscard]] site::TrimChoice choiceInHand() const;
    bool change(const char* kind, const QString& words, const std::function<void(site::Run&)>& change);
    void countBare();
    void showKinds();
    void showRuns();
    void showTrims();
    void showSection();
    void showSizes(const site::TrimChoice& choice, const pieces::OrderedProfile* profile);
    bool setSizeTo(int row, const std::optional<site::Measured>& value);

    TakeOff& takeOff_;
    const Settings& settings_;
    std::optional<site::RunKind> kind_;
    std::string run_;
    std::string job_; ///< that run_ is of
    std::string trim_;
    ChoiceList kinds_;
    ChoiceList runs_;
    ChoiceList trims_;
    TrimSizes sizes_;
    look::Picture section_;
    Length pageWidth_ = Length::millimetres(150);
    Length pageHeight_ = Length::millimetres(115);
    QString girth_;
    QString why_;
    QString problem_;
    int bare_ = 0;
};

/// Trims of the catalogue that suit a kind of run, the usual one first.
[[nodiscard]] std::vector<const trim::Template*> trimsFor(site::RunKind kind,
                                                          const pieces::Catalogue& catalogue);

} // namespace lapwright::field
