#pragma once

#include "fold/planner.h"
#include "fold/section.h"

#include <cstdint>
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

/// A moment of the animation. `beamTurn` is how far the beam stands turned about the bend line, signed, + up;
/// `clampLift` how far the clamp stands open.
struct Frame {
    std::size_t step = 0;
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
    /// How long the animation runs.
    [[nodiscard]] std::int64_t milliseconds() const { return milliseconds_; }
    /// The moment `at` milliseconds from the start; before 0 the first, after the end the last. In each step
    /// the clamp closes in the first fifth, the beam folds until four fifths, then the clamp opens.
    [[nodiscard]] Frame frame(std::int64_t at) const;

private:
    struct Scene {
        std::int64_t begins = 0;
        std::int64_t lasts = 0;
        Made made = 0;
    };

    FoldPictures(Machine machine, FoldPlan plan, Blank blank, trim::Side colourFace, Settings settings);
    [[nodiscard]] SheetPicture sheetAt(std::size_t step, double radians) const;

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
