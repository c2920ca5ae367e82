#include "cutting/replan.h"

#include <algorithm>
#include <map>

namespace lapwright::cutting {

namespace {

/// Counts of the plan that are done, checked against it.
struct Done {
    std::vector<std::int64_t> patterns; ///< copies cut of each
    std::vector<std::int64_t> blanks;   ///< good pieces of each
};

Result<Done> doneOf(const Problem& problem, const Plan& plan, const FloorReport& report)
{
    Done done{std::vector<std::int64_t>(plan.patterns.size(), 0),
              std::vector<std::int64_t>(problem.blanks().size(), 0)};
    for (const FloorReport::Cut& cut : report.cut) {
        if (cut.pattern >= plan.patterns.size() || cut.count < 0 ||
            cut.count > plan.patterns[cut.pattern].count - done.patterns[cut.pattern])
            return Error{"cut", std::to_string(cut.count) + " of pattern " + std::to_string(cut.pattern),
                         "no more than the plan has"};
        done.patterns[cut.pattern] += cut.count;
        for (const Strip& strip : plan.patterns[cut.pattern].strips)
            for (const Crosscut& crosscut : strip.crosscuts)
                done.blanks[crosscut.blank] += crosscut.count * cut.count;
    }
    for (const FloorReport::Scrapped& scrapped : report.scrapped) {
        if (scrapped.blank >= done.blanks.size() || scrapped.count < 0 ||
            scrapped.count > done.blanks[scrapped.blank])
            return Error{"scrapped",
                         std::to_string(scrapped.count) + " of blank " + std::to_string(scrapped.blank),
                         "no more than were cut"};
        done.blanks[scrapped.blank] -= scrapped.count;
    }
    return done;
}

/// Stock that is left, and the remnants the cut patterns left.
std::vector<Stock> stockLeft(const Problem& problem, const Plan& plan, const Done& done)
{
    std::vector<Stock> left = problem.stocks();
    std::vector<bool> gone(left.size(), false);
    for (std::size_t index = 0; index < plan.patterns.size(); ++index) {
        const Pattern& pattern = plan.patterns[index];
        if (done.patterns[index] == 0)
            continue;
        Stock& stock = left[pattern.stock];
        if (stock.kind == StockKind::Coil) {
            const Length taken = (pattern.length + problem.rules().kerf) * done.patterns[index];
            if (stock.count)
                stock.length -= taken;
        } else if (stock.count) {
            *stock.count -= done.patterns[index];
        }
        gone[pattern.stock] = stock.kind == StockKind::Remnant || (stock.count && *stock.count == 0) ||
                              stock.length <= Length();
    }
    std::vector<Stock> result;
    for (std::size_t index = 0; index < left.size(); ++index)
        if (!gone[index])
            result.push_back(left[index]);
    for (const NewRemnant& remnant : plan.remnants) {
        std::vector<std::string> keys = keysOf(remnant);
        keys.resize(static_cast<std::size_t>(std::min(done.patterns[remnant.pattern], remnant.count)));
        for (std::string& key : keys)
            result.push_back({std::move(key), StockKind::Remnant, remnant.width, remnant.length, std::nullopt,
                              std::nullopt, std::nullopt});
    }
    return result;
}

std::vector<Phrase> changesOf(const Problem& problem, const Plan& plan, const Done& done,
                              const Replan& replan)
{
    std::map<std::string, std::int64_t> change;
    for (std::size_t index = 0; index < plan.patterns.size(); ++index)
        change[problem.stocks()[plan.patterns[index].stock].key] -=
            plan.patterns[index].count - done.patterns[index];
    if (replan.plan)
        for (const Pattern& pattern : replan.plan->patterns)
            change[replan.problem->stocks()[pattern.stock].key] += pattern.count;
    std::vector<Phrase> changes;
    for (const auto& [key, count] : change) {
        if (count > 0)
            changes.push_back({"{count} more of stock {key} will be cut", {{"count", count}, {"key", key}}});
        if (count < 0)
            changes.push_back(
                {"{count} fewer of stock {key} will be cut", {{"count", -count}, {"key", key}}});
    }
    std::map<std::string, std::int64_t> pieces;
    for (std::size_t blank = 0; blank < problem.blanks().size(); ++blank)
        pieces[problem.blanks()[blank].key] += done.blanks[blank] - problem.blanks()[blank].count;
    if (replan.problem)
        for (const Blank& blank : replan.problem->blanks())
            pieces[blank.key] += blank.count;
    for (const auto& [key, count] : pieces)
        if (count > 0)
            changes.push_back({"{count} of blank {key} came in", {{"count", count}, {"key", key}}});
    return changes;
}

} // namespace

Result<Replan> replan(const Problem& problem, const Plan& plan, const FloorReport& report,
                      const Settings& settings, const Control& control)
{
    auto found = doneOf(problem, plan, report);
    if (!found)
        return found.errors();
    const Done& done = *found;
    ProblemBuilder builder;
    builder.rules(problem.rules());
    for (Stock& stock : stockLeft(problem, plan, done))
        builder.stock(std::move(stock));
    for (const Stock& stock : report.newStock)
        builder.stock(stock);
    for (std::size_t index = 0; index < problem.blanks().size(); ++index) {
        Blank blank = problem.blanks()[index];
        blank.count -= done.blanks[index];
        if (blank.count > 0)
            builder.blank(std::move(blank));
    }
    for (const Blank& blank : report.rush)
        builder.blank(blank);
    Admission admission = builder.admit();
    Replan result;
    result.problem = std::move(admission.problem);
    result.refusals = std::move(admission.refusals);
    if (result.problem)
        result.plan = solve(*result.problem, settings, control);
    for (const FloorReport::Scrapped& scrapped : report.scrapped)
        if (scrapped.count > 0)
            result.changes.push_back(
                {"{count} of blank {key} will be cut again",
                 {{"count", scrapped.count}, {"key", problem.blanks()[scrapped.blank].key}}});
    for (Phrase& change : changesOf(problem, plan, done, result))
        result.changes.push_back(std::move(change));
    return result;
}

} // namespace lapwright::cutting
