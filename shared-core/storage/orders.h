#pragma once

#include "measure/length.h"
#include "storage/database.h"

#include <cstdint>
#include <string>
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

/// Takes one order in, in one transaction. In whatever sequence and however often revisions arrive, the
/// latest one counts in the end. Waits: the same revision is here with another content; the revision before
/// or after it that is here is not the one it goes with by its hash; or it changes pieces that are begun.
/// Waiting cut plans that hold pieces of an order that changes are taken back, and `reasons` says so.
/// `accept` is a person's word to take it all the same: pieces begun are scrapped and made anew. Not even
/// that takes another content of the same revision, or changes what left on a truck.
[[nodiscard]] Arrival receiveOrder(const Database& database, const IncomingOrder& order, const Stamp& stamp,
                                   bool accept);

struct OrderSummary {
    std::string id;
    std::int64_t revision = 1;
    std::string jobName;
    std::string customer;
    std::string wantedBy;
    std::string firstReceivedAt; ///< when any revision of it first came; ISO 8601, UTC
};

/// The revision that counts of every order, by wanted date, then name.
[[nodiscard]] std::vector<OrderSummary> currentOrders(const Database& database);

} // namespace lapwright::storage
