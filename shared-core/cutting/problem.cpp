#include "cutting/problem.h"

#include "measure/rounding.h"
#include "measure/writing.h"

#include <algorithm>
#include <cmath>

namespace lapwright::cutting {

namespace {

bool inRange(Length value)
{
    return value >= Length() && value <= ProblemBuilder::longestSide;
}

bool isSide(Length value)
{
    return value > Length() && value <= ProblemBuilder::longestSide;
}

std::optional<Phrase> faultOfRules(const ShopRules& rules)
{
    const std::pair<const char*, Length> measures[] = {
        {"kerf", rules.kerf},
        {"left edge trim", rules.edgeTrim.left},
        {"right edge trim", rules.edgeTrim.right},
        {"lead edge trim", rules.edgeTrim.lead},
        {"tail edge trim", rules.edgeTrim.tail},
        {"least strip width", rules.leastStripWidth},
        {"least remnant width", rules.leastRemnantWidth},
        {"least remnant length", rules.leastRemnantLength},
    };
    for (const auto& [name, value] : measures) {
        if (!inRange(value))
            return Phrase{
                "The {name} of {value} is not between 0 and {most}",
                {{"name", std::string(name)}, {"value", value}, {"most", ProblemBuilder::longestSide}}};
    }
    if (rules.mostStrips && *rules.mostStrips < 1)
        return Phrase{"At most {count} strips in one setup cannot be cut",
                      {{"count", static_cast<std::int64_t>(*rules.mostStrips)}}};
    for (const int percent : {rules.remnantCreditPercent, rules.remnantDiscountPercent}) {
        if (percent < 0 || percent > 100)
            return Phrase{"{percent} % is not between 0 and 100",
                          {{"percent", static_cast<std::int64_t>(percent)}}};
    }
    return std::nullopt;
}

std::optional<Phrase> faultOfStock(const Stock& stock)
{
    if (!isSide(stock.width) || !isSide(stock.length))
        return Phrase{"Stock {key} measures {width} by {length}; both must be more than 0 and at most {most}",
                      {{"key", stock.key},
                       {"width", stock.width},
                       {"length", stock.length},
                       {"most", ProblemBuilder::longestSide}}};
    const bool single = stock.kind != StockKind::Sheet;
    if (stock.count &&
        (*stock.count < 1 || *stock.count > ProblemBuilder::mostPieces || (single && *stock.count != 1)))
        return Phrase{"There cannot be {count} of stock {key}",
                      {{"count", *stock.count}, {"key", stock.key}}};
    if (stock.cost && (*stock.cost < 1 || *stock.cost > ProblemBuilder::highestCost))
        return Phrase{"The cost {cost} of stock {key} is not between 1 and {most}",
                      {{"cost", *stock.cost}, {"key", stock.key}, {"most", ProblemBuilder::highestCost}}};
    if (stock.longestCrosscut && (stock.kind != StockKind::Coil || !isSide(*stock.longestCrosscut)))
        return Phrase{"The longest crosscut {length} of stock {key} makes no sense",
                      {{"length", *stock.longestCrosscut}, {"key", stock.key}}};
    return std::nullopt;
}

bool fits(const Problem& problem, std::size_t stock, Length girth, Length length)
{
    const ShopRules& rules = problem.rules();
    const bool lengthsFirst =
        rules.order == CutOrder::LengthsFirst && problem.stocks()[stock].kind != StockKind::Coil;
    Length across = girth, along = length;
    Length& strip = lengthsFirst ? along : across;
    if (strip < rules.leastStripWidth) {
        if (rules.patterns == PatternClass::Exact)
            return false;
        strip = rules.leastStripWidth;
    }
    return across <= problem.usableWidth(stock) && along <= problem.longestPart(stock);
}

/// Whether `count` times the dearest part any stock could give to one blank stays far inside 64 bits.
bool sumsStayInRange(const Problem& problem, std::int64_t count)
{
    double dearest = 0.0;
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        const bool coil = problem.stocks()[stock].kind == StockKind::Coil;
        const double metres = coil ? inMetres(problem.longestPart(stock)) + 1.0 : 1.0;
        dearest = std::max(dearest, static_cast<double>(problem.cost(stock)) * metres);
        dearest = std::max(dearest, coil ? metres * 1e6 : 0.0);
    }
    return dearest * 1'000.0 * static_cast<double>(count) < 4e18;
}

std::optional<Phrase> faultOfBlank(const Blank& blank, const Problem& problem)
{
    if (!isSide(blank.girth) || !isSide(blank.length))
        return Phrase{"Blank {key} measures {girth} by {length}; both must be more than 0 and at most {most}",
                      {{"key", blank.key},
                       {"girth", blank.girth},
                       {"length", blank.length},
                       {"most", ProblemBuilder::longestSide}}};
    if (blank.count < 1 || blank.count > ProblemBuilder::mostPieces)
        return Phrase{"{count} of blank {key} is not between 1 and {most}",
                      {{"count", blank.count}, {"key", blank.key}, {"most", ProblemBuilder::mostPieces}}};
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        if (fits(problem, stock, blank.girth, blank.length) ||
            (blank.mayTurn && fits(problem, stock, blank.length, blank.girth)))
            return std::nullopt;
    }
    return Phrase{"Blank {key}, {girth} by {length}, fits no stock within the shop's rules",
                  {{"key", blank.key}, {"girth", blank.girth}, {"length", blank.length}}};
}

