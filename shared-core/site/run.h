#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/slope.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::site {

/// One measure as it was taken: the exact value, and the text as it was typed.
struct Measured {
    Length value;
    std::string entered;

    friend bool operator==(const Measured&, const Measured&) = default;
};

/// What kind of edge a run is.
enum class RunKind {
    Eave,
    Rake,
    Ridge,
    Hip,
    Valley,
    Headwall,    ///< a roof plane meets a wall above it
    Sidewall,    ///< a roof plane runs beside a wall
    SlopeChange, ///< a roof plane meets a steeper or flatter one along a level line
    Fascia,
    WallBase,
    OutsideCorner, ///< a vertical edge of a wall
    InsideCorner,  ///< a vertical inner edge of a wall
    OpeningHead,
    OpeningSill,
    OpeningJamb,
    Parapet,
    GravelEdge ///< the edge of a low-slope roof
};

/// What happens at one end of a run.
enum class EndKind {
    Free,    ///< nothing: the trim is cut square
    Butt,    ///< stops against something; a clearance is left
    Mitre,   ///< cut to meet the next run of the chain at its corner
    WrapTab, ///< a tab wraps the corner onto the next face
    Closed,  ///< a folded closed end
    TurnUp   ///< the end is turned up against a wall
};

/// A trim chosen for a run: the template's id and what differs from its defaults.
struct TrimChoice {
    std::string trim;
    /// Measures the template asks for, by name: fascia_height, wall_thickness…
    std::map<std::string, Measured> measures;
    /// Legs set by hand, by the template's leg name.
    std::map<std::string, Length> legs;
    /// The job's colour if not given.
    std::optional<std::string> colour;
    /// How far each piece covers the one before; the trim's own lap if not given.
    std::optional<Length> lap = {};

    friend bool operator==(const TrimChoice&, const TrimChoice&) = default;
};

/// One straight edge of the building.
struct Run {
    /// Unique in the job, and what the person sees: "E3".
    std::string id;
    RunKind kind = RunKind::Eave;
    /// Every time the run was measured. Empty if the length is only derived from `levelRun`.
    std::vector<Measured> lengths;
    /// Which entry of `lengths` counts.
    std::size_t counts = 0;
    /// The level distance under a sloped run, as a roof drawing gives it: a second way to its length (rake:
    /// the level run under it; hip and valley: the common run of the plane whose slope is `slope`).
    std::optional<Measured> levelRun;
    /// Slope of the roof plane at the run; of the plane before a hip or valley, walking the eave
    /// counter-clockwise; of the upper plane at a slope change.
    std::optional<Slope> slope;
    /// Slope of the other plane of a ridge, hip, valley or slope change.
    std::optional<Slope> otherSlope;
    /// Interior plan angle between the two eaves under a hip or valley, or of the wall at a vertical corner;
    /// square if not given.
    std::optional<Angle> planCorner;
    EndKind start = EndKind::Free;
    EndKind end = EndKind::Free;
    /// Exposure of the roofing: what one course shows. Step flashing goes by courses.
    std::optional<Length> courseExposure;
    std::vector<TrimChoice> trims;
    std::string note;

    friend bool operator==(const Run&, const Run&) = default;
};

} // namespace lapwright::site
