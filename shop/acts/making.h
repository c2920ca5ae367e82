#pragma once

#include "acts/cut_part.h"
#include "measure/result.h"
#include "schedule/piece_life.h"
#include "site/job.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What is made: cut, then folded.
namespace lapwright::acts {

/// One plan that was to be cut.
struct CutBatch {
    std::string plan; ///< UUID
    site::Material material;
    /// Why it is not cut: its pieces are not to be cut any more. Empty: it is cut.
    std::vector<Error> errors;
};

/// Says that every waiting plan is cut: its pieces, its metal out of the stock, its remnants on the shelf;
/// each plan whole or not at all, in a transaction of its own. Errors: a stock or plan in the database that
/// does not hold.
[[nodiscard]] Result<std::vector<CutBatch>> cutWaitingPlans(const storage::Database& database,
                                                            const storage::Stamp& stamp);
/// The same for one plan. Errors also: no such plan waits.
[[nodiscard]] Result<CutBatch> cutPlan(const storage::Database& database, const std::string& plan,
                                       const storage::Stamp& stamp);

/// Says that a strip of one sheet that is being cut is spoilt. This sheet and those that are ticked of the
/// waiting plan are cut: their pieces, metal and remnants count, those of the strip are scrapped and ordered
/// again; the rest of the plan is taken back and waits for the next one. Errors as cutPlan(); why it is not
/// cut also: that sheet is ticked itself.
[[nodiscard]] Result<CutBatch> spoilStrip(const storage::Database& database, const std::string& plan,
                                          const CutPart::Spoilt& strip, const storage::Stamp& stamp);
/// The sheets that are ticked of waiting plans count as cut from now on, before these plans are replaced: of
/// every plan, or of those alone that cut pieces of one order. What could not count as cut.
[[nodiscard]] std::vector<Error> settleTicks(const storage::Database& database,
                                             const std::optional<std::string>& order,
                                             const storage::Stamp& stamp);

/// Pieces of one order, of one mark of it, or with both empty all there are.
struct Which {
    std::string order;
    std::string mark;
};

struct Moved {
    std::int64_t count = 0;
    std::vector<Error> errors; ///< of pieces that could not follow
};

/// Says that cut pieces are folded.
[[nodiscard]] Moved fold(const storage::Database& database, const Which& which, const storage::Stamp& stamp);

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