std::int64_t areaCost(Length width, Length length)
{
    const std::int64_t micrometresWide = width.inNanometres() / 1'000;
    const std::int64_t millimetresLong = (length.inNanometres() + 500'000) / 1'000'000;
    return std::max<std::int64_t>(1, micrometresWide * millimetresLong / 1'000);
}

} // namespace

std::int64_t Problem::cost(std::size_t stock) const
{
    const Stock& entry = stocks_[stock];
    if (entry.cost)
        return *entry.cost;
    if (entry.kind == StockKind::Coil)
        return areaCost(entry.width, Length::millimetres(1'000));
    const std::int64_t area = areaCost(entry.width, entry.length);
    if (entry.kind == StockKind::Sheet)
        return area;
    return std::max<std::int64_t>(1, area / 100 * (100 - rules_.remnantDiscountPercent));
}

bool Problem::hasCoil() const
{
    return std::ranges::any_of(stocks_, [](const Stock& stock) { return stock.kind == StockKind::Coil; });
}

bool Problem::creditsRemnants() const
{
    return rules_.remnantCreditPercent > 0 &&
           (rules_.leastRemnantWidth > Length() || rules_.leastRemnantLength > Length());
}

bool Problem::isRemnant(Length width, Length length) const
{
    return width > Length() && length > Length() && width >= rules_.leastRemnantWidth &&
           length >= rules_.leastRemnantLength &&
           (rules_.leastRemnantWidth > Length() || rules_.leastRemnantLength > Length());
}

std::int64_t Problem::credit(std::size_t stock, Length width, Length length) const
{
    if (!creditsRemnants() || !isRemnant(width, length))
        return 0;
    const Stock& entry = stocks_[stock];
    const Length whole = entry.kind == StockKind::Coil ? Length::millimetres(1'000) : entry.length;
    // Single multiplications and divisions of doubles: every machine rounds them alike.
    const double share =
        inMillimetres(width) / inMillimetres(entry.width) * (inMillimetres(length) / inMillimetres(whole));
    const double most = static_cast<double>(cost(stock) * rules_.remnantCreditPercent) * 10.0;
    return static_cast<std::int64_t>(std::floor(most * share));
}

Length Problem::usableWidth(std::size_t stock) const
{
    const Stock& entry = stocks_[stock];
    if (entry.kind == StockKind::Remnant)
        return entry.width;
    return std::max(Length(), entry.width - rules_.edgeTrim.left - rules_.edgeTrim.right);
}

Length Problem::usableLength(std::size_t stock) const
{
    const Stock& entry = stocks_[stock];
    if (entry.kind == StockKind::Remnant)
        return entry.length;
    return std::max(Length(), entry.length - rules_.edgeTrim.lead - rules_.edgeTrim.tail);
}

Length Problem::longestPart(std::size_t stock) const
{
    const Stock& entry = stocks_[stock];
    if (entry.kind != StockKind::Coil)
        return usableLength(stock);
    if (!entry.count && entry.longestCrosscut)
        return *entry.longestCrosscut;
    return entry.longestCrosscut ? std::min(usableLength(stock), *entry.longestCrosscut)
                                 : usableLength(stock);
}

ProblemBuilder& ProblemBuilder::rules(const ShopRules& rules)
{
    rules_ = rules;
    return *this;
}

ProblemBuilder& ProblemBuilder::blank(Blank blank)
{
    blanks_.push_back(std::move(blank));
    return *this;
}

ProblemBuilder& ProblemBuilder::stock(Stock stock)
{
    stocks_.push_back(std::move(stock));
    return *this;
}

Admission ProblemBuilder::admit() const
{
    Admission admission;
    Problem problem;
    problem.rules_ = rules_;
    if (auto fault = faultOfRules(rules_)) {
        admission.refusals.push_back({Refusal::Part::Rules, 0, "rules", std::move(*fault)});
        return admission;
    }
    for (std::size_t index = 0; index < stocks_.size(); ++index) {
        auto fault = faultOfStock(stocks_[index]);
        if (!fault && problem.stocks_.size() == mostStocks)
            fault =
                Phrase{"More than {most} kinds of stock", {{"most", static_cast<std::int64_t>(mostStocks)}}};
        if (fault)
            admission.refusals.push_back(
                {Refusal::Part::Stock, index, stocks_[index].key, std::move(*fault)});
        else
            problem.stocks_.push_back(stocks_[index]);
    }
    if (stocks_.empty())
        admission.refusals.push_back(
            {Refusal::Part::Stock, 0, "", Phrase{"There is no stock to cut from", {}}});
    std::int64_t pieces = 0;
    for (std::size_t index = 0; index < blanks_.size(); ++index) {
        auto fault = faultOfBlank(blanks_[index], problem);
        if (!fault && pieces + blanks_[index].count > mostPieces)
            fault =
                Phrase{"With {count} of blank {key} there are more than {most} pieces in one problem",
                       {{"count", blanks_[index].count}, {"key", blanks_[index].key}, {"most", mostPieces}}};
        if (!fault && !sumsStayInRange(problem, pieces + blanks_[index].count))
            fault = Phrase{"With {count} of blank {key} the cost of the plan could pass what can be counted",
                           {{"count", blanks_[index].count}, {"key", blanks_[index].key}}};
        if (fault) {
            admission.refusals.push_back(
                {Refusal::Part::Blank, index, blanks_[index].key, std::move(*fault)});
        } else {
            pieces += blanks_[index].count;
            problem.blanks_.push_back(blanks_[index]);
        }
    }
    if (!problem.blanks_.empty())
        admission.problem = std::move(problem);
    return admission;
}

Result<Problem> ProblemBuilder::build() const
{
    Admission admission = admit();
    std::vector<Error> errors;
    for (const Refusal& refusal : admission.refusals) {
        static constexpr const char* parts[] = {"blanks", "stocks", "rules"};
        errors.push_back(
            {std::string(parts[static_cast<int>(refusal.part)]) + "/" + std::to_string(refusal.index),
             say(refusal.reason, Style{LengthUnit::Millimetres}), ""});
    }
    if (errors.empty() && !admission.problem)
        errors.push_back({"blanks", "no blank", "at least one blank to cut"});
    if (!errors.empty())
        return errors;
    return std::move(*admission.problem);
}

} // namespace lapwright::cutting
