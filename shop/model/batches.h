#pragma once

#include "desk.h"
#include "plan_worker.h"
#include "rows_model.h"

#include <QString>

namespace lapwright::model {

/// What is still to be cut, by metal, gauge and colour, and how it is planned.
class Batches : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* batches READ batches CONSTANT FINAL)
    /// The pieces of the current batch.
    Q_PROPERTY(lapwright::model::RowsModel* pieces READ pieces CONSTANT FINAL)
    /// What the last planning had to say: what cannot be cut or folded.
    Q_PROPERTY(lapwright::model::RowsModel* findings READ findings CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    Q_PROPERTY(bool planning READ planning NOTIFY progressChanged FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY progressChanged FINAL)

public:
    explicit Batches(Shop& shop);

    [[nodiscard]] RowsModel* batches() { return &batches_; }
    [[nodiscard]] RowsModel* pieces() { return &pieces_; }
    [[nodiscard]] RowsModel* findings() { return &findings_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& id);
    [[nodiscard]] bool planning() const { return worker_.running(); }
    [[nodiscard]] QString progress() const { return progress_; }

    Q_INVOKABLE void plan();
    Q_INVOKABLE void stopPlanning();

signals:
    void currentChanged();
    void progressChanged();

protected:
    void reload() override;

private:
    void showPieces();
    void finish();

    RowsModel batches_;
    RowsModel pieces_;
    RowsModel findings_;
    QString current_;
    QString progress_;
    PlanWorker worker_;
};

} // namespace lapwright::model
