#include "acts/planning.h"

#include "acts/fold_programs.h"
#include "acts/identity.h"
#include "acts/kept_order.h"
#include "acts/open_pieces.h"
#include "acts/priority.h"
#include "acts/search_control.h"
#include "acts/shop_stock.h"
#include "cutting/solve.h"
#include "documents/shop.h"
#include "measure/rounding.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <QRegularExpression>

#include <algorithm>
#include <map>

namespace lapwright::acts {

namespace {

using StockDocument = documents::Document<schedule::ShopStock>;

/// All pieces still to be cut, over all orders.
std::vector<schedule::OpenPiece> piecesToCut(const storage::Database& database)
{
    std::vector<schedule::OpenPiece> pieces;
    const std::vector<storage::PieceInState> open =
        storage::piecesIn(database, schedule::PieceState::Ordered);
    if (open.empty())
        return pieces;
    std::map<std::string, storage::OrderSummary> orders;
    for (const storage::OrderSummary& order : storage::currentOrders(database))
        orders.emplace(order.id, order);
    std::map<std::string, int> priorities;
    for (const storage::PieceInState& one : open) {
        if (priorities.count(one.order) == 0)
            priorities[one.order] = priorityOf(database, one.order);
        schedule::OpenPiece piece;
        piece.order = one.order;
        piece.mark = one.piece.mark;
        piece.material = {one.piece.metal, one.piece.gauge, one.piece.colour};
        piece.girth = one.piece.girth;
        piece.length = one.piece.length;
        piece.count = one.count;
        piece.priority = priorities[one.order];
        if (const auto order = orders.find(one.order); order != orders.end()) {
            piece.job = order->second.jobName;
            piece.wantedBy = dateOf(order->second);
        }
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

documents::CutProblem problemOf(const schedule::Batch& batch, const schedule::ShopStock& stock)
{
    documents::CutProblem problem;
    for (const schedule::BatchLine& line : batch.lines)
        problem.blanks.push_back({schedule::blankKey(line.piece.order, line.piece.mark),
                                  roundUp(line.piece.girth, stock.cutStep),
                                  roundUp(line.piece.length, stock.cutStep), line.piece.count, false,
                                  line.dueClass, line.piece.priority});
    problem.stocks = schedule::stockFor(batch, stock);
    problem.rules = stock.rules;
    return problem;
}

/// Labels for new remnants, "R22" and on: one past the highest number a remnant on the shelf bears.
class RemnantNames {
public:
    explicit RemnantNames(const schedule::ShopStock& stock)
    {
        for (const schedule::StockItem& item : stock.items) {
            const QRegularExpressionMatch match =
                QRegularExpression("^R-?(\\d{1,9})\\b").match(QString::fromStdString(item.stock.key));
            if (match.hasMatch())
                last_ = std::max(last_, match.captured(1).toLongLong());
        }
    }

    void give(cutting::Plan& plan)
    {
        for (cutting::NewRemnant& remnant : plan.remnants)
            remnant.label = "R" + std::to_string(++last_);
    }

private:
    long long last_ = 0;
};

/// What no machine of the shop can fold is found before metal is cut for it.
std::vector<Unfoldable> unfoldable(const storage::Database& database, const FoldPrograms& programs)
{
    std::vector<Unfoldable> found;
    const OpenPieces open(database, {schedule::PieceState::Ordered});
    for (const storage::OrderSummary& summary : storage::currentOrders(database)) {
        if (!open.any(summary.id))
            continue;
        const pieces::Order toMake = open.of(keptOrder(database, summary.id));
        for (std::size_t profile = 0; profile < toMake.profiles.size(); ++profile) {
            auto program = programs.of(toMake, profile);
            if (!program.ok())
                throw storage::StorageFailure(program.errors().front().sentence());
            if (program->has_value() && (*program)->plan() == nullptr)
                found.push_back({nameOf(toMake, profile), std::move((*program)->outcome)});
        }
    }
    return found;
}

/// The plan of one batch; labels of new remnants are given here so that no two batches share one.
PlannedBatch planBatch(const schedule::Batch& batch, const schedule::ShopStock& stock,
                       const PlanRequest& request, RemnantNames& names)
{
    PlannedBatch planned;
    planned.batch = batch;
    cutting::Admission admission = documents::admit(problemOf(batch, stock));
    planned.refusals = std::move(admission.refusals);
    if (!admission.problem)
        return planned;
    cutting::Control control = searchControl();
    control.progress = request.progress;
    cutting::Plan plan = cutting::solve(*admission.problem, request.settings, control);
    names.give(plan);
    planned.id = newUuid();
    planned.plan = documents::CutPlan{documents::writtenDown(*admission.problem), std::move(plan)};
    return planned;
}

Result<StockDocument> stockFor(const storage::Database& database, const PlanRequest& request)
{
    if (request.stock)
        return *request.stock;
    auto standing = standingStock(database);
    if (!standing.ok())
        return standing.errors();
    if (!standing->has_value())
        return Error{"", "no stock", "--stock with the shop's stock document, at least the first time"};
    return **std::move(standing);
}

/// Keeps the stock that is given. True if that overrules what the shop has on its racks.
bool keepStock(const storage::Database& database, const PlanRequest& request)
{
    if (!request.stock)
        return false;
    const auto standing = standingStock(database);
    const bool replaced =
        standing.ok() && standing->has_value() && !((*standing)->value == request.stock->value);
    storage::saveStockDocument(database, documents::writeStock(*request.stock));
    return replaced;
}

} // namespace

bool Planned::complete() const
{
    return unfoldable.empty() && std::all_of(batches.begin(), batches.end(), [](const PlannedBatch& batch) {
               return batch.plan && batch.refusals.empty() && batch.plan->plan.notCut.empty();
           });
}

Result<Planned> planAll(const storage::Database& database, const PlanRequest& request,
                        const storage::Stamp& stamp)
{
    const auto stock = stockFor(database, request);
    if (!stock.ok())
        return stock.errors();
    const auto programs = FoldPrograms::forShop(stock->value.machines, request.libraryFolders);
    if (!programs.ok())
        return programs.errors();
    Planned planned;
    planned.stockReplaced = keepStock(database, request);
    planned.unfoldable = unfoldable(database, *programs);
    RemnantNames names(stock->value);
    std::vector<storage::StoredPlan> stored;
    const schedule::Batches batches =
        schedule::batchesOf(piecesToCut(database), stock->value, request.coilWidthsApart);
    for (const schedule::Batch& batch : batches.batches) {
        planned.batches.push_back(planBatch(batch, stock->value, request, names));
        const PlannedBatch& last = planned.batches.back();
        if (last.plan)
            stored.push_back({last.id, batch.material,
                              documents::writeCutPlan({*last.plan, {}}, documents::Layout::Canonical)});
    }
    storage::replacePlans(database, stored, stamp);
    return planned;
}

} // namespace lapwright::acts
