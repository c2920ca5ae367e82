#include "fold/picture.h"

#include "fold/blank.h"
#include "fold/steps.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::fold {

namespace {

constexpr double chord = std::numbers::pi / 18.0;

Point pointAt(Vector at)
{
    return {nearestFromMillimetres(at.x), nearestFromMillimetres(at.y)};
}

/// The half with its arcs drawn out: each arc's chords are replaced by finer ones.
std::vector<Vector> drawn(const Half& half)
{
    std::vector<Vector> points{half.points.front()};
    std::size_t arc = 0;
    for (std::size_t i = 0; i + 1 < half.points.size(); ++i) {
        if (half.isFlat[i]) {
            points.push_back(half.points[i + 1]);
            continue;
        }
        const Arc& round = half.arcs[arc++];
        const int pieces = std::max(1, static_cast<int>(std::ceil(std::abs(round.sweep) / chord)));
        for (int piece = 1; piece <= pieces; ++piece)
            points.push_back(round.centre +
                             round.middleRadius *
                                 turned({1.0, 0.0}, round.from + round.sweep * piece / pieces));
        while (i + 2 < half.points.size() && !half.isFlat[i + 1])
            ++i;
    }
    return points;
}

/// The bend being folded, at `radians` (signed): from the rear tangent point to the front one.
std::vector<Vector> bending(const FoldLine& line, double radians)
{
    const double b = line.halfAllowance;
    if (std::abs(radians) < 1e-9)
        return {{-b, 0.0}, {b, 0.0}};
    std::vector<Vector> points;
    const double sign = radians < 0.0 ? -1.0 : 1.0;
    const Vector pole = poleOf(line, radians);
    const Vector end = pole + turned(Vector{b, 0.0} - pole, radians);
    const int pieces = std::max(1, static_cast<int>(std::ceil(std::abs(radians) / chord)));
    for (int piece = 0; piece < pieces; ++piece) {
        const double angle = std::abs(radians) * piece / pieces;
        points.push_back(
            {-b + line.middleRadius * std::sin(angle), sign * line.middleRadius * (1.0 - std::cos(angle))});
    }
    points.push_back(end);
    return points;
}

} // namespace

FoldPictures::FoldPictures(Machine machine, FoldPlan plan, Blank blank, trim::Side colourFace,
                           Settings settings)
    : machine_(std::move(machine)), plan_(std::move(plan)), blank_(std::move(blank)), colourFace_(colourFace),
      settings_(std::move(settings))
{
}

SheetPicture FoldPictures::sheetAt(std::size_t index, double radians) const
{
    const FoldStep& step = plan_.steps[index];
    const FoldLine& line = blank_.lines[step.line];
    const Made made = scenes_[index].made;
    std::vector<Vector> rear =
        drawn(behind(halfSection(blank_, step.line, step.endToGauge, made, step.faceUp)));
    std::vector<Vector> front =
        drawn(halfSection(blank_, step.line, otherEnd(step.endToGauge), made, step.faceUp));
    if (std::abs(radians) > 1e-9) {
        const Vector pole = poleOf(line, radians);
        for (Vector& point : front)
            point = pole + turned(point - pole, radians);
    }
    std::reverse(rear.begin(), rear.end());
    std::vector<Vector> all = std::move(rear);
    for (const Vector point : bending(line, radians))
        all.push_back(point);
    all.insert(all.end(), front.begin(), front.end());
    const double back = step.action == Action::Flatten ? inMillimetres(settings_.flattenInset) : 0.0;
    SheetPicture picture;
    for (const Vector at : all) {
        const Point point = pointAt({at.x - back, at.y});
        if (picture.middle.empty() || !(picture.middle.back() == point))
            picture.middle.push_back(point);
    }
    picture.thickness = nearestFromMillimetres(blank_.thickness);
    const bool runsForwards = step.endToGauge == End::Start;
    if (!runsForwards)
        std::reverse(picture.middle.begin(), picture.middle.end());
    picture.colourOnLeft = colourFace_ == trim::Side::Left;
    // Seen from the other end of the piece, left of the path is right on the picture.
    const bool leftIsUp = step.faceUp == trim::Side::Left;
    if (leftIsUp != runsForwards)
        picture.colourOnLeft = !picture.colourOnLeft;
    return picture;
}

