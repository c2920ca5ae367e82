#pragma once

#include "acts/fold_lot.h"
#include "acts/fold_programs.h"
#include "acts/making.h"
#include "desk.h"
#include "fold/picture.h"
#include "measure/result.h"
#include "picture.h"
#include "pieces/order.h"
#include "rows_model.h"
#include "storage/orders.h"
#include "storage/piece_events.h"

#include <QString>
#include <QTimer>

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::model {

/// What waits to be folded, and the steps of the lot at the machine, to be read from two metres away.
class FoldingDesk : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    /// Lots: pieces of one profile of one order.
    Q_PROPERTY(lapwright::model::RowsModel* lots READ lots CONSTANT FINAL)
    /// Marks of the current lot, with how many are still to fold.
    Q_PROPERTY(lapwright::model::RowsModel* marks READ marks CONSTANT FINAL)
    Q_PROPERTY(QString current READ current WRITE setCurrent NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString currentMark READ currentMark WRITE setCurrentMark NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString material READ material NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString machine READ machine NOTIFY currentChanged FINAL)
    Q_PROPERTY(QColor swatch READ swatch NOTIFY currentChanged FINAL)
    /// Why this lot cannot be folded; empty: it can.
    Q_PROPERTY(QString refusal READ refusal NOTIFY currentChanged FINAL)
    Q_PROPERTY(int stepCount READ stepCount NOTIFY currentChanged FINAL)
    Q_PROPERTY(int stepIndex READ stepIndex NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString position READ position NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString action READ action NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString gauge READ gauge NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString angle READ angle NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString colourSide READ colourSide NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString handling READ handling NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString handlingSign READ handlingSign NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString cautions READ cautions NOTIFY stepChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY pictureChanged FINAL)
    Q_PROPERTY(bool moving READ moving NOTIFY pictureChanged FINAL)
    Q_PROPERTY(QString counter READ counter NOTIFY stepChanged FINAL)
    /// There is a piece to begin again: the one at the machine, or what was said to be folded last.
    Q_PROPERTY(bool mayFoldAgain READ mayFoldAgain NOTIFY stepChanged FINAL)

public:
    explicit FoldingDesk(Shop& shop);
    ~FoldingDesk() override;
    Q_DISABLE_COPY_MOVE(FoldingDesk)

    [[nodiscard]] RowsModel* lots() { return &lots_; }
    [[nodiscard]] RowsModel* marks() { return &marks_; }
    [[nodiscard]] QString current() const { return current_; }
    void setCurrent(const QString& lot);
    [[nodiscard]] QString currentMark() const { return currentMark_; }
    void setCurrentMark(const QString& mark);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString material() const;
    [[nodiscard]] QString machine() const;
    [[nodiscard]] QColor swatch() const;
    [[nodiscard]] QString refusal() const;
    [[nodiscard]] int stepCount() const;
    [[nodiscard]] int stepIndex() const { return static_cast<int>(step_); }
    [[nodiscard]] QString position() const;
    [[nodiscard]] QString action() const;
    [[nodiscard]] QString gauge() const;
    [[nodiscard]] QString angle() const;
    [[nodiscard]] QString colourSide() const;
    [[nodiscard]] QString handling() const;
    [[nodiscard]] QString handlingSign() const;
    [[nodiscard]] QString cautions() const;
    [[nodiscard]] look::Picture picture() const { return picture_; }
    [[nodiscard]] bool moving() const { return motion_.isActive(); }
    [[nodiscard]] QString counter() const;
    [[nodiscard]] bool mayFoldAgain() const { return step_ > 0 || folded_.has_value(); }

    /// To the next step; after the last one a piece is folded and the first step comes again.
    Q_INVOKABLE void next();
    Q_INVOKABLE void back();
    /// One piece of the current mark is folded.
    Q_INVOKABLE void pieceFolded();
    /// One piece of the current mark is spoilt: it is ordered again.
    Q_INVOKABLE void pieceSpoilt();
    /// All pieces of the current lot are folded.
    Q_INVOKABLE void lotFolded();
    /// The piece at the machine from its first step on; at the first step, what this station said last to be
    /// folded: it is not, and is counted as still to fold.
    Q_INVOKABLE void foldAgain();
    /// Shows the current step in motion, or stops.
    Q_INVOKABLE void move();

signals:
    void currentChanged();
    void stepChanged();
    void pictureChanged();

protected:
    void reload() override;

private:
    struct Lot; ///< what is planned for the current lot
    /// What was said to be folded at one press.
    struct Folded {
        QString lot;
        acts::MarkCounts marks;
    };
    using ProfileNames = std::vector<std::pair<std::string, std::string>>; ///< by id, in the order's sequence
    struct Known {
        std::int64_t revision = 0;
        ProfileNames profiles;
    };

    /// Of the revision that counts; an order is read once for each.
    [[nodiscard]] const ProfileNames& profilesOf(const storage::OrderSummary& order);

    void showLot();
    /// Plans the current lot where it is not planned yet: its order, its revision or the shop's machines are
    /// others than before.
    void planLot();
    void planSteps();
    /// The programs are for the machines that stand there, as the library describes them now.
    [[nodiscard]] bool machinesStand() const;
    /// Errors: those of acts::FoldPrograms::forShop.
    [[nodiscard]] Result<bool> makePrograms();
    [[nodiscard]] const fold::FoldPlan* plan() const;
    [[nodiscard]] const fold::FoldStep* step() const;
    /// The next piece, from its first step.
    void startAgain();
    /// Does it to one piece of the current mark; `told` names the mark as %1. False where it is not done.
    bool doToOne(const std::function<Result<bool>(const acts::Which&)>& work, const QString& told);
    void draw();
    void drawMotion();

    RowsModel lots_;
    RowsModel marks_;
    QString current_;
    QString currentMark_;
    std::vector<storage::PieceInState> cut_; ///< and waiting to be folded
    std::map<std::string, Known> profiles_;  ///< by order
    std::vector<std::string> machines_;      ///< that `programs_` are made for
    int library_ = 0;                        ///< version of the library they are made by
    std::optional<acts::FoldPrograms> programs_;
    std::unique_ptr<Lot> lot_;
    std::size_t step_ = 0;
    std::optional<Folded> folded_; ///< last at this station, unless it is taken back
    look::Picture picture_;
    QTimer motion_;
    std::int64_t motionAt_ = 0;
};

} // namespace lapwright::model
