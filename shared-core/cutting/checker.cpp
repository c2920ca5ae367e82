#include "cutting/checker.h"

#include "cutting/certificate_check.h"
#include "cutting/plan_value.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace lapwright::cutting {

namespace {

struct Rectangle {
    Length across, along, width, length;
};

/// How many whole times `part` (> 0) goes into `whole`; none where that is less than nothing.
std::int64_t timesIn(Length whole, Length part)
{
    return whole < Length() ? 0 : whole / part;
}

class Checker {
public:
    Checker(const Problem& problem, const Plan& plan) : problem_(problem), plan_(plan) {}

    Verdict run()
    {
        for (std::size_t index = 0; index < plan_.patterns.size(); ++index)
            pattern(index);
        if (malformed_)
            return std::move(verdict_); // what it says cannot even be added up
        coverage();
        stock();
        remnants();
        waste();
        value();
        dueStages();
        return std::move(verdict_);
    }

private:
    void fault(bool& flag, Phrase phrase)
    {
        // One sentence for each rule is enough to find the place; a broken plan could name thousands.
        if (flag)
            verdict_.faults.push_back(std::move(phrase));
        flag = false;
    }

    /// Whether these counts, and with them all counted so far, are of a plan for a problem there can be. Sums
    /// of their lengths then stay far below what a Length holds.
    bool fewEnough(std::int64_t count, std::int64_t times)
    {
        if (count < 1 || count > ProblemBuilder::mostPieces)
            return false;
        counted_ += count * times;
        return counted_ <= 2 * ProblemBuilder::mostPieces; // patterns, and pieces of patterns
    }

    static std::int64_t number(std::size_t index) { return static_cast<std::int64_t>(index) + 1; }

    void pattern(std::size_t index)
    {
        const Pattern& entry = plan_.patterns[index];
        Feasibility& flags = verdict_.feasibility;
        if (entry.stock >= problem_.stocks().size() || entry.strips.empty() || !fewEnough(entry.count, 1)) {
            malformed_ = true;
            fault(flags.stripsFit,
                  {"Pattern {pattern} names no stock, no count or no strip", {{"pattern", number(index)}}});
            return;
        }
        const Stock& from = problem_.stocks()[entry.stock];
        const bool coil = from.kind == StockKind::Coil;
        const bool crosswise = entry.order == CutOrder::LengthsFirst;
        if (crosswise != (problem_.rules().order == CutOrder::LengthsFirst && !coil))
            fault(flags.stripsFit,
                  {"Pattern {pattern} is cut in the other order", {{"pattern", number(index)}}});
        if (coil ? entry.length > problem_.longestPart(entry.stock) || entry.length <= Length()
                 : entry.length != from.length)
            fault(flags.crosscutLimitKept, {"Pattern {pattern} takes {length} of the stock",
                                            {{"pattern", number(index)}, {"length", entry.length}}});

        malformed_ = malformed_ || entry.length <= Length();
        const EdgeTrim trim = from.kind == StockKind::Remnant ? EdgeTrim() : problem_.rules().edgeTrim;
        const Rectangle usable{trim.left, coil ? Length() : trim.lead, problem_.usableWidth(entry.stock),
                               coil ? entry.length : problem_.usableLength(entry.stock)};
        if (problem_.rules().mostStrips &&
            std::cmp_greater(entry.strips.size(), *problem_.rules().mostStrips))
            fault(flags.stripCountKept,
                  {"Pattern {pattern} has {count} strips in one setup",
                   {{"pattern", number(index)}, {"count", static_cast<std::int64_t>(entry.strips.size())}}});
        strips(index, usable);
    }

    /// Guillotine by construction: each strip starts a kerf or more after the one before and ends inside the
    /// usable rectangle; what is left is what is said to be left.
    void strips(std::size_t index, const Rectangle& usable)
    {
        const Pattern& entry = plan_.patterns[index];
        Feasibility& flags = verdict_.feasibility;
        const Length kerf = problem_.rules().kerf;
        const bool crosswise = entry.order == CutOrder::LengthsFirst;
        const Length begin = crosswise ? usable.along : usable.across;
        const Length end = begin + (crosswise ? usable.length : usable.width);
        Length next = begin;
        double kerfs = 0.0;
        for (std::size_t at = 0; at < entry.strips.size(); ++at) {
            const Strip& strip = entry.strips[at];
            if (strip.position != next || strip.position + strip.width > end || strip.crosscuts.empty())
                fault(flags.stripsFit,
                      {"Strip {strip} of pattern {pattern} at {position} does not fit",
                       {{"strip", number(at)}, {"pattern", number(index)}, {"position", strip.position}}});
            if (strip.width < problem_.rules().leastStripWidth)
                fault(flags.stripWidthKept,
                      {"Strip {strip} of pattern {pattern} is only {width} wide",
                       {{"strip", number(at)}, {"pattern", number(index)}, {"width", strip.width}}});
            const Length slit = std::clamp(end - strip.position - strip.width, Length(), kerf);
            next = strip.position + strip.width + kerf;
            const Length span = crosswise ? usable.width : usable.length;
            kerfs += inMetres(slit) * inMetres(span);
            kerfs += crosscuts(index, at, span);
        }
        if (entry.rest != std::max(Length(), end - next))
            fault(flags.stripsFit, {"Pattern {pattern} leaves {rest} beside its strips, not what it says",
                                    {{"pattern", number(index)}, {"rest", end - next}}});
        addStock(entry, usable, kerfs);
    }

