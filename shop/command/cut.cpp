#include "documents/cut.h"
#include "acts/cut_words.h"
#include "acts/search_control.h"
#include "command.h"
#include "cut_floor.h"
#include "cutting/checker.h"
#include "cutting/explain.h"
#include "cutting/solve.h"
#include "input.h"
#include "measure/writing.h"
#include "search_options.h"

#include <algorithm>
#include <thread>

namespace lapwright::command {

namespace {

/// --work, --seed and --threads within what the table of settings allows.
Result<std::int64_t> numberOf(const QCommandLineParser& options, const QString& name, std::string_view key)
{
    const auto record = std::ranges::find(cutting::settingRecords(), key, &cutting::SettingRecord::key);
    bool isNumber = false;
    const qint64 number = options.value(name).toLongLong(&isNumber);
    if (!isNumber || number < record->least || number > record->most)
        return Error{"--" + name.toStdString(), text(options, name),
                     "a whole number from " + std::to_string(record->least) + " to " +
                         std::to_string(record->most)};
    return number;
}

Result<cutting::Settings> settingsOf(const QCommandLineParser& options)
{
    auto settings = searchSettings(options);
    if (!settings.ok())
        return settings.errors();
    constexpr unsigned mostThreads = 8;
    settings->threads = static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, mostThreads));
    const auto put = [&](const QString& name, std::string_view key, auto& to) -> std::vector<Error> {
        if (!options.isSet(name))
            return {};
        const auto number = numberOf(options, name, key);
        if (!number.ok())
            return number.errors();
        to = static_cast<std::remove_reference_t<decltype(to)>>(*number);
        return {};
    };
    std::vector<Error> errors = put("work", "work_limit", settings->workLimit);
    std::ranges::move(put("seed", "seed", settings->seed), std::back_inserter(errors));
    std::ranges::move(put("threads", "threads", settings->threads), std::back_inserter(errors));
    if (!errors.empty())
        return errors;
    // Steps repeat exactly, seconds do not.
    if (options.isSet("work") && !options.isSet("time"))
        settings->timeLimit.reset();
    return settings;
}

void tellRefusals(const std::string& document, const std::vector<cutting::Refusal>& refusals,
                  const Style& style)
{
    for (const cutting::Refusal& refusal : refusals)
        tell(document + ": " + (refusal.key.empty() ? "" : refusal.key + ": ") + say(refusal.reason, style));
}

void show(const QCommandLineParser& options, const cutting::Problem& problem, const cutting::Plan& plan)
{
    const Style style = styleOf(options);
    const documents::CutPlan document{documents::writtenDown(problem), plan};
    if (options.isSet("json")) {
        printDocument(documents::writeCutPlan({document, {}}));
        return;
    }
    for (const std::string& line : acts::patternsInWords(document, acts::keysOf(document.problem), style))
        print(line);
    print(acts::summaryInWords(document, style));
    // The first sentence is the proof, which the summary says.
    const std::vector<Phrase> sentences = cutting::explain(problem, plan).sentences;
    for (std::size_t index = 1; index < sentences.size(); ++index)
        print("  " + say(sentences[index], style));
}

Exit planAgain(const QCommandLineParser& options, const cutting::Settings& settings)
{
    const std::string name = nameOf(argument(options));
    const auto document = readFrom(argument(options), documents::readCutPlan);
    if (!document.ok()) {
        tell(document.errors());
        return Exit::BadInput;
    }
    const cutting::Admission admission = documents::admit(document->value.problem);
    if (!admission.problem || !admission.refusals.empty() ||
        !cutting::check(*admission.problem, document->value.plan).feasibility.cuttable()) {
        tell({Error{name, "a plan that cannot be cut as it stands", "a plan made by this program"}});
        return Exit::BadInput;
    }
    const auto report = floorReport(options, *admission.problem, document->value.plan);
    const auto next = report.ok() ? cutting::replan(*admission.problem, document->value.plan, *report,
                                                    settings, acts::searchControl())
                                  : Result<cutting::Replan>(report.errors());
    if (!next.ok()) {
        tell(next.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    tellRefusals(name, next->refusals, style);
    for (const Phrase& change : next->changes)
        tell(say(change, style));
    if (!next->plan) {
        tell("nothing is left to cut");
        return next->refusals.empty() ? Exit::Done : Exit::Blocked;
    }
    show(options, *next->problem, *next->plan);
    return next->plan->notCut.empty() && next->refusals.empty() ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    const auto settings = settingsOf(options);
    if (!settings.ok()) {
        tell(settings.errors());
        return Exit::BadInput;
    }
    if (tellsOfFloor(options))
        return planAgain(options, *settings);
    const auto problem = readFrom(argument(options), documents::readCutProblem);
    if (!problem.ok()) {
        tell(problem.errors());
        return Exit::BadInput;
    }
    if (problem->value.blanks.empty()) {
        tell({Error{"/blanks", "nothing to cut", "at least one blank"}.within(nameOf(argument(options)))});
        return Exit::BadInput;
    }
    const cutting::Admission admission = documents::admit(problem->value);
    tellRefusals(nameOf(argument(options)), admission.refusals, styleOf(options));
    if (!admission.problem)
        return Exit::BadInput;
    const cutting::Plan plan = cutting::solve(*admission.problem, *settings, acts::searchControl());
    show(options, *admission.problem, plan);
    return plan.notCut.empty() && admission.refusals.empty() ? Exit::Done : Exit::Blocked;
}

} // namespace

Subcommand cutCommand()
{
    QList<QCommandLineOption> options = {
        timeOption(),
        {"work", "Steps to look instead: for the same steps and seed the plan is the same, byte for byte.",
         "N"},
        {"seed", "Tries equal choices in another order.", "N"},
        {"threads", "Processor cores to use; the plan does not depend on it.", "N"}};
    options += floorOptions();
    return {
        "cut",
        "PROBLEM",
        "plan the cuts of one problem: blanks from sheets, coils and remnants",
        "PROBLEM is a cutting problem (lapwright/cut-problem), or - for standard input. Prints the patterns in cutting "
        "order, how far the plan can be from the least, where the metal goes and what more would cost nothing; --json "
        "writes the plan document (lapwright/cut-plan) with the proof of its bound. With --done, --scrapped or --rush "
        "PROBLEM is such a plan, and what is left of it is planned anew: what is cut stays, remnants made are stock, "
        "and what changes is listed.",
        options,
        1,
        1,
        run};
}

} // namespace lapwright::command
