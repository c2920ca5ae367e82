#include "fold/check.h"

#include "fold/retrace.h"
#include "fold/springback.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

/// Sheet lying on a face of the machine, as far as numbers go.
constexpr double lyingOn = 0.1;

class Recheck {
public:
    Recheck(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Sheet& sheet,
            const Machine& machine, const FoldPlan& plan, const Settings& settings);

    PlanCheck run(const metal::Metal& metal, Length pieceLength);

private:
    void fail(bool& flag, const FoldStep& step, const std::string& what)
    {
        flag = false;
        check_.problems.push_back("bend line " + std::to_string(step.line + 1) + ": " + what);
    }
    void order(const FoldStep& step, std::size_t index);
    void angles(const FoldStep& step);
    void gauge(const FoldStep& step);
    void way(const FoldStep& step);
    void sweep(const FoldStep& step);
    void finished();
    [[nodiscard]] double reach(const Standing& standing, const FoldStep& step) const;
    [[nodiscard]] const Outline& beam(const FoldStep& step) const;
    [[nodiscard]] double signOf(const FoldStep& step) const;
    [[nodiscard]] std::vector<Trace> formed(const FoldStep& step, double angle) const;
    [[nodiscard]] bool hem(std::size_t line) const
    {
        return flat_.lines[line].kind != trim::BendLine::Kind::Bend;
    }

    const trim::Profile& profile_;
    const trim::FlatPattern& flat_;
    const metal::Sheet& sheet_;
    const Machine& machine_;
    const FoldPlan& plan_;
    const Settings& settings_;
    Standing standing_;
    std::vector<double> asSet_;
    std::vector<bool> preBent_;
    PlanCheck check_;
};

Recheck::Recheck(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Sheet& sheet,
                 const Machine& machine, const FoldPlan& plan, const Settings& settings)
    : profile_(profile), flat_(flat), sheet_(sheet), machine_(machine), plan_(plan), settings_(settings),
      preBent_(flat.lines.size(), false)
{
    standing_.girth = inMillimetres(flat.girth);
    for (const trim::BendLine& line : flat.lines) {
        const double setback =
            inMillimetres(line.insideRadius + sheet.thickness) *
            (std::abs(line.turn.inDegrees()) > 179.999 ? 1.0
                                                       : std::tan(std::abs(line.turn.inRadians()) / 2.0));
        standing_.positions.push_back(inMillimetres(line.position));
        standing_.angles.push_back(0.0);
        standing_.allowances.push_back(2.0 * setback - inMillimetres(line.deduction));
        standing_.radii.push_back(inMillimetres(line.insideRadius) + inMillimetres(sheet.thickness) / 2.0);
    }
    asSet_ = standing_.positions;
    check_.feasibility = {true, true, true, true, true, true, true, true};
}

const Outline& Recheck::beam(const FoldStep& step) const
{
    return step.direction == Direction::Up || !machine_->downFolding
               ? machine_->beamFaces.at(plan_.beamFace).body
               : machine_->downFolding->beam.body;
}

double Recheck::signOf(const FoldStep& step) const
{
    return (step.faceUp == trim::Side::Left) == (step.direction == Direction::Up) ? 1.0 : -1.0;
}

void Recheck::order(const FoldStep& step, std::size_t index)
{
    bool& made = check_.feasibility.everyBendMade;
    const bool first = step.action != Action::Flatten;
    if (first && (standing_.angles[step.line] != 0.0 || preBent_[step.line]))
        fail(made, step, "folded twice");
    if (hem(step.line) != (step.action != Action::Fold))
        fail(made, step, "hem steps at a plain bend, or the other way about");
    if (!first && (index == 0 || plan_.steps[index - 1].action != Action::PreBend ||
                   plan_.steps[index - 1].line != step.line))
        fail(made, step, "flattened before it is bent");
    if ((flat_.lines[step.line].turn > Angle() ? 1.0 : -1.0) != signOf(step))
        fail(made, step, "folded to the wrong side");
}

