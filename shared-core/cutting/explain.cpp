#include "cutting/explain.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::cutting {

namespace {

/// As a person reads it: to tenths or hundredths.
double rounded(double value, double parts)
{
    return std::round(value * parts) / parts;
}

struct Spans {
    Length across, along;
};

Spans spansOf(const Problem& problem, const Pattern& pattern)
{
    const bool coil = problem.stocks()[pattern.stock].kind == StockKind::Coil;
    Spans spans{problem.usableWidth(pattern.stock),
                coil ? pattern.length : problem.usableLength(pattern.stock)};
    if (pattern.order == CutOrder::LengthsFirst)
        std::swap(spans.across, spans.along);
    return spans;
}

std::vector<GirthLoss> lossesOf(const Problem& problem, const Plan& plan)
{
    std::map<Length, double> byGirth;
    for (const Pattern& pattern : plan.patterns) {
        const Spans spans = spansOf(problem, pattern);
        const double copies = static_cast<double>(pattern.count);
        Length widths;
        for (const Strip& strip : pattern.strips)
            widths += strip.width;
        const double beside = inMetres(pattern.rest) / inMetres(widths) * inMetres(spans.along);
        for (const Strip& strip : pattern.strips) {
            double blanks = 0.0;
            for (const Crosscut& crosscut : strip.crosscuts) {
                const Blank& blank = problem.blanks()[crosscut.blank];
                blanks +=
                    inMetres(blank.girth) * inMetres(blank.length) * static_cast<double>(crosscut.count);
            }
            const Length girth = problem.blanks()[strip.crosscuts.front().blank].girth;
            byGirth[girth] += copies * (inMetres(strip.width) * (inMetres(spans.along) + beside) - blanks);
        }
    }
    std::vector<GirthLoss> losses;
    for (const auto& [girth, area] : byGirth)
        losses.push_back({girth, area});
    std::ranges::stable_sort(losses, [](const GirthLoss& left, const GirthLoss& right) {
        return left.squareMetres > right.squareMetres;
    });
    return losses;
}

std::int64_t freePieces(const Problem& problem, const Plan& plan, const Blank& blank)
{
    const ShopRules& rules = problem.rules();
    std::int64_t count = 0;
    for (const Pattern& pattern : plan.patterns) {
        Length across = blank.girth, along = blank.length;
        if (pattern.order == CutOrder::LengthsFirst)
            std::swap(across, along);
        std::int64_t each = 0;
        for (const Strip& strip : pattern.strips) {
            const bool suits =
                rules.patterns == PatternClass::Exact ? strip.width == across : strip.width >= across;
            if (suits)
                each += (strip.rest + rules.kerf) / (along + rules.kerf);
        }
        const std::int64_t room =
            rules.mostStrips.value_or(1'000'000) - static_cast<std::int64_t>(pattern.strips.size());
        const std::int64_t strips = std::min(
            room, (pattern.rest + rules.kerf) / (std::max(across, rules.leastStripWidth) + rules.kerf));
        if (rules.patterns == PatternClass::NonExact || across >= rules.leastStripWidth)
            each += strips * ((spansOf(problem, pattern).along + rules.kerf) / (along + rules.kerf));
        count += each * pattern.count;
    }
    return count;
}

Phrase proofOf(const Plan& plan)
{
    if (!plan.notCut.empty())
        return {"The stock does not suffice for all blanks", {}};
    switch (plan.proof) {
    case Proof::ProvenLeast:
        return {"No plan of these patterns takes less", {}};
    case Proof::ProvenWithinOne:
        return {"No plan of these patterns takes less than one fewer", {}};
    case Proof::Gap:
        break;
    }
    if (2 * plan.bound < plan.value)
        return {"How much less another plan could take is not known", {}};
    return {"No plan of these patterns can save more than {percent} %",
            {{"percent", rounded(100.0 * plan.saving(), 10.0)}}};
}

} // namespace

Explanation explain(const Problem& problem, const Plan& plan)
{
    Explanation explanation;
    explanation.losses = lossesOf(problem, plan);
    for (std::size_t index = 0; index < problem.blanks().size(); ++index) {
        const std::int64_t count = freePieces(problem, plan, problem.blanks()[index]);
        if (count > 0)
            explanation.free.push_back({index, count});
    }
    std::ranges::stable_sort(explanation.free, [](const FreePieces& left, const FreePieces& right) {
        return left.count > right.count;
    });

    auto& sentences = explanation.sentences;
    sentences.push_back(proofOf(plan));
    const Waste& waste = plan.waste;
    if (waste.stock > 0.0) {
        const auto share = [&waste](double area) { return rounded(100.0 * area / waste.stock, 10.0); };
        sentences.push_back(
            {"Of the metal taken {blanks} % is blanks, {trim} % edge trim, {kerf} % kerf, {girth} % trimmed to "
             "girth, {remnants} % remnants kept, {scrap} % scrap",
             {{"blanks", share(waste.blanks)},
              {"trim", share(waste.edgeTrim)},
              {"kerf", share(waste.kerf)},
              {"girth", share(waste.girthTrim)},
              {"remnants", share(waste.remnants)},
              {"scrap", share(waste.scrap)}}});
    }
    constexpr std::size_t most = 3;
    for (std::size_t index = 0; index < std::min(most, explanation.losses.size()); ++index)
        sentences.push_back({"Beside and behind girth {girth} lie {area} m² that are no blanks",
                             {{"girth", explanation.losses[index].girth},
                              {"area", rounded(explanation.losses[index].squareMetres, 100.0)}}});
    for (std::size_t index = 0; index < std::min(most, explanation.free.size()); ++index) {
        const Blank& blank = problem.blanks()[explanation.free[index].blank];
        sentences.push_back({"{count} more of {key}, {girth} by {length}, would cost nothing",
                             {{"count", explanation.free[index].count},
                              {"key", blank.key},
                              {"girth", blank.girth},
                              {"length", blank.length}}});
    }
    return explanation;
}

} // namespace lapwright::cutting
