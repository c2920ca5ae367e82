#include "site/blame.h"

#include "measure/rounding.h"
#include "site/checks.h"
#include "site/corner.h"
#include "site/reading_slip.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace lapwright::site {

namespace {

/// Millimetres east and north.
struct Offset {
    double east = 0.0;
    double north = 0.0;
};

Offset offset(const PlanVector& vector)
{
    return {inMillimetres(vector.east), inMillimetres(vector.north)};
}

Offset rotated(Offset vector, Angle angle)
{
    const double cosine = std::cos(angle.inRadians()), sine = std::sin(angle.inRadians());
    return {cosine * vector.east - sine * vector.north, sine * vector.east + cosine * vector.north};
}

/// Where the end comes to lie from the start when the chain is bent at this corner so that the angles add up.
Offset missAfterTurning(const Plan& plan, std::size_t corner, Angle misclosure)
{
    const PlanVector& pivot = plan.points[corner + 1];
    const Offset arm = rotated(offset(plan.points.back() - pivot), misclosure);
    const Offset fromStart = offset(pivot - plan.points.front());
    return {fromStart.east + arm.east, fromStart.north + arm.north};
}

struct AlongRun {
    double change;   ///< of the plan length, mm
    double residual; ///< mm
};
/// `way`: of length 1.
AlongRun takenUpAlong(Offset miss, Offset way)
{
    return {-(miss.east * way.east + miss.north * way.north),
            std::abs(miss.east * way.north - miss.north * way.east)};
}

/// What the run's own length would be. Nothing for runs that have no extent in plan, and where it would
/// vanish or grow past what a run may be.
std::optional<LengthChange> changedLength(const Chain& chain, const Plan& plan, std::size_t run,
                                          double planChange)
{
    const auto length = effectiveLength(chain.runs[run]);
    const std::optional<double> ratio =
        plan.figure == Figure::WallFace ? std::optional(1.0) : planRatio(chain.runs[run]);
    if (!length || !ratio || *ratio <= 0.0 || std::abs(planChange / *ratio) > largestMillimetres)
        return std::nullopt;
    const LengthChange change{run, length->value,
                              length->value + nearestFromMillimetres(planChange / *ratio)};
    const bool possible =
        change.wouldBe > Length() && (change.wouldBe <= longestRun || change.wouldBe < change.measured);
    return possible ? std::optional(change) : std::nullopt;
}

std::optional<CornerChange> changedCorner(const std::vector<Angle>& interior, std::size_t corner,
                                          Angle misclosure)
{
    const CornerChange change{corner, interior[corner], interior[corner] - misclosure};
    const bool possible = change.wouldBe >= sharpestCorner && change.wouldBe <= fullTurn - sharpestCorner;
    return possible ? std::optional(change) : std::nullopt;
}

bool isSquare(Angle interior)
{
    constexpr Angle near = Angle::degrees(0.25);
    return magnitude(interior - quarterTurn) <= near || magnitude(interior - quarterTurn * 3.0) <= near;
}

void explain(Blame& blame)
{
    if (blame.length) {
        if (auto slip = readingSlip(blame.length->measured, blame.length->wouldBe)) {
            blame.slip = std::move(slip->statement);
            blame.telling = slip->ofTheDigits;
        }
        return;
    }
    blame.telling = isSquare(blame.corner->wouldBe);
    const Angle swap = magnitude(blame.corner->wouldBe + blame.corner->given - fullTurn);
    if (swap <= Angle::degrees(0.25))
        blame.slip = blame.corner->given < halfTurn ? Phrase{"an inside corner taken for an outside one", {}}
                                                    : Phrase{"an outside corner taken for an inside one", {}};
}

/// The run whose length, changed by `along.change` in plan, leaves no more than `limit` millimetres; nothing
/// if it leaves more or cannot be so long.
std::optional<Blame> blamedLength(const Chain& chain, const Plan& plan, std::size_t run,
                                  const AlongRun& along, double limit)
{
    if (along.residual > limit)
        return std::nullopt;
    Blame blame;
    blame.length = changedLength(chain, plan, run, along.change);
    if (!blame.length)
        return std::nullopt;
    blame.residual = nearestFromMillimetres(along.residual);
    explain(blame);
    return blame;
}

/// Sixteenths of an inch: finer differences between explanations say nothing.
std::int64_t rankOf(Length residual)
{
    return residual / Length::sixtyFourths(4);
}

void sortBest(std::vector<Blame>& blames)
{
    std::stable_sort(blames.begin(), blames.end(), [](const Blame& left, const Blame& right) {
        return std::tuple(rankOf(left.residual), !left.telling) <
               std::tuple(rankOf(right.residual), !right.telling);
    });
}

} // namespace

