#include "acts/incoming.h"

#include "documents/compare.h"
#include "documents/entered.h"
#include "documents/make.h"
#include "measure/rounding.h"
#include "pieces/summary.h"

#include <cmath>
#include <iterator>
#include <utility>

namespace lapwright::acts {

pieces::Order takeOff(const site::Job& job, const pieces::Catalogue& catalogue)
{
    pieces::Order order = pieces::takeoff(job, catalogue);
    rules::Findings differing = documents::enteredThatDiffer(job);
    std::move(differing.begin(), differing.end(), std::back_inserter(order.findings));
    return order;
}

Derived deriveAgain(const documents::OrderDocument& order, const pieces::Catalogue& catalogue)
{
    Derived derived{takeOff(order.value.job, catalogue), {}};
    derived.order.id = order.value.id;
    derived.order.revision = order.value.revision;
    derived.order.previousHash = order.value.previousHash;
    derived.order.cancelled = order.value.cancelled;
    derived.differences = documents::compareDerived(order.value, derived.order);
    return derived;
}

storage::IncomingOrder incoming(const documents::OrderDocument& order, const std::string& document,
                                const pieces::Order& derived)
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
                                    documents::writeOrder({derived, {}}, documents::Layout::Canonical),
                                    {},
                                    job.address,
                                    order.value.cancelled};
    std::vector<std::string> makes = documents::makeDigests(derived);
    incoming.pieces.reserve(makes.size());
    for (std::size_t index = 0; index < makes.size(); ++index) {
        const pieces::Piece& piece = derived.pieces[index];
        const pieces::OrderedProfile& profile = derived.profiles[piece.profile];
        incoming.pieces.push_back({piece.mark, piece.run, profile.id, profile.material.metal,
                                   profile.material.gauge, profile.material.colour, profile.girth,
                                   piece.blankLength,
                                   std::llround(1000.0 * pieces::kilogramsEach(derived, piece)), piece.count,
                                   std::move(makes[index])});
    }
    return incoming;
}

} // namespace lapwright::acts