void Recheck::angles(const FoldStep& step)
{
    if (step.action == Action::Flatten) {
        if (!machine_->flattensHems || step.openGap > machine_->largestOpenHem)
            fail(check_.feasibility.withinAngles, step, "the machine does not press this hem");
        return;
    }
    if (step.direction == Direction::Down && !machine_->downFolding)
        return fail(check_.feasibility.withinAngles, step, "the machine folds up only");
    const Angle most = step.direction == Direction::Up ? machine_->largestFoldAngle
                                                       : machine_->downFolding->largestFoldAngle;
    if (step.angleToSet > most + Angle::degrees(1e-6))
        fail(check_.feasibility.withinAngles, step, "further than the clamp nose allows");
}

double Recheck::reach(const Standing& standing, const FoldStep& step) const
{
    const double top = machine_->backGauge ? inMillimetres(machine_->backGauge->fingerHeight)
                                           : std::numeric_limits<double>::infinity();
    const double half = inMillimetres(sheet_.thickness) / 2.0;
    double least = 0.0;
    const double line = standing.positions[step.line];
    for (const Trace& trace : retrace(standing, step.line, step.endToGauge, step.faceUp)) {
        const bool rear = step.endToGauge == End::Start ? trace.fromStart < line : trace.fromStart > line;
        if (rear && trace.at.imag() <= top)
            least = std::min(least, trace.at.real() - half * std::abs(trace.along.imag()));
    }
    return -least;
}

void Recheck::gauge(const FoldStep& step)
{
    const double inset = step.action == Action::Flatten ? inMillimetres(settings_.flattenInset) : 0.0;
    // The reach moves one for one with the line, so one trial gives the place the gauge really puts it.
    const double towards = step.endToGauge == End::Start ? 1.0 : -1.0;
    if (step.action != Action::Flatten) {
        const double found = reach(standing_, step);
        const double line = standing_.positions[step.line];
        standing_.positions[step.line] = line + towards * (inMillimetres(step.gaugeDistance) - found);
        asSet_[step.line] = line + towards * (inMillimetres(step.gaugeSetting) - found);
    }
    if (magnitude(step.gaugeSetting - step.gaugeDistance) > machine_->displayStep / 2)
        fail(check_.feasibility.withinGauge, step, "the setting is not the distance rounded");
    const double furthest = reach(standing_, step) + inset;
    if (machine_->backGauge && (furthest > inMillimetres(machine_->backGauge->most) + 1e-3 ||
                                furthest < inMillimetres(machine_->backGauge->least) - 1e-3))
        fail(check_.feasibility.withinGauge, step, "out of the gauge's range");
}

std::vector<Trace> Recheck::formed(const FoldStep& step, double angle) const
{
    Standing now = standing_;
    now.angles[step.line] = signOf(step) * angle;
    // An unfinished bend is a wider arc of the same flat length, growing into its radius.
    const double whole = std::abs(flat_.lines[step.line].turn.inRadians());
    if (angle > 1e-9) {
        const double part = std::min(1.0, angle / whole);
        now.radii[step.line] = part * now.radii[step.line] + (1.0 - part) * now.allowances[step.line] / angle;
    }
    return retrace(now, step.line, step.endToGauge, step.faceUp);
}

void Recheck::way(const FoldStep& step)
{
    const double from = step.action == Action::Flatten ? settings_.preBend.inRadians() : 0.0;
    const double opening = inMillimetres(machine_->clampOpening);
    const double onBeam = 1.5 * inMillimetres(sheet_.thickness) + 0.3;
    if (step.action == Action::Flatten)
        return; // pushed back from where it was pre-bent; the flap is meant to meet the clamp
    const std::vector<Trace> lying = formed(step, from);
    for (const Trace& trace : lying)
        if (deepInside(trace.at, beam(step), onBeam))
            return fail(check_.feasibility.clearsMachine, step, "in the beam at rest");
    for (double out = 0.0; out < standing_.girth + 200.0; out += 4.0)
        for (const Trace& trace : lying)
            if (deepInside(trace.at + out, machine_->bed, lyingOn) ||
                deepInside(trace.at + Place(out, -opening), machine_->clamp, lyingOn))
                return fail(check_.feasibility.loads, step, "does not slide into the open clamp");
    for (double lift = 0.0; lift < opening; lift += 1.0)
        for (const Trace& trace : lying)
            if (deepInside(trace.at - Place(0.0, lift), machine_->clamp, lyingOn))
                return fail(check_.feasibility.loads, step, "in the way of the closing clamp");
}

