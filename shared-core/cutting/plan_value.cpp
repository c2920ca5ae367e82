#include "cutting/plan_value.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

/// Of the offcuts one copy of the pattern leaves at strip ends and beside the strips.
std::int64_t creditOfOne(const Problem& problem, const Pattern& pattern)
{
    const bool crosswise = pattern.order == CutOrder::LengthsFirst;
    const auto credit = [&](Length across, Length along) {
        return crosswise ? problem.credit(pattern.stock, along, across)
                         : problem.credit(pattern.stock, across, along);
    };
    const bool coil = problem.stocks()[pattern.stock].kind == StockKind::Coil;
    const Length span = crosswise ? problem.usableWidth(pattern.stock)
                        : coil    ? pattern.length
                                  : problem.usableLength(pattern.stock);
    std::int64_t sum = credit(pattern.rest, span);
    for (const Strip& strip : pattern.strips)
        sum += credit(strip.width, strip.rest);
    return sum;
}

} // namespace

Measure countedIn(const Problem& problem)
{
    if (problem.stocks().size() > 1 || problem.creditsRemnants())
        return Measure::Cost;
    return problem.hasCoil() ? Measure::CoilLength : Measure::Sheets;
}

std::int64_t scaleOf(const Problem& problem)
{
    return problem.creditsRemnants() || (problem.hasCoil() && problem.stocks().size() > 1) ? 1'000 : 1;
}

std::int64_t costOfOne(const Problem& problem, std::size_t stock, Length level)
{
    const Measure measure = countedIn(problem);
    if (measure == Measure::Sheets)
        return 1;
    if (problem.stocks()[stock].kind != StockKind::Coil)
        return problem.cost(stock) * scaleOf(problem);
    const std::int64_t taken = (level + problem.rules().kerf).inNanometres();
    if (measure == Measure::CoilLength)
        return taken;
    // cost × scale × metres, rounded up; by long multiplication in thousands so that nothing overflows.
    const std::int64_t perMetre = problem.cost(stock) * scaleOf(problem);
    std::int64_t rest = 0, cost = 0;
    for (std::int64_t place = 1'000'000'000'000'000; place > 0; place /= 1'000) {
        rest = rest * 1'000 + perMetre / place % 1'000 * taken;
        cost = cost * 1'000 + rest / 1'000'000'000;
        rest %= 1'000'000'000;
    }
    return cost + (rest > 0 ? 1 : 0);
}

std::int64_t valueOf(const Problem& problem, const std::vector<Pattern>& patterns)
{
    std::int64_t value = 0;
    for (const Pattern& pattern : patterns)
        if (pattern.stock < problem.stocks().size())
            value += (costOfOne(problem, pattern.stock, pattern.length) -
                      (problem.creditsRemnants() ? creditOfOne(problem, pattern) : 0)) *
                     pattern.count;
    return value;
}

std::int64_t costDueBy(const Problem& problem, const std::vector<Pattern>& patterns, int dueClass)
{
    std::vector<Pattern> early;
    for (const Pattern& pattern : patterns)
        if (std::ranges::any_of(pattern.strips, [&](const Strip& strip) {
                return std::ranges::any_of(strip.crosscuts, [&](const Crosscut& crosscut) {
                    return crosscut.blank < problem.blanks().size() &&
                           problem.blanks()[crosscut.blank].dueClass <= dueClass;
                });
            }))
            early.push_back(pattern);
    return valueOf(problem, early);
}

} // namespace lapwright::cutting
