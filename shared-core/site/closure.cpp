#include "site/closure.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::site {

namespace {

/// Angles this close are the same angle: rounding of degrees in files, not a measure.
constexpr Angle sameAngle = Angle::degrees(0.001);

std::optional<SideSums> sideSums(const Plan& plan)
{
    SideSums sums;
    Length* const ways[] = {&sums.forward, &sums.left, &sums.back, &sums.right};
    const Bearing& first = plan.bearings.front();
    for (std::size_t run = 0; run < plan.lengths.size(); ++run) {
        if (magnitude(plan.bearings[run].rest() - first.rest()) > sameAngle)
            return std::nullopt;
        *ways[(plan.bearings[run].quarters() - first.quarters() + 4) % 4] += plan.lengths[run];
    }
    return sums;
}

void measureAngles(const std::vector<Angle>& interior, const Tolerance& tolerance, ClosureReport& report)
{
    report.expectedAngleSum = expectedAngleSum(interior.size());
    report.angularMisclosure = angularMisclosure(interior);
    report.angleSum = report.expectedAngleSum + report.angularMisclosure;
    report.angularTolerance = tolerance.perCorner * std::sqrt(static_cast<double>(interior.size()));
}

void measureLengths(const Plan& plan, const Tolerance& tolerance, ClosureReport& report)
{
    report.misclosure = plan.startToEnd();
    report.linearMisclosure = magnitude(report.misclosure);
    report.perimeter = plan.perimeter;
    report.tolerance = tolerance.closure;
    if (tolerance.perimeterShare > 0)
        report.tolerance += plan.perimeter / tolerance.perimeterShare;
    if (report.linearMisclosure > Length())
        report.oneIn = plan.perimeter / report.linearMisclosure;
    report.sides = sideSums(plan);
}

void blame(const Chain& chain, const std::vector<Angle>& interior, const Plan& asGiven, ClosureReport& report)
{
    const bool anglesOff = report.verdict == ClosureReport::Verdict::AnglesOff;
    if (!anglesOff)
        report.blames = blameLengths(chain, *report.plan, report.tolerance);
    if (magnitude(report.angularMisclosure) > sameAngle) {
        std::vector<Blame> corners = blameCorners(interior, asGiven, report.tolerance);
        std::move(corners.begin(), corners.end(), std::back_inserter(report.blames));
        std::stable_sort(
            report.blames.begin(), report.blames.end(), [](const Blame& left, const Blame& right) {
                return left.residual / Length::sixtyFourths(4) < right.residual / Length::sixtyFourths(4);
            });
    }
    if (report.blames.empty() && anglesOff)
        report.blames = blamePairs(chain, interior, asGiven, report.tolerance);
}

void reportClosed(const Chain& chain, const std::vector<Angle>& interior, const Tolerance& tolerance,
                  ClosureReport& report)
{
    using Verdict = ClosureReport::Verdict;
    measureAngles(interior, tolerance, report);
    const bool anglesOff = magnitude(report.angularMisclosure) > report.angularTolerance;
    const std::optional<Plan> asGiven = planWith(chain, interior);
    report.plan = anglesOff ? asGiven : planWith(chain, balanced(chain, interior));
    if (!asGiven || !report.plan)
        return;
    measureLengths(*report.plan, tolerance, report);
    const bool lengthsOff = report.linearMisclosure > report.tolerance;
    report.verdict = anglesOff ? Verdict::AnglesOff : lengthsOff ? Verdict::LengthsOff : Verdict::Closes;
    report.drawnPoints = report.verdict == Verdict::Closes ? compassRule(*report.plan, report.misclosure)
                                                           : report.plan->points;
    if (report.verdict != Verdict::Closes)
        blame(chain, interior, *asGiven, report);
    report.crossing = findSelfCrossing(report.drawnPoints, true);
    if (report.crossing && report.verdict == Verdict::Closes)
        report.verdict = Verdict::Crosses;
}

void reportOpen(const Chain& chain, const std::vector<Angle>& interior, ClosureReport& report)
{
    report.plan = planWith(chain, interior);
    if (!report.plan)
        return;
    report.verdict = ClosureReport::Verdict::Open;
    report.perimeter = report.plan->perimeter;
    report.drawnPoints = report.plan->points;
    report.crossing = findSelfCrossing(report.drawnPoints, false);
}

} // namespace

ClosureReport closureReport(const Chain& chain, const Tolerance& tolerance)
{
    ClosureReport report;
    const std::optional<std::vector<Angle>> interior = interiorAngles(chain);
    if (interior && chain.closed && chain.runs.size() >= 3)
        reportClosed(chain, *interior, tolerance, report);
    else if (interior && !chain.closed)
        reportOpen(chain, *interior, report);
    report.findings = closureFindings(chain, report);
    return report;
}

} // namespace lapwright::site
