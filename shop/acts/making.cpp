#include "acts/making.h"

#include "acts/identity.h"
#include "acts/shop_stock.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <functional>
#include <set>
#include <utility>

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

void require(const Result<bool>& done)
{
    if (!done.ok())
        throw NotCut{done.errors()};
}

/// What of a plan is cut, asked within the write that says so; nothing: none of it after all.
using PartOf = std::function<std::optional<CutPart>(const documents::CutPlan&)>;

/// The sheets that are ticked of a waiting plan. Call inside Database::write(): another station ticks on.
std::set<std::size_t> tickedOf(const storage::Database& database, const std::string& plan)
{
    std::set<std::size_t> patterns;
    const auto ticks = storage::tickedPatterns(database);
    if (const auto ofPlan = ticks.find(plan); ofPlan != ticks.end())
        for (const auto& [pattern, by] : ofPlan->second)
            patterns.insert(pattern);
    return patterns;
}

/// All of the plan.
CutPart wholeOf(const documents::CutPlan& plan)
{
    CutPart whole;
    for (std::size_t pattern = 0; pattern < plan.plan.patterns.size(); ++pattern)
        whole.patterns.insert(pattern);
    return whole;
}

/// Nothing where the plan does not wait any more.
bool mark(const storage::Database& database, const std::string& plan, const Portion& portion, bool whole,
          const storage::Stamp& stamp)
{
    if (whole)
        return storage::markCut(database, plan, stamp);
    storage::StoredPlan part;
    part.id = plan;
    part.pieces = portion.cut;
    part.stockArea = portion.stockArea;
    part.blankArea = portion.blankArea;
    part.remnantArea = portion.remnantArea;
    return storage::markPartCut(database, part, stamp);
}

void cutPortion(const storage::Database& database, const storage::StoredPlan& stored,
                const documents::CutPlan& cut, const CutPart& part, StockDocument& stock,
                const storage::Stamp& stamp)
{
    const Portion portion = portionOf(cut, part);
    for (const storage::PlannedPiece& piece : portion.cut)
        require(advance(database, piece.order, piece.mark, PieceState::Cut, piece.count, stamp));
    for (const storage::PlannedPiece& piece : portion.spoilt)
        require(storage::logEvent(database,
                                  {newUuid(),
                                   piece.order,
                                   piece.mark,
                                   {PieceEvent::Kind::Scrap, PieceState::Cut, piece.count},
                                   "strip spoilt at the shear"},
                                  stamp));
    for (const schedule::StockChange& change :
         schedule::consume(stock.value, {stored.material, cut.problem.stocks, portion.plan}))
        logStockChange(database, change, stored.id, stamp);
    storage::saveStockDocument(database, documents::writeStock(stock));
    storage::tickPatterns(database, stored.id, part.patterns, stamp);
    const bool whole = !part.spoilt && part.patterns.size() == cut.plan.patterns.size();
    if (!mark(database, stored.id, portion, whole, stamp))
        throw NotCut{
            {Error{"plan " + stored.id, "cut or taken back by another station", "a plan that waits"}}};
}

Result<CutBatch> cutStored(const storage::Database& database, const storage::StoredPlan& stored,
                           const PartOf& partOf, const storage::Stamp& stamp)
{
    const auto plan = documents::readCutPlan(stored.document);
    if (!plan.ok())
        return plan.errorsWithin("plan " + stored.id);
    CutBatch batch{stored.id, stored.material, {}};
    try {
        return database.write([&]() -> Result<CutBatch> {
            const auto part = partOf(plan->value);
            if (!part)
                return batch;
            auto stock = standingStock(database);
            if (!stock.ok())
                return stock.errors();
            if (!stock->has_value())
                return Error{"plan " + stored.id, "no stock to cut it from", "a stock in the database"};
            cutPortion(database, stored, plan->value, *part, **stock, stamp);
            return batch;
        });
    } catch (NotCut& why) {
        batch.errors = std::move(why.errors);
        return batch;
    }
}

Result<CutBatch> cutWaiting(const storage::Database& database, const std::string& plan, const PartOf& partOf,
                            const storage::Stamp& stamp)
{
    const auto stored = storage::waitingPlan(database, plan);
    if (!stored)
        return Error{"plan " + plan, "no such plan waits to be cut",
                     "a plan that is neither cut nor replaced"};
    return cutStored(database, *stored, partOf, stamp);
}

/// Nothing of it where nothing is ticked any more.
Result<CutBatch> cutTicked(const storage::Database& database, const storage::StoredPlan& stored,
                           const storage::Stamp& stamp)
{
    const auto whatIsTicked = [&](const documents::CutPlan&) -> std::optional<CutPart> {
        std::set<std::size_t> patterns = tickedOf(database, stored.id);
        if (patterns.empty())
            return std::nullopt;
        return CutPart{std::move(patterns), std::nullopt};
    };
    return cutStored(database, stored, whatIsTicked, stamp);
}

} // namespace

Result<std::vector<CutBatch>> cutWaitingPlans(const storage::Database& database, const storage::Stamp& stamp)
{
    std::vector<CutBatch> batches;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        auto batch = cutStored(database, stored, wholeOf, stamp);
        if (!batch.ok())
            return batch.errors();
        batches.push_back(*std::move(batch));
    }
    return batches;
}

Result<CutBatch> cutPlan(const storage::Database& database, const std::string& plan,
                         const storage::Stamp& stamp)
{
    return cutWaiting(database, plan, wholeOf, stamp);
}

Result<CutBatch> spoilStrip(const storage::Database& database, const std::string& plan,
                            const CutPart::Spoilt& strip, const storage::Stamp& stamp)
{
    const auto withTicked = [&](const documents::CutPlan&) {
        CutPart part{tickedOf(database, plan), strip};
        if (part.patterns.count(strip.pattern) > 0)
            throw NotCut{
                {Error{"plan " + plan, "a sheet that is ticked as cut", "a sheet that is being cut"}}};
        return part;
    };
    return cutWaiting(database, plan, withTicked, stamp);
}

std::vector<Error> settleTicks(const storage::Database& database, const std::optional<std::string>& order,
                               const storage::Stamp& stamp)
{
    std::vector<Error> errors;
    for (const auto& [plan, ticks] : storage::tickedPatterns(database)) {
        const std::vector<storage::PlannedPiece> pieces = storage::piecesOfPlan(database, plan);
        const auto isOfOrder = [&](const storage::PlannedPiece& piece) { return piece.order == *order; };
        if (order && std::none_of(pieces.begin(), pieces.end(), isOfOrder))
            continue;
        const auto stored = storage::waitingPlan(database, plan);
        if (!stored)
            continue; // another station was first
        const auto batch = cutTicked(database, *stored, stamp);
        const std::vector<Error>& why = batch.ok() ? batch->errors : batch.errors();
        errors.insert(errors.end(), why.begin(), why.end());
    }
    return errors;
}

Moved fold(const storage::Database& database, const Which& which, const storage::Stamp& stamp)
{
    return database.write([&] {
        Moved moved;
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
        return moved;
    });
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
