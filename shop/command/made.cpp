#include "acts/shop_stock.h"
#include "acts/words.h"
#include "command.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "results.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>

namespace lapwright::command {

namespace {

using schedule::PieceEvent;
using schedule::PieceState;

/// Advances pieces and says what could not be; throws nothing away. Call inside Database::write().
bool advance(const storage::Database& database, const std::string& order, const std::string& mark,
             PieceState state, std::int64_t count, const storage::Stamp& stamp)
{
    const auto logged = storage::logEvent(
        database, {newUuid(), order, mark, {PieceEvent::Kind::Advance, state, count}, ""}, stamp);
    if (!logged.ok())
        tell(logged.errors());
    return logged.ok();
}

/// Takes from the stock what the plan cuts, and puts the new remnants on the shelf.
void consume(schedule::ShopStock& stock, const storage::StoredPlan& stored, const documents::CutPlan& plan)
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
            stock.items.push_back({stored.material, left});
        }
}

/// Rolls a plan's transaction back when its pieces are not there any more.
struct NotCut {};

Exit cutPlans(const storage::Database& database, const storage::Stamp& stamp, Results& results)
{
    const std::vector<storage::StoredPlan> plans = storage::waitingPlans(database);
    auto standing = acts::standingStock(database);
    if (!standing.ok()) {
        tell(standing.errors());
        return Exit::CouldNot;
    }
    if (plans.empty() || !standing->has_value()) {
        results.nothing("no plan waits to be cut; `lapwright plan` makes one");
        return Exit::Done;
    }
    documents::Document<schedule::ShopStock>& stock = **standing;
    bool all = true;
    for (const storage::StoredPlan& stored : plans) {
        const auto plan = documents::readCutPlan(stored.document);
        if (!plan.ok()) {
            tell(plan.errorsWithin("plan " + stored.id));
            return Exit::CouldNot;
        }
        const schedule::ShopStock before = stock.value;
        const auto cutWhole = [&] {
            const documents::CutPlan& cut = plan->value;
            std::vector<std::int64_t> counts;
            for (const cutting::Blank& blank : cut.problem.blanks)
                counts.push_back(blank.count);
            for (const cutting::Shortfall& missing : cut.plan.notCut)
                counts[missing.blank] -= missing.count;
            for (std::size_t blank = 0; blank < counts.size(); ++blank) {
                const std::string& key = cut.problem.blanks[blank].key;
                const std::size_t slash = key.find('/');
                if (counts[blank] > 0 && !advance(database, key.substr(0, slash), key.substr(slash + 1),
                                                  PieceState::Cut, counts[blank], stamp))
                    throw NotCut();
            }
            consume(stock.value, stored, cut);
            storage::saveStockDocument(database, documents::writeStock(stock));
            storage::markCut(database, stored.id);
        };
        try {
            database.write(cutWhole);
        } catch (const NotCut&) {
            stock.value = before;
            all = false;
            tell("not marked as cut: " + acts::describe(stored.material) + "; plan again");
            continue;
        }
        results.add("cut: " + acts::describe(stored.material), {{"plan", stored.id},
                                                                {"metal", stored.material.metal},
                                                                {"gauge", stored.material.gauge},
                                                                {"colour", stored.material.colour}});
    }
    return all ? Exit::Done : Exit::Blocked;
}

Exit advanceAll(const storage::Database& database, PieceState from, PieceState to, const std::string& order,
                const std::string& mark, const storage::Stamp& stamp, Results& results)
{
    std::int64_t moved = 0;
    bool all = true;
    const auto wanted = [&](const storage::PieceInState& piece) {
        return (mark.empty() || piece.piece.mark == mark) && (order.empty() || piece.order == order);
    };
    database.write([&] {
        for (const storage::PieceInState& piece : storage::piecesIn(database, from)) {
            if (!wanted(piece))
                continue;
            if (advance(database, piece.order, piece.piece.mark, to, piece.count, stamp))
                moved += piece.count;
            else
                all = false;
        }
    });
    const std::string state(schedule::name(to));
    results.add(acts::counted(moved, "piece") + " " + state, {{"state", state}, {"count", moved}});
    if (moved == 0 && !mark.empty())
        tell("no piece " + mark + " is " + std::string(schedule::name(from)));
    return all ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const std::string what = argument(options);
    if (what != "cut" && what != "folded") {
        tell("lapwright: made " + what + ", expected cut or folded");
        return Exit::BadInput;
    }
    if (what == "cut" && (options.isSet("mark") || options.isSet("order"))) {
        tell("lapwright: made cut with --mark or --order, expected neither: whole plans are cut");
        return Exit::BadInput;
    }
    return inShop(options, [&](const storage::Database& database) {
        Results results(options);
        const Exit exit =
            what == "cut" ? cutPlans(database, stampOf(options), results)
                          : advanceAll(database, PieceState::Cut, PieceState::Folded, text(options, "order"),
                                       text(options, "mark"), stampOf(options), results);
        results.finish();
        return exit;
    });
}

} // namespace

Subcommand madeCommand()
{
    return {
        "made",
        "cut|folded",
        "say that the planned cuts are made, or that cut pieces are folded",
        "`made cut` marks every waiting plan as cut, takes its metal out of the stock and puts the new remnants on the "
        "shelf. `made folded` marks cut pieces as folded, all of them, those of one order, or one mark.",
        {databaseOption(),
         {"order", "Only pieces of the order of this identity (`lapwright status --json` lists them).",
          "UUID"},
         {"mark", "Only this mark.", "MARK"},
         stationOption(),
         personOption()},
        1,
        1,
        run};
}

} // namespace lapwright::command
