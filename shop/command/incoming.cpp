#include "incoming.h"

#include "documents/compare.h"
#include "documents/identity.h"
#include "measure/rounding.h"

#include <cmath>

namespace lapwright::command {

namespace {

/// Digest of all that makes the folded piece what it is, its mark and count apart.
std::string digest(const pieces::Order& order, const pieces::Piece& piece)
{
    pieces::Order alone;
    alone.profiles = {order.profiles[piece.profile]};
    alone.profiles.front().id.clear();
    alone.profiles.front().derivations.clear();
    pieces::Piece copy = piece;
    copy.mark.clear();
    copy.count = 1;
    copy.profile = 0;
    alone.pieces = {copy};
    return documents::sha256(documents::writeOrder({alone, {}}, documents::Layout::Canonical)).substr(0, 16);
}

} // namespace

double kilogramsEach(const pieces::Order& order, const pieces::Piece& piece)
{
    return order.profiles[piece.profile].kilogramsPerMetre * inMetres(piece.blankLength);
}

Derived deriveAgain(const documents::OrderDocument& order, const pieces::Catalogue& catalogue)
{
    Derived derived{pieces::takeoff(order.value.job, catalogue), {}};
    derived.order.id = order.value.id;
    derived.order.revision = order.value.revision;
    derived.order.previousHash = order.value.previousHash;
    derived.differences = documents::compareDerived(order.value, derived.order);
    return derived;
}

storage::IncomingOrder incoming(const documents::OrderDocument& order, const std::string& document,
                                const Derived& derived)
{
    const site::Job& job = order.value.job;
    storage::IncomingOrder incoming{order.value.id,
                                    order.value.revision,
                                    documents::revisionHash(order),
                                    order.value.previousHash,
                                    job.name,
                                    job.customer,
                                    job.wantedBy,
                                    document,
                                    documents::writeOrder({derived.order, {}}, documents::Layout::Canonical),
                                    {}};
    for (const pieces::Piece& piece : derived.order.pieces) {
        const pieces::OrderedProfile& profile = derived.order.profiles[piece.profile];
        incoming.pieces.push_back({piece.mark, piece.run, profile.id, profile.material.metal,
                                   profile.material.gauge, profile.material.colour, profile.girth,
                                   piece.blankLength,
                                   std::llround(1000.0 * kilogramsEach(derived.order, piece)), piece.count,
                                   digest(derived.order, piece)});
    }
    return incoming;
}

} // namespace lapwright::command
