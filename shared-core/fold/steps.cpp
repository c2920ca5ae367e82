#include "fold/steps.h"

#include "measure/rounding.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

/// The sheet lies on clamp and bed without pressing into them; numbers only.
constexpr double lyingOn = 0.05;
/// A face leaning less than this over the finger would ride up on it.
constexpr double steepEnough = 0.7;

Vector bendLine()
{
    return {0.0, 0.0};
}

double nearestOfFormed(const Half& half)
{
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < half.points.size() && half.points.size() > 2; ++i) {
        nearest = std::min(nearest, lengthOf(half.points[i]));
        if (i + 1 < half.points.size()) {
            const Vector along = half.points[i + 1] - half.points[i];
            const double at =
                std::clamp(-dot(half.points[i], along) / std::max(dot(along, along), 1e-12), 0.0, 1.0);
            nearest = std::min(nearest, lengthOf(half.points[i] + at * along));
        }
    }
    return nearest;
}

double farthestOf(const Half& half)
{
    double farthest = 0.0;
    for (const Vector point : half.points)
        farthest = std::max(farthest, lengthOf(point - bendLine()));
    return farthest;
}

Edges edgesOf(const std::vector<Vector>& points, std::size_t first, std::size_t last)
{
    Edges edges;
    for (std::size_t i = first; i < last; ++i)
        edges.push_back({points[i], points[i + 1]});
    return edges;
}

} // namespace

StepChecker::StepChecker(const Blank& blank, const Machine& machine, std::size_t face,
                         const Settings& settings)
    : blank_(blank), machine_(machine), settings_(settings)
{
    const double clearance = blank.thickness / 2.0 + inMillimetres(settings.clearance);
    // A flattened hem that faces the beam lies on it: the sheet lifts by its thickness.
    const double onBeam = 1.5 * blank.thickness + 0.2;
    bed_ = keepOut(machine->bed, clearance, lyingOn);
    clamp_ = keepOut(machine->clamp, clearance, lyingOn);
    openClamp_ = moved(clamp_, {0.0, inMillimetres(machine->clampOpening)});
    upBeam_ = keepOut(machine->beamFaces[face].body, clearance, onBeam);
    if (machine->downFolding)
        downBeam_ = keepOut(machine->downFolding->beam.body, clearance, onBeam);
    std::size_t total = 0;
    const std::size_t count = blank.lines.size();
    for (std::size_t line = 0; line < count; ++line)
        for (const std::size_t beyond : {line, count - 1 - line}) {
            firstOf_.push_back(total);
            total += std::size_t{2} << beyond;
        }
    fronts_.resize(total);
    rears_.resize(total);
    sheet_.resize((std::size_t{1} << count) * count * 4);
}

std::size_t StepChecker::index(Made made, std::size_t line, End towards, trim::Side up) const
{
    const std::size_t part = towards == End::Start ? made & ((Made{1} << line) - 1) : made >> (line + 1);
    const std::size_t table = 2 * line + (towards == End::Start ? 0 : 1);
    return firstOf_[table] + 2 * part + (up == trim::Side::Left ? 0 : 1);
}

const Edges& StepChecker::beam(Direction direction) const
{
    return direction == Direction::Up ? upBeam_ : downBeam_;
}

std::optional<Obstacle> StepChecker::byItself(std::size_t line, Placement placement) const
{
    const FoldLine& fold = blank_.lines[line];
    const Direction direction = directionOf(fold, placement.up);
    if (direction == Direction::Down && (!machine_->downFolding || fold.hem))
        return Obstacle::FoldsOneWayOnly;
    const Angle most =
        direction == Direction::Up ? machine_->largestFoldAngle : machine_->downFolding->largestFoldAngle;
    if (fold.angleToSet > most.inRadians() + 1e-9)
        return Obstacle::ClampAngle;
    if (fold.hem) {
        // The flap stands in front, so that it can be pushed under the clamp as it is.
        if (fold.flap == placement.endToGauge || !machine_->flattensHems)
            return Obstacle::Flattening;
        const double gap = 2.0 * fold.middleRadius - blank_.thickness;
        if (gap > inMillimetres(machine_->largestOpenHem) + 1e-6)
            return Obstacle::Flattening;
    }
    return std::nullopt;
}

