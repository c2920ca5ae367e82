#include "documents/cut.h"
#include "acts/cut_words.h"
#include "acts/search_control.h"
#include "command.h"
#include "cutting/solve.h"
#include "input.h"
#include "search_options.h"

namespace lapwright::command {

namespace {

Exit run(const QCommandLineParser& options)
{
    const auto settings = searchSettings(options);
    const auto problem = readFrom(argument(options), documents::readCutProblem);
    if (!settings.ok() || !problem.ok()) {
        tell(settings.ok() ? problem.errors() : settings.errors());
        return Exit::BadInput;
    }
    if (problem->value.blanks.empty()) {
        tell({Error{"/blanks", "nothing to cut", "at least one blank"}.within(nameOf(argument(options)))});
        return Exit::BadInput;
    }
    const cutting::Admission admission = documents::admit(problem->value);
    const Style style = styleOf(options);
    for (const cutting::Refusal& refusal : admission.refusals)
        tell(nameOf(argument(options)) + ": " + (refusal.key.empty() ? "" : refusal.key + ": ") +
             say(refusal.reason, style));
    if (!admission.problem)
        return Exit::BadInput;
    const cutting::Plan plan = cutting::solve(*admission.problem, *settings, acts::searchControl());
    const documents::CutPlan document{documents::writtenDown(*admission.problem), plan};
    if (options.isSet("json")) {
        print(documents::writeCutPlan({document, {}}));
    } else {
        for (const std::string& line : acts::patternsInWords(document, acts::keysOf(document.problem), style))
            print(line);
        print(acts::summaryInWords(document, style));
    }
    return plan.notCut.empty() && admission.refusals.empty() ? Exit::Done : Exit::Blocked;
}

} // namespace

Subcommand cutCommand()
{
    return {
        "cut",
        "PROBLEM",
        "plan the cuts of one problem: blanks from sheets, coils and remnants",
        "PROBLEM is a cutting problem (lapwright/cut-problem), or - for standard input. Prints the patterns in cutting "
        "order and how far the plan can be from the least; --json writes the plan document (lapwright/cut-plan) with "
        "the proof of its bound.",
        {timeOption()},
        1,
        1,
        run};
}

} // namespace lapwright::command
