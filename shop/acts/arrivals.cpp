#include "acts/arrivals.h"

#include "acts/incoming.h"
#include "acts/kept_order.h"
#include "documents/compare.h"
#include "site/run_length.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

namespace lapwright::acts {

namespace {

/// What the revision that comes changes, where it is later than the one that counts.
std::optional<RevisionNews> newsOf(const storage::Database& database, const pieces::Order& coming)
{
    const auto revision = storage::currentRevision(database, coming.id);
    if (!revision || *revision >= coming.revision)
        return std::nullopt;
    return RevisionNews{*revision, storage::orderCounts(database, coming.id),
                        documents::compareRevisions(keptOrder(database, coming.id), coming)};
}

/// Closer than that two tapes do not measure one run: common practice, no source.
constexpr Length alike = Length::millimetres(13);

bool areAlike(const site::Run& one, const site::Run& other)
{
    const auto length = site::measuredLength(one);
    const auto otherLength = site::measuredLength(other);
    return one.kind == other.kind && length && otherLength && magnitude(*length - *otherLength) <= alike;
}

std::vector<std::string> runsAlike(const site::Job& coming, const site::Job& here)
{
    std::vector<std::string> found;
    for (const site::Chain& chain : coming.chains)
        for (const site::Run& run : chain.runs)
            for (const site::Chain& other : here.chains)
                for (const site::Run& one : other.runs)
                    if (areAlike(run, one))
                        found.push_back(run.id + " as " + one.id);
    return found;
}

std::vector<SameHouse> sameHouse(const storage::Database& database, const pieces::Order& coming)
{
    std::vector<SameHouse> found;
    for (storage::OrderSummary& other : storage::ordersOfSameHouse(database, coming.id)) {
        std::vector<std::string> runs = runsAlike(coming.job, keptOrder(database, other.id).job);
        found.push_back({std::move(other), std::move(runs)});
    }
    return found;
}

} // namespace

Result<Arrived> receiveOrder(const storage::Database& database, const pieces::Catalogue& catalogue,
                             const std::string& text, const storage::Stamp& stamp, bool accept)
{
    const auto order = documents::readOrder(text);
    if (!order.ok())
        return order.errors();
    Derived derived = deriveAgain(*order, catalogue);
    Arrived arrived{
        order->value.id,        order->value.job.name, order->value.revision, std::move(derived.differences),
        derived.order.findings, std::nullopt,          std::nullopt,          {}};
    if (rules::anyBlocks(arrived.findings))
        return arrived;
    arrived.news = newsOf(database, derived.order);
    arrived.arrival = storage::receiveOrder(database, incoming(*order, text, derived.order), stamp, accept);
    if (arrived.arrival->outcome == storage::Arrival::Outcome::Taken)
        arrived.sameHouse = sameHouse(database, derived.order);
    return arrived;
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
