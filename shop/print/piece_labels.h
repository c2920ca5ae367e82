#pragma once

#include "cutting/plan.h"
#include "measure/writing.h"
#include "pieces/order.h"
#include "print/label.h"
#include "print/paper.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::print {

/// One label for each mark of the order: a piece, or those alike that follow one another in a run and are
/// tied together. Its code names order, revision, mark and count.
[[nodiscard]] std::vector<Label> pieceLabels(const pieces::Order& order, const Printing& printing,
                                             const Style& style);

/// A remnant that goes back to the rack.
struct KeptRemnant {
    std::string label;
    Length width, length;
    site::Material material;
};

/// Those that a cut plan keeps, each piece by itself; with `pattern` those alone that this pattern of it
/// leaves.
[[nodiscard]] std::vector<KeptRemnant> keptRemnants(const cutting::Plan& plan, const site::Material& material,
                                                    std::optional<std::size_t> pattern = std::nullopt);

/// One label for each remnant; without a code, for a remnant belongs to no order.
[[nodiscard]] std::vector<Label> remnantLabels(const std::vector<KeptRemnant>& remnants,
                                               const Printing& printing, const Style& style);

/// "revision 2 · printed 2026-11-25 14:05 · label 3 of 85"; `number` counts from 1.
[[nodiscard]] std::string labelFoot(std::int64_t revision, const Printing& printing, std::size_t number,
                                    std::size_t count);

} // namespace lapwright::print
