#include "acts/planning.h"

#include "acts/blank_words.h"
#include "acts/fold_programs.h"
#include "acts/identity.h"
#include "acts/kept_order.h"
#include "acts/making.h"
#include "acts/open_pieces.h"
#include "acts/planned_pieces.h"
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

/// What a remake has over anything else of its day: a crew waits for it.
constexpr int remakePriority = 1'000;

/// So often at most are cuts planned while other stations change what is to be cut.
constexpr int mostAttempts = 3;

/// All pieces still to be cut, over all orders.
std::vector<schedule::OpenPiece> openPieces(const storage::Database& database)
{
    std::vector<schedule::OpenPiece> pieces;
    for (const storage::PieceToCut& one : storage::piecesToCut(database)) {
        const storage::OrderedPiece& ordered = one.piece.piece;
        schedule::OpenPiece piece;
        piece.order = one.piece.order;
        piece.job = one.jobName;
        piece.mark = ordered.mark;
        piece.material = {ordered.metal, ordered.gauge, ordered.colour};
        piece.girth = ordered.girth;
        piece.length = ordered.length;
        piece.count = one.piece.count;
        piece.priority = static_cast<int>(one.priority) + (one.remade ? remakePriority : 0);
        piece.held = one.orderHeld || one.pieceHeld;
        if (const auto date = schedule::readDate(one.wantedBy); date.ok())
            piece.wantedBy = *date;
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
    for (const storage::OrderSummary& summary : storage::unfinishedOrders(database)) {
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

/// Says the name of what is refused in place of its key.
void nameBlank(const schedule::Batch& batch, cutting::Refusal& refusal)
{
    if (refusal.part != cutting::Refusal::Part::Blank)
        return;
    for (auto& [name, value] : refusal.reason.values)
        if (name == "key")
            value = blankInWords(batch, refusal.key);
}

/// The plan of one batch; labels of new remnants are given here so that no two batches share one.
PlannedBatch planBatch(const schedule::Batch& batch, const schedule::ShopStock& stock,
                       const PlanRequest& request, RemnantNames& names)
{
    PlannedBatch planned;
    planned.batch = batch;
    cutting::Admission admission = documents::admit(problemOf(batch, stock));
    planned.refusals = std::move(admission.refusals);
    for (cutting::Refusal& refusal : planned.refusals)
        nameBlank(batch, refusal);
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

/// What the database keeps of a plan: its document, which pieces it cuts, where the metal goes.
storage::StoredPlan stored(const PlannedBatch& batch)
{
    const documents::CutPlan& cut = *batch.plan;
    storage::StoredPlan plan;
    plan.id = batch.id;
    plan.material = batch.batch.material;
    plan.document = documents::writeCutPlan({cut, {}}, documents::Layout::Canonical);
    plan.pieces = piecesCutBy(cut);
    plan.stockArea = cut.plan.waste.stock;
    plan.blankArea = cut.plan.waste.blanks;
    plan.remnantArea = cut.plan.waste.remnants;
    return plan;
}

Result<StockDocument> stockFor(const storage::Database& database, const std::optional<StockDocument>& given)
{
    if (given)
        return *given;
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
    database.write([&] { storage::saveStockDocument(database, documents::writeStock(*request.stock)); });
    return replaced;
}

/// Plans from the stock that stands. Nothing where another station changed meanwhile what is to be cut, or
/// what from.
Result<std::optional<Planned>> planOnce(const storage::Database& database, const PlanRequest& request,
                                        const FoldPrograms& programs, const storage::Stamp& stamp)
{
    // What is cut of the plans that stand stays cut, and leaves the stock before it is planned from.
    if (auto errors = settleTicks(database, std::nullopt, stamp); !errors.empty())
        return errors;
    const auto stock = stockFor(database, std::nullopt);
    if (!stock.ok())
        return stock.errors();
    const auto racks = storage::stockDocument(database);
    const std::vector<schedule::OpenPiece> pieces = openPieces(database);
    Planned planned;
    planned.unfoldable = unfoldable(database, programs);
    RemnantNames names(stock->value);
    std::vector<storage::StoredPlan> plans;
    const schedule::Batches batches = schedule::batchesOf(pieces, stock->value, request.coilWidthsApart);
    for (const schedule::OpenPiece& piece : batches.held)
        planned.held += piece.count;
    for (const schedule::Batch& batch : batches.batches) {
        planned.batches.push_back(planBatch(batch, stock->value, request, names));
        if (planned.batches.back().plan)
            plans.push_back(stored(planned.batches.back()));
    }
    const auto stands = [&] {
        return storage::tickedPatterns(database).empty() && openPieces(database) == pieces &&
               storage::stockDocument(database) == racks;
    };
    if (!storage::replacePlans(database, plans, stamp, stands))
        return std::optional<Planned>();
    return std::optional(std::move(planned));
}

} // namespace

std::int64_t PlannedBatch::piecesCut() const
{
    std::int64_t pieces = 0;
    if (!plan)
        return pieces;
    for (const cutting::Blank& blank : plan->problem.blanks)
        pieces += blank.count;
    for (const cutting::Shortfall& missing : plan->plan.notCut)
        pieces -= missing.count;
    return pieces;
}

bool Planned::complete() const
{
    return unfoldable.empty() && std::all_of(batches.begin(), batches.end(), [](const PlannedBatch& batch) {
               return batch.plan && batch.refusals.empty() && batch.plan->plan.notCut.empty();
           });
}

Result<Planned> planAll(const storage::Database& database, const PlanRequest& request,
                        const storage::Stamp& stamp)
{
    // Before a stock that is given overrules the one that they are taken from.
    if (auto errors = settleTicks(database, std::nullopt, stamp); !errors.empty())
        return errors;
    const auto stock = stockFor(database, request.stock);
    if (!stock.ok())
        return stock.errors();
    const auto programs = FoldPrograms::forShop(stock->value.machines, request.libraryFolders);
    if (!programs.ok())
        return programs.errors();
    const bool stockReplaced = keepStock(database, request);
    for (int attempt = 0; attempt < mostAttempts; ++attempt) {
        auto planned = planOnce(database, request, *programs, stamp);
        if (!planned.ok())
            return planned.errors();
        if (planned->has_value()) {
            (*planned)->stockReplaced = stockReplaced;
            return **std::move(planned);
        }
    }
    return Error{"", "other pieces or stock after planning than before it", "the same ones: plan again"};
}

} // namespace lapwright::acts
