#include "storage/health.h"

#include "documents/cut.h"
#include "documents/order.h"
#include "documents/rates.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "storage/piece_events.h"
#include "storage/piece_totals.h"
#include "storage/rows.h"
#include "storage/shop_state.h"

#include <map>
#include <numeric>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace lapwright::storage {

namespace {

using schedule::PieceCounts;
using Sums = std::map<std::string, std::int64_t>; ///< by state

constexpr std::size_t most = 100;

void addTo(std::map<std::string, Sums>& sums, const std::string& whose, const PieceCounts& counts)
{
    for (std::size_t state = 0; state < schedule::pieceStates; ++state)
        if (counts.in[state] != 0)
            sums[whose][std::string(schedule::name(static_cast<schedule::PieceState>(state)))] +=
                counts.in[state];
    if (counts.remade != 0)
        sums[whose][std::string(remadeKey)] += counts.remade;
}

/// Pieces in any state of their life; one that is made again is counted once.
std::int64_t standing(const PieceCounts& counts)
{
    return std::accumulate(counts.in.begin(), counts.in.end(), std::int64_t{0}) - counts.remade;
}

class Examination {
public:
    explicit Examination(const Database& database) : database_(database) {}

    Health run()
    {
        for (const std::string& fault : database_.engineFaults())
            damaged({"database", fault, "a file as the database wrote it"});
        try {
            examineAll();
        } catch (const StorageFailure& failure) {
            if (health_.damage.empty())
                throw;
            damaged({"database", failure.what(), "rows that can be read"});
        }
        return std::move(health_);
    }

private:
    void examineAll()
    {
        examineLog();
        examineOrders();
        examineLinks();
        examineDocuments("SELECT id, document FROM plans WHERE state <> 'replaced'", "plan",
                         documents::readCutPlan);
        examineDocuments("SELECT id, document FROM loads", "load", documents::readLoad);
        examineDocuments("SELECT id, document FROM receipts", "receipt", documents::readReceipt);
        examineKept("stock", stockDocument(database_), documents::readStock);
        examineKept("floor", floorDocument(database_), documents::readFloor);
        examineKept("schedule", scheduleDocument(database_), documents::readSchedule);
        examineKept("rates", ratesDocument(database_), documents::readRates);
        examinePlans();
    }
    void damaged(Error error)
    {
        if (health_.damage.size() < most)
            health_.damage.push_back(std::move(error));
    }
    void damaged(const std::vector<Error>& errors)
    {
        for (const Error& error : errors)
            damaged(error);
    }
    void miscounted(const std::string& place, std::int64_t found, std::int64_t told)
    {
        if (found != told && health_.miscounts.size() < most)
            health_.miscounts.push_back(
                {place, std::to_string(found), std::to_string(told) + ", as the log tells"});
    }

    void examineLog()
    {
        Rows number = database_.query("SELECT COUNT(*) FROM piece_events");
        health_.events = number.next() ? number.number(0) : 0;
        const auto told = replay(database_);
        if (!told.ok())
            return damaged(told.errorsWithin("log"));
        std::map<std::string, Sums> marks, orders, shop;
        for (const auto& [key, counts] : *told) {
            addTo(marks, "order " + key.first + ", mark " + key.second, counts);
            addTo(orders, "order " + key.first, counts);
            addTo(shop, "shop", counts);
        }
        compare(marks, "SELECT 'order ' || order_id || ', mark ' || mark, state, count FROM piece_counts");
        compare(orders, "SELECT 'order ' || order_id, state, count FROM order_counts");
        compare(shop, "SELECT 'shop', state, count FROM shop_counts");
        compareUnfinished(*told);
        examineWanted(*told);
    }

    void compare(std::map<std::string, Sums>& told, const char* statement)
    {
        Rows rows = database_.query(statement);
        while (rows.next()) {
            Sums& states = told[rows.text(0)];
            const std::int64_t expected = std::exchange(states[rows.text(1)], 0);
            miscounted(rows.text(0) + ", " + rows.text(1), rows.number(2), expected);
        }
        for (const auto& [whose, states] : told)
            for (const auto& [state, expected] : states)
                miscounted(whose + ", " + state, 0, expected);
    }

