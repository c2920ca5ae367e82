#include "fold/recheck.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

/// The checker's look at how the sheet comes into the machine and goes out of it.
namespace lapwright::fold {

bool Recheck::meets(const std::vector<Trace>& traces, Place sheet, double open, bool upBeam,
                    double give) const
{
    const double onBeam = 1.5 * inMillimetres(sheet_.thickness) + 0.3;
    return std::any_of(traces.begin(), traces.end(), [&](const Trace& trace) {
        return bed_.holds(trace.at + sheet, liesOn + give) ||
               clamp_.holds(trace.at + sheet - Place(0.0, open), liesOn + give) ||
               (upBeam && upBeam_.holds(trace.at + sheet, onBeam));
    });
}

bool Recheck::meetsOnTheWay(const std::vector<Trace>& traces, Place from, Place to, double openFrom,
                            double openTo, double spacing, bool upBeam, double give) const
{
    const double most = std::max(std::abs(to - from), std::abs(openTo - openFrom));
    const int pieces = std::max(1, static_cast<int>(std::ceil(most / spacing)));
    for (int piece = 0; piece <= pieces; ++piece) {
        const double share = static_cast<double>(piece) / pieces;
        if (meets(traces, from + share * (to - from), openFrom + share * (openTo - openFrom), upBeam, give))
            return true;
    }
    return false;
}

const char* Recheck::laidIn(const std::vector<Trace>& lying, const FoldStep& step) const
{
    const double opening = inMillimetres(machine_->clampOpening), lift = inMillimetres(step.handling.lift);
    const bool up = step.direction == Direction::Up;
    if (step.handling.in == WayIn::Endways) {
        if (!machine_->slidesEndways || pieceLength_ > *machine_->slidesEndways)
            return "too long to be slid in past the end of the clamp";
        if (meets(lying, 0.0, opening, up, 0.0))
            return "does not stand in the open machine";
    } else {
        const Place far(standing_.girth + 500.0, lift);
        if (meetsOnTheWay(lying, {0.0, lift}, far, opening, opening, 4.0, up))
            return "does not slide into the open clamp";
        if (meetsOnTheWay(lying, 0.0, {0.0, lift}, opening, opening, 1.0, up))
            return "cannot be let down into the open clamp";
    }
    return meetsOnTheWay(lying, 0.0, 0.0, 0.0, opening, 1.0, false) ? "in the way of the closing clamp"
                                                                    : nullptr;
}

void Recheck::way(const FoldStep& step)
{
    if (step.action == Action::Flatten)
        return; // pushed back from where it was pre-bent; the flap is meant to meet the clamp
    // With the beam against it, the part in front stands to the beam as it does to the beam at rest when
    // flat.
    const double onBeam = 1.5 * inMillimetres(sheet_.thickness) + 0.3;
    for (const Trace& trace : formed(step, 0.0))
        if (beam(step).holds(trace.at, onBeam))
            return fail(check_.feasibility.clearsMachine, step, "in the beam at rest");
    std::vector<Trace> lying = formed(step, standsAt(step));
    if (step.action == Action::FinishFold) // what is bent already lies round the clamp's nose
        std::erase_if(lying, [&](const Trace& trace) {
            return std::abs(trace.fromStart - standing_.positions[step.line]) <=
                   standing_.allowances[step.line] / 2.0 + 1e-6;
        });
    if (const char* what = laidIn(lying, step))
        fail(check_.feasibility.loads, step, what);
}

bool Recheck::beamReturns(const FoldStep& step) const
{
    constexpr double every = 5.0;
    const double onBeam = 1.5 * inMillimetres(sheet_.thickness) + 0.3, line = standing_.positions[step.line];
    const double sign = step.direction == Direction::Up ? 1.0 : -1.0;
    const std::vector<Trace> lying = formed(step, 0.0);
    for (double degrees = 0.0; degrees < step.angleToSet.inDegrees(); degrees += every) {
        const Place turn = std::polar(1.0, sign * Angle::degrees(degrees).inRadians());
        for (const Trace& trace : lying)
            if ((trace.fromStart > line) == (step.endToGauge == End::Start) &&
                beam(step).holds(trace.at * turn, onBeam))
                return false;
    }
    return true;
}

/// The way out as the step says it, looked at every millimetre or two. A sheet springs aside by a millimetre
/// and a half, and the bend itself lies round the nose.
void Recheck::leave(const FoldStep& step)
{
    bool& loads = check_.feasibility.loads;
    if (step.action == Action::Flatten)
        return; // as it came
    if (step.handling.out == WayOut::Endways) {
        if (!machine_->slidesEndways || pieceLength_ > *machine_->slidesEndways)
            fail(loads, step, "too long to be slid out past the end of the clamp");
        return;
    }
    const bool little = step.handling.out == WayOut::LittleOpen;
    const double wide = inMillimetres(little ? step.handling.open : machine_->clampOpening);
    const double lift = inMillimetres(step.handling.lift);
    const double drawn = inMillimetres(step.handling.drawn);
    const bool up = step.direction == Direction::Up;
    const double give = 1.5 + standing_.allowances[step.line] / 2.0;
    const std::vector<Trace> out = formed(step, step.foldAngle.inRadians());
    double open = 0.0;
    bool caught = !beamReturns(step);
    const auto move = [&](Place from, Place to, double opened, double spacing) {
        caught = caught || meetsOnTheWay(out, from, to, open, opened, spacing, up, give);
        open = opened;
    };
    if (step.handling.out == WayOut::DrawnFirst && !up)
        move(0.0, 0.0, wide, 1.0);
    if (step.handling.out == WayOut::DrawnFirst)
        move(0.0, drawn, open, 1.0);
    if (step.handling.out == WayOut::AsClampOpens)
        move(0.0, drawn, std::min(wide, drawn * std::abs(std::tan(step.foldAngle.inRadians()))), 1.0);
    move(drawn, drawn, wide, 1.0);
    move(drawn, {drawn, lift}, wide, 1.0);
    move({drawn, lift}, {drawn + standing_.girth + 500.0, lift}, wide, 2.0);
    if (caught)
        fail(loads, step, "cannot be taken out of the machine");
}

} // namespace lapwright::fold