Result<FoldPictures> FoldPictures::make(const trim::Profile& profile, const trim::FlatPattern& flat,
                                        const metal::Metal& metal, const metal::Sheet& sheet,
                                        const Machine& machine, const FoldPlan& plan,
                                        const Settings& settings)
{
    Result<Blank> blank = makeBlank(profile, flat, metal, sheet, machine, settings);
    if (!blank)
        return blank.errors();
    if (plan.steps.empty() || plan.beamFace >= machine->beamFaces.size())
        return Error{"plan", "no steps, or a beam face the machine does not have", "a plan of this machine"};
    FoldPictures pictures(machine, plan, std::move(*blank), profile.colourFace, settings);
    Made made = 0;
    for (const FoldStep& step : plan.steps) {
        if (step.line >= flat.lines.size())
            return Error{"plan", "a step at a bend line the profile does not have", "a plan of this profile"};
        const std::int64_t lasts = std::max<std::int64_t>(step.milliseconds, 1);
        pictures.scenes_.push_back({pictures.milliseconds_, lasts, made & ~(Made{1} << step.line)});
        pictures.milliseconds_ += lasts;
        made |= Made{1} << step.line;
    }
    for (std::size_t i = 0; i < plan.steps.size(); ++i) {
        const FoldStep& step = plan.steps[i];
        const double sign = step.direction == Direction::Up ? 1.0 : -1.0;
        const double first =
            step.action == Action::Flatten ? pictures.blank_.lines[step.line].angleToSet : 0.0;
        const double set = step.angleToSet.inRadians(), wanted = step.foldAngle.inRadians();
        StepPicture picture;
        picture.machine.bed = machine->bed;
        picture.machine.clamp = machine->clamp;
        picture.machine.beam = step.direction == Direction::Up || !machine->downFolding
                                   ? machine->beamFaces[plan.beamFace].body
                                   : machine->downFolding->beam.body;
        if (machine->backGauge) {
            picture.machine.gauge = Point{-step.gaugeDistance, Length()};
            picture.machine.fingerHeight = machine->backGauge->fingerHeight;
        }
        picture.before = pictures.sheetAt(i, sign * first);
        picture.during = pictures.sheetAt(i, sign * (first + set) / 2.0);
        picture.after = pictures.sheetAt(i, sign * set);
        picture.released = pictures.sheetAt(i, sign * wanted);
        picture.gaugeSetting = step.gaugeSetting;
        pictures.pictures_.push_back(std::move(picture));
    }
    return pictures;
}

Frame FoldPictures::frame(std::int64_t at) const
{
    std::size_t index = 0;
    while (index + 1 < scenes_.size() && scenes_[index + 1].begins <= at)
        ++index;
    const Scene& scene = scenes_[index];
    const FoldStep& step = plan_.steps[index];
    const double part =
        std::clamp(static_cast<double>(at - scene.begins) / static_cast<double>(scene.lasts), 0.0, 1.0);
    const double folded = std::clamp((part - 0.2) / 0.6, 0.0, 1.0);
    const double sign = step.direction == Direction::Up ? 1.0 : -1.0;
    Frame frame;
    frame.step = index;
    if (step.action == Action::Flatten) {
        const double first = blank_.lines[step.line].angleToSet;
        frame.sheet = sheetAt(index, sign * (first + folded * (step.angleToSet.inRadians() - first)));
        frame.clampLift = scaled(machine_->clampOpening, 1.0 - folded);
        return frame;
    }
    const double open = std::max(1.0 - part / 0.2, (part - 0.8) / 0.2);
    const double turn = sign * folded * step.angleToSet.inRadians();
    frame.sheet = sheetAt(index, part > 0.8 ? sign * step.foldAngle.inRadians() : turn);
    frame.beamTurn = Angle::radians(part > 0.8 ? turn * (1.0 - part) / 0.2 : turn);
    frame.clampLift = scaled(machine_->clampOpening, std::clamp(open, 0.0, 1.0));
    return frame;
}

} // namespace lapwright::fold
