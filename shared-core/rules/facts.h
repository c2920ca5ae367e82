#pragma once

#include "rules/rule_set.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// The facts a clause may name. Whoever asks `apply` fills in those it knows. Facts are about one trim on one
/// run. The meaning stands in sentences.
namespace lapwright::rules {

enum class FactType { Text, YesNo, Count, Length, Angle, Slope };

struct FactName {
    std::string_view name;
    FactType type;
    std::string_view meaning;
};

inline constexpr std::array<FactName, 34> factNames{{
    {"run_kind", FactType::Text, "kind of edge, as files write it: eave, rake, slope_change"},
    {"trim", FactType::Text, "id of the trim's template"},
    {"metal", FactType::Text, "id of the metal"},
    {"gauge", FactType::Text, "gauge as the trade names it for the metal"},
    {"colour", FactType::Text, "colour ordered"},
    {"start", FactType::Text, "what happens at the start of the run: free, mitre, turn_up"},
    {"end", FactType::Text, "what happens at the end of the run"},
    {"hand", FactType::Text, "none, left or right"},
    {"slope", FactType::Slope, "slope of the roof plane at the run"},
    {"other_slope", FactType::Slope, "slope of the other plane"},
    {"thickness", FactType::Length, "thickness of the metal"},
    {"girth", FactType::Length, "flat width across the profile"},
    {"run_length", FactType::Length, "measured length of the run"},
    {"piece_length", FactType::Length, "length of the longest piece of the run"},
    {"shortest_piece", FactType::Length, "length of the shortest piece of the run"},
    {"piece_count", FactType::Count, "pieces on the run"},
    {"lap", FactType::Length, "how far one piece covers the next"},
    {"lap_sealed", FactType::YesNo, "laps are bedded in sealant"},
    {"head_lap", FactType::Length, "step flashing: length of a piece less the exposure"},
    {"exposure", FactType::Length, "what one course of the roofing shows"},
    {"fastener_spacing", FactType::Length, "distance between fasteners of one row"},
    {"fastener_rows", FactType::Count, "rows of fasteners"},
    {"cleat_spacing", FactType::Length, "distance between cleats"},
    {"joint_interval", FactType::Length, "distance between movement joints, or the run's length without any"},
    {"face_height", FactType::Length, "height of the plumb face that shows"},
    {"wall_height", FactType::Length, "how far the trim stands up a wall"},
    {"roof_width", FactType::Length,
     "how far the trim reaches over or under the roofing, on the lesser side"},
    {"deck_width", FactType::Length, "how far the trim reaches up the deck"},
    {"rib_height", FactType::Length, "height of the rib in the middle of a valley"},
    {"masonry_depth", FactType::Length, "how far the trim goes into a joint or slot of masonry"},
    {"width", FactType::Length, "width of a chimney or other obstacle, parallel to the ridge"},
    {"cricket", FactType::YesNo, "whether a cricket stands on the upper side of the obstacle"},
    {"cricket_height", FactType::Length,
     "height of that cricket at this slope: half the width of the obstacle times the slope"},
    {"velocity_pressure_psf", FactType::Count,
     "wind velocity pressure at the building, pounds per square foot"},
}};

/// Families of facts: `leg.deck` is the outside length of the profile's leg "deck", `measure.fascia_height`
/// the measure of that name the trim was given. All are lengths.
inline constexpr std::array<std::string_view, 2> factFamilies{"leg.", "measure."};

/// What type the fact of this name has; nothing if there is no such fact.
[[nodiscard]] std::optional<FactType> factType(std::string_view name);

/// What the fact of this name means; the name itself where it is of a family or unknown.
[[nodiscard]] std::string_view meaningOf(std::string_view name);

[[nodiscard]] FactType typeOf(const Fact& fact);

} // namespace lapwright::rules
