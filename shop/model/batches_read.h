#pragma once

#include "documents/cut.h"
#include "measure/writing.h"
#include "rows_model.h"
#include "site/job.h"
#include "storage/database.h"
#include "storage/piece_events.h"

#include <QString>

#include <map>
#include <set>
#include <string>
#include <vector>

namespace lapwright::model {

/// A cut plan that waits.
struct WaitingPlan {
    site::Material material;
    documents::CutPlan cut;
};

/// What is still to be cut, as the Batches screen shows it; read on any thread.
struct BatchesRead {
    std::vector<storage::PieceToCut> toCut;
    std::map<QString, QList<Row>> pieces;     ///< lines of the pieces, by batch
    std::set<std::string> waiting;            ///< ids of all plans that wait
    std::map<std::string, WaitingPlan> plans; ///< those of them that were not known
};

/// `known`: plans that are not read again, for a plan never changes. Throws storage::StorageFailure.
[[nodiscard]] BatchesRead readBatches(const storage::Database& database, const std::set<std::string>& known,
                                      const Style& style);

/// What names a batch in lists.
[[nodiscard]] QString batchId(const site::Material& material);
[[nodiscard]] site::Material materialOf(const storage::PieceToCut& piece);
[[nodiscard]] QString idOf(const storage::PieceToCut& piece);
[[nodiscard]] bool isHeld(const storage::PieceToCut& piece);

} // namespace lapwright::model
