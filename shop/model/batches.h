#pragma once

#include "acts/planning.h"
#include "desk.h"
#include "documents/cut.h"
#include "rows_model.h"
#include "storage/piece_events.h"

#include <QString>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

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
    Q_PROPERTY(QString currentPiece READ currentPiece WRITE setCurrentPiece NOTIFY pieceChanged FINAL)
    /// A person keeps the current piece out of the batch, or the whole order it is of.
    Q_PROPERTY(bool pieceHeld READ pieceHeld NOTIFY pieceChanged FINAL)
    Q_PROPERTY(bool orderHeld READ orderHeld NOTIFY pieceChanged FINAL)

public:
    explicit Batches(Shop& shop);

    [[nodiscard]] RowsModel* batches() { return &batches_; }
    [[nodiscard]] RowsModel* pieces() { return &pieces_; }
    [[nodiscard]] RowsModel* findings() { return &findings_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& id);
    [[nodiscard]] QString currentPiece() const { return currentPiece_; }
    void setCurrentPiece(const QString& id);
    [[nodiscard]] bool pieceHeld() const;
    [[nodiscard]] bool orderHeld() const;

    Q_INVOKABLE void plan();
    /// Keeps the current piece out of every batch, or lets it in again; a plan that cuts it is taken back.
    Q_INVOKABLE void holdPiece(bool held);
    /// The same for the whole order of the current piece.
    Q_INVOKABLE void holdOrder(bool held);

signals:
    void currentChanged();
    void pieceChanged();

protected:
    void reload() override;

private:
    /// What the last planning had to say.
    void tell(const acts::Planned& planned);
    /// Reads the plans that wait and are not known yet, and forgets those that do not.
    void readPlans();
    [[nodiscard]] Row rowOf(const site::Material& material, const QString& id) const;
    void showPieces();
    [[nodiscard]] const storage::PieceToCut* piece() const;

    RowsModel batches_;
    RowsModel pieces_;
    RowsModel findings_;
    QString current_;
    QString currentPiece_;
    std::vector<storage::PieceToCut> toCut_;
    std::map<std::string, documents::CutPlan> plans_; ///< that wait, by id
    std::map<std::string, site::Material> metals_;    ///< of those plans
};

} // namespace lapwright::model