    void compareUnfinished(const std::map<std::pair<std::string, std::string>, PieceCounts>& told)
    {
        std::map<std::string, std::int64_t> unfinished;
        for (const auto& [key, counts] : told)
            unfinished[key.first] += standing(counts) - counts.of(schedule::PieceState::Received);
        Rows rows = database_.query("SELECT id, unfinished FROM current_orders");
        while (rows.next())
            miscounted("order " + rows.text(0) + ", unfinished", rows.number(1), unfinished[rows.text(0)]);
    }

    /// Every piece an order wants stands in some state of its life.
    void examineWanted(const std::map<std::pair<std::string, std::string>, PieceCounts>& told)
    {
        Rows rows = database_.query("SELECT order_id, mark, count FROM pieces WHERE withdrawn = 0");
        while (rows.next()) {
            const auto found = told.find({rows.text(0), rows.text(1)});
            const std::int64_t pieces = found == told.end() ? 0 : standing(found->second);
            if (pieces != rows.number(2))
                damaged({"order " + rows.text(0) + ", mark " + rows.text(1),
                         std::to_string(pieces) + " pieces in the log",
                         std::to_string(rows.number(2)) + ", as its order wants"});
        }
    }

    void examineOrders()
    {
        Rows rows = database_.query("SELECT id, revision, hash, document, derived FROM orders");
        while (rows.next()) {
            ++health_.orders;
            const std::string place =
                "order " + rows.text(0) + ", revision " + std::to_string(rows.number(1));
            const auto order = documents::readOrder(rows.text(3));
            if (!order.ok())
                damaged(order.errorsWithin(place));
            else if (documents::revisionHash(*order) != rows.text(2))
                damaged({place, "another hash of its document", "that which was noted when it came"});
            const auto derived = documents::readOrder(rows.text(4));
            if (!derived.ok())
                damaged(derived.errorsWithin(place + ", as derived"));
            health_.documents += 2;
        }
    }

    void examineLinks()
    {
        Rows rows = database_.query("SELECT later.id, later.revision FROM orders later JOIN orders before"
                                    " ON before.id = later.id AND before.revision = later.revision - 1"
                                    " WHERE later.previous_hash <> before.hash");
        while (rows.next())
            damaged({"order " + rows.text(0) + ", revision " + std::to_string(rows.number(1)),
                     "the hash of another revision before it", "that of the revision that is here"});
    }

    template <class Value>
    void examineDocuments(const char* statement, const std::string& kind,
                          Result<documents::Document<Value>> (*read)(std::string_view))
    {
        Rows rows = database_.query(statement);
        while (rows.next())
            examineKept(kind + " " + rows.text(0), rows.text(1), read);
    }

    template <class Value>
    void examineKept(const std::string& place, const std::optional<std::string>& text,
                     Result<documents::Document<Value>> (*read)(std::string_view))
    {
        if (!text)
            return;
        ++health_.documents;
        const auto document = read(*text);
        if (!document.ok())
            damaged(document.errorsWithin(place));
    }

    /// Waiting plans together take no more of a mark than is still to be cut.
    void examinePlans()
    {
        Rows rows = database_.query(
            "SELECT t.order_id, t.mark, SUM(t.count), COALESCE((SELECT c.count FROM piece_counts c WHERE c.order_id ="
            " t.order_id AND c.mark = t.mark AND c.state = 'ordered'), 0) FROM plan_pieces t JOIN plans p ON p.id ="
            " t.plan_id WHERE p.state = 'planned' GROUP BY t.order_id, t.mark");
        while (rows.next())
            if (rows.number(2) > rows.number(3))
                damaged(
                    {"waiting plans, order " + rows.text(0) + ", mark " + rows.text(1),
                     std::to_string(rows.number(2)) + " pieces to be cut",
                     "no more than the " + std::to_string(rows.number(3)) + " that are ordered; plan again"});
    }

    const Database& database_;
    Health health_;
};

} // namespace

Health examine(const Database& database)
{
    return database.readSteadily([&] { return Examination(database).run(); });
}

} // namespace lapwright::storage
