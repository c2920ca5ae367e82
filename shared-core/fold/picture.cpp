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

SheetPicture FoldPictures::sheetAt(std::size_t index, double radians, Vector moved) const
{
    const FoldStep& step = plan_.steps[index];
    const Scene& scene = scenes_[index];
    const Blank& blank = scene.partly ? *scene.partly : blank_;
    const FoldLine& line = blank_.lines[step.line];
    std::vector<Vector> all =
        drawn(behind(halfSection(blank, step.line, step.endToGauge, scene.made, step.faceUp)));
    std::vector<Vector> front =
        drawn(halfSection(blank, step.line, otherEnd(step.endToGauge), scene.made, step.faceUp));
    if (std::abs(radians) > 1e-9)
        front = folded(front, line, radians);
    std::reverse(all.begin(), all.end());
    for (const Vector point : bending(line, radians))
        all.push_back(point);
    all.insert(all.end(), front.begin(), front.end());
    const double back = step.action == Action::Flatten ? inMillimetres(settings_.flattenInset) : 0.0;
    SheetPicture picture;
    for (const Vector at : all) {
        const Point point = pointAt(at + moved - Vector{back, 0.0});
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

/// `before` is the scene before this one, or an empty one.
void FoldPictures::addScene(const FoldStep& step, const Scene& before)
{
    const Made bit = Made{1} << step.line;
    Scene scene;
    scene.made = before.madeAfter & ~bit;
    scene.madeAfter = scene.made | bit;
    scene.partly = before.partlyAfter;
    scene.partlyAfter = before.partlyAfter;
    if (step.action == Action::FoldPartly)
        scene.partlyAfter = withLine(
            blank_, step.line,
            bentTo(blank_.lines[step.line], step.foldAngle.inRadians(), step.angleToSet.inRadians()));
    if (step.action == Action::FinishFold && scene.partly) {
        scene.from = scene.partly->lines[step.line].angle;
        scene.partlyAfter.reset();
    }
    if (step.action == Action::Flatten)
        scene.from = blank_.lines[step.line].angleToSet;
    const std::int64_t lasts = std::max<std::int64_t>(step.milliseconds, 6);
    const bool presses = step.action == Action::Flatten;
    const std::int64_t works =
        std::clamp<std::int64_t>(presses ? settings_.times.flatten : settings_.times.fold, 6, lasts);
    const std::int64_t leaving = presses || step.action == Action::PreBend ? 0 : (lasts - works) / 4;
    scene.begins = milliseconds_;
    scene.ends = milliseconds_ + lasts;
    scene.leaves = scene.ends - leaving;
    scene.opens = scene.leaves - works / 6;
    scene.closes = scene.leaves - works;
    scene.folds = scene.closes + works / 6;
    milliseconds_ = scene.ends;
    scenes_.push_back(std::move(scene));
}

void FoldPictures::addPicture(std::size_t index)
{
    const FoldStep& step = plan_.steps[index];
    const double sign = signOf(step), first = scenes_[index].from;
    const double set = step.angleToSet.inRadians(), wanted = step.foldAngle.inRadians();
    StepPicture picture;
    picture.machine.bed = machine_->bed;
    picture.machine.clamp = machine_->clamp;
    picture.machine.beam = step.direction == Direction::Up || !machine_->downFolding
                               ? machine_->beamFaces[plan_.beamFace].body
                               : machine_->downFolding->beam.body;
    if (machine_->backGauge) {
        picture.machine.gauge = Point{-step.gaugeDistance, Length()};
        picture.machine.fingerHeight = machine_->backGauge->fingerHeight;
    }
    picture.before = sheetAt(index, sign * first);
    picture.during = sheetAt(index, sign * (first + set) / 2.0);
    picture.after = sheetAt(index, sign * set);
    picture.released = sheetAt(index, sign * wanted);
    picture.gaugeSetting = step.gaugeSetting;
    pictures_.push_back(std::move(picture));
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
    for (const FoldStep& step : plan.steps) {
        if (step.line >= flat.lines.size())
            return Error{"plan", "a step at a bend line the profile does not have", "a plan of this profile"};
        pictures.addScene(step, pictures.scenes_.empty() ? Scene() : pictures.scenes_.back());
    }
    for (std::size_t i = 0; i < plan.steps.size(); ++i)
        pictures.addPicture(i);
    return pictures;
}

namespace {

double share(std::int64_t at, std::int64_t from, std::int64_t to)
{
    return to > from ? std::clamp(static_cast<double>(at - from) / static_cast<double>(to - from), 0.0, 1.0)
                     : 1.0;
}

/// How much of opening the clamp, and of drawing the sheet forward first, is done.
struct Opening {
    double clamp = 0.0;
    double drawn = 0.0;
};

Opening opening(const FoldStep& step, double done)
{
    const double early = std::min(1.0, 2.0 * done), late = std::max(0.0, 2.0 * done - 1.0);
    if (step.handling.out != WayOut::DrawnFirst)
        return {done, done};
    return step.direction == Direction::Up ? Opening{late, early} : Opening{early, late};
}

} // namespace

Frame FoldPictures::sectionAt(std::int64_t at) const
{
    std::size_t index = 0;
    while (index + 1 < scenes_.size() && scenes_[index + 1].begins <= at)
        ++index;
    const Scene& scene = scenes_[index];
    const FoldStep& step = plan_.steps[index];
    Frame frame;
    frame.step = index;
    frame.phase = at < scene.closes                                 ? Phase::LayIn
                  : at < scene.folds                                ? Phase::CloseClamp
                  : at < scene.opens                                ? Phase::Fold
                  : at < scene.leaves || scene.leaves == scene.ends ? Phase::OpenClamp
                                                                    : Phase::TakeOut;
    frame.sheet = sheetAt(index, signOf(step) * standsAt(index, at), movedAt(index, at));
    const double worked = share(at, scene.folds, scene.opens), back = share(at, scene.opens, scene.leaves);
    if (step.action != Action::Flatten)
        frame.beamTurn = Angle::radians(signOf(step) * worked * (1.0 - back) * step.angleToSet.inRadians());
    const double closed = step.action == Action::Flatten ? worked : share(at, scene.closes, scene.folds);
    frame.clampLift =
        at < scene.opens
            ? scaled(machine_->clampOpening, 1.0 - closed)
            : scaled(step.handling.out == WayOut::LittleOpen ? step.handling.open : machine_->clampOpening,
                     opening(step, back).clamp);
    return frame;
}

/// What the step's bend stands at, radians.
double FoldPictures::standsAt(std::size_t index, std::int64_t at) const
{
    const Scene& scene = scenes_[index];
    const FoldStep& step = plan_.steps[index];
    if (at >= scene.opens)
        return step.foldAngle.inRadians();
    const double set = step.angleToSet.inRadians(), worked = share(at, scene.folds, scene.opens);
    if (step.action == Action::Flatten)
        return scene.from + worked * (set - scene.from);
    return std::max(scene.from, worked * set); // the second go starts where the beam meets the sheet
}

/// Where the sheet is on its way in or out, away from where it is folded.
Vector FoldPictures::movedAt(std::size_t index, std::int64_t at) const
{
    const Scene& scene = scenes_[index];
    const FoldStep& step = plan_.steps[index];
    const Handling& handling = step.handling;
    const double lift = inMillimetres(handling.lift), far = blank_.girth + 50.0;
    if (at < scene.closes) {
        if (step.action == Action::Flatten || handling.in == WayIn::Endways)
            return {};
        const double in = share(at, scene.begins, scene.closes); // slid in, then let down
        return in < 0.8 ? Vector{(1.0 - in / 0.8) * far, lift} : Vector{0.0, (1.0 - in) / 0.2 * lift};
    }
    if (at < scene.opens || handling.out == WayOut::Endways)
        return {};
    const double drawn =
        opening(step, share(at, scene.opens, scene.leaves)).drawn * inMillimetres(handling.drawn);
    const double out = at < scene.leaves ? 0.0 : share(at, scene.leaves, scene.ends);
    if (scene.leaves == scene.ends)
        return {drawn, 0.0};
    return {drawn + std::max(0.0, (out - 0.2) / 0.8) * far, std::min(1.0, out / 0.2) * lift};
}

} // namespace lapwright::fold
