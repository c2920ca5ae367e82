#pragma once

#include "cutting/problem.h"
#include "cutting/settings.h"
#include "documents/cut.h"
#include "documents/extras.h"
#include "fold/planner.h"
#include "measure/result.h"
#include "schedule/batch.h"
#include "schedule/stock.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Batches of what is still to be cut, and how each is cut.
namespace lapwright::acts {

struct PlanRequest {
    /// Stock to plan from and to keep; missing: what stands in the database.
    std::optional<documents::Document<schedule::ShopStock>> stock;
    cutting::Settings settings;
    std::vector<std::string> libraryFolders;
    /// See schedule::Floor::coilWidthsApart.
    bool coilWidthsApart = false;
    /// Called every now and then on the calling thread; false stops the search and keeps the best plan so
    /// far.
    std::function<bool(const cutting::Progress&)> progress = {};
};

/// One batch and how it is cut.
struct PlannedBatch {
    std::string id; ///< of the stored plan, a UUID; empty where nothing of it can be cut
    schedule::Batch batch;
    std::optional<documents::CutPlan> plan;
    std::vector<cutting::Refusal> refusals; ///< blanks or stocks that are not part of the plan

    /// Pieces that the plan cuts: fewer than the batch has where some fit nothing or the stock does not
    /// suffice.
    [[nodiscard]] std::int64_t piecesCut() const;
};

/// A profile of an order that no machine of the shop can fold.
struct Unfoldable {
    std::string name; ///< acts::nameOf()
    fold::Outcome outcome;
};

struct Planned {
    std::vector<PlannedBatch> batches;
    std::vector<Unfoldable> unfoldable;
    /// The stock that stood in the database was another and is replaced.
    bool stockReplaced = false;
    std::int64_t held = 0; ///< pieces that a person keeps out of every batch

    /// Every piece can be folded and is cut.
    [[nodiscard]] bool complete() const;
};

/// Plans all pieces of all orders that are not yet cut nor held, what is due first before the rest, remakes
/// and orders of high priority first among what is due together, remnants where that is worth it; and puts
/// the plans in place of every plan that is not cut. Where another station cuts, holds or takes in meanwhile,
/// it is planned anew. Errors: no stock given nor kept, a stock or library file that does not hold, a machine
/// of the stock that is not known, a shop that changed each time. Throws storage::StorageFailure where the
/// database or an order in it does not hold.
[[nodiscard]] Result<Planned> planAll(const storage::Database& database, const PlanRequest& request,
                                      const storage::Stamp& stamp);

} // namespace lapwright::acts
