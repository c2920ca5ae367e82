#include "site/checks.h"

#include "site/closure.h"
#include "site/corner.h"
#include "site/run_geometry.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string_view>
#include <utility>

namespace lapwright::site {

namespace {

using rules::Finding;
using rules::Findings;
using rules::Weight;

void append(Findings& all, Findings more)
{
    for (Finding& finding : more)
        all.push_back(std::move(finding));
}

void blocks(Findings& findings, const char* code, std::string place, Phrase statement, Phrase remedy)
{
    findings.push_back({Weight::Blocks, code, std::move(place), std::move(statement), std::move(remedy), {}});
}

void checkShape(const Chain& chain, Findings& findings)
{
    if (chain.runs.empty())
        blocks(findings, "site.chain.empty", chainPlace(chain), {"the chain has no runs", {}},
               {"add its runs, or take the chain out", {}});
    if (chain.closed && !chain.runs.empty() && chain.runs.size() < 3)
        blocks(findings, "site.chain.too-few", chainPlace(chain),
               {"a closed chain needs three runs or more, this has {have}",
                {{"have", static_cast<std::int64_t>(chain.runs.size())}}},
               {"add the runs that are missing, or mark the chain open", {}});
    const std::size_t wanted = chain.runs.empty() ? 0 : chain.runs.size() - (chain.closed ? 0 : 1);
    if (chain.corners.size() != wanted)
        blocks(findings, "site.chain.corners", chainPlace(chain),
               {"the chain has {have} corners; {runs} runs need {wanted}",
                {{"have", static_cast<std::int64_t>(chain.corners.size())},
                 {"runs", static_cast<std::int64_t>(chain.runs.size())},
                 {"wanted", static_cast<std::int64_t>(wanted)}}},
               {"give one corner for each place where two runs meet", {}});
    if (!std::isfinite(chain.firstBearing.inRadians()))
        blocks(findings, "site.chain.bearing", chainPlace(chain),
               {"the bearing of the first run is no angle", {}}, {"give it counter-clockwise from east", {}});
}

void checkMitreWithoutCorner(const Chain& chain, std::size_t index, Findings& findings)
{
    const Run& run = chain.runs[index];
    const bool start = run.start == EndKind::Mitre && cornerAtStart(chain, index) == nullptr;
    const bool end = run.end == EndKind::Mitre && cornerAtEnd(chain, index) == nullptr;
    if (start || end)
        blocks(findings, "site.end.mitre-without-corner", runPlace(chain, index),
               {"the {end} is to be mitred, but no run of the chain meets it there",
                {{"end", std::string(start ? (end ? "start and the end" : "start") : "end")}}},
               {"choose another end, or add the run it meets", {}});
}

void checkMitrePair(const Chain& chain, std::size_t corner, Findings& findings)
{
    const Run& before = chain.runs[corner];
    const Run& after = chain.runs[(corner + 1) % chain.runs.size()];
    const bool first = before.end == EndKind::Mitre, second = after.start == EndKind::Mitre;
    if (first == second || before.trims.empty() || after.trims.empty())
        return;
    findings.push_back({Weight::Warns,
                        "site.end.mitre-alone",
                        cornerPlace(chain, corner),
                        {"{mitred} is mitred here and {other} is {end}",
                         {{"mitred", first ? before.id : after.id},
                          {"other", first ? after.id : before.id},
                          {"end", wordsFor(first ? after.start : before.end)}}},
                        {"mitre both, or neither", {}},
                        {}});
}

void checkUnknownPlan(const Chain& chain, Findings& findings)
{
    if (!chain.closed)
        return;
    for (std::size_t index = 0; index < chain.runs.size(); ++index) {
        const Run& run = chain.runs[index];
        // Hips and valleys without slopes block already.
        if (lieOf(run.kind) != Lie::Sloped || asksForOtherSlope(run.kind) || planRatio(run))
            continue;
        // Says more than that the slope is missing, and so stands for it.
        const std::string place = runPlace(chain, index);
        findings.erase(std::remove_if(findings.begin(), findings.end(),
                                      [&place](const Finding& finding) {
                                          return finding.code == "site.run.slope.missing" &&
                                                 finding.place == place;
                                      }),
                       findings.end());
        blocks(findings, "site.chain.slope-for-plan", place,
               {"without the slope of this {kind} its length in plan is unknown, and the chain cannot be "
                "checked",
                {{"kind", wordsFor(run.kind)}}},
               {"measure the slope of the roof here", {}});
    }
}

void checkIds(const Job& job, Findings& findings)
{
    std::set<std::string_view> chains, runs;
    for (const Chain& chain : job.chains) {
        if (chain.id.empty())
            blocks(findings, "site.job.id-missing", chainPlace(chain), {"a chain has no id", {}},
                   {"give each chain an id", {}});
        else if (!chains.insert(chain.id).second)
            blocks(findings, "site.job.id-twice", chainPlace(chain),
                   {"two chains are called {id}", {{"id", chain.id}}}, {"give each chain its own id", {}});
        for (std::size_t index = 0; index < chain.runs.size(); ++index) {
            const std::string& id = chain.runs[index].id;
            if (id.empty())
                blocks(findings, "site.job.id-missing", runPlace(chain, index), {"a run has no id", {}},
                       {"give each run an id", {}});
            else if (!runs.insert(id).second)
                blocks(findings, "site.job.id-twice", runPlace(chain, index),
                       {"two runs are called {id}", {{"id", id}}},
                       {"give each run its own id: marks go by it", {}});
        }
    }
}

} // namespace

const std::string& nameOrId(const Chain& chain)
{
    return chain.name.empty() ? chain.id : chain.name;
}

std::string chainPlace(const Chain& chain)
{
    return "chain " + nameOrId(chain);
}

std::string runPlace(const Chain& chain, std::size_t run)
{
    return chainPlace(chain) + ", run " + chain.runs.at(run).id;
}

std::string cornerPlace(const Chain& chain, std::size_t corner)
{
    return chainPlace(chain) + ", corner " + chain.runs.at(corner).id + " to " +
           chain.runs.at((corner + 1) % chain.runs.size()).id;
}

rules::Findings checkChain(const Chain& chain, const Tolerance& tolerance)
{
    Findings findings;
    checkShape(chain, findings);
    for (std::size_t index = 0; index < chain.runs.size(); ++index) {
        append(findings, checkRun(chain.runs[index], tolerance, runPlace(chain, index)));
        checkMitreWithoutCorner(chain, index, findings);
        if (cornerAtEnd(chain, index) == nullptr)
            continue;
        append(findings, checkCorner(chain.corners[index], tolerance.perCorner, cornerPlace(chain, index)));
        checkMitrePair(chain, index, findings);
    }
    checkUnknownPlan(chain, findings);
    return findings;
}

rules::Findings checkJob(const Job& job)
{
    Findings findings;
    if (job.chains.empty())
        findings.push_back({Weight::Warns,
                            "site.job.empty",
                            "job",
                            {"nothing is measured yet", {}},
                            {"add a chain", {}},
                            {}});
    checkIds(job, findings);
    for (const Chain& chain : job.chains) {
        append(findings, checkChain(chain, job.tolerance));
        append(findings, closureReport(chain, job.tolerance).findings);
    }
    return findings;
}

} // namespace lapwright::site
