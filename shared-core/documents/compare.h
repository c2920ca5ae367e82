#pragma once

#include "pieces/order.h"

/// Where two orders differ, as a person would tell it.
namespace lapwright::documents {

/// Where what an order claims differs from what is derived again from its runs: marks missing on either side;
/// lengths, counts, hands, ends and cuts of pieces; metal, girth, legs, turns, radii, hems and coloured face
/// of profiles; accessories. Every finding warns; codes documents.derived.*; the place is the mark, the
/// profile or the run. The derived ones count.
[[nodiscard]] rules::Findings compareDerived(const pieces::Order& received, const pieces::Order& derived);

/// What changed from one revision of an order to a later one: first what was measured or wanted (the job, its
/// chains, corners and runs), then what that does to pieces, profiles and accessories. Every finding informs;
/// codes documents.revision.*. Empty if the two ask for the same.
[[nodiscard]] rules::Findings compareRevisions(const pieces::Order& before, const pieces::Order& now);

} // namespace lapwright::documents
