#pragma once

#include "fold/machine.h"
#include "fold/plan.h"
#include "fold/section.h"
#include "fold/settings.h"
#include "fold/surroundings.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::fold {

/// How the blank lies in the machine.
struct Placement {
    End endToGauge = End::Start;
    trim::Side up = trim::Side::Left;

    friend bool operator==(const Placement&, const Placement&) = default;
};

[[nodiscard]] inline std::size_t numberOf(Placement placement)
{
    return (placement.endToGauge == End::Start ? 0U : 2U) + (placement.up == trim::Side::Left ? 0U : 1U);
}

/// What is in the way of a fold and by how much.
struct Blocked {
    Obstacle obstacle = Obstacle::Bed;
    std::optional<Length> overBy;
    std::optional<Angle> overByAngle;
};

/// How close the middles of two parts of the sheet may come.
[[nodiscard]] double sheetGap(double thickness);
/// How far the part in front turns at the line, signed, + up; a hem until it is pressed.
[[nodiscard]] double turnOf(const FoldLine& line, Direction direction);

/// Whether the machine can make one fold of a blank whose other bends are partly made. Answers are kept: what
/// stands behind the bend line depends only on the bends made there, and likewise in front.
class StepChecker {
public:
    /// `face` is an index in the machine's beam faces. Precondition: 1 to mostBendLines lines.
    StepChecker(const Blank& blank, const Machine& machine, std::size_t face, const Settings& settings);

    [[nodiscard]] std::size_t lineCount() const { return blank_.lines.size(); }
    [[nodiscard]] const Blank& blank() const { return blank_; }

    /// What stops line `line` from being folded next when `made` are made; none if it can be done. A hem is
    /// pre-bent and flattened in one go.
    [[nodiscard]] std::optional<Obstacle> obstacle(Made made, std::size_t line, Placement placement);
    /// Whether anything but the bends already made could stop it: direction, angle, hems.
    [[nodiscard]] bool allowedAtAll(std::size_t line, Placement placement) const
    {
        return !itself_[4 * line + numberOf(placement)];
    }
    /// obstacle() with the amount. Slow: for the reason of a refusal.
    [[nodiscard]] Blocked explain(Made made, std::size_t line, Placement placement);
    /// From the bend line to the gauge, exact on flat parts. Precondition: obstacle() is none.
    [[nodiscard]] Length gaugeDistance(Made made, std::size_t line, Placement placement);
    /// What touches the gauge there.
    [[nodiscard]] Touching touching(Made made, std::size_t line, Placement placement) const;
    /// How the sheet comes in and goes out. Precondition as above.
    [[nodiscard]] Handling handling(Made made, std::size_t line, Placement placement);
    /// The same as far as it takes time: the lift, and whether it goes endways.
    [[nodiscard]] Handling handlingForTime(Made made, std::size_t line, Placement placement);
    /// What stops the blank from being laid in when the part in front already stands folded as far as
    /// `partly` says; obstacle() has found nothing. The bend itself is not in `made`.
    [[nodiscard]] std::optional<Obstacle> layingInBent(Made made, std::size_t line, Placement placement,
                                                       const FoldLine& partly);

private:
    /// What is known of one part of the sheet: many are kept, so it is small.
    struct HalfAnswer {
        double gauge = 0.0;
        double lift = 0.0;    ///< that a part behind needs
        double nearest = 0.0; ///< to the pole of the fold, of what is not the flat next to the bend
        double angle = 0.0;   ///< how far round the pole it reaches, from its own flat towards the fold
        std::optional<Obstacle> obstacle; ///< whatever way it comes in
        /// From the front: of a front part, without lifting; of a part behind, with its lift.
        std::optional<Obstacle> layingIn;
        /// From standing where it is folded; known once asked for.
        std::optional<Obstacle> standing;
        /// Of a front part, with nothing formed behind; none: caught, or a part behind. Known once asked for.
        std::optional<WayOut> leaving;
        bool known = false;
        bool standingKnown = false;
        bool leavingKnown = false;
        bool leavesAnyhow = false; ///< of a front part: nothing of it leans over clamp, bed or beam
        bool leansOver = false;    ///< of a front part: folded, it does
    };
    /// Turning the front part as it stands when it is let go.
    struct LetGo {
        Vector pole;
        double cosine = 1.0;
        double sine = 0.0;
    };

