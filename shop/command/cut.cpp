#include "documents/cut.h"
#include "command.h"
#include "cut_words.h"
#include "cutting/solve.h"
#include "storage/document_file.h"

namespace lapwright::command {

namespace {

Exit run(const QCommandLineParser& options)
{
    const auto text = storage::readDocument(argument(options));
    if (!text.ok()) {
        tell(text.errors());
        return Exit::BadInput;
    }
    const auto problem = documents::readCutProblem(*text);
    if (!problem.ok()) {
        tell(problem.errorsWithin(argument(options)));
        return Exit::BadInput;
    }
    const cutting::Admission admission = documents::admit(problem->value);
    const Style style = styleOf(options);
    for (const cutting::Refusal& refusal : admission.refusals)
        tell(argument(options) + ": " + refusal.key + ": " + say(refusal.reason, style));
    if (!admission.problem)
        return Exit::BadInput;
    const cutting::Plan plan = cutting::solve(*admission.problem, searchSettings(options), searchControl());
    const documents::CutPlan document{documents::writtenDown(*admission.problem), plan};
    if (options.isSet("json")) {
        print(documents::writeCutPlan({document, {}}));
    } else {
        for (const std::string& line : patternsInWords(document, style))
            print(line);
        print(summaryInWords(document, style));
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
