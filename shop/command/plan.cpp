#include "command.h"
#include "cut_words.h"
#include "cutting/solve.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "input.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

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
        problem.blanks.push_back({piece.order + "/" + piece.piece.mark, piece.piece.girth, piece.piece.length,
                                  piece.count, false, 0, 0});
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

class Planner {
public:
    Planner(const schedule::ShopStock& stock, const cutting::Settings& settings, const Style& style)
        : stock_(stock), settings_(settings), style_(style)
    {
    }

    void plan(const site::Material& material, const std::vector<storage::PieceInState>& pieces)
    {
        const documents::CutProblem wanted = problemOf(material, pieces, stock_);
        const std::string name = material.gauge + " " + material.metal + ", " + material.colour;
        const cutting::Admission admission = documents::admit(wanted);
        for (const cutting::Refusal& refusal : admission.refusals)
            tell("BLOCKS  " + name + ": " + refusal.key + ": " + say(refusal.reason, style_));
        complete_ = complete_ && admission.refusals.empty();
        if (!admission.problem)
            return;
        cutting::Plan plan = cutting::solve(*admission.problem, settings_, searchControl());
        const documents::CutProblem problem = documents::writtenDown(*admission.problem);
        for (const cutting::Shortfall& missing : plan.notCut)
            tell("BLOCKS  " + name + ": stock does not suffice for " + std::to_string(missing.count) +
                 " of " + problem.blanks[missing.blank].key);
        complete_ = complete_ && plan.notCut.empty();
        documents::CutPlan document{problem, std::move(plan)};
        print(name + ": " + std::to_string(piecesOf(pieces)) + " pieces from " +
              summaryInWords(document, style_));
        plans_.push_back({newUuid(), material,
                          documents::writeCutPlan({std::move(document), {}}, documents::Layout::Canonical)});
    }

    [[nodiscard]] const std::vector<storage::StoredPlan>& plans() const { return plans_; }
    [[nodiscard]] bool complete() const { return complete_; }

private:
    const schedule::ShopStock& stock_;
    const cutting::Settings& settings_;
    const Style style_;
    std::vector<storage::StoredPlan> plans_;
    bool complete_ = true;
};

/// Takes a new stock document in if one is named, and gives the stock that stands then.
Result<schedule::ShopStock> stockFor(const storage::Database& database, const QCommandLineParser& options)
{
    if (options.isSet("stock")) {
        const auto given = receiveFrom(text(options, "stock"), documents::readStock);
        if (!given.ok())
            return given.errors();
        storage::saveStockDocument(database, given->text);
        return given->document.value;
    }
    const auto standing = storage::stockDocument(database);
    if (!standing)
        return Error{"", "no stock", "--stock with the shop's stock document, at least the first time"};
    const auto stock = documents::readStock(*standing);
    if (!stock.ok())
        return stock.errorsWithin("stock in the database");
    return stock->value;
}

Exit planAll(const QCommandLineParser& options, const cutting::Settings& settings,
             const storage::Database& database)
{
    const auto stock = stockFor(database, options);
    if (!stock.ok()) {
        tell(stock.errors());
        return Exit::BadInput;
    }
    Planner planner(*stock, settings, styleOf(options));
    for (const auto& [material, pieces] : batchesOf(database))
        planner.plan(material, pieces);
    storage::replacePlans(database, planner.plans(), stampOf(options));
    if (planner.plans().empty())
        print("nothing to cut");
    return planner.complete() ? Exit::Done : Exit::Blocked;
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
        "again replaces every plan that is not cut.",
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
