#pragma once

#include "measure/length.h"
#include "storage/database.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Orders as they arrive, and the pieces they ask for.
namespace lapwright::storage {

/// One mark of an order as the shop makes it.
struct OrderedPiece {
    std::string mark;
    std::string run;
    std::string profile; ///< pieces::OrderedProfile::id
    std::string metal;
    std::string gauge;
    std::string colour;
    Length girth;
    Length length;
    std::int64_t grams = 0;
    std::int64_t count = 1;
    /// Digest of everything that makes the folded piece what it is (profile, end cuts, hand); a revision that
    /// changes it changes the piece.
    std::string make;

    friend bool operator==(const OrderedPiece&, const OrderedPiece&) = default;
};

struct IncomingOrder {
    std::string id;
    std::int64_t revision = 1;
    std::string hash;
    std::string previousHash;
    std::string jobName;
    std::string customer;
    std::string wantedBy;
    std::string document; ///< as received, word for word
    std::string derived;  ///< the order as this shop derives it from the same runs
    std::vector<OrderedPiece> pieces;
    std::string address = {}; ///< of the job, for finding other orders of the same house
    bool cancelled = false;   ///< by this revision; none of its pieces is wanted
    /// Why it should not be taken without a person's word, whatever it asks for; shown as they are.
    std::vector<std::string> doubts = {};
};

/// When, where and by whom something is done; handed in by the program.
struct Stamp {
    std::string at; ///< ISO 8601, UTC
    std::string station;
    std::string person;
};

struct Arrival {
    enum class Outcome {
        Taken,       ///< this revision counts now
        AlreadyHere, ///< the same bytes came before: nothing changed
        Superseded,  ///< kept, but a later revision counts
        Waits        ///< in quarantine for a person; `reasons` say why
    } outcome = Outcome::Taken;
    std::vector<std::string> reasons;
};

/// "taken", "already here", "superseded", "waits": the words of the database.
[[nodiscard]] std::string_view name(Arrival::Outcome outcome);

/// Takes one order in, in one transaction. In whatever sequence and however often revisions arrive, the
/// latest one counts in the end. Waits: it has doubts; the same revision is here with another content; the
/// revision before or after it that is here is not the one it goes with by its hash; or it changes pieces
/// that are begun. Waiting cut plans that hold pieces of an order that changes are taken back, and `reasons`
/// says so. `accept` is a person's word to take it all the same: pieces begun are scrapped and made anew. Not
/// even that takes another content of the same revision, or changes what left on a truck. A revision that
/// cancels the order is taken as cancelOrder() says, and a later one may want its pieces again.
[[nodiscard]] Arrival receiveOrder(const Database& database, const IncomingOrder& order, const Stamp& stamp,
                                   bool accept);

struct OrderSummary {
    std::string id;
    std::int64_t revision = 1;
    std::string jobName;
    std::string customer;
    std::string wantedBy;
    std::string firstReceivedAt; ///< when any revision of it first came; ISO 8601, UTC
    std::int64_t priority = 0;   ///< higher is planned first
    bool held = false;           ///< in no batch until it is released
    bool cancelled = false;
    std::int64_t unfinished = 0; ///< pieces not yet received

    friend bool operator==(const OrderSummary&, const OrderSummary&) = default;
};

/// The revision that counts of every order with pieces not yet received, by wanted date, then name.
[[nodiscard]] std::vector<OrderSummary> unfinishedOrders(const Database& database);
/// The revision that counts of every order, by wanted date, then name; for pages see lists.h.
[[nodiscard]] std::vector<OrderSummary> currentOrders(const Database& database);

/// Other orders of the same house: address alike but for case, spaces and punctuation. None where the order
/// has no address.
[[nodiscard]] std::vector<OrderSummary> ordersOfSameHouse(const Database& database, const std::string& order);

/// What a person says of an order. False if there is no such order.
[[nodiscard]] bool holdOrder(const Database& database, const std::string& order, bool held);
[[nodiscard]] bool setPriority(const Database& database, const std::string& order, std::int64_t priority);

/// Cancels an order: what is only ordered is withdrawn, its waiting cut plans are taken back. What is begun
/// and not on a truck is named and nothing happens, unless `accept` says that it is scrap. What left on a
/// truck stays as it is. Error: no such order.
[[nodiscard]] Result<Arrival> cancelOrder(const Database& database, const std::string& order,
                                          const Stamp& stamp, bool accept);

} // namespace lapwright::storage