std::vector<Blame> blameLengths(const Chain& chain, const Plan& plan, Length tolerance)
{
    std::vector<Blame> blames;
    const Offset miss = offset(plan.startToEnd());
    const double limit = inMillimetres(tolerance);
    for (std::size_t run = 0; run < plan.lengths.size(); ++run) {
        const Offset direction{plan.bearings[run].east(), plan.bearings[run].north()};
        if (std::optional<Blame> blame = blamedLength(chain, plan, run, takenUpAlong(miss, direction), limit))
            blames.push_back(*std::move(blame));
    }
    sortBest(blames);
    return blames;
}

std::vector<Blame> blameCorners(const std::vector<Angle>& interior, const Plan& plan, Length tolerance)
{
    std::vector<Blame> blames;
    const Angle misclosure = angularMisclosure(interior);
    const double limit = inMillimetres(tolerance);
    for (std::size_t corner = 0; corner < interior.size(); ++corner) {
        const Offset miss = missAfterTurning(plan, corner, misclosure);
        const double residual = std::hypot(miss.east, miss.north);
        const auto change = changedCorner(interior, corner, misclosure);
        if (!change || residual > limit)
            continue;
        Blame blame;
        blame.corner = change;
        blame.residual = nearestFromMillimetres(residual);
        explain(blame);
        blames.push_back(std::move(blame));
    }
    sortBest(blames);
    return blames;
}

namespace {

void pairsAtCorner(const Chain& chain, const Plan& plan, const CornerChange& corner, Angle misclosure,
                   double limit, std::vector<Blame>& pairs)
{
    const Offset miss = missAfterTurning(plan, corner.corner, misclosure);
    for (std::size_t run = 0; run < plan.lengths.size(); ++run) {
        Offset direction{plan.bearings[run].east(), plan.bearings[run].north()};
        if (run > corner.corner)
            direction = rotated(direction, misclosure);
        std::optional<Blame> blame = blamedLength(chain, plan, run, takenUpAlong(miss, direction), limit);
        if (!blame)
            continue;
        blame->corner = corner;
        blame->telling = isSquare(corner.wouldBe);
        pairs.push_back(*std::move(blame));
    }
}

} // namespace

std::vector<Blame> blamePairs(const Chain& chain, const std::vector<Angle>& interior, const Plan& plan,
                              Length tolerance)
{
    std::vector<Blame> pairs;
    if (plan.lengths.size() > mostRunsForTwoErrors)
        return pairs;
    const Angle misclosure = angularMisclosure(interior);
    const double limit = inMillimetres(tolerance);
    const auto better = [](const Blame& left, const Blame& right) {
        const auto change = [](const Blame& blame) {
            return magnitude(blame.length->wouldBe - blame.length->measured);
        };
        // A square corner first; then the least change, for big ones explain anything.
        return std::tuple(!left.telling, rankOf(left.residual), left.slip.text.empty(), change(left)) <
               std::tuple(!right.telling, rankOf(right.residual), right.slip.text.empty(), change(right));
    };
    for (std::size_t corner = 0; corner < interior.size(); ++corner) {
        if (const auto change = changedCorner(interior, corner, misclosure))
            pairsAtCorner(chain, plan, *change, misclosure, limit, pairs);
        std::stable_sort(pairs.begin(), pairs.end(), better);
        if (pairs.size() > mostPairs)
            pairs.erase(pairs.begin() + static_cast<std::ptrdiff_t>(mostPairs), pairs.end());
    }
    return pairs;
}

} // namespace lapwright::site
