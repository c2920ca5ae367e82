#include "acts/making.h"

#include "acts/identity.h"
#include "acts/planned_pieces.h"
#include "acts/shop_stock.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

namespace lapwright::acts {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;
using StockDocument = documents::Document<schedule::ShopStock>;

/// Advances pieces; call inside Database::write().
Result<bool> advance(const storage::Database& database, const std::string& order, const std::string& mark,
                     PieceState state, std::int64_t count, const storage::Stamp& stamp)
{
    return storage::logEvent(database,
                             {newUuid(), order, mark, {PieceEvent::Kind::Advance, state, count}, ""}, stamp);
}

/// Rolls a plan's transaction back when its pieces are not there any more.
struct NotCut {
    std::vector<Error> errors;
};

void cutWhole(const storage::Database& database, const storage::StoredPlan& stored,
              const documents::CutPlan& cut, StockDocument& stock, const storage::Stamp& stamp)
{
    for (const storage::PlannedPiece& piece : piecesCutBy(cut)) {
        const auto done = advance(database, piece.order, piece.mark, PieceState::Cut, piece.count, stamp);
        if (!done.ok())
            throw NotCut{done.errors()};
    }
    for (const schedule::StockChange& change :
         schedule::consume(stock.value, {stored.material, cut.problem.stocks, cut.plan}))
        logStockChange(database, change, stored.id, stamp);
    storage::saveStockDocument(database, documents::writeStock(stock));
    if (!storage::markCut(database, stored.id, stamp))
        throw NotCut{
            {Error{"plan " + stored.id, "cut or taken back by another station", "a plan that waits"}}};
}

Result<CutBatch> cutStored(const storage::Database& database, const storage::StoredPlan& stored,
                           const storage::Stamp& stamp)
{
    const auto plan = documents::readCutPlan(stored.document);
    if (!plan.ok())
        return plan.errorsWithin("plan " + stored.id);
    CutBatch batch{stored.id, stored.material, {}};
    try {
        return database.write([&]() -> Result<CutBatch> {
            auto stock = standingStock(database);
            if (!stock.ok())
                return stock.errors();
            if (!stock->has_value())
                return Error{"plan " + stored.id, "no stock to cut it from", "a stock in the database"};
            cutWhole(database, stored, plan->value, **stock, stamp);
            return batch;
        });
    } catch (NotCut& why) {
        batch.errors = std::move(why.errors);
        return batch;
    }
}

} // namespace

Result<std::vector<CutBatch>> cutWaitingPlans(const storage::Database& database, const storage::Stamp& stamp)
{
    std::vector<CutBatch> batches;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        auto batch = cutStored(database, stored, stamp);
        if (!batch.ok())
            return batch.errors();
        batches.push_back(*std::move(batch));
    }
    return batches;
}

Result<CutBatch> cutPlan(const storage::Database& database, const std::string& plan,
                         const storage::Stamp& stamp)
{
    const auto stored = storage::waitingPlan(database, plan);
    if (!stored)
        return Error{"plan " + plan, "no such plan waits to be cut",
                     "a plan that is neither cut nor replaced"};
    return cutStored(database, *stored, stamp);
}

Moved fold(const storage::Database& database, const Which& which, const storage::Stamp& stamp)
{
    Moved moved;
    database.write([&] {
        for (const storage::PieceInState& piece : storage::piecesIn(database, PieceState::Cut)) {
            if ((!which.mark.empty() && piece.piece.mark != which.mark) ||
                (!which.order.empty() && piece.order != which.order))
                continue;
            const auto done =
                advance(database, piece.order, piece.piece.mark, PieceState::Folded, piece.count, stamp);
            if (done.ok())
                moved.count += piece.count;
            else
                moved.errors.insert(moved.errors.end(), done.errors().begin(), done.errors().end());
        }
    });
    return moved;
}

Result<bool> foldSome(const storage::Database& database, const Which& which, std::int64_t count,
                      const storage::Stamp& stamp)
{
    return database.write(
        [&] { return advance(database, which.order, which.mark, PieceState::Folded, count, stamp); });
}

Result<bool> scrap(const storage::Database& database, const Which& which, PieceState state,
                   std::int64_t count, const std::string& reason, const storage::Stamp& stamp)
{
    if (state != PieceState::Cut && state != PieceState::Folded && state != PieceState::Bundled)
        return Error{"mark " + which.mark, "pieces that are " + std::string(schedule::name(state)),
                     "pieces that are cut, folded or bundled"};
    return database.write([&] {
        return storage::logEvent(
            database, {newUuid(), which.order, which.mark, {PieceEvent::Kind::Scrap, state, count}, reason},
            stamp);
    });
}

} // namespace lapwright::acts
