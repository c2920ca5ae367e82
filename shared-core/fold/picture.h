#pragma once

#include "fold/planner.h"
#include "fold/section.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::fold {

/// The sheet's section as plain data: the middle of the sheet as a polyline in machine coordinates, from the
/// profile's start edge to its end edge; arcs are drawn with chords of at most 10°.
struct SheetPicture {
    std::vector<Point> middle;
    Length thickness;
    /// The coloured face lies to the left of the polyline.
    bool colourOnLeft = true;
};

/// The section of the machine at rest for one step.
struct MachinePicture {
    Outline bed;
    Outline clamp;              ///< closed
    Outline beam;               ///< the working beam at rest
    std::optional<Point> gauge; ///< where the finger touches; none: folded to a mark
    Length fingerHeight;
};

/// One fold step as a picture: the sheet laid in, half way, folded to the angle set, and let go.
struct StepPicture {
    MachinePicture machine;
    SheetPicture before;
    SheetPicture during;
    SheetPicture after;    ///< at angleToSet
    SheetPicture released; ///< at foldAngle
    Length gaugeSetting;
};

/// What happens in a step, one after the other.
enum class Phase { LayIn, CloseClamp, Fold, OpenClamp, TakeOut };

/// A moment of the animation. `beamTurn` is how far the beam stands turned about the bend line, signed, + up;
/// `clampLift` how far the clamp stands open.
struct Frame {
    std::size_t step = 0;
    Phase phase = Phase::LayIn;
    SheetPicture sheet;
    Angle beamTurn;
    Length clampLift;
};

/// Pictures and the animation of a plan for the profile it was made for. Errors as planFold, and steps that
/// do not belong to the profile.
class FoldPictures {
public:
    [[nodiscard]] static Result<FoldPictures> make(const trim::Profile& profile,
                                                   const trim::FlatPattern& flat, const metal::Metal& metal,
                                                   const metal::Sheet& sheet, const Machine& machine,
                                                   const FoldPlan& plan, const Settings& settings);

    [[nodiscard]] std::size_t stepCount() const { return pictures_.size(); }
    [[nodiscard]] const StepPicture& step(std::size_t index) const { return pictures_.at(index); }
    /// The finished section, lying as in the last step.
    [[nodiscard]] const SheetPicture& finished() const { return pictures_.back().released; }
    /// How long the animation runs: as long as folding one piece.
    [[nodiscard]] std::int64_t milliseconds() const { return milliseconds_; }
    /// When a step begins.
    [[nodiscard]] std::int64_t beginOf(std::size_t step) const { return scenes_.at(step).begins; }
    /// The moment `at` milliseconds from the start; before 0 the first, after the end the last. Folding takes
    /// HandlingTimes::fold or flatten: a sixth of it the clamp closes, four sixths the beam works, a sixth
    /// the clamp opens. What is left of the step's time goes before it, as the sheet is laid in, except for a
    /// quarter in which it is taken out. A hem stays in the machine until it is pressed.
    [[nodiscard]] Frame sectionAt(std::int64_t at) const;

private:
    struct Scene {
        std::int64_t begins = 0;
        std::int64_t closes = 0; ///< begins to close the clamp
        std::int64_t folds = 0;
        std::int64_t opens = 0;
        std::int64_t leaves = 0;
        std::int64_t ends = 0;
        Made made = 0, madeAfter = 0; ///< without and with the step's own bend
        double from = 0.0;            ///< radians the bend stands at when it is laid in
        /// The blank between the two goes at a bend, before the step and after it.
        std::optional<Blank> partly, partlyAfter;
    };

    FoldPictures(Machine machine, FoldPlan plan, Blank blank, trim::Side colourFace, Settings settings);
    void addScene(const FoldStep& step, const Scene& before);
    void addPicture(std::size_t index);
    [[nodiscard]] double standsAt(std::size_t index, std::int64_t at) const;
    [[nodiscard]] Vector movedAt(std::size_t index, std::int64_t at) const;
    [[nodiscard]] SheetPicture sheetAt(std::size_t step, double radians, Vector moved = {}) const;
    [[nodiscard]] double signOf(const FoldStep& step) const
    {
        return step.direction == Direction::Up ? 1.0 : -1.0;
    }

    Machine machine_;
    FoldPlan plan_;
    Blank blank_;
    trim::Side colourFace_;
    Settings settings_;
    std::vector<Scene> scenes_;
    std::vector<StepPicture> pictures_;
    std::int64_t milliseconds_ = 0;
};

} // namespace lapwright::fold
