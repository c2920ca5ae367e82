#include "cut_floor.h"

#include "command.h"
#include "documents/cut.h"
#include "input.h"

#include <QCommandLineParser>

#include <algorithm>

namespace lapwright::command {

namespace {

/// "KEY=COUNT", or "KEY" alone.
struct Counted {
    QString key;
    std::optional<std::int64_t> count;
};

Result<Counted> readCounted(const QString& option, const QString& given)
{
    const qsizetype equals = given.lastIndexOf('=');
    if (equals < 0)
        return Counted{given, std::nullopt};
    bool isNumber = false;
    const qint64 count = given.mid(equals + 1).toLongLong(&isNumber);
    if (!isNumber || count < 1)
        return Error{option.toStdString(), given.toStdString(), "a count of 1 or more after ="};
    return Counted{given.left(equals), count};
}

Result<cutting::FloorReport::Cut> readDone(const QString& given, const cutting::Plan& plan)
{
    auto read = readCounted("--done", given);
    if (!read.ok())
        return read.errors();
    bool isNumber = false;
    const qulonglong pattern = read->key.toULongLong(&isNumber);
    if (!isNumber || pattern < 1 || pattern > plan.patterns.size())
        return Error{"--done", given.toStdString(),
                     "a pattern from 1 to " + std::to_string(plan.patterns.size()) + ", or PATTERN=COUNT"};
    const std::size_t index = static_cast<std::size_t>(pattern) - 1;
    return cutting::FloorReport::Cut{index, read->count.value_or(plan.patterns[index].count)};
}

/// Blanks of one key may stand in several entries; what is scrapped is taken from those that were cut.
Result<cutting::FloorReport::Scrapped> readScrapped(const QString& given, const cutting::Problem& problem)
{
    auto read = readCounted("--scrapped", given);
    if (!read.ok())
        return read.errors();
    const auto found = std::ranges::find(problem.blanks(), read->key.toStdString(), &cutting::Blank::key);
    if (found == problem.blanks().end())
        return Error{"--scrapped", given.toStdString(), "the key of a blank of the plan, or KEY=COUNT"};
    return cutting::FloorReport::Scrapped{static_cast<std::size_t>(found - problem.blanks().begin()),
                                          read->count.value_or(1)};
}

} // namespace

QList<QCommandLineOption> floorOptions()
{
    return {{"done",
             "PROBLEM is a plan, of whose pattern so many are cut (all without a count); again for each.",
             "PATTERN=COUNT"},
            {"scrapped", "So many of a blank were spoiled once cut (one without a count); again for each.",
             "KEY=COUNT"},
            {"rush", "Blanks and stock that came in since, as a problem of their own.", "PROBLEM"}};
}

bool tellsOfFloor(const QCommandLineParser& options)
{
    return options.isSet("done") || options.isSet("scrapped") || options.isSet("rush");
}

Result<cutting::FloorReport> floorReport(const QCommandLineParser& options, const cutting::Problem& problem,
                                         const cutting::Plan& plan)
{
    cutting::FloorReport report;
    for (const QString& given : options.values("done")) {
        const auto cut = readDone(given, plan);
        if (!cut.ok())
            return cut.errors();
        report.cut.push_back(*cut);
    }
    for (const QString& given : options.values("scrapped")) {
        const auto scrapped = readScrapped(given, problem);
        if (!scrapped.ok())
            return scrapped.errors();
        report.scrapped.push_back(*scrapped);
    }
    for (const QString& path : options.values("rush")) {
        auto rush = readFrom(path.toStdString(), documents::readCutProblem);
        if (!rush.ok())
            return rush.errors();
        std::ranges::move(rush->value.blanks, std::back_inserter(report.rush));
        std::ranges::move(rush->value.stocks, std::back_inserter(report.newStock));
    }
    return report;
}

} // namespace lapwright::command
