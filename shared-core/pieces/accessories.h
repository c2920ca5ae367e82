#pragma once

#include "pieces/movement.h"
#include "pieces/order.h"
#include "pieces/run_pieces.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// Accessory::name of movement joints.
inline constexpr const char* movementJointName = "movement joint";

/// What goes along with the pieces of one trim on one run.
struct AccessoryWork {
    const RunWork* work = nullptr;
    const RunPieces* made = nullptr;
    const metal::Metal* metal = nullptr;
    Length girth;
    std::optional<JointInterval> jointInterval;
    /// The run before in the chain is mitred to this one, so the corner is counted there.
    bool startCornerCounted = false;
};

/// Fasteners and cleats by spacing and rows; sealant, one bead across the girth at each sealed lap and mitre;
/// a corner tab behind each mitre; an end cap for each closed end that the trim does not fold itself; a
/// backup plate behind each open joint; movement joints by the interval. Nothing with a count of 0.
[[nodiscard]] std::vector<Accessory> accessoriesOf(const AccessoryWork& work);

} // namespace lapwright::pieces
