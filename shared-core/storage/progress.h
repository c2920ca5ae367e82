#pragma once

#include "storage/database.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>

/// How far the shop has come with what was planned.
namespace lapwright::storage {

struct PlanProgress {
    enum class State {
        Waiting,
        Cut,      ///< all of it where nothing is ticked, or else what is ticked
        TakenBack ///< another plan stands in its place, or its pieces are held
    } state = State::Waiting;
    std::set<std::size_t> ticked; ///< patterns
};

/// Nothing if no plan has that id.
[[nodiscard]] std::optional<PlanProgress> planProgress(const Database& database, const std::string& plan);

/// Pieces that are not folded yet, by "order/profile"; those with none are left out.
[[nodiscard]] std::map<std::string, std::int64_t> unfoldedPieces(const Database& database);

/// Pieces of one profile of an order that are folded, or further.
[[nodiscard]] std::int64_t foldedPieces(const Database& database, const std::string& order,
                                        const std::string& profile);

} // namespace lapwright::storage
