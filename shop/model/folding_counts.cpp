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
    const QString lot = current_;
    startAgain();
    shop().act([&] {
        auto folded = acts::foldLot(shop().database(), orderOf(lot), profileOf(lot), shop().stamp());
        if (!folded.ok())
            return shop().tellTrouble(folded.errors());
        std::int64_t count = 0;
        for (const auto& [mark, pieces] : *folded)
            count += pieces;
        folded_ = Folded{lot, *std::move(folded)};
        shop().tell(tr("%1 folded").arg(counted(count, "piece")));
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
    const Folded last = *folded_;
    shop().act([&] {
        const auto again = acts::foldAgain(shop().database(), orderOf(last.lot), last.marks, shop().stamp());
        folded_.reset(); // answered: done, or not to be taken back any more
        if (!again.ok())
            return shop().tellTrouble(again.errors());
        current_ = last.lot;
        currentMark_ = exact(last.marks.begin()->first);
        shop().tell(last.marks.size() == 1 ? tr("%1 is to be folded again").arg(currentMark_)
                                           : tr("The whole lot is to be folded again"));
    });
}

} // namespace lapwright::model