    /// Returns the area of the crosscuts' kerfs.
    double crosscuts(std::size_t index, std::size_t at, Length span)
    {
        const Pattern& entry = plan_.patterns[index];
        const Strip& strip = entry.strips[at];
        Feasibility& flags = verdict_.feasibility;
        const Length kerf = problem_.rules().kerf;
        Length used, metal, widest;
        for (const Crosscut& crosscut : strip.crosscuts) {
            if (crosscut.blank >= problem_.blanks().size() || !fewEnough(crosscut.count, entry.count)) {
                malformed_ = true;
                fault(flags.crosscutsFit, {"Strip {strip} of pattern {pattern} names no blank",
                                           {{"strip", number(at)}, {"pattern", number(index)}}});
                return 0.0;
            }
            const Blank& blank = problem_.blanks()[crosscut.blank];
            if (crosscut.turned && !blank.mayTurn)
                fault(flags.turnsAllowed, {"Blank {key} is turned", {{"key", blank.key}}});
            const bool girthAcross = (entry.order == CutOrder::StripsFirst) != crosscut.turned;
            const Length across = girthAcross ? blank.girth : blank.length;
            const Length along = girthAcross ? blank.length : blank.girth;
            if (across > strip.width)
                fault(flags.girthsFit,
                      {"Blank {key} is wider than strip {strip} of pattern {pattern}",
                       {{"key", blank.key}, {"strip", number(at)}, {"pattern", number(index)}}});
            if (across != strip.width && problem_.rules().patterns == PatternClass::Exact)
                fault(flags.girthsFit,
                      {"Blank {key} is narrower than strip {strip} of pattern {pattern}",
                       {{"key", blank.key}, {"strip", number(at)}, {"pattern", number(index)}}});
            widest = std::max(widest, across);
            if (crosscut.count > timesIn(span + kerf - used, along + kerf)) {
                fault(flags.crosscutsFit,
                      {"The blanks of strip {strip} of pattern {pattern} take more than its {span}",
                       {{"strip", number(at)}, {"pattern", number(index)}, {"span", span}}});
                continue;
            }
            metal += along * crosscut.count;
            used += (along + kerf) * crosscut.count;
            const double pieces = static_cast<double>(crosscut.count) * static_cast<double>(entry.count);
            verdict_.waste.blanks += pieces * inMetres(across) * inMetres(along);
            verdict_.waste.girthTrim += pieces * inMetres(strip.width - across) * inMetres(along);
        }
        if (strip.rest != std::max(Length(), span - used))
            fault(flags.crosscutsFit,
                  {"Strip {strip} of pattern {pattern} leaves {rest}, not what it says",
                   {{"strip", number(at)}, {"pattern", number(index)}, {"rest", span - used}}});
        if (strip.width != std::max(widest, problem_.rules().leastStripWidth))
            fault(flags.stripsFit, {"Strip {strip} of pattern {pattern} is wider than its widest blank",
                                    {{"strip", number(at)}, {"pattern", number(index)}}});
        return inMetres(strip.width) * inMetres(std::min(used, span) - metal);
    }

    void addStock(const Pattern& entry, const Rectangle& usable, double kerfs)
    {
        const Stock& from = problem_.stocks()[entry.stock];
        const double copies = static_cast<double>(entry.count);
        const Length levelKerf = from.kind == StockKind::Coil ? problem_.rules().kerf : Length();
        const double levelKerfs = inMetres(usable.width) * inMetres(levelKerf);
        const double whole = inMetres(from.width) * inMetres(entry.length + levelKerf);
        Waste& sums = verdict_.waste;
        sums.stock += copies * whole;
        sums.kerf += copies * (kerfs + levelKerfs);
        sums.edgeTrim += copies * (whole - levelKerfs - inMetres(usable.width) * inMetres(usable.length));
    }

