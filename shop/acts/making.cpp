#include "acts/making.h"

#include "acts/identity.h"
#include "acts/shop_stock.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>

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

/// Takes from the stock what the plan cuts, and puts the new remnants on the shelf.
void consume(schedule::ShopStock& stock, const site::Material& material, const documents::CutPlan& plan)
{
    const auto find = [&](const std::string& key) {
        return std::find_if(stock.items.begin(), stock.items.end(),
                            [&](const schedule::StockItem& item) { return item.stock.key == key; });
    };
    for (const cutting::Pattern& pattern : plan.plan.patterns) {
        const cutting::Stock& source = plan.problem.stocks[pattern.stock];
        const auto item = find(source.key);
        if (item == stock.items.end())
            continue;
        if (source.kind == cutting::StockKind::Coil)
            item->stock.length -= std::min(item->stock.length, pattern.length * pattern.count);
        else if (source.kind == cutting::StockKind::Remnant)
            stock.items.erase(item);
        else if (item->stock.count)
            *item->stock.count -= std::min(*item->stock.count, pattern.count);
    }
    for (const cutting::NewRemnant& remnant : plan.plan.remnants)
        for (std::int64_t each = 1; each <= remnant.count; ++each) {
            cutting::Stock left;
            left.key = remnant.count == 1 ? remnant.label : remnant.label + "." + std::to_string(each);
            while (find(left.key) != stock.items.end())
                left.key += "'";
            left.kind = cutting::StockKind::Remnant;
            left.width = remnant.width;
            left.length = remnant.length;
            left.count = 1;
            stock.items.push_back({material, left});
        }
}

/// Rolls a plan's transaction back when its pieces are not there any more.
struct NotCut {
    std::vector<Error> errors;
};

void cutWhole(const storage::Database& database, const storage::StoredPlan& stored,
              const documents::CutPlan& cut, StockDocument& stock, const storage::Stamp& stamp)
{
    std::vector<std::int64_t> counts;
    for (const cutting::Blank& blank : cut.problem.blanks)
        counts.push_back(blank.count);
    for (const cutting::Shortfall& missing : cut.plan.notCut)
        counts[missing.blank] -= missing.count;
    for (std::size_t blank = 0; blank < counts.size(); ++blank) {
        if (counts[blank] <= 0)
            continue;
        const std::string& key = cut.problem.blanks[blank].key;
        const std::size_t slash = key.find('/');
        const auto done = advance(database, key.substr(0, slash), key.substr(slash + 1), PieceState::Cut,
                                  counts[blank], stamp);
        if (!done.ok())
            throw NotCut{done.errors()};
    }
    consume(stock.value, stored.material, cut);
    storage::saveStockDocument(database, documents::writeStock(stock));
    storage::markCut(database, stored.id);
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
    for (const storage::StoredPlan& stored : storage::waitingPlans(database))
        if (stored.id == plan)
            return cutStored(database, stored, stamp);
    return Error{"plan " + plan, "no such plan waits to be cut", "a plan that is neither cut nor replaced"};
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

} // namespace lapwright::acts
