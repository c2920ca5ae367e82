#include "acts/cut_words.h"

#include "acts/words.h"

#include <QString>

#include <map>

namespace lapwright::acts {

namespace {

std::string percent(double share)
{
    return QString::number(100.0 * share, 'f', 1).toStdString() + " %";
}

std::string proofInWords(const cutting::Plan& plan)
{
    switch (plan.proof) {
    case cutting::Proof::ProvenLeast:
        return "proven least";
    case cutting::Proof::ProvenWithinOne:
        return "proven within one of the least";
    case cutting::Proof::Gap:
        break;
    }
    if (2 * plan.bound < plan.value)
        return "without a proof of the least";
    return "at most " + percent(plan.saving()) + " could be saved";
}

std::string stockInWords(const documents::CutProblem& problem, const cutting::Plan& plan, const Style& style)
{
    std::map<std::size_t, std::int64_t> count;
    std::map<std::size_t, Length> length;
    for (const cutting::Pattern& pattern : plan.patterns) {
        count[pattern.stock] += pattern.count;
        length[pattern.stock] += pattern.length * pattern.count;
    }
    std::string line;
    for (const auto& [stock, pieces] : count) {
        const cutting::Stock& kind = problem.stocks[stock];
        line += line.empty() ? "" : ", ";
        if (kind.kind == cutting::StockKind::Coil)
            line += write(length[stock], style) + " of coil " + kind.key;
        else if (kind.kind == cutting::StockKind::Remnant)
            line += "remnant " + kind.key;
        else
            line += std::to_string(pieces) + " of sheet " + kind.key;
    }
    return line;
}

std::string stripInWords(const documents::CutPlan& plan, cutting::CutOrder order, const cutting::Strip& strip,
                         const std::vector<std::string>& names, const Style& style)
{
    std::string line = "    strip " + write(strip.width, style) + ":";
    for (const cutting::Crosscut& crosscut : strip.crosscuts) {
        const cutting::Lying lying =
            cutting::lyingIn(order, plan.problem.blanks[crosscut.blank], crosscut.turned);
        line += " " + std::to_string(crosscut.count) + " x " + names[crosscut.blank] + " " +
                write(lying.along, style) +
                (lying.across < strip.width ? ", then cut to " + write(lying.across, style) : "") + ";";
    }
    return strip.rest > Length() ? line + " left " + write(strip.rest, style) : line;
}

} // namespace

std::vector<std::string> keysOf(const documents::CutProblem& problem)
{
    std::vector<std::string> keys;
    for (const cutting::Blank& blank : problem.blanks)
        keys.push_back(blank.key);
    return keys;
}

std::string progressInWords(const cutting::Progress& progress)
{
    std::string words(progress.phase);
    if (progress.value > 0 && 2 * progress.bound >= progress.value) {
        const auto value = static_cast<double>(progress.value), bound = static_cast<double>(progress.bound);
        words += (words.empty() ? "" : ", ") + std::string("at most ") + percent((value - bound) / value) +
                 " could be saved";
    }
    return words;
}

std::string summaryInWords(const documents::CutPlan& plan, const Style& style)
{
    const cutting::Waste& waste = plan.plan.waste;
    const double wasted = waste.stock > 0.0 ? 1.0 - (waste.blanks + waste.remnants) / waste.stock : 0.0;
    return stockInWords(plan.problem, plan.plan, style) + ", " + proofInWords(plan.plan) + ", " +
           percent(wasted) + " waste, " + counted(plan.plan.setups, "slitter setup");
}

std::vector<std::string> patternsInWords(const documents::CutPlan& plan,
                                         const std::vector<std::string>& names, const Style& style)
{
    std::vector<std::string> lines;
    for (const cutting::Pattern& pattern : plan.plan.patterns) {
        const cutting::Stock& stock = plan.problem.stocks[pattern.stock];
        lines.push_back(std::to_string(pattern.count) + " x " + stock.key + ", " + write(stock.width, style) +
                        " by " + write(pattern.length, style));
        for (const cutting::Strip& strip : pattern.strips)
            lines.push_back(stripInWords(plan, pattern.order, strip, names, style));
    }
    for (const cutting::NewRemnant& remnant : plan.plan.remnants)
        lines.push_back("keep: remnant " + cutting::keysInWords(remnant) + ", " +
                        write(remnant.width, style) + " by " + write(remnant.length, style));
    return lines;
}

} // namespace lapwright::acts