    void coverage()
    {
        std::vector<std::int64_t> left;
        for (const Blank& blank : problem_.blanks())
            left.push_back(blank.count);
        for (const Pattern& entry : plan_.patterns)
            for (const Strip& strip : entry.strips)
                for (const Crosscut& crosscut : strip.crosscuts)
                    left[crosscut.blank] -= crosscut.count * entry.count;
        Feasibility& flags = verdict_.feasibility;
        std::vector<Shortfall> notCut;
        for (std::size_t blank = 0; blank < left.size(); ++blank) {
            if (left[blank] < 0)
                fault(flags.nothingCutTwice,
                      {"Blank {key} is cut {count} times too often",
                       {{"key", problem_.blanks()[blank].key}, {"count", -left[blank]}}});
            if (left[blank] > 0) {
                fault(flags.allBlanksCut, {"{count} of blank {key} find no stock",
                                           {{"count", left[blank]}, {"key", problem_.blanks()[blank].key}}});
                notCut.push_back({blank, left[blank]});
            }
        }
        if (notCut != plan_.notCut)
            fault(flags.nothingCutTwice, {"The list of blanks not cut is not what the patterns leave", {}});
    }

    void stock()
    {
        const Length kerf = problem_.rules().kerf;
        std::vector<std::int64_t> sheets(problem_.stocks().size(), 0);
        std::vector<Length> left;
        std::vector<bool> runsOut(problem_.stocks().size(), false);
        for (std::size_t index = 0; index < sheets.size(); ++index)
            left.push_back(problem_.usableLength(index) + kerf);
        for (const Pattern& entry : plan_.patterns) {
            sheets[entry.stock] += entry.count;
            if (problem_.stocks()[entry.stock].kind != StockKind::Coil)
                continue;
            if (entry.count > timesIn(left[entry.stock], entry.length + kerf))
                runsOut[entry.stock] = true;
            else
                left[entry.stock] -= (entry.length + kerf) * entry.count;
        }
        for (std::size_t index = 0; index < sheets.size(); ++index) {
            const Stock& from = problem_.stocks()[index];
            bool enough = true;
            if (from.kind == StockKind::Coil)
                enough = !from.count || !runsOut[index];
            else if (from.kind == StockKind::Remnant)
                enough = sheets[index] <= 1;
            else
                enough = !from.count || sheets[index] <= *from.count;
            if (!enough)
                fault(verdict_.feasibility.stockSuffices,
                      {"There is not as much of stock {key}", {{"key", from.key}}});
        }
    }

    /// Every offcut of the rules' size is listed once, nothing else is, and none reaches outside its stock.
    void remnants()
    {
        const ShopRules& rules = problem_.rules();
        const bool any = rules.leastRemnantWidth > Length() || rules.leastRemnantLength > Length();
        std::set<std::pair<std::size_t, std::size_t>> expected;
        constexpr std::size_t beside = static_cast<std::size_t>(-1);
        for (std::size_t index = 0; index < plan_.patterns.size(); ++index) {
            const Pattern& entry = plan_.patterns[index];
            const auto worth = [&](Length width, Length length) {
                return any && width > Length() && length > Length() && width >= rules.leastRemnantWidth &&
                       length >= rules.leastRemnantLength;
            };
            if (entry.stock >= problem_.stocks().size())
                continue;
            const bool crosswise = entry.order == CutOrder::LengthsFirst;
            const bool coil = problem_.stocks()[entry.stock].kind == StockKind::Coil;
            const Length wide = problem_.usableWidth(entry.stock);
            const Length longPart = coil ? entry.length : problem_.usableLength(entry.stock);
            if (crosswise ? worth(wide, entry.rest) : worth(entry.rest, longPart))
                expected.emplace(index, beside);
            for (std::size_t at = 0; at < entry.strips.size(); ++at) {
                const Strip& strip = entry.strips[at];
                if (crosswise ? worth(strip.rest, strip.width) : worth(strip.width, strip.rest))
                    expected.emplace(index, at);
            }
        }
        bool right = true;
        std::set<std::string> labels;
        for (const Stock& stock : problem_.stocks())
            labels.insert(stock.key);
        for (const NewRemnant& remnant : plan_.remnants) {
            right = right && expected.erase({remnant.pattern, remnant.strip.value_or(beside)}) == 1 &&
                    labels.insert(remnant.label).second && remnantStands(remnant);
            verdict_.waste.remnants +=
                inMetres(remnant.width) * inMetres(remnant.length) * static_cast<double>(remnant.count);
        }
        if (!right || !expected.empty())
            fault(verdict_.feasibility.remnantsRight,
                  {"The list of remnants is not what the patterns leave", {}});
    }