std::optional<Obstacle> StepChecker::throughClamp(const std::vector<Vector>& points, const Edges& beam) const
{
    const Vector out{4.0 * blank_.girth + 1'000.0, 0.0};
    if (slidingContact(points, 1, bed_, out))
        return Obstacle::Bed;
    if (slidingContact(points, 1, beam, out))
        return Obstacle::Beam;
    if (slidingContact(points, 1, openClamp_, out))
        return Obstacle::ClampOpening;
    if (slidingContact(points, 1, clamp_, {0.0, -inMillimetres(machine_->clampOpening)}))
        return Obstacle::Clamp;
    return std::nullopt;
}

StepChecker::HalfAnswer StepChecker::judgeFront(const Half& half, std::size_t line, Placement placement) const
{
    const FoldLine& fold = blank_.lines[line];
    HalfAnswer answer{true, std::nullopt, 0.0, nearestOfFormed(half), farthestOf(half)};
    const Direction direction = directionOf(fold, placement.up);
    if (half.points[1].x < inMillimetres(machine_->leastLeg)) {
        answer.obstacle = Obstacle::LeastLeg;
    } else if (half.points.size() > 2) {
        answer.obstacle = throughClamp(half.points, beam(direction));
        const double turn = direction == Direction::Up ? fold.angleToSet : -fold.angleToSet;
        const Vector pole = poleOf(fold, turn);
        if (!answer.obstacle && turningContact(half.points, 1, clamp_, pole, turn))
            answer.obstacle = Obstacle::Clamp;
        if (!answer.obstacle && turningContact(half.points, 1, bed_, pole, turn))
            answer.obstacle = Obstacle::Bed;
    }
    return answer;
}

std::optional<double> StepChecker::gaugeReach(const Half& canonical) const
{
    const double top = machine_->backGauge ? inMillimetres(machine_->backGauge->fingerHeight)
                                           : std::numeric_limits<double>::infinity();
    const double halfThickness = blank_.thickness / 2.0;
    double reach = -std::numeric_limits<double>::infinity();
    bool steep = true;
    const auto touch = [&](double x, bool holds) {
        if (x > reach) {
            reach = x;
            steep = holds;
        }
    };
    for (const Arc& arc : canonical.arcs) {
        const double a = arc.from, b = arc.from + arc.sweep;
        const double turnsBelow = std::floor(std::max(a, b) / (2.0 * std::numbers::pi));
        const bool facesGauge = turnsBelow * 2.0 * std::numbers::pi >= std::min(a, b);
        if (facesGauge && arc.centre.y <= top)
            touch(arc.centre.x + arc.middleRadius + halfThickness, true);
    }
    for (std::size_t i = 0; i + 1 < canonical.points.size(); ++i) {
        if (!canonical.isFlat[i])
            continue;
        const Vector a = canonical.points[i], b = canonical.points[i + 1];
        const Vector along = (1.0 / std::max(lengthOf(b - a), 1e-12)) * (b - a);
        const double out = halfThickness * std::abs(along.y);
        if (a.y <= top)
            touch(a.x + out, true);
        if (b.y <= top)
            touch(b.x + out, true);
        if ((a.y > top) != (b.y > top))
            touch(a.x + (b.x - a.x) * (top - a.y) / (b.y - a.y) + halfThickness / std::abs(along.y),
                  std::abs(along.y) >= steepEnough);
    }
    return steep ? std::optional(reach) : std::nullopt;
}

StepChecker::HalfAnswer StepChecker::judgeRear(const Half& canonical, std::size_t line,
                                               Placement placement) const
{
    const FoldLine& fold = blank_.lines[line];
    Half half = behind(canonical);
    HalfAnswer answer{true, std::nullopt, 0.0, nearestOfFormed(half), farthestOf(half)};
    const Edges& working = beam(directionOf(fold, placement.up));
    if (half.points.size() > 2)
        answer.obstacle = throughClamp(half.points, working);
    const double inset = fold.hem ? inMillimetres(settings_.flattenInset) : 0.0;
    if (!answer.obstacle && fold.hem && half.points.size() > 2) {
        for (Vector& point : half.points)
            point.x -= inset;
        answer.obstacle = throughClamp(half.points, working);
    }
    double deepest = 0.0;
    for (const Vector point : canonical.points)
        deepest = std::max(deepest, point.x);
    if (!answer.obstacle && deepest + inset > inMillimetres(machine_->throat))
        answer.obstacle = Obstacle::Throat;
    const std::optional<double> reach = gaugeReach(canonical);
    answer.gauge = reach.value_or(0.0);
    if (!answer.obstacle && machine_->backGauge &&
        (!reach || *reach < inMillimetres(machine_->backGauge->least) ||
         *reach + inset > inMillimetres(machine_->backGauge->most)))
        answer.obstacle = Obstacle::Gauge;
    return answer;
}

StepChecker::HalfAnswer& StepChecker::front(Made made, std::size_t line, Placement placement)
{
    const End towards = otherEnd(placement.endToGauge);
    HalfAnswer& answer = fronts_[index(made, line, towards, placement.up)];
    if (!answer.known)
        answer = judgeFront(halfSection(blank_, line, towards, made, placement.up), line, placement);
    return answer;
}

StepChecker::HalfAnswer& StepChecker::rear(Made made, std::size_t line, Placement placement)
{
    HalfAnswer& answer = rears_[index(made, line, placement.endToGauge, placement.up)];
    if (!answer.known)
        answer =
            judgeRear(halfSection(blank_, line, placement.endToGauge, made, placement.up), line, placement);
    return answer;
}

bool StepChecker::sheetInTheWay(Made made, std::size_t line, Placement placement)
{
    const HalfAnswer& inFront = front(made, line, placement);
    const HalfAnswer& inRear = rear(made, line, placement);
    // Nothing formed on either side can meet if it turns outside everything formed behind and is itself flat.
    const bool flatFront = std::isinf(inFront.nearestFormed);
    const double slack = 2.0 * blank_.lines[line].halfAllowance + 1.0;
    if (flatFront && inFront.farthest + slack < inRear.nearestFormed)
        return false;
    std::uint8_t& known =
        sheet_[(made * blank_.lines.size() + line) * 4 + (placement.endToGauge == End::Start ? 0U : 2U) +
               (placement.up == trim::Side::Left ? 0U : 1U)];
    if (known != 0)
        return known == 2;
    const FoldLine& fold = blank_.lines[line];
    const double sign = directionOf(fold, placement.up) == Direction::Up ? 1.0 : -1.0;
    // A hem goes all the way down on the sheet when it is pressed.
    const double turn = sign * (fold.hem ? 0.999 * std::numbers::pi : fold.angleToSet);
    const Vector pole = poleOf(fold, turn);
    const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    const Half back = behind(halfSection(blank_, line, placement.endToGauge, made, placement.up));
    const bool hit =
        turningContact(ahead.points, 0, edgesOf(back.points, 1, back.points.size() - 1), pole, turn) ||
        turningContact(ahead.points, 1, edgesOf(back.points, 0, 1), pole, turn);
    known = hit ? 2 : 1;
    return hit;
}

std::optional<Obstacle> StepChecker::obstacle(Made made, std::size_t line, Placement placement)
{
    if (const std::optional<Obstacle> itself = byItself(line, placement))
        return itself;
    if (const std::optional<Obstacle>& inFront = front(made, line, placement).obstacle)
        return inFront;
    if (const std::optional<Obstacle>& inRear = rear(made, line, placement).obstacle)
        return inRear;
    const FoldLine& fold = blank_.lines[line];
    if (fold.hem) {
        const double flap = placement.endToGauge == End::Start ? blank_.girth - fold.position : fold.position;
        if (flap * std::sin(fold.angleToSet) + blank_.thickness > inMillimetres(machine_->clampOpening))
            return Obstacle::ClampOpening;
    }
    if (sheetInTheWay(made, line, placement))
        return Obstacle::Sheet;
    return std::nullopt;
}

Length StepChecker::gaugeDistance(Made made, std::size_t line, Placement placement)
{
    const Made behindLine =
        placement.endToGauge == End::Start ? made & ((Made{1} << line) - 1) : made >> (line + 1);
    if (behindLine == 0)
        return placement.endToGauge == End::Start ? blank_.exactPositions[line]
                                                  : blank_.exactGirth - blank_.exactPositions[line];
    return nearestFromMillimetres(rear(made, line, placement).gauge);
}

Blocked StepChecker::explain(Made made, std::size_t line, Placement placement)
{
    const std::optional<Obstacle> found = obstacle(made, line, placement);
    return found ? measure(*found, made, line, placement) : Blocked{};
}

Blocked StepChecker::measure(Obstacle found, Made made, std::size_t line, Placement placement)
{
    const FoldLine& fold = blank_.lines[line];
    Blocked blocked{found, std::nullopt, std::nullopt};
    const double sign = directionOf(fold, placement.up) == Direction::Up ? 1.0 : -1.0;
    const Half canonical = halfSection(blank_, line, placement.endToGauge, made, placement.up);
    const Half back = behind(canonical);
    const Half ahead = halfSection(blank_, line, otherEnd(placement.endToGauge), made, placement.up);
    const auto over = [&](double millimetres) {
        if (millimetres > 0.0)
            blocked.overBy = nearestFromMillimetres(millimetres);
    };
    const auto sweptDepth = [&](const Edges& edges) {
        double deepest = std::max(depthInside(back.points, 1, edges, 1.0), 0.0);
        for (int part = 0; part <= 60; ++part) {
            const double turn = sign * fold.angleToSet * part / 60.0;
            const Vector pole = poleOf(fold, sign * fold.angleToSet);
            std::vector<Vector> points = ahead.points;
            for (Vector& point : points)
                point = pole + turned(point - pole, turn);
            deepest = std::max(deepest, depthInside(points, 1, edges, 1.0));
        }
        return deepest;
    };
    const auto lowest = [](const Half& half) {
        double least = 0.0;
        for (const Vector point : half.points)
            least = std::min(least, point.y);
        return -least;
    };
    switch (found) {
    case Obstacle::Bed:
        over(std::max(sweptDepth(bed_), lowest(back)));
        break;
    case Obstacle::Clamp:
        over(sweptDepth(clamp_));
        break;
    case Obstacle::Beam:
        over(std::max(depthInside(ahead.points, 1, beam(directionOf(fold, placement.up)), 0.5),
                      depthInside(ahead.points, 1, upBeam_, 0.5)));
        break;
    case Obstacle::ClampOpening: {
        double highest = 0.0;
        for (const Half* half : {&back, &ahead})
            for (const Vector point : half->points)
                highest = std::max(highest, point.y);
        over(highest + blank_.thickness - inMillimetres(machine_->clampOpening));
        break;
    }
    case Obstacle::ClampAngle: {
        const Angle most = sign > 0.0 || !machine_->downFolding ? machine_->largestFoldAngle
                                                                : machine_->downFolding->largestFoldAngle;
        blocked.overByAngle = Angle::radians(fold.angleToSet) - most;
        break;
    }
    case Obstacle::Gauge:
        if (machine_->backGauge) {
            const double reach = gaugeReach(canonical).value_or(0.0);
            over(std::max(reach - inMillimetres(machine_->backGauge->most),
                          inMillimetres(machine_->backGauge->least) - reach));
        }
        break;
    case Obstacle::Throat: {
        double deepest = 0.0;
        for (const Vector point : canonical.points)
            deepest = std::max(deepest, point.x);
        over(deepest - inMillimetres(machine_->throat));
        break;
    }
    case Obstacle::LeastLeg:
        over(inMillimetres(machine_->leastLeg) - ahead.points[1].x);
        break;
    case Obstacle::Sheet: {
        const double turn = sign * fold.angleToSet;
        const Vector pole = poleOf(fold, turn);
        const std::optional<double> first =
            turningContact(ahead.points, 0, edgesOf(back.points, 1, back.points.size() - 1), pole, turn);
        if (first)
            blocked.overByAngle = Angle::radians(fold.angleToSet - *first);
        break;
    }
    default:
        break;
    }
    return blocked;
}

} // namespace lapwright::fold