    [[nodiscard]] HalfAnswer& front(Made made, std::size_t line, Placement placement);
    /// Finds the part's way out, which few get to be asked for.
    void knowLeaving(HalfAnswer& inFront, Made made, std::size_t line, Placement placement);
    /// What stops either part from standing in the open machine, or the clamp from closing on it there.
    [[nodiscard]] std::optional<Obstacle> standing(Made made, std::size_t line, Placement placement);
    [[nodiscard]] std::optional<Obstacle> standsIn(HalfAnswer& answer, const std::vector<Vector>& points,
                                                   std::size_t line, Direction direction) const;
    /// The part in front as it stands when the fold is let go.
    [[nodiscard]] std::vector<Vector> letGo(const std::vector<Vector>& ahead, std::size_t line,
                                            Direction direction) const;
    /// How that leans back.
    [[nodiscard]] Overhang overhang(Made made, std::size_t line, Placement placement) const;
    [[nodiscard]] HalfAnswer& rear(Made made, std::size_t line, Placement placement);
    [[nodiscard]] HalfAnswer judgeFront(const Half& half, std::size_t line, Placement placement) const;
    [[nodiscard]] HalfAnswer judgeRear(const Half& canonical, std::size_t line, Placement placement) const;
    /// What is in the way of both parts together, or how they come in and go out.
    struct Passage {
        std::optional<Obstacle> obstacle;
        WayIn in = WayIn::FromTheFront;
        WayOut out = WayOut::Straight;
    };

    /// What depends on both parts: the ways in and out, and one part against the other.
    [[nodiscard]] Passage together(Made made, std::size_t line, Placement placement);
    [[nodiscard]] Passage together(Made made, std::size_t line, Placement placement, HalfAnswer& inFront,
                                   HalfAnswer& inRear);
    [[nodiscard]] Passage judgeTogether(Made made, std::size_t line, Placement placement,
                                        const HalfAnswer& inFront, const HalfAnswer& inRear);
    /// Whether the parts cannot meet, whatever else: their angles about the pole say so.
    [[nodiscard]] bool keepApart(const HalfAnswer& ahead, const HalfAnswer& back, double turn) const;
    /// How high the flap of a pre-bent hem stands, or hangs.
    [[nodiscard]] double flapHeight(const FoldLine& hem) const;
    [[nodiscard]] std::optional<Obstacle> byItself(std::size_t line, Placement placement) const;
    /// How the half reaches about the pole of the fold; `half` is laid along +x.
    [[nodiscard]] HalfAnswer aboutPole(const Half& half, std::size_t line, Direction direction,
                                       bool behindLine) const;
    [[nodiscard]] std::size_t index(Made made, std::size_t line, End towards, trim::Side up) const;
    [[nodiscard]] Blocked measure(Obstacle obstacle, Made made, std::size_t line, Placement placement);

    const Blank& blank_;
    const Machine& machine_;
    const Settings& settings_;
    Surroundings around_;
    std::vector<std::optional<Obstacle>> itself_; ///< four for each line
    std::vector<Vector> poles_;                   ///< two for each line: up and down
    std::vector<LetGo> letGo_;                    ///< likewise
    std::vector<std::size_t> firstOf_;            ///< where each (line, towards) starts in the tables below
    std::vector<HalfAnswer> fronts_, rears_;
    Half scratch_;                       ///< the half that is being judged
    std::vector<std::uint8_t> together_; ///< 0 not yet known, or a Passage in short
};

[[nodiscard]] inline End otherEnd(End end)
{
    return end == End::Start ? End::End : End::Start;
}

} // namespace lapwright::fold