    [[nodiscard]] bool remnantStands(const NewRemnant& remnant) const
    {
        const Pattern& entry = plan_.patterns[remnant.pattern];
        const Stock& from = problem_.stocks()[entry.stock];
        const bool coil = from.kind == StockKind::Coil;
        const EdgeTrim trim = from.kind == StockKind::Remnant ? EdgeTrim() : problem_.rules().edgeTrim;
        const Length right = trim.left + problem_.usableWidth(entry.stock);
        const Length tail = coil ? entry.length : trim.lead + problem_.usableLength(entry.stock);
        const bool crosswise = entry.order == CutOrder::LengthsFirst;
        Length width = problem_.usableWidth(entry.stock);
        Length length = coil ? entry.length : problem_.usableLength(entry.stock);
        if (remnant.strip) {
            const Strip& strip = entry.strips[*remnant.strip];
            (crosswise ? length : width) = strip.width;
            (crosswise ? width : length) = strip.rest;
            if ((crosswise ? remnant.along : remnant.across) != strip.position)
                return false;
        } else {
            (crosswise ? length : width) = entry.rest;
        }
        const bool atEnd = remnant.across + remnant.width == right || remnant.along + remnant.length == tail;
        return atEnd && remnant.width == width && remnant.length == length && remnant.count == entry.count;
    }

    void waste()
    {
        Waste& sums = verdict_.waste;
        sums.scrap = sums.stock - sums.blanks - sums.edgeTrim - sums.kerf - sums.girthTrim - sums.remnants;
        // Sums of at most some millions of products of doubles: their rounding stays far below this share.
        const double tolerance = 1e-9 * (1.0 + sums.stock);
        const Waste& said = plan_.waste;
        const double differences[] = {said.stock - sums.stock,         said.blanks - sums.blanks,
                                      said.edgeTrim - sums.edgeTrim,   said.kerf - sums.kerf,
                                      said.girthTrim - sums.girthTrim, said.remnants - sums.remnants,
                                      said.scrap - sums.scrap,         std::min(0.0, sums.scrap)};
        for (const double difference : differences)
            if (!(std::abs(difference) <= tolerance))
                fault(verdict_.feasibility.wasteAddsUp, {"The parts of the waste do not add up", {}});
    }

    void value()
    {
        Feasibility& flags = verdict_.feasibility;
        verdict_.value = valueOf(problem_, plan_.patterns);
        verdict_.bound = provenBound(problem_, plan_.certificate);
        if (verdict_.value != plan_.value || plan_.measure != countedIn(problem_) ||
            plan_.costScale != scaleOf(problem_))
            fault(flags.valueRight,
                  {"The plan is worth {value}, not what it says", {{"value", verdict_.value}}});
        const std::int64_t gap = plan_.value - plan_.bound;
        const bool proofFits = plan_.proof == Proof::Gap || !plan_.notCut.empty() || gap <= 0 ||
                               (plan_.proof == Proof::ProvenWithinOne && gap <= 1);
        if (plan_.bound > verdict_.bound || plan_.bound < 0 || !proofFits ||
            (plan_.notCut.empty() && plan_.bound > verdict_.value && flags.all()))
            fault(flags.boundCertified,
                  {"The certificate proves {bound}, not what the plan says", {{"bound", verdict_.bound}}});
    }

    /// What is due first costs what the plan says, and its bound counts no blank that is due later.
    void dueStages()
    {
        for (const DueStage& stage : plan_.dueStages) {
            bool right = stage.value == costDueBy(problem_, plan_.patterns, stage.dueClass) &&
                         stage.bound >= 0 && stage.bound <= stage.value;
            const std::vector<std::int64_t>& worths = stage.certificate.blankValues;
            for (std::size_t blank = 0; blank < std::min(worths.size(), problem_.blanks().size()); ++blank)
                right = right && (worths[blank] == 0 || problem_.blanks()[blank].dueClass <= stage.dueClass);
            if (stage.bound > 0)
                right = right && stage.certificate.method != Certificate::Method::Area &&
                        stage.certificate.method != Certificate::Method::EveryPlan &&
                        stage.bound <= provenBound(problem_, stage.certificate, stage.dueClass);
            if (!right)
                fault(verdict_.feasibility.dueStagesRight,
                      {"What is due by class {class} is not planned as the plan says",
                       {{"class", static_cast<std::int64_t>(stage.dueClass)}}});
        }
    }

    const Problem& problem_;
    const Plan& plan_;
    Verdict verdict_;
    bool malformed_ = false; ///< a count or a name that no plan has
    std::int64_t counted_ = 0;
};

} // namespace

Verdict check(const Problem& problem, const Plan& plan)
{
    return Checker(problem, plan).run();
}

} // namespace lapwright::cutting
