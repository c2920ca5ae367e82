#pragma once

#include "acts/identity.h"
#include "acts/incoming.h"
#include "documents/order.h"
#include "documents/shop.h"
#include "invented_houses.h"
#include "shop.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"
#include "storage/orders.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <QList>
#include <QString>
#include <QUrl>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <map>
#include <string>
#include <utility>
#include <vector>

/// An invented year of a shop in its database: what was delivered, with its loads, receipts and remakes, and
/// what is on the floor now.
namespace year {

using namespace lapwright;
using schedule::PieceEvent;
using schedule::PieceState;

inline const storage::Stamp stamp{"2026-01-05T08:00:00Z", "desk", "bench"};
constexpr int ordersOnLoad = 20;    ///< so many orders go on one truck
constexpr int ordersForRemake = 50; ///< one order in so many has a piece that came damaged
constexpr std::initializer_list<PieceState> toTheTruck = {PieceState::Cut, PieceState::Folded,
                                                          PieceState::Bundled, PieceState::Loaded};

inline std::string orderName(int number)
{
    return "order-" + std::to_string(number);
}

inline storage::IncomingOrder shortOrder(int number)
{
    const std::string name = std::to_string(number);
    storage::IncomingOrder order{orderName(number),
                                 1,
                                 "hash-" + name,
                                 "",
                                 "House " + name,
                                 "Customer " + std::to_string(number % 500),
                                 "2026-03-01",
                                 std::string(2'000, 'd'),
                                 std::string(2'000, 'e'),
                                 {}};
    for (const char* mark : {"E1.1", "E1.2"})
        order.pieces.push_back({mark, "E1", "P1", "galvanised-steel", "24 ga", "Slate", Length::inches(6),
                                Length::inches(120), 900, 1, "a"});
    return order;
}

inline void log(const storage::Database& database, const std::string& order, const std::string& mark,
                const PieceEvent& event)
{
    static int number = 0;
    (void)storage::logEvent(database, {"event-" + std::to_string(++number), order, mark, event, ""}, stamp);
}

inline void advance(const storage::Database& database, const std::string& order, const std::string& mark,
                    std::initializer_list<PieceState> states, std::int64_t count = 1)
{
    for (const PieceState state : states)
        log(database, order, mark, {PieceEvent::Kind::Advance, state, count});
}

/// The load of the orders up to `last`, and what its crew lead found.
inline void saveLoadUpTo(const storage::Database& database, int last)
{
    schedule::Load load{"load-" + std::to_string(last), "Truck 1", stamp.at, {}};
    for (int number = last - ordersOnLoad + 1; number <= last; ++number)
        load.bundles.push_back(
            {"B" + std::to_string(load.bundles.size() + 1),
             orderName(number),
             "House " + std::to_string(number),
             {"galvanised-steel", "24 ga", "Slate"},
             {{"E1.1", 1, "E1", "P1", Length::inches(120)}, {"E1.2", 1, "E1", "P1", Length::inches(120)}},
             1.8});
    (void)storage::saveLoad(database, load.id, documents::writeLoad({load, {}}), stamp,
                            {load.truck, schedule::totalsOf(load)});
    (void)storage::saveReceipt(database, "receipt-" + std::to_string(last), load.id, "{}", stamp);
}

inline void deliver(const storage::Database& database, int number)
{
    const std::string order = orderName(number);
    for (const char* mark : {"E1.1", "E1.2"}) {
        advance(database, order, mark, toTheTruck);
        advance(database, order, mark, {PieceState::Received});
    }
    if (number % ordersForRemake == 0) {
        advance(database, order, "E1.2", {PieceState::Damaged});
        log(database, order, "E1.2", {PieceEvent::Kind::Remake, PieceState::Damaged, 1});
        advance(database, order, "E1.2", toTheTruck);
        advance(database, order, "E1.2", {PieceState::Received});
    }
}

inline void fill(const storage::Database& database, int orders)
{
    for (int number = 0; number < orders; ++number) {
        (void)storage::receiveOrder(database, shortOrder(number), stamp, false);
        database.write([&] {
            deliver(database, number);
            if (number % ordersOnLoad == ordersOnLoad - 1)
                saveLoadUpTo(database, number);
        });
    }
}

/// Takes the jobs in as orders, by the desk that takes orders in. Their ids.
inline std::vector<std::string> receive(model::Shop& shop, const QString& folder,
                                        const std::vector<site::Job>& jobs)
{
    const auto catalogue = storage::loadCatalogue({});
    QList<QUrl> files;
    std::vector<std::string> ids;
    for (const site::Job& job : jobs) {
        pieces::Order order = acts::takeOff(job, *catalogue);
        order.id = acts::newUuid();
        ids.push_back(order.id);
        const QString path = folder + u'/' + QString::fromStdString(order.id) + ".order.json";
        (void)storage::writeDocument(path.toStdString(), documents::writeOrder({order, {}}));
        files.append(QUrl::fromLocalFile(path));
    }
    shop.arrivals()->takeFiles(files);
    shop.closeMessage();
    return ids;
}

/// Large orders, `pieces` together.
inline void receiveLarge(model::Shop& shop, const QString& folder, std::size_t orders, std::size_t pieces)
{
    // A run comes to two and a half pieces.
    (void)receive(shop, folder, std::vector(orders, invented::houses(pieces * 2 / 5 / orders).value));
}

/// Single houses of many colours: some to be cut, some to be folded, some to be loaded.
inline void receiveHouses(model::Shop& shop, const QString& folder, std::size_t orders)
{
    constexpr std::array colours = {"Slate", "Ivory", "Barn Red", "Forest", "Bronze", "Charcoal"};
    std::vector<site::Job> jobs;
    for (std::size_t number = 1; number <= orders; ++number) {
        site::Job job = invented::houses(0).value;
        invented::addHouse(number, job);
        job.name = "House on the floor " + std::to_string(number);
        job.material.colour = colours.at(number % colours.size());
        jobs.push_back(std::move(job));
    }
    std::map<std::string, int> turnOf; ///< by order
    for (const std::string& id : receive(shop, folder, jobs))
        turnOf.emplace(id, static_cast<int>(turnOf.size() % 3));
    const storage::Database& database = shop.database();
    const auto pieces = storage::piecesIn(database, PieceState::Ordered);
    database.write([&] {
        for (const storage::PieceInState& piece : pieces) {
            const auto turn = turnOf.find(piece.order);
            if (turn == turnOf.end() || turn->second == 0)
                continue;
            advance(database, piece.order, piece.piece.mark, {PieceState::Cut}, piece.count);
            if (turn->second == 2)
                advance(database, piece.order, piece.piece.mark, {PieceState::Folded}, piece.count);
        }
    });
    shop.noteChange();
}

} // namespace year
