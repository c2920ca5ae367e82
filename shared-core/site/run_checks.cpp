#include "site/checks.h"
#include "site/corner.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <utility>

namespace lapwright::site {

namespace {

using rules::Finding;
using rules::Findings;
using rules::Weight;

Finding finding(Weight weight, const char* code, const std::string& place, Phrase statement, Phrase remedy)
{
    return {weight, code, place, std::move(statement), std::move(remedy), std::nullopt};
}

Phrase otherUnits(Length length)
{
    const Length asInches = length / 12;
    const Length asMillimetres = Length::nanometres(length.inNanometres() / 305);
    return {"measure again, and check the unit: the same number in inches is {inches}, in millimetres about "
            "{millimetres}",
            {{"inches", asInches}, {"millimetres", asMillimetres}}};
}

void checkOneLength(Length length, const std::string& place, Findings& findings)
{
    if (length <= Length())
        findings.push_back(finding(Weight::Blocks, "site.run.length.not-positive", place,
                                   {"the length is {length}", {{"length", length}}},
                                   {"enter the measured length", {}}));
    else if (length > longestRun)
        findings.push_back(finding(
            Weight::Blocks, "site.run.length.absurd", place,
            {"{length} is longer than any run may be, {most}", {{"length", length}, {"most", longestRun}}},
            otherUnits(length)));
    else if (length > longRun)
        findings.push_back(finding(Weight::Warns, "site.run.length.long", place,
                                   {"{length} is long for one run", {{"length", length}}},
                                   otherUnits(length)));
    else if (length < shortRun)
        findings.push_back(finding(Weight::Warns, "site.run.length.short", place,
                                   {"{length} is short for a run", {{"length", length}}},
                                   {"check the unit and the number", {}}));
}

void checkLengths(const Run& run, const std::string& place, Findings& findings)
{
    for (auto measured = run.lengths.begin(); measured != run.lengths.end(); ++measured) {
        const bool told = std::any_of(run.lengths.begin(), measured, [&measured](const Measured& earlier) {
            return earlier.value == measured->value;
        });
        if (!told)
            checkOneLength(measured->value, place, findings);
    }
    if (!run.lengths.empty() && run.counts >= run.lengths.size())
        findings.push_back(finding(Weight::Blocks, "site.run.length.counts", place,
                                   {"measure {wanted} is chosen, there are {have}",
                                    {{"wanted", static_cast<std::int64_t>(run.counts) + 1},
                                     {"have", static_cast<std::int64_t>(run.lengths.size())}}},
                                   {"choose the measure that counts", {}}));
    if (run.levelRun && run.levelRun->value <= Length())
        findings.push_back(finding(Weight::Blocks, "site.run.level-run.not-positive", place,
                                   {"the level run is {length}", {{"length", run.levelRun->value}}},
                                   {"enter the level distance under the run", {}}));
    if (run.levelRun && lieOf(run.kind) != Lie::Sloped)
        findings.push_back(
            finding(Weight::Warns, "site.run.level-run.kind", place,
                    {"a level run is given, but {article} {kind} does not follow a slope: it is "
                     "not used",
                     {{"article", std::string(wordsFor(run.kind).find_first_of("aeiou") == 0 ? "an" : "a")},
                      {"kind", wordsFor(run.kind)}}},
                    {"give the length of the run itself", {}}));
    if (run.courseExposure && *run.courseExposure <= Length())
        findings.push_back(finding(Weight::Blocks, "site.run.exposure", place,
                                   {"the course exposure is {length}", {{"length", *run.courseExposure}}},
                                   {"enter what one course of the roofing shows", {}}));
}

void checkRepeats(const Run& run, Length tolerance, const std::string& place, Findings& findings)
{
    if (run.lengths.size() < 2)
        return;
    const auto [least, most] = std::minmax_element(
        run.lengths.begin(), run.lengths.end(),
        [](const Measured& left, const Measured& right) { return left.value < right.value; });
    if (most->value - least->value > tolerance)
        findings.push_back(finding(
            Weight::Warns, "site.run.repeats", place,
            {"repeated measures of this run lie {spread} apart: {least} to {most}",
             {{"spread", most->value - least->value}, {"least", least->value}, {"most", most->value}}},
            {"measure once more and choose the one that counts", {}}));
}

void checkSlopes(const Run& run, const std::string& place, Findings& findings)
{
    const bool crease = asksForOtherSlope(run.kind);
    const bool lengthNeedsIt = lieOf(run.kind) == Lie::Sloped && !measuredLength(run);
    if (asksForSlope(run.kind) && !run.slope)
        findings.push_back(finding(crease || lengthNeedsIt ? Weight::Blocks : Weight::Warns,
                                   "site.run.slope.missing", place,
                                   {"the slope at this {kind} is missing", {{"kind", wordsFor(run.kind)}}},
                                   {"measure the slope of the roof here", {}}));
    if (crease && !run.otherSlope)
        findings.push_back(finding(
            Weight::Blocks, "site.run.other-slope.missing", place,
            {"the slope of the other plane at this {kind} is missing", {{"kind", wordsFor(run.kind)}}},
            {"enter it, also where both planes have the same slope", {}}));
    const bool hipOrValley = run.kind == RunKind::Hip || run.kind == RunKind::Valley;
    if (hipOrValley && ((run.slope && run.slope->isLevel()) || (run.otherSlope && run.otherSlope->isLevel())))
        findings.push_back(
            finding(Weight::Blocks, "site.run.slope.level", place,
                    {"a {kind} cannot rise beside a level plane", {{"kind", wordsFor(run.kind)}}},
                    {"measure both slopes again", {}}));
}

void checkPlanCorner(const Run& run, const std::string& place, Findings& findings)
{
    const std::optional<Angle> square = squarePlanCorner(run.kind);
    if (!square || !run.planCorner)
        return;
    const bool outside = *square < halfTurn;
    const bool possible = *run.planCorner >= sharpestCorner && *run.planCorner <= fullTurn - sharpestCorner &&
                          magnitude(*run.planCorner - halfTurn) >= sharpestCorner;
    if (possible && (*run.planCorner < halfTurn) == outside)
        return;
    const std::vector<std::pair<std::string, Phrase::Value>> values{{"kind", wordsFor(run.kind)},
                                                                    {"given", *run.planCorner}};
    Phrase statement =
        outside
            ? Phrase{"the plan corner of this {kind} is {given}; it stands at an outside corner, under 180°",
                     values}
            : Phrase{"the plan corner of this {kind} is {given}; it stands at an inside corner, over 180°",
                     values};
    findings.push_back(finding(Weight::Blocks, "site.run.plan-corner", place, std::move(statement),
                               {"the angle counts on the building's side: measured from outside it would be "
                                "{other}",
                                {{"other", fullTurn - *run.planCorner}}}));
}

void checkDerived(const Run& run, Length tolerance, const std::string& place, Findings& findings)
{
    const std::optional<Length> measured = measuredLength(run);
    const std::optional<Derived<Length>> derived = derivedLength(run);
    // Beside a measure the derived length is only compared with it: the measure is what counts.
    if (derived && !measured)
        checkOneLength(derived->value, place, findings);
    if (!measured && !derived && run.lengths.empty())
        findings.push_back(finding(Weight::Blocks, "site.run.length.missing", place,
                                   {"this {kind} has no length", {{"kind", wordsFor(run.kind)}}},
                                   {"measure it, or give the level run and slope of a sloped one", {}}));
    if (!measured || !derived)
        return;
    const Length difference = *measured - derived->value;
    const bool past = magnitude(difference) > tolerance;
    findings.push_back(finding(
        past ? Weight::Warns : Weight::Informs, "site.run.length.derived", place,
        {"measured {measured}; the level run and slope say {derived}: {difference} apart",
         {{"measured", *measured}, {"derived", derived->value}, {"difference", magnitude(difference)}}},
        past ? Phrase{"check the length, the level run and the slope; the measure counts", {}} : Phrase{}));
}

} // namespace

rules::Findings checkRun(const Run& run, const Tolerance& tolerance, const std::string& place)
{
    Findings findings;
    checkLengths(run, place, findings);
    checkRepeats(run, tolerance.repeats, place, findings);
    checkSlopes(run, place, findings);
    checkPlanCorner(run, place, findings);
    checkDerived(run, tolerance.derived, place, findings);
    return findings;
}

} // namespace lapwright::site