void Recheck::sweep(const FoldStep& step)
{
    if (step.action == Action::Flatten)
        return;
    const int degrees = static_cast<int>(std::ceil(step.angleToSet.inDegrees()));
    const double line = standing_.positions[step.line], half = standing_.allowances[step.line] / 2.0;
    for (int part = 0; part <= degrees; ++part) {
        const std::vector<Trace> now = formed(step, step.angleToSet.inRadians() * part / degrees);
        for (const Trace& trace : now) {
            if (std::abs(trace.fromStart - line) <= half + 1e-6)
                continue; // the bend itself lies round the clamp's nose
            if (deepInside(trace.at, machine_->clamp, lyingOn + half) ||
                deepInside(trace.at, machine_->bed, lyingOn + half))
                return fail(check_.feasibility.clearsMachine, step, "swept into the machine");
        }
    }
}

void Recheck::finished()
{
    for (std::size_t i = 0; i < flat_.lines.size(); ++i) {
        if (standing_.angles[i] == 0.0) {
            check_.feasibility.everyBendMade = false;
            check_.problems.push_back("bend line " + std::to_string(i + 1) + " is not made");
        }
        const Angle off = magnitude(Angle::radians(standing_.angles[i]) - flat_.lines[i].turn);
        check_.largestAngleError = std::max(check_.largestAngleError, off);
    }
    std::vector<Length> wanted;
    if (profile_.startHem)
        wanted.push_back(profile_.startHem->flat);
    for (const trim::Leg& leg : profile_.legs)
        wanted.push_back(leg.length);
    if (profile_.endHem)
        wanted.push_back(profile_.endHem->flat);
    const auto largest = [&](const std::vector<double>& positions) {
        Length worst;
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            const double from = i == 0 ? 0.0 : positions[i - 1];
            const double to = i < positions.size() ? positions[i] : standing_.girth;
            double outside = to - from;
            if (i > 0)
                outside += inMillimetres(flat_.lines[i - 1].deduction) / 2.0;
            if (i < positions.size())
                outside += inMillimetres(flat_.lines[i].deduction) / 2.0;
            worst = std::max(worst, magnitude(nearestFromMillimetres(outside) - wanted[i]));
        }
        return worst;
    };
    check_.largestLegError = largest(standing_.positions);
    check_.largestLegErrorAsSet = largest(asSet_);
    if (check_.largestLegError > legTolerance || check_.largestAngleError > angleTolerance) {
        check_.feasibility.everyBendMade = false;
        check_.problems.push_back("the finished section is not the profile");
    }
}

PlanCheck Recheck::run(const metal::Metal& metal, Length pieceLength)
{
    if (pieceLength > machine_->bendingLength)
        check_.feasibility.withinLength = false;
    if (sheet_.thickness > capacityFor(machine_->capacity, metal.tensileStrengthPascals))
        check_.feasibility.withinCapacity = false;
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
        const FoldStep& step = plan_.steps[i];
        order(step, i);
        angles(step);
        gauge(step);
        way(step);
        sweep(step);
        preBent_[step.line] = preBent_[step.line] || step.action == Action::PreBend;
        if (step.action != Action::PreBend)
            standing_.angles[step.line] = signOf(step) * step.foldAngle.inRadians();
        sum += step.milliseconds;
    }
    if (sum > plan_.milliseconds)
        check_.problems.emplace_back("the steps take longer than the plan says");
    finished();
    return std::move(check_);
}

} // namespace

Result<PlanCheck> checkPlan(const trim::Profile& profile, const trim::FlatPattern& flat,
                            const metal::Metal& metal, const metal::Sheet& sheet, const Machine& machine,
                            const FoldPlan& plan, Length pieceLength, const Settings& settings)
{
    const std::size_t hems = (profile.startHem ? 1U : 0U) + (profile.endHem ? 1U : 0U);
    if (flat.lines.size() != profile.bends.size() + hems || sheet.thickness <= Length())
        return Error{"flat", std::to_string(flat.lines.size()) + " bend lines", "those of the profile"};
    if (plan.beamFace >= machine->beamFaces.size())
        return Error{"plan", "a beam face the machine does not have", "a plan of this machine"};
    for (const FoldStep& step : plan.steps)
        if (step.line >= flat.lines.size())
            return Error{"plan", "a step at a bend line the profile does not have", "a plan of this profile"};
    return Recheck(profile, flat, sheet, machine, plan, settings).run(metal, pieceLength);
}

} // namespace lapwright::fold
