#pragma once

#include "pieces/order.h"
#include "pieces/takeoff.h"
#include "rules/finding.h"

namespace lapwright::pieces {

/// Checks a piece list against the job it was made for, by its own way and without the functions that made
/// it. An empty answer means: every mark is there once; every trim of
/// every run has its pieces, unless a finding blocks; every run is covered from end to end with the laps
/// its trim asks for, no more and no less; no piece is over a limit or, in a run of several, under the
/// shortest; no run has more pieces than it needs; courses reach the top; the site cuts of each stock length
/// add up to it; the spares are there. Every finding blocks; codes: "check.marks", "check.run",
/// "check.coverage", "check.lap", "check.limit", "check.count", "check.courses", "check.site_cuts",
/// "check.spares". A list with findings must not be shown, stored or printed: it is a fault of the program or
/// an altered order.
[[nodiscard]] rules::Findings checkPieces(const Order& order, const Catalogue& catalogue);

} // namespace lapwright::pieces
