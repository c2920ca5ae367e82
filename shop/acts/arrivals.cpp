#include "acts/arrivals.h"

#include "acts/incoming.h"
#include "acts/kept_order.h"
#include "acts/making.h"
#include "acts/trust.h"
#include "documents/compare.h"
#include "parcel/photos.h"
#include "site/merge.h"
#include "storage/lists.h"
#include "storage/shop_state.h"

#include <iterator>
#include <utility>

namespace lapwright::acts {

namespace {

/// What the revision that comes changes of `revision`, the one that counts.
RevisionNews newsOf(const storage::Database& database, std::int64_t revision,
                    const storage::IncomingOrder& coming, const pieces::Order& order)
{
    return {revision, storage::markChanges(database, coming),
            documents::compareRevisions(keptOrder(database, coming.id), order)};
}

std::vector<std::string> inWords(const std::vector<site::AlikeRuns>& alike)
{
    std::vector<std::string> words;
    words.reserve(alike.size());
    for (const site::AlikeRuns& pair : alike)
        words.push_back(pair.second + " as " + pair.first);
    return words;
}

std::vector<SameHouse> sameHouse(const storage::Database& database, const pieces::Order& coming)
{
    std::vector<SameHouse> found;
    for (storage::OrderSummary& other : storage::ordersOfSameHouse(database, coming.id)) {
        std::vector<std::string> runs =
            inWords(site::alikeRuns(keptOrder(database, other.id).job, coming.job));
        found.push_back({std::move(other), std::move(runs)});
    }
    return found;
}

} // namespace

Result<Arrived> receiveOrder(const storage::Database& database, const pieces::Catalogue& catalogue,
                             const std::string& came, const storage::Stamp& stamp, bool accept)
{
    const auto parcel = parcel::unpack(came);
    if (!parcel.ok())
        return parcel.errors();
    const auto order = documents::readOrder(parcel->order);
    if (!order.ok())
        return order.errors();
    const auto doubt = distrust(database, parcel->order);
    if (!doubt.ok())
        return doubt.errors();
    Arrived arrived;
    arrived.order = order->value.id;
    arrived.job = order->value.job.name;
    arrived.revision = order->value.revision;
    arrived.hash = documents::revisionHash(*order);
    arrived.photos = static_cast<std::int64_t>(order->value.job.photos.size());
    arrived.cancelled = order->value.cancelled;
    rules::Findings missing = parcel::missingPhotos(order->value.job, *parcel);
    if (storage::isHere(database, arrived.order, arrived.revision, arrived.hash)) {
        arrived.findings = std::move(missing);
        arrived.arrival = storage::Arrival{storage::Arrival::Outcome::AlreadyHere, {}};
        return arrived;
    }
    Derived derived = deriveAgain(*order, catalogue);
    arrived.differences = std::move(derived.differences);
    arrived.findings = derived.order.findings;
    std::move(missing.begin(), missing.end(), std::back_inserter(arrived.findings));
    if (!arrived.cancelled && rules::anyBlocks(arrived.findings))
        return arrived;
    storage::IncomingOrder coming = incoming(*order, parcel->order, derived.order);
    if (*doubt)
        coming.doubts.push_back(**doubt);
    const auto revision = storage::currentRevision(database, coming.id);
    const bool isLater = revision && *revision < coming.revision;
    if (isLater && (coming.doubts.empty() || accept))
        // Sheets of it that are ticked count as cut before it is asked what the revision changes.
        if (auto errors = settleTicks(database, arrived.order, stamp); !errors.empty())
            return errors;
    if (isLater)
        arrived.news = newsOf(database, *revision, coming, derived.order);
    arrived.arrival = storage::receiveOrder(database, coming, stamp, accept);
    if (arrived.arrival->outcome == storage::Arrival::Outcome::Taken)
        arrived.sameHouse = sameHouse(database, derived.order);
    return arrived;
}

bool isKnown(const storage::Database& database, const std::string& came)
{
    const auto parcel = parcel::unpack(came);
    if (!parcel.ok())
        return false;
    const auto order = documents::readOrder(parcel->order);
    if (!order.ok())
        return false;
    const std::string hash = documents::revisionHash(*order);
    return storage::isHere(database, order->value.id, order->value.revision, hash) ||
           storage::isSetAside(database, hash);
}

std::string inWords(const storage::MarkChange& change)
{
    const std::string wanted = std::to_string(change.now ? change.now->count : 0);
    std::string words = change.mark;
    if (!change.before)
        words += " is new: " + wanted + " wanted";
    else
        words += (!change.now          ? " is no longer wanted: "
                  : change.samePiece() ? ": "
                                       : " changes: ") +
                 std::to_string(change.before->count) + " wanted before, " + wanted + " now";
    std::string made;
    for (const schedule::PieceState state : schedule::statesBegun)
        if (const std::int64_t count = change.counts.of(state); count > 0)
            made += (made.empty() ? "; " : ", ") + std::to_string(count) + " " + std::string(name(state));
    words += made.empty() ? "; none begun" : made;
    if (const std::int64_t scrap = change.scrap(); scrap > 0)
        words += scrap == 1 ? "; 1 becomes scrap" : "; " + std::to_string(scrap) + " become scrap";
    return words;
}

std::string_view inWords(storage::Arrival::Outcome outcome)
{
    using Outcome = storage::Arrival::Outcome;
    switch (outcome) {
    case Outcome::Taken:
        return "taken in";
    case Outcome::AlreadyHere:
        return "already here";
    case Outcome::Superseded:
        return "kept; a later revision counts";
    case Outcome::Waits:
        return "waits for a person";
    }
    return "";
}

} // namespace lapwright::acts
