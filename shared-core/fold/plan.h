#pragma once

#include "fold/machine.h"
#include "measure/phrase.h"
#include "trim/profile.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lapwright::fold {

/// An end of the blank: where the profile's path starts or ends.
enum class End { Start, End };

enum class Action {
    Fold,
    FoldPartly, ///< the first go at a bend that is finished once its neighbours are made
    FinishFold, ///< the second go
    PreBend,    ///< of a hem, to be flattened next
    Flatten     ///< press the pre-bent hem under the clamp
};
enum class Direction { Up, Down };

/// How the sheet is moved between two steps.
enum class Move {
    None,
    TurnOver,        ///< other face up, same end to the gauge
    Spin,            ///< other end to the gauge, same face up
    TurnOverAndSpin, ///< both
};

/// What of the sheet touches the gauge, or is measured from where it is folded to a mark.
enum class Touching : std::uint8_t { Edge, HemFold, Corner, Leg };

/// "raw edge", "hem fold".
[[nodiscard]] const char* nameOf(Touching touching);

/// How the sheet comes into the machine for a step.
enum class WayIn : std::uint8_t {
    FromTheFront, ///< slid under the open clamp and let down
    Endways       ///< past the end of the clamp: a short piece on a machine whose ends are open
};
/// How it comes out after the step.
enum class WayOut : std::uint8_t {
    Straight,   ///< the clamp opens, the sheet is drawn out to the front
    LittleOpen, ///< the same, with the clamp open by Handling::open only, for what reaches back over it
    DrawnFirst, ///< drawn forward by Handling::drawn, clear of what it leans over, before anything is raised
    AsClampOpens, ///< the same while the clamp opens
    Endways
};

/// How the sheet is brought in and taken out.
struct Handling {
    WayIn in = WayIn::FromTheFront;
    WayOut out = WayOut::Straight;
    /// How far the sheet is lifted as it comes and goes, so that what hangs below it behind clears the bed.
    Length lift;
    Length drawn; ///< see WayOut
    Length open;  ///< see WayOut; 0: as far as it goes

    friend bool operator==(const Handling&, const Handling&) = default;
};

struct FoldStep {
    Action action = Action::Fold;
    std::size_t line = 0; ///< index in FlatPattern::lines
    End endToGauge = End::Start;
    trim::Side faceUp = trim::Side::Left;
    bool colourUp = false;
    Direction direction = Direction::Up;
    Move move = Move::None; ///< before this step, from the one before
    Touching touching = Touching::Edge;
    /// From the bend line to the gauge, measured to what touches it.
    Length gaugeDistance;
    /// The same to the machine's display, each rounded from its own exact distance.
    Length gaugeSetting;
    Handling handling;
    Angle foldAngle;  ///< left when the sheet is let go, 0 flat … 180 doubled back; 180 for Flatten
    Angle angleToSet; ///< with springback; what the sheet is swept to. Shown beside foldAngle
    Length openGap;   ///< Flatten: gap left inside the hem, 0 closed
    std::vector<Phrase> cautions;
    std::vector<Phrase> notes; ///< what is out of the ordinary in bringing the sheet in and taking it out
    bool twoPeople = false;
    std::int64_t milliseconds = 0; ///< handling and folding time of this step

    friend bool operator==(const FoldStep&, const FoldStep&) = default;
};

/// One flag per thing that must hold, found from the plan's steps (replay.h); all are true in a plan that
/// planFold returns.
struct Feasibility {
    bool everyBendMade = false;
    bool withinLength = false;
    bool withinCapacity = false;
    bool withinGauge = false;
    bool withinAngles = false;
    bool loads = false;         ///< the way into the open clamp, the clamp's closing, and the way out
    bool clearsMachine = false; ///< at rest and swept: bed, clamp, beam
    bool clearsSheet = false;

    [[nodiscard]] bool all() const
    {
        return everyBendMade && withinLength && withinCapacity && withinGauge && withinAngles && loads &&
               clearsMachine && clearsSheet;
    }
    friend bool operator==(const Feasibility&, const Feasibility&) = default;
};

struct FoldPlan {
    std::string machine;      ///< id
    std::size_t beamFace = 0; ///< index in MachineDescription::beamFaces
    std::vector<FoldStep> steps;
    std::int64_t milliseconds = 0; ///< sum over the steps: what the search made least
    double kilograms = 0.0;
    bool twoPeople = false;
    std::vector<Phrase> cautions;
    Feasibility feasibility;
};

/// What stands in the way of a fold.
enum class Obstacle : std::uint8_t {
    BendingLength,
    Capacity,
    Bed,
    Clamp,
    ClampOpening,
    ClampAngle, ///< the nose does not let the sheet go so far
    Beam,
    Gauge,
    Throat,
    LeastLeg,
    Sheet, ///< the part already folded
    Flattening,
    WayOut, ///< folded, the piece could not be taken out of the machine
    FoldsOneWayOnly,
    Itself, ///< the finished profile runs through itself, on any machine
    TooManyBends
};

/// Name of the part for a person: "folding beam".
[[nodiscard]] const char* nameOf(Obstacle obstacle);

/// Why there is no plan: `line` cannot be folded after `made`, because of `obstacle`, which is in the way by
/// `overBy` or `overByAngle`. No sequence gets further than the one given.
struct Refusal {
    std::string machine;
    Obstacle obstacle = Obstacle::Bed;
    std::optional<std::size_t> line;
    std::vector<std::size_t> made; ///< lines of the closest sequence, in its order
    std::optional<Length> overBy;
    std::optional<Angle> overByAngle;
    Phrase statement;
    std::vector<Phrase> suggestions;
    /// Every sequence was tried, or a demand that holds for every sequence is not met.
    bool proved = true;
};

using Outcome = std::variant<FoldPlan, Refusal>;

} // namespace lapwright::fold
