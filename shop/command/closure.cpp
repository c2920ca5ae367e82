#include "site/closure.h"
#include "command.h"
#include "documents/entered.h"
#include "documents/job.h"
#include "input.h"
#include "measure/rounding.h"
#include "site/checks.h"

#include <nlohmann/json.hpp>

namespace lapwright::command {

namespace {

using site::ClosureReport;

const char* words(ClosureReport::Verdict verdict)
{
    switch (verdict) {
    case ClosureReport::Verdict::Open:
        return "open";
    case ClosureReport::Verdict::NotComputable:
        return "cannot be computed";
    case ClosureReport::Verdict::Closes:
        return "closes";
    case ClosureReport::Verdict::AnglesOff:
        return "does not close: the angles are off";
    case ClosureReport::Verdict::LengthsOff:
        return "does not close: a length is off";
    case ClosureReport::Verdict::Crosses:
        return "crosses itself";
    }
    return "";
}

bool closes(const ClosureReport& report)
{
    return report.verdict == ClosureReport::Verdict::Closes || report.verdict == ClosureReport::Verdict::Open;
}

bool measured(const ClosureReport& report)
{
    return report.verdict != ClosureReport::Verdict::Open &&
           report.verdict != ClosureReport::Verdict::NotComputable;
}

std::string explain(const site::Chain& chain, const site::Blame& blame, const Style& style)
{
    std::string line;
    if (blame.length) {
        const site::LengthChange& change = *blame.length;
        line = "run " + chain.runs[change.run].id + ": " + write(change.measured, style) + " would be " +
               write(change.wouldBe, style);
    }
    if (blame.corner) {
        const site::CornerChange& change = *blame.corner;
        const std::string next = chain.runs[(change.corner + 1) % chain.runs.size()].id;
        line += (line.empty() ? "" : " and ") + std::string("corner ") + chain.runs[change.corner].id +
                " to " + next + ": " + write(change.given) + " would be " + write(change.wouldBe);
    }
    if (!blame.slip.text.empty())
        line += " (" + say(blame.slip, style) + ")";
    return line;
}

void printReport(const site::Chain& chain, const ClosureReport& report, const Style& style)
{
    print(site::chainPlace(chain) + ": " + words(report.verdict));
    if (measured(report)) {
        print("  perimeter " + write(report.perimeter, style) + ", misclosure " +
              write(report.linearMisclosure, style) + " (allowed " + write(report.tolerance, style) + ")" +
              (report.oneIn ? ", 1 in " + std::to_string(*report.oneIn) : ""));
        print("  angles add up to " + write(report.angleSum) + ", a closed figure of " +
              std::to_string(chain.runs.size()) + " corners has " + write(report.expectedAngleSum));
    }
    for (const site::Blame& blame : report.blames)
        print("  measure again: " + explain(chain, blame, style));
}

nlohmann::json asJson(const site::Chain& chain, const ClosureReport& report, const Style& style)
{
    nlohmann::json json = {
        {"chain", chain.id}, {"verdict", words(report.verdict)}, {"closes", closes(report)}};
    if (measured(report)) {
        json["misclosure_mm"] = inMillimetres(report.linearMisclosure);
        json["tolerance_mm"] = inMillimetres(report.tolerance);
        json["perimeter_mm"] = inMillimetres(report.perimeter);
        json["angular_misclosure_degrees"] = report.angularMisclosure.inDegrees();
    }
    json["measure_again"] = nlohmann::json::array();
    for (const site::Blame& blame : report.blames) {
        nlohmann::json one = {{"text", explain(chain, blame, style)}};
        if (blame.length) {
            one["run"] = chain.runs[blame.length->run].id;
            one["would_be_mm"] = inMillimetres(blame.length->wouldBe);
        }
        if (blame.corner)
            one["would_be_degrees"] = blame.corner->wouldBe.inDegrees();
        json["measure_again"].push_back(std::move(one));
    }
    json["findings"] = nlohmann::json::array();
    for (const rules::Finding& finding : report.findings)
        json["findings"].push_back(
            {{"code", finding.code}, {"place", finding.place}, {"text", say(finding.statement, style)}});
    return json;
}

Exit run(const QCommandLineParser& options)
{
    const auto job = readFrom(argument(options), documents::readJob);
    if (!job.ok()) {
        tell(job.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    tell(documents::enteredThatDiffer(job->value), nameOf(argument(options)), style);
    bool allClose = true;
    int open = 0;
    nlohmann::json all = nlohmann::json::array();
    for (const site::Chain& chain : job->value.chains) {
        const ClosureReport report = site::closureReport(chain, job->value.tolerance);
        allClose = allClose && closes(report);
        if (options.isSet("json"))
            all.push_back(asJson(chain, report, style));
        else if (report.verdict == ClosureReport::Verdict::Open)
            ++open;
        else
            printReport(chain, report, style);
    }
    if (options.isSet("json"))
        printDocument(all.dump(2));
    else if (open > 0)
        print(std::to_string(open) + (open == 1 ? " open chain has" : " open chains have") +
              " nothing to close");
    return allClose ? Exit::Done : Exit::Blocked;
}

} // namespace

Subcommand closureCommand()
{
    return {
        "closure",
        "JOB",
        "say whether each chain of a measured job closes, and what to measure again",
        "JOB is a job document (lapwright/job), or - for standard input. For each closed chain the misclosure, its "
        "share of the perimeter, and the run or corner whose correction would close it, with the value it would "
        "then have. Exit status 1 if a chain does not close.",
        {},
        1,
        1,
        run};
}

} // namespace lapwright::command
