#pragma once

#include "acts/making.h"
#include "measure/result.h"
#include "schedule/piece_life.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <string>

/// What is made piece by piece, by whoever stands at the machine.
namespace lapwright::acts {

/// Says that `count` cut pieces of one mark are folded, in one transaction. Precondition: count > 0. Error:
/// so many are not cut and waiting.
[[nodiscard]] Result<bool> foldSome(const storage::Database& database, const Which& which, std::int64_t count,
                                    const storage::Stamp& stamp);

/// Scraps `count` pieces of one mark that stand in `state` (cut, folded or bundled); they are ordered again
/// at once and go into the next plan. `reason` is kept with the event. Errors: so many do not stand there, or
/// they left on a truck.
[[nodiscard]] Result<bool> scrap(const storage::Database& database, const Which& which,
                                 schedule::PieceState state, std::int64_t count, const std::string& reason,
                                 const storage::Stamp& stamp);

} // namespace lapwright::acts
