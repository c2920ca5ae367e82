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
        Cut,      ///< what is ticked of it; the rest is planned another way
        TakenBack ///< another plan stands in its place, or its pieces are held
    } state = State::Waiting;
    std::set<std::size_t> ticked; ///< patterns
};

/// Nothing if no plan has that id.
[[nodiscard]] std::optional<PlanProgress> planProgress(const Database& database, const std::string& plan);

/// Pieces that are not folded yet, by "order/profile"; those with none are left out.
[[nodiscard]] std::map<std::string, std::int64_t> unfoldedPieces(const Database& database);

/// The profiles of an order that pieces are folded of, or further.
[[nodiscard]] std::set<std::string> foldedProfiles(const Database& database, const std::string& order);

} // namespace lapwright::storage
