#include "acts/cut_words.h"
#include "acts/fold_programs.h"
#include "acts/fold_words.h"
#include "acts/kept_order.h"
#include "acts/open_pieces.h"
#include "acts/search_control.h"
#include "acts/shop_stock.h"
#include "acts/words.h"
#include "command.h"
#include "cutting/solve.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "input.h"
#include "measure/rounding.h"
#include "results.h"
#include "search_options.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <QRegularExpression>

#include <algorithm>
#include <map>

namespace lapwright::command {

namespace {

using Batches = std::map<site::Material, std::vector<storage::PieceInState>>;

/// All pieces still to be cut, over all orders, by metal, gauge and colour.
Batches batchesOf(const storage::Database& database)
{
    Batches batches;
    for (storage::PieceInState& piece : storage::piecesIn(database, schedule::PieceState::Ordered)) {
        const site::Material material{piece.piece.metal, piece.piece.gauge, piece.piece.colour};
        batches[material].push_back(std::move(piece));
    }
    return batches;
}

documents::CutProblem problemOf(const site::Material& material,
                                const std::vector<storage::PieceInState>& pieces,
                                const schedule::ShopStock& stock)
{
    documents::CutProblem problem;
    for (const storage::PieceInState& piece : pieces)
        problem.blanks.push_back({piece.order + "/" + piece.piece.mark,
                                  roundUp(piece.piece.girth, stock.cutStep),
                                  roundUp(piece.piece.length, stock.cutStep), piece.count, false, 0, 0});
    for (const schedule::StockItem& item : stock.items)
        if (item.material == material && item.stock.count != std::int64_t{0})
            problem.stocks.push_back(item.stock);
    problem.rules = stock.rules;
    return problem;
}

std::int64_t piecesOf(const std::vector<storage::PieceInState>& pieces)
{
    std::int64_t count = 0;
    for (const storage::PieceInState& piece : pieces)
        count += piece.count;
    return count;
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

/// What no machine of the shop can fold is told before metal is cut for it. True if all can be folded.
bool allFold(const storage::Database& database, const acts::FoldPrograms& programs, const Style& style)
{
    bool all = true;
    const acts::OpenPieces open(database, {schedule::PieceState::Ordered});
    for (const storage::OrderSummary& summary : storage::currentOrders(database)) {
        if (!open.any(summary.id))
            continue;
        const pieces::Order toMake = open.of(acts::keptOrder(database, summary.id));
        for (std::size_t profile = 0; profile < toMake.profiles.size(); ++profile) {
            const auto program = programs.of(toMake, profile);
            if (!program.ok())
                throw storage::StorageFailure(program.errors().front().sentence());
            if (!program->has_value() || (*program)->plan() != nullptr)
                continue;
            all = false;
            tell("BLOCKS  " + acts::nameOf(toMake, profile) + ": no machine of the shop can fold it");
            for (const std::string& line : acts::inWords((*program)->outcome, style))
                tell("        " + line);
        }
    }
    return all;
}

class Planner {
public:
    Planner(const schedule::ShopStock& stock, const cutting::Settings& settings, const Style& style,
            Results& results)
        : stock_(stock), names_(stock), settings_(settings), style_(style), results_(results)
    {
    }

    void plan(const site::Material& material, const std::vector<storage::PieceInState>& pieces)
    {
        const documents::CutProblem wanted = problemOf(material, pieces, stock_);
        const std::string name = acts::describe(material);
        const cutting::Admission admission = documents::admit(wanted);
        for (const cutting::Refusal& refusal : admission.refusals)
            tell("BLOCKS  " + name + ": " + say(refusal.reason, style_));
        complete_ = complete_ && admission.refusals.empty();
        if (!admission.problem)
            return;
        cutting::Plan plan = cutting::solve(*admission.problem, settings_, acts::searchControl());
        const documents::CutProblem problem = documents::writtenDown(*admission.problem);
        for (const cutting::Shortfall& missing : plan.notCut)
            tell("BLOCKS  " + name + ": stock does not suffice for " + std::to_string(missing.count) +
                 " of " + problem.blanks[missing.blank].key);
        complete_ = complete_ && plan.notCut.empty();
        names_.give(plan);
        documents::CutPlan document{problem, std::move(plan)};
        results_.add(name + ": " + acts::counted(piecesOf(pieces), "piece") + " from " +
                         acts::summaryInWords(document, style_),
                     {{"metal", material.metal},
                      {"gauge", material.gauge},
                      {"colour", material.colour},
                      {"pieces", piecesOf(pieces)},
                      {"value", document.plan.value},
                      {"bound", document.plan.bound},
                      {"proven_least", document.plan.proof == cutting::Proof::ProvenLeast},
                      {"setups", document.plan.setups}});
        plans_.push_back({newUuid(), material,
                          documents::writeCutPlan({std::move(document), {}}, documents::Layout::Canonical)});
    }

    [[nodiscard]] const std::vector<storage::StoredPlan>& plans() const { return plans_; }
    [[nodiscard]] bool complete() const { return complete_; }

private:
    const schedule::ShopStock& stock_;
    RemnantNames names_;
    const cutting::Settings& settings_;
    const Style style_;
    Results& results_;
    std::vector<storage::StoredPlan> plans_;
    bool complete_ = true;
};

using StockDocument = documents::Document<schedule::ShopStock>;

/// The stock to plan from: the document named with --stock, or what stands in the database.
Result<StockDocument> stockFor(const storage::Database& database, const QCommandLineParser& options)
{
    if (options.isSet("stock"))
        return readFrom(text(options, "stock"), documents::readStock);
    auto standing = acts::standingStock(database);
    if (!standing.ok())
        return standing.errors();
    if (!standing->has_value())
        return Error{"", "no stock", "--stock with the shop's stock document, at least the first time"};
    return **std::move(standing);
}

/// Keeps a stock document named with --stock, and says where that overrules what the shop has on its racks.
void keepStock(const storage::Database& database, const QCommandLineParser& options,
               const StockDocument& stock)
{
    if (!options.isSet("stock"))
        return;
    const auto standing = acts::standingStock(database);
    if (standing.ok() && standing->has_value() && !((*standing)->value == stock.value))
        tell("the stock in the database is replaced by " + text(options, "stock") +
             "; leave --stock out to go on with what is left on the racks");
    storage::saveStockDocument(database, documents::writeStock(stock));
}

Exit planAll(const QCommandLineParser& options, const cutting::Settings& settings,
             const storage::Database& database)
{
    const auto stock = stockFor(database, options);
    if (!stock.ok()) {
        tell(stock.errors());
        return Exit::BadInput;
    }
    const auto programs = acts::FoldPrograms::forShop(stock->value.machines, libraryFolders(options));
    if (!programs.ok()) {
        tell(programs.errors());
        return Exit::BadInput;
    }
    keepStock(database, options, *stock);
    const bool folds = allFold(database, *programs, styleOf(options));
    Results results(options);
    Planner planner(stock->value, settings, styleOf(options), results);
    for (const auto& [material, pieces] : batchesOf(database))
        planner.plan(material, pieces);
    storage::replacePlans(database, planner.plans(), stampOf(options));
    if (planner.plans().empty())
        results.nothing("nothing to cut");
    results.finish();
    return planner.complete() && folds ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const auto settings = searchSettings(options);
    if (!settings.ok()) {
        tell(settings.errors());
        return Exit::BadInput;
    }
    return inShop(options,
                  [&](const storage::Database& database) { return planAll(options, *settings, database); });
}

} // namespace

Subcommand planCommand()
{
    return {
        "plan",
        "",
        "batch all pieces still to be cut by metal, gauge and colour, and plan the cuts",
        "Pieces of all orders that are not yet cut are batched by metal, gauge and colour and planned from the "
        "stock, remnants first where that is worth it. Each plan says how far it can be from the least. Planning "
        "again replaces every plan that is not cut. Profiles that no machine of the shop can fold are told first.",
        {databaseOption(),
         {"stock", "The stock document (lapwright/stock); kept in the database, needed the first time.",
          "STOCK"},
         timeOption(),
         stationOption(),
         personOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
