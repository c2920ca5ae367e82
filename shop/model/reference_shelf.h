#pragma once

#include "desk.h"
#include "picture.h"
#include "rows_model.h"

#include <QString>

namespace lapwright::model {

/// What the program knows about machines, trim and rules: to be looked up and checked.
class ReferenceShelf : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* machines READ machines CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* trims READ trims CONSTANT FINAL)
    Q_PROPERTY(lapwright::model::RowsModel* rules READ rules CONSTANT FINAL)
    Q_PROPERTY(QString currentMachine READ currentMachine WRITE setCurrentMachine NOTIFY machineChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture machine READ machine NOTIFY machineChanged FINAL)
    Q_PROPERTY(QString currentTrim READ currentTrim WRITE setCurrentTrim NOTIFY trimChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture trim READ trim NOTIFY trimChanged FINAL)
    Q_PROPERTY(QString trimNote READ trimNote NOTIFY trimChanged FINAL)

public:
    explicit ReferenceShelf(Shop& shop);

    [[nodiscard]] RowsModel* machines() { return &machines_; }
    [[nodiscard]] RowsModel* trims() { return &trims_; }
    [[nodiscard]] RowsModel* rules() { return &rules_; }
    [[nodiscard]] QString currentMachine() const { return currentMachine_; }
    void setCurrentMachine(const QString& id);
    [[nodiscard]] look::Picture machine() const { return machine_; }
    [[nodiscard]] QString currentTrim() const { return currentTrim_; }
    void setCurrentTrim(const QString& id);
    [[nodiscard]] look::Picture trim() const { return trim_; }
    [[nodiscard]] QString trimNote() const { return trimNote_; }

signals:
    void machineChanged();
    void trimChanged();

protected:
    void reload() override;

private:
    void drawMachine();
    void drawTrim();

    RowsModel machines_;
    RowsModel trims_;
    RowsModel rules_;
    QString currentMachine_;
    QString currentTrim_;
    look::Picture machine_;
    look::Picture trim_;
    QString trimNote_;
};

} // namespace lapwright::model
