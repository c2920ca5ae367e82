#include "pieces/movement.h"

#include "metal/mechanics.h"

#include <utility>

namespace lapwright::pieces {

namespace {

constexpr double designKelvins = 100.0;

} // namespace

std::optional<JointInterval> jointIntervalOf(const metal::Metal& metal)
{
    if (!metal.movementJointSpacing || *metal.movementJointSpacing <= Length())
        return std::nullopt;
    const std::string source = metal::sourceOf(metal, "movement_joint_spacing_mm");
    return JointInterval{*metal.movementJointSpacing, source.empty() ? "kept with the metal" : source};
}

std::optional<JointInterval> shorter(std::optional<JointInterval> first, std::optional<JointInterval> second)
{
    if (!first || (second && second->length < first->length))
        return second;
    return first;
}

Derivation explainMovement(const metal::Metal& metal, Length length)
{
    return {
        {"between −20 and +80 °C {length} of {metal} moves {movement} = length × {expansion} per million and "
         "degree × 100",
         {{"length", length},
          {"metal", metal.name},
          {"movement", metal::thermalMovement(metal, length, designKelvins)},
          {"expansion", metal.expansionPerKelvin * 1e6}}},
        "range of temperature: German plumbers' association (ZVSHK), quoted at baumetall.de; expansion: " +
            metal::sourceOf(metal, "expansion_per_kelvin"),
        {}};
}

} // namespace lapwright::pieces
