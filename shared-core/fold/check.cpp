#include "fold/check.h"

#include "fold/recheck.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

Recheck::Recheck(const trim::Profile& profile, const trim::FlatPattern& flat, const metal::Sheet& sheet,
                 const Machine& machine, const FoldPlan& plan, Length pieceLength, const Settings& settings)
    : profile_(profile), flat_(flat), sheet_(sheet), machine_(machine), plan_(plan),
      pieceLength_(pieceLength), settings_(settings), bed_(machine->bed), clamp_(machine->clamp),
      upBeam_(machine->beamFaces.at(plan.beamFace).body),
      downBeam_(machine->downFolding ? machine->downFolding->beam.body : Outline()),
      preBent_(flat.lines.size(), false), partly_(flat.lines.size(), false)
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
    finishedRadii_ = standing_.radii;
    check_.feasibility = {true, true, true, true, true, true, true, true};
}

const Solid& Recheck::beam(const FoldStep& step) const
{
    return step.direction == Direction::Up ? upBeam_ : downBeam_;
}

double Recheck::signOf(const FoldStep& step) const
{
    return (step.faceUp == trim::Side::Left) == (step.direction == Direction::Up) ? 1.0 : -1.0;
}

void Recheck::order(const FoldStep& step, std::size_t index)
{
    bool& made = check_.feasibility.everyBendMade;
    const bool presses = step.action == Action::Flatten, finishes = step.action == Action::FinishFold;
    if (!presses && !finishes && (standing_.angles[step.line] != 0.0 || preBent_[step.line]))
        fail(made, step, "folded twice");
    if (finishes && !partly_[step.line])
        fail(made, step, "finished before it is begun");
    if (hem(step.line) != (presses || step.action == Action::PreBend))
        fail(made, step, "hem steps at a plain bend, or the other way about");
    if (presses && (index == 0 || plan_.steps[index - 1].action != Action::PreBend ||
                    plan_.steps[index - 1].line != step.line))
        fail(made, step, "flattened before it is bent");
    else if (presses && (plan_.steps[index - 1].endToGauge != step.endToGauge ||
                         plan_.steps[index - 1].faceUp != step.faceUp ||
                         plan_.steps[index - 1].direction != step.direction))
        fail(made, step, "flattened as it does not lie");
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
    if (flatInFront(step) < inMillimetres(machine_->leastLeg) - 0.01)
        fail(check_.feasibility.withinAngles, step, "shorter in front than the beam folds");
}

double Recheck::reach(const Standing& standing, const FoldStep& step) const
{
    const double top = machine_->backGauge ? inMillimetres(machine_->backGauge->fingerHeight)
                                           : std::numeric_limits<double>::infinity();
    const double half = inMillimetres(sheet_.thickness) / 2.0;
    double least = 0.0;
    const double line = standing.positions[step.line];
    const auto take = [&](double x, Place along) {
        least = std::min(least, x - half * std::abs(along.imag()));
    };
    const Trace* last = nullptr;
    for (const Trace& trace : retrace(standing, step.line, step.endToGauge, step.faceUp)) {
        const bool rear = step.endToGauge == End::Start ? trace.fromStart < line : trace.fromStart > line;
        if (rear && trace.at.imag() <= top)
            take(trace.at.real(), trace.along);
        if (rear && last != nullptr && (last->at.imag() > top) != (trace.at.imag() > top)) {
            // The finger's top meets the face between two points.
            const Place side = trace.at - last->at;
            const double share = (top - last->at.imag()) / side.imag();
            least = std::min(least, last->at.real() + share * side.real() -
                                        half * std::abs(side) / std::abs(side.imag()));
        }
        last = rear ? &trace : nullptr;
    }
    return -least;
}

