#include "measure/rounding.h"
#include "site/checks.h"
#include "site/closure.h"

#include <cmath>
#include <utility>

namespace lapwright::site {

namespace {

using rules::Finding;
using rules::Findings;
using rules::Weight;
using Verdict = ClosureReport::Verdict;

/// Past this the angles are not measured badly but miscounted: a corner is missing, or of the wrong kind.
constexpr Angle miscounted = Angle::degrees(45.0);
/// A chain that closes within its tolerance and misses by more than this is worth another look: common
/// practice, no source.
constexpr Length worthAnotherLook = Length::inches(1);
/// Explanations told one by one; the report keeps all.
constexpr std::size_t mostTold = 6;

Finding finding(Weight weight, const char* code, std::string place, Phrase statement, Phrase remedy)
{
    return {weight, code, std::move(place), std::move(statement), std::move(remedy), std::nullopt};
}

Phrase::Value count(std::size_t value)
{
    return static_cast<std::int64_t>(value);
}

Finding anglesOff(const Chain& chain, const ClosureReport& report)
{
    const Angle over = report.angularMisclosure;
    const std::vector<std::pair<std::string, Phrase::Value>> values{{"sum", report.angleSum},
                                                                    {"expected", report.expectedAngleSum},
                                                                    {"corners", count(chain.corners.size())},
                                                                    {"off", magnitude(over)}};
    if (magnitude(over - fullTurn * 2.0) <= report.angularTolerance)
        return finding(
            Weight::Blocks, "site.closure.exterior", chainPlace(chain),
            {"the angles add up to {sum}, as they do outside the building; inside, {corners} corners make "
             "{expected}",
             values},
            {"walk with the building on the left and give the angles on the building's side", {}});
    return finding(
        magnitude(over) >= miscounted ? Weight::Blocks : Weight::Warns, "site.closure.angles",
        chainPlace(chain),
        over > Angle() ? Phrase{"the interior angles add up to {sum}, {off} more than the {expected} that "
                                "{corners} corners make",
                                values}
                       : Phrase{"the interior angles add up to {sum}, {off} less than the {expected} that "
                                "{corners} corners make",
                                values},
        {"measure the corners again; each outside corner is under 180°, each inside corner over", {}});
}

Phrase missStatement(const ClosureReport& report)
{
    // Whole sentences, so that each can be translated.
    constexpr const char* texts[2][2] = {
        {"the last run ends {miss} from where the chain began ({east} east, {north} north), 1 in {share} of the "
         "{perimeter} around; {tolerance} is allowed",
         "the last run ends {miss} from where the chain began ({east} east, {north} south), 1 in {share} of the "
         "{perimeter} around; {tolerance} is allowed"},
        {"the last run ends {miss} from where the chain began ({east} west, {north} north), 1 in {share} of the "
         "{perimeter} around; {tolerance} is allowed",
         "the last run ends {miss} from where the chain began ({east} west, {north} south), 1 in {share} of the "
         "{perimeter} around; {tolerance} is allowed"}};
    const bool west = report.misclosure.east < Length(), south = report.misclosure.north < Length();
    return {texts[west ? 1 : 0][south ? 1 : 0],
            {{"miss", report.linearMisclosure},
             {"east", magnitude(report.misclosure.east)},
             {"north", magnitude(report.misclosure.north)},
             {"share", report.oneIn.value_or(0)},
             {"perimeter", report.perimeter},
             {"tolerance", report.tolerance}}};
}

/// The run that lies closest along the misclosure: it and those parallel to it could take it up.
std::string alongMiss(const Chain& chain, const ClosureReport& report)
{
    std::size_t closest = 0;
    double most = -1.0;
    for (std::size_t run = 0; run < chain.runs.size(); ++run) {
        const Bearing& bearing = report.plan->bearings[run];
        const double along = std::abs(bearing.east() * inMillimetres(report.misclosure.east) +
                                      bearing.north() * inMillimetres(report.misclosure.north));
        if (along <= most + 0.001)
            continue;
        most = along;
        closest = run;
    }
    return chain.runs[closest].id;
}

Finding closes(const Chain& chain, const ClosureReport& report)
{
    Phrase statement{"the chain closes exactly, {perimeter} around", {{"perimeter", report.perimeter}}};
    Phrase remedy;
    if (report.oneIn)
        statement = {
            "the chain closes to {miss}, 1 in {share} of the {perimeter} around; {tolerance} is allowed",
            {{"miss", report.linearMisclosure},
             {"share", *report.oneIn},
             {"perimeter", report.perimeter},
             {"tolerance", report.tolerance}}};
    if (report.linearMisclosure > worthAnotherLook)
        remedy = {
            "over {look} is more than careful taping leaves: measure {run}, and the runs that go its way "
            "or back, once more",
            {{"look", worthAnotherLook}, {"run", alongMiss(chain, report)}}};
    return finding(Weight::Informs, "site.closure.closes", chainPlace(chain), std::move(statement),
                   std::move(remedy));
}

/// "E1, E3 and 4 more" of the runs and corners that explain it equally well.
std::string namesOf(const Chain& chain, const ClosureReport& report)
{
    std::string names;
    std::size_t told = 0;
    for (const Blame& blame : report.blames) {
        if (told++ == mostTold)
            return names + " and " + std::to_string(report.blames.size() - mostTold) + " more";
        names += names.empty() ? "" : ", ";
        if (blame.corner)
            names += "corner " + chain.runs[blame.corner->corner].id + " to " +
                     chain.runs[(blame.corner->corner + 1) % chain.runs.size()].id;
        if (blame.length)
            names += (blame.corner ? " with " : "") + chain.runs[blame.length->run].id;
    }
    return names;
}

/// Two single lengths that no closure can tell apart.
bool areParallel(const ClosureReport& report, const Blame& one, const Blame& other)
{
    if (!one.length || !other.length || one.corner || other.corner)
        return false;
    const Bearing &first = report.plan->bearings[one.length->run],
                  &second = report.plan->bearings[other.length->run];
    return std::abs(first.east() * second.north() - first.north() * second.east()) < 0.001;
}

Phrase measureAgain(const Chain& chain, const ClosureReport& report)
{
    if (report.blames.empty())
        return {"no single length or corner explains it: two or more are off", {}};
    if (report.blames.size() == 1)
        return {"measure {names} again", {{"names", namesOf(chain, report)}}};
    const bool parallel = areParallel(report, report.blames[0], report.blames[1]);
    if (parallel)
        return {
            "measure again, in this order: {names}; parallel runs cannot be told apart from the closure alone",
            {{"names", namesOf(chain, report)}}};
    return {"measure again, in this order: {names}", {{"names", namesOf(chain, report)}}};
}

Phrase withSlip(const Blame& blame)
{
    Phrase remedy = blame.slip;
    if (!remedy.text.empty())
        remedy.text = "likely: " + remedy.text;
    return remedy;
}

Finding blameFinding(const Chain& chain, const Blame& blame)
{
    if (blame.length && blame.corner)
        return finding(
            Weight::Informs, "site.closure.blame.pair", cornerPlace(chain, blame.corner->corner),
            {"with this corner at {angle} instead of {given} and {run} at {length} instead of {measured} "
             "the chain would close to {residual}",
             {{"angle", blame.corner->wouldBe},
              {"given", blame.corner->given},
              {"run", chain.runs[blame.length->run].id},
              {"length", blame.length->wouldBe},
              {"measured", blame.length->measured},
              {"residual", blame.residual}}},
            withSlip(blame));
    if (blame.corner)
        return finding(Weight::Informs, "site.closure.blame.corner", cornerPlace(chain, blame.corner->corner),
                       {"with an interior angle of {angle} here instead of {given} the chain would close to "
                        "{residual}",
                        {{"angle", blame.corner->wouldBe},
                         {"given", blame.corner->given},
                         {"residual", blame.residual}}},
                       withSlip(blame));
    return finding(Weight::Informs, "site.closure.blame.length", runPlace(chain, blame.length->run),
                   {"at {length} instead of {measured} the chain would close to {residual}",
                    {{"length", blame.length->wouldBe},
                     {"measured", blame.length->measured},
                     {"residual", blame.residual}}},
                   withSlip(blame));
}

void addSides(const Chain& chain, const ClosureReport& report, Findings& findings)
{
    if (!report.sides)
        return;
    const auto compare = [&](Length one, Length other, const char* statement) {
        if (magnitude(one - other) > report.tolerance)
            findings.push_back(
                finding(Weight::Informs, "site.closure.sides", chainPlace(chain),
                        {statement, {{"one", one}, {"other", other}, {"off", magnitude(one - other)}}}, {}));
    };
    compare(
        report.sides->forward, report.sides->back,
        "runs that go the way of the first add up to {one}, those that come back to {other}: {off} apart");
    compare(report.sides->left, report.sides->right,
            "runs that go left of the first add up to {one}, those that come back to {other}: {off} apart");
}

Finding crosses(const Chain& chain, const ClosureReport& report)
{
    // Runs of an open chain may lie over one another at different heights; a house around cannot.
    const bool certain = report.verdict != Verdict::Open;
    return finding(certain ? Weight::Blocks : Weight::Warns, "site.closure.crosses", chainPlace(chain),
                   {"in plan {first} crosses or touches {second}",
                    {{"first", chain.runs[report.crossing->first].id},
                     {"second", chain.runs[report.crossing->second].id}}},
                   {"check the corners between them: outside or inside, and their angles", {}});
}

} // namespace

rules::Findings closureFindings(const Chain& chain, const ClosureReport& report)
{
    Findings findings;
    if (report.verdict == Verdict::NotComputable)
        return findings;
    if (report.verdict == Verdict::AnglesOff) {
        findings.push_back(anglesOff(chain, report));
        if (!report.blames.empty())
            findings.back().remedy = measureAgain(chain, report);
    }
    if (report.verdict == Verdict::LengthsOff)
        findings.push_back(finding(Weight::Warns, "site.closure.length", chainPlace(chain),
                                   missStatement(report), measureAgain(chain, report)));
    if (report.verdict == Verdict::Closes || report.verdict == Verdict::Crosses)
        findings.push_back(closes(chain, report));
    for (std::size_t blame = 0; blame < report.blames.size() && blame < mostTold; ++blame)
        findings.push_back(blameFinding(chain, report.blames[blame]));
    if (report.verdict == Verdict::LengthsOff)
        addSides(chain, report, findings);
    // A chain that does not come back crosses itself for that very reason, as like as not.
    if (report.crossing && (report.verdict == Verdict::Open || report.linearMisclosure <= report.tolerance))
        findings.push_back(crosses(chain, report));
    return findings;
}

} // namespace lapwright::site
