#pragma once

#include "desk.h"
#include "draft.h"
#include "fold/machine.h"
#include "measure/result.h"
#include "picture.h"
#include "rows_model.h"

#include <QString>
#include <QUrl>

#include <array>
#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::model {

/// What the program knows about machines, trim and rules, and the floor with its hours and rates: looked up,
/// checked, changed, read from files and written to them.
class ReferenceShelf : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    /// What is looked up: a Kind.
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY currentChanged FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* machines READ machines CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* trims READ trims CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* ruleSets READ ruleSets CONSTANT FINAL)
    /// The clauses of the current rule set.
    Q_PROPERTY(lapwright::model::RowsModel* rules READ rules CONSTANT FINAL)
    /// The machines of the floor, when they are worked and how long things take there.
    Q_PROPERTY(lapwright::model::RowsModel* floor READ floor CONSTANT FINAL)
    /// What the shop asks for each metal.
    Q_PROPERTY(lapwright::model::RowsModel* rates READ rates CONSTANT FINAL)
    /// Of the kind that is looked up: a machine, a trim, a rule set, a machine of the floor, a metal with its
    /// rate.
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString note READ note NOTIFY currentChanged FINAL)
    Q_PROPERTY(lapwright::model::Draft* draft READ draft CONSTANT FINAL)

public:
    enum class Kind { Machine, Trim, Rules, Floor, Rates };
    Q_ENUM(Kind)

    explicit ReferenceShelf(Shop& shop);

    [[nodiscard]] int kind() const { return static_cast<int>(kind_); }
    void setKind(int kind);
    [[nodiscard]] RowsModel* machines() { return &machines_; }
    [[nodiscard]] RowsModel* trims() { return &trims_; }
    [[nodiscard]] RowsModel* ruleSets() { return &ruleSets_; }
    [[nodiscard]] RowsModel* rules() { return &rules_; }
    [[nodiscard]] RowsModel* floor() { return &floor_; }
    [[nodiscard]] RowsModel* rates() { return &rates_; }
    [[nodiscard]] QString current() const { return current_[static_cast<std::size_t>(kind_)]; }
    void setCurrent(const QString& id);
    [[nodiscard]] look::Picture picture() const { return picture_; }
    [[nodiscard]] QString note() const { return note_; }
    [[nodiscard]] Draft* draft() const { return draft_; }

    /// Opens the current document to be changed.
    Q_INVOKABLE void edit();
    /// Opens a file's document to be looked at, and kept if it holds.
    Q_INVOKABLE void importFile(const QUrl& file);
    Q_INVOKABLE void exportFile(const QUrl& file);

signals:
    void currentChanged();

protected:
    void reload() override;

private:
    [[nodiscard]] RowsModel& list();
    void listMachines();
    void listTrims();
    void listRuleSets();
    void listFloor();
    void listRates();
    /// Shows the current one of the kind that is looked up; the first where a search leaves it out.
    void show();
    void showRules();
    void begin(const QString& title, const std::string& text);
    [[nodiscard]] Result<std::string> document() const;
    [[nodiscard]] Result<std::string> floorDocument() const;
    /// With the metals of the stock to fill in where none were given yet.
    [[nodiscard]] Result<std::string> ratesDocument() const;

    Kind kind_ = Kind::Machine;
    RowsModel machines_;
    RowsModel trims_;
    RowsModel ruleSets_;
    RowsModel rules_;
    RowsModel floor_;
    RowsModel rates_;
    std::vector<fold::Machine> known_;
    std::array<QString, 5> current_; ///< by kind
    look::Picture picture_;
    QString note_;
    Draft* draft_;
};

} // namespace lapwright::model
