#pragma once

#include "acts/planning.h"
#include "batches_read.h"
#include "beside.h"
#include "desk.h"
#include "measure/result.h"
#include "rows_model.h"
#include "storage/piece_events.h"

#include <QString>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace lapwright::model {

/// What is still to be cut, by metal, gauge and colour, and how it is planned. Where that is much it is read
/// beside the window, which goes on showing what it knew.
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
    /// What is shown is being read anew.
    Q_PROPERTY(bool reading READ reading NOTIFY currentChanged FINAL)
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
    [[nodiscard]] bool reading() const { return reading_; }
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
    /// Reads in a thread of its own, and once more where something changed meanwhile.
    void readBeside();
    void finishReading(Result<BatchesRead>& read);
    void take(BatchesRead read);
    [[nodiscard]] Row rowOf(const site::Material& material, const QString& id) const;
    void showPieces();
    [[nodiscard]] const storage::PieceToCut* piece() const;

    RowsModel batches_;
    RowsModel pieces_;
    RowsModel findings_;
    QString current_;
    QString currentPiece_;
    BatchesRead read_; ///< but for its plans
    std::map<std::string, WaitingPlan> plans_;
    bool reading_ = false;
    bool again_ = false; ///< what is being read is old already
    Beside<BatchesRead> reader_;
};

} // namespace lapwright::model
