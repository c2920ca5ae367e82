#pragma once

#include "schedule/piece_life.h"
#include "storage/database.h"

#include <map>
#include <string>
#include <utility>

/// Who did what last.
namespace lapwright::acts {

struct Done {
    std::string work; ///< "folded", "ordered again"
    std::string at;   ///< "2026-11-26 10:32", by this machine's clock
    std::string person, station;
};

/// What was done last to each mark of an order. Marks that nothing was done to yet are left out.
[[nodiscard]] std::map<std::string, Done> lastDone(const storage::Database& database,
                                                   const std::string& order);
/// The same of every mark that stands in `state`, by order and mark.
[[nodiscard]] std::map<std::pair<std::string, std::string>, Done> lastDone(const storage::Database& database,
                                                                           schedule::PieceState state);

} // namespace lapwright::acts
