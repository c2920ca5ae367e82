#include "acts/cut_part.h"

#include "acts/planned_pieces.h"
#include "measure/rounding.h"

#include <algorithm>

namespace lapwright::acts {

namespace {

/// Counts blanks by their index in the problem.
class Tally {
public:
    explicit Tally(const documents::CutProblem& problem) : problem_(problem), counts_(problem.blanks.size())
    {
    }

    void add(const cutting::Strip& strip, std::int64_t times)
    {
        for (const cutting::Crosscut& crosscut : strip.crosscuts)
            counts_[crosscut.blank] += crosscut.count * times;
    }

    [[nodiscard]] std::vector<storage::PlannedPiece> pieces() const
    {
        return plannedPieces(problem_, counts_);
    }

    [[nodiscard]] double area() const
    {
        double sum = 0.0;
        for (std::size_t blank = 0; blank < counts_.size(); ++blank)
            sum += inSquareMetres(problem_.blanks[blank].girth, problem_.blanks[blank].length) *
                   static_cast<double>(counts_[blank]);
        return sum;
    }

private:
    const documents::CutProblem& problem_;
    std::vector<std::int64_t> counts_;
};

/// The remnants that `sheets` of the pattern leave, but that of a strip that is spoilt.
void addRemnants(const cutting::Plan& plan, std::size_t pattern, std::int64_t sheets,
                 std::optional<std::size_t> spoiltStrip, cutting::Plan& part)
{
    for (cutting::NewRemnant remnant : plan.remnants) {
        if (remnant.pattern != pattern || (spoiltStrip && remnant.strip == spoiltStrip))
            continue;
        remnant.pattern = part.patterns.size();
        remnant.count = std::min(remnant.count, sheets);
        part.remnants.push_back(std::move(remnant));
    }
}

} // namespace

Portion portionOf(const documents::CutPlan& plan, const CutPart& part)
{
    Portion portion;
    Tally cut(plan.problem), spoilt(plan.problem);
    const auto add = [&](std::size_t index, std::int64_t sheets, std::optional<std::size_t> spoiltStrip) {
        cutting::Pattern pattern = plan.plan.patterns[index];
        pattern.count = sheets;
        for (const cutting::Strip& strip : pattern.strips)
            cut.add(strip, sheets);
        if (spoiltStrip)
            spoilt.add(pattern.strips[*spoiltStrip], 1);
        addRemnants(plan.plan, index, sheets, spoiltStrip, portion.plan);
        portion.stockArea +=
            cutting::metalTaken(plan.problem.stocks[pattern.stock], plan.problem.rules.kerf, pattern) *
            static_cast<double>(sheets);
        portion.plan.patterns.push_back(std::move(pattern));
    };
    for (const std::size_t index : part.patterns)
        add(index, plan.plan.patterns[index].count, std::nullopt);
    if (part.spoilt)
        add(part.spoilt->pattern, 1, part.spoilt->strip);
    portion.cut = cut.pieces();
    portion.spoilt = spoilt.pieces();
    portion.blankArea = cut.area() - spoilt.area();
    for (const cutting::NewRemnant& remnant : portion.plan.remnants)
        portion.remnantArea +=
            inSquareMetres(remnant.width, remnant.length) * static_cast<double>(remnant.count);
    return portion;
}

} // namespace lapwright::acts