void Recheck::gauge(const FoldStep& step)
{
    const double inset = step.action == Action::Flatten ? inMillimetres(settings_.flattenInset) : 0.0;
    // The reach moves one for one with the line, so one trial gives the place the gauge really puts it.
    const double towards = step.endToGauge == End::Start ? 1.0 : -1.0;
    if (step.action == Action::FinishFold) {
        if (std::abs(inMillimetres(step.gaugeDistance) - reach(standing_, step)) > 0.01)
            fail(check_.feasibility.withinGauge, step, "the second go is not where the first was");
    } else if (step.action == Action::Flatten) {
        if (std::abs(inMillimetres(step.gaugeDistance) - reach(standing_, step) - inset) > 0.01)
            fail(check_.feasibility.withinGauge, step, "not pressed where the hem is");
    } else {
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
    if (depth(step) + inset > inMillimetres(machine_->throat) + 0.01)
        fail(check_.feasibility.withinGauge, step, "deeper than the machine's throat");
}

double Recheck::depth(const FoldStep& step) const
{
    double least = 0.0;
    const double line = standing_.positions[step.line];
    for (const Trace& trace : retrace(standing_, step.line, step.endToGauge, step.faceUp))
        if (step.endToGauge == End::Start ? trace.fromStart < line : trace.fromStart > line)
            least = std::min(least, trace.at.real());
    return -least;
}

double Recheck::flatInFront(const FoldStep& step) const
{
    const double line = standing_.positions[step.line];
    const bool towardsEnd = step.endToGauge == End::Start;
    double flat = towardsEnd ? standing_.girth - line : line;
    for (std::size_t other = 0; other < standing_.positions.size(); ++other) {
        const double away = (standing_.positions[other] - line) * (towardsEnd ? 1.0 : -1.0);
        if (away > 0.0 && standing_.angles[other] != 0.0)
            flat = std::min(flat, away);
    }
    return flat;
}

/// An unfinished bend is a wider arc of the same flat length, growing into its radius.
double Recheck::radiusAt(std::size_t line, double angle) const
{
    if (angle < 1e-9)
        return finishedRadii_[line];
    const double part = std::min(1.0, angle / std::abs(flat_.lines[line].turn.inRadians()));
    return part * finishedRadii_[line] + (1.0 - part) * standing_.allowances[line] / angle;
}

std::vector<Trace> Recheck::formed(const FoldStep& step, double angle) const
{
    Standing now = standing_;
    now.angles[step.line] = signOf(step) * angle;
    now.radii[step.line] = radiusAt(step.line, angle);
    return retrace(now, step.line, step.endToGauge, step.faceUp);
}

void Recheck::sweep(const FoldStep& step)
{
    const double line = standing_.positions[step.line], half = standing_.allowances[step.line] / 2.0;
    const double gap = inMillimetres(sheet_.thickness) - liesOn;
    const bool flattens = step.action == Action::Flatten;
    const double from =
        flattens ? settings_.leastPreBend.inDegrees() : Angle::radians(standsAt(step)).inDegrees();
    // Pressed flat, the flap lies on the sheet: short of that it must still be clear of everything else.
    const double to = flattens ? 179.0 : step.angleToSet.inDegrees();
    const int moments = std::max(1, static_cast<int>(std::ceil(to - from)));
    for (int moment = 0; moment <= moments; ++moment) {
        const double degrees = from + (to - from) * moment / moments;
        const std::vector<Trace> now = formed(step, Angle::degrees(degrees).inRadians());
        if (meetsItself(now, line, gap))
            return fail(check_.feasibility.clearsSheet, step, "runs into the part already folded");
        if (flattens)
            continue;
        for (const Trace& trace : now) {
            if (std::abs(trace.fromStart - line) <= half + 1e-6)
                continue; // the bend itself lies round the clamp's nose
            if (clamp_.holds(trace.at, liesOn + half) || bed_.holds(trace.at, liesOn + half))
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

PlanCheck Recheck::run(const metal::Metal& metal)
{
    if (pieceLength_ > machine_->bendingLength) {
        check_.feasibility.withinLength = false;
        check_.problems.emplace_back("longer than the machine");
    }
    if (sheet_.thickness > capacityFor(machine_->capacity, metal.tensileStrengthPascals)) {
        check_.feasibility.withinCapacity = false;
        check_.problems.emplace_back("thicker than the machine folds");
    }
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
        const FoldStep& step = plan_.steps[i];
        order(step, i);
        angles(step);
        gauge(step);
        way(step);
        sweep(step);
        leave(step);
        preBent_[step.line] = preBent_[step.line] || step.action == Action::PreBend;
        partly_[step.line] = step.action == Action::FoldPartly;
        if (step.action != Action::PreBend) {
            standing_.angles[step.line] = signOf(step) * step.foldAngle.inRadians();
            standing_.radii[step.line] = radiusAt(step.line, step.foldAngle.inRadians());
        }
        sum += step.milliseconds;
    }
    if (sum > plan_.milliseconds)
        check_.problems.emplace_back("the steps take longer than the plan says");
    finished();
    return std::move(check_);
}

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
    return Recheck(profile, flat, sheet, machine, plan, pieceLength, settings).run(metal);
}

} // namespace lapwright::fold
