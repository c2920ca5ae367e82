// What is said of pieces at the folder: folded, spoilt, to be folded again.
#include "acts/fold_lot.h"
#include "folding_desk.h"
#include "lot_id.h"
#include "shop.h"
#include "text.h"

#include <utility>

namespace lapwright::model {

using schedule::PieceState;

void FoldingDesk::pieceFolded()
{
    const Folded one{current_, {{currentMark_.toStdString(), 1}}};
    if (doToOne(
            [this](const acts::Which& which) {
                return acts::foldSome(shop().database(), which, 1, shop().stamp());
            },
            tr("One %1 folded"))) {
        folded_ = one;
        emit stepChanged();
    }
}

void FoldingDesk::pieceSpoilt()
{
    (void)doToOne(
        [this](const acts::Which& which) {
            return acts::scrap(shop().database(), which, PieceState::Cut, 1, "spoilt at the folder",
                               shop().stamp());
        },
        tr("One %1 scrapped; it goes into the next plan"));
}

bool FoldingDesk::doToOne(const std::function<Result<bool>(const acts::Which&)>& work, const QString& told)
{
    if (currentMark_.isEmpty() || !shop().letsMake())
        return false;
    const acts::Which which{orderOf(current_), currentMark_.toStdString()};
    startAgain();
    bool done = false;
    shop().act([&] {
        const auto outcome = work(which);
        done = outcome.ok();
        if (done)
            shop().tell(told.arg(shown(which.mark)));
        else
            shop().tellTrouble(outcome.errors());
    });
    return done;
}

void FoldingDesk::lotFolded()
{
    if (current_.isEmpty() || !shop().letsMake())
        return;
    Folded lot{current_, {}};
    for (const storage::PieceInState& piece : cut_)
        if (lotId(piece.order, piece.piece.profile) == current_)
            lot.marks[piece.piece.mark] += piece.count;
    startAgain();
    shop().act([&] {
        const auto folded =
            acts::foldLot(shop().database(), orderOf(current_), profileOf(current_), shop().stamp());
        if (!folded.ok())
            return shop().tellTrouble(folded.errors());
        folded_ = std::move(lot);
        shop().tell(tr("%1 folded").arg(counted(*folded, "piece")));
    });
}

void FoldingDesk::foldAgain()
{
    if (step_ > 0) {
        startAgain();
        draw();
        emit stepChanged();
        return;
    }
    if (!folded_ || !shop().letsMake())
        return;
    const Folded last = *std::exchange(folded_, std::nullopt);
    shop().act([&] {
        const auto again = acts::foldAgain(shop().database(), orderOf(last.lot), last.marks, shop().stamp());
        if (!again.ok())
            return shop().tellTrouble(again.errors());
        current_ = last.lot;
        currentMark_ = shown(last.marks.begin()->first);
        shop().tell(last.marks.size() == 1 ? tr("%1 is to be folded again").arg(currentMark_)
                                           : tr("The whole lot is to be folded again"));
    });
}

} // namespace lapwright::model
