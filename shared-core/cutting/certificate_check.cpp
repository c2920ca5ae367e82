#include "cutting/certificate_check.h"

#include "cutting/every_plan_check.h"
#include "cutting/plan_value.h"
#include "cutting/strip_values.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

namespace lapwright::cutting {

namespace {

/// Values above this could overflow sums; a certificate that has them proves nothing.
constexpr std::int64_t mostValue = 1'000'000'000'000;

struct Span {
    std::int64_t width, along;
};

bool isCrosswise(const Problem& problem, std::size_t stock)
{
    return problem.rules().order == CutOrder::LengthsFirst && problem.stocks()[stock].kind != StockKind::Coil;
}

Span spanOf(const Problem& problem, std::size_t stock)
{
    const std::int64_t kerf = problem.rules().kerf.inNanometres();
    Span span{problem.usableWidth(stock).inNanometres() + kerf,
              problem.longestPart(stock).inNanometres() + kerf};
    if (isCrosswise(problem, stock))
        std::swap(span.width, span.along);
    return span;
}

/// Both ways each blank may lie, kerf added, equal ones merged, by ascending width.
std::vector<Item> itemsOf(const Problem& problem, const std::vector<std::int64_t>& values, bool crosswise)
{
    const ShopRules& rules = problem.rules();
    std::map<std::tuple<std::int64_t, std::int64_t, std::int64_t>, std::int64_t> merged;
    for (std::size_t index = 0; index < problem.blanks().size(); ++index) {
        const Blank& blank = problem.blanks()[index];
        for (const bool turned : {false, true}) {
            if (turned && (!blank.mayTurn || blank.girth == blank.length))
                continue;
            Length width = blank.girth, along = blank.length;
            if (turned != crosswise)
                std::swap(width, along);
            width = std::max(width, rules.leastStripWidth);
            if (values[index] > 0)
                merged[{(width + rules.kerf).inNanometres(), (along + rules.kerf).inNanometres(),
                        values[index]}] += blank.count;
        }
    }
    std::vector<Item> items;
    for (const auto& [key, count] : merged)
        items.push_back({std::get<0>(key), std::get<1>(key), std::get<2>(key), count});
    return items;
}

struct Worth {
    std::int64_t perCost = 1;
    std::vector<std::int64_t> sheets; ///< greatest value of one pattern, for each stock
};

/// Whole sheets have whole costs whatever the scale of the plan: only levels of coils need it.
std::int64_t scaleOfBounds(const Problem& problem)
{
    return problem.hasCoil() ? scaleOf(problem) : 1;
}

std::int64_t costOfPart(const Problem& problem, std::size_t stock, std::int64_t partAndKerf)
{
    if (countedIn(problem) == Measure::Sheets)
        return 1;
    if (problem.stocks()[stock].kind != StockKind::Coil)
        return problem.cost(stock) * scaleOfBounds(problem);
    if (countedIn(problem) == Measure::CoilLength)
        return partAndKerf;
    // Rounded down: a smaller cost can only make the bound smaller. The value itself rounds up.
    return static_cast<std::int64_t>(std::floor(
        static_cast<long double>(problem.cost(stock)) * static_cast<long double>(scaleOfBounds(problem)) *
        static_cast<long double>(partAndKerf) / 1e9L * (1.0L - 1e-15L)));
}

/// What levels shorter than this, kerf included, are worth at most in themselves.
std::int64_t worthOfLevel(const Problem& problem, const Certificate& certificate, std::int64_t partAndKerf)
{
    std::int64_t sum = 0;
    for (const Certificate::LevelCount& count : certificate.levelCounts)
        sum += (count.from + problem.rules().kerf).inNanometres() < partAndKerf ? count.value : 0;
    return sum;
}

/// The dearest level of a coil for its cost. Lengths are counted in the units of the strips: a level is as
/// long as it says or less than a unit longer.
void addLevels(const Problem& problem, const Certificate& certificate, const StripValues& strips,
               std::size_t stock, std::int64_t shortest, Worth& worth)
{
    const Span span = spanOf(problem, stock);
    const std::int64_t unit = strips.unitAlong();
    for (const Certificate::LevelCount& count : certificate.levelCounts)
        shortest = std::min(shortest, (count.from + problem.rules().kerf).inNanometres());
    std::int64_t before = 0, ownBefore = 0;
    for (std::int64_t along = shortest / unit * unit; along <= span.along; along += unit) {
        const std::int64_t own = worthOfLevel(problem, certificate, along + unit);
        if (!strips.moves(along) && own == ownBefore)
            continue;
        ownBefore = own;
        const std::int64_t cost = costOfPart(problem, stock, along);
        if (cost > 0 && ceilOf(strips.mostOfSheet(span.width, along) + own, cost) <= worth.perCost)
            continue;
        const std::int64_t value = strips.sheet(span.width, along) + own;
        if (value > before)
            worth.perCost = cost > 0 ? std::max(worth.perCost, ceilOf(value, cost)) : mostValue;
        before = value;
    }
}

void addWorth(const Problem& problem, const Certificate& certificate, bool crosswise, Worth& worth)
{
    const std::vector<Item> items = itemsOf(problem, certificate.blankValues, crosswise);
    std::int64_t widest = 0, longest = 0;
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        if (isCrosswise(problem, stock) == crosswise) {
            widest = std::max(widest, spanOf(problem, stock).width);
            longest = std::max(longest, spanOf(problem, stock).along);
        }
    }
    if (longest == 0)
        return;
    const StripValues strips(items, problem, widest, longest);
    std::int64_t shortest = longest;
    for (const Item& item : items)
        shortest = std::min(shortest, item.along);
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        if (isCrosswise(problem, stock) != crosswise)
            continue;
        const Span span = spanOf(problem, stock);
        const Stock& entry = problem.stocks()[stock];
        if (entry.kind == StockKind::Coil) {
            addLevels(problem, certificate, strips, stock, shortest, worth);
            continue;
        }
        worth.sheets[stock] = strips.sheet(span.width, span.along);
        if (entry.kind == StockKind::Sheet && !entry.count)
            worth.perCost =
                std::max(worth.perCost, ceilOf(worth.sheets[stock], costOfPart(problem, stock, 0)));
    }
}

/// Values of blanks are in range, and there is one for each.
bool areValues(const Problem& problem, const std::vector<std::int64_t>& values)
{
    return values.size() == problem.blanks().size() &&
           std::ranges::all_of(values, [](std::int64_t value) { return value >= 0 && value <= mostValue; });
}

/// So many levels of the only coil are at least as long, because the blanks valued lie in no shorter one,
/// whichever way. Missing where it counts others.
std::optional<std::int64_t> leastLevels(const Problem& problem, const Certificate::LevelCount& count)
{
    if (!areValues(problem, count.blankValues) || count.value < 0 || count.value > mostValue ||
        count.from <= Length())
        return std::nullopt;
    long double total = 0.0L;
    for (std::size_t index = 0; index < problem.blanks().size(); ++index) {
        const Blank& blank = problem.blanks()[index];
        const Length least = blank.mayTurn ? std::min(blank.girth, blank.length) : blank.length;
        if (count.blankValues[index] > 0 && least < count.from)
            return std::nullopt;
        total += static_cast<long double>(count.blankValues[index]) * static_cast<long double>(blank.count);
    }
    const Span span = spanOf(problem, 0);
    const StripValues strips(itemsOf(problem, count.blankValues, false), problem, span.width, span.along);
    const std::int64_t most = strips.sheet(span.width, span.along);
    if (most <= 0 || total > 9e18L)
        return std::nullopt;
    return ceilOf(static_cast<std::int64_t>(total), most);
}

/// What all levels are worth in themselves. Missing where that is not shown, or for anything but all blanks
/// of one coil.
std::optional<long double> worthOfLevels(const Problem& problem, const Certificate& certificate, int lastDue)
{
    constexpr std::size_t most = 64;
    const auto& counts = certificate.levelCounts;
    const bool oneCoil = problem.stocks().size() == 1 && problem.stocks().front().kind == StockKind::Coil;
    const bool all = std::ranges::all_of(problem.blanks(),
                                         [lastDue](const Blank& blank) { return blank.dueClass <= lastDue; });
    if (!counts.empty() && (!oneCoil || !all || counts.size() > most))
        return std::nullopt;
    long double sum = 0.0L;
    for (const Certificate::LevelCount& count : counts) {
        const std::optional<std::int64_t> levels = leastLevels(problem, count);
        if (!levels)
            return std::nullopt;
        sum += static_cast<long double>(count.value) * static_cast<long double>(*levels);
    }
    return sum;
}

std::int64_t boundByPatterns(const Problem& problem, const Certificate& certificate, int lastDue)
{
    const std::optional<long double> levels = worthOfLevels(problem, certificate, lastDue);
    if (certificate.perCost < 1 || certificate.perCost > mostValue || !levels)
        return 0;
    Worth worth{certificate.perCost, std::vector<std::int64_t>(problem.stocks().size(), 0)};
    for (const bool crosswise : {false, true})
        addWorth(problem, certificate, crosswise, worth);
    long double total = *levels;
    for (std::size_t index = 0; index < problem.blanks().size(); ++index)
        total += static_cast<long double>(certificate.blankValues[index]) *
                 static_cast<long double>(problem.blanks()[index].count);
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        const Stock& entry = problem.stocks()[stock];
        if (entry.kind == StockKind::Coil || (entry.kind == StockKind::Sheet && !entry.count))
            continue;
        const long double above =
            static_cast<long double>(worth.sheets[stock]) -
            static_cast<long double>(worth.perCost) * static_cast<long double>(costOfPart(problem, stock, 0));
        total -= std::max(0.0L, above) * static_cast<long double>(entry.count.value_or(1));
    }
    // Every term is a whole number far below 2^63 in sensible certificates, where long double is exact.
    if (total <= 0.0L || total > 9e18L)
        return 0;
    return ceilOf(static_cast<std::int64_t>(total), worth.perCost);
}

std::int64_t boundByStrips(const Problem& problem, const Certificate& certificate)
{
    if (problem.stocks().size() != 1 || problem.stocks().front().kind == StockKind::Coil ||
        problem.rules().patterns != PatternClass::Exact ||
        std::ranges::any_of(problem.blanks(), [](const Blank& blank) { return blank.mayTurn; }))
        return 0;
    const Span span = spanOf(problem, 0);
    std::map<std::int64_t, std::vector<Item>> byWidth;
    for (const Item& item : itemsOf(problem, certificate.blankValues, isCrosswise(problem, 0)))
        byWidth[item.width].push_back(item);
    std::int64_t divisor = 0;
    for (const auto& [width, items] : byWidth)
        divisor = std::gcd(divisor, width);
    const std::int64_t unit = unitFor(divisor, span.width, mostUnits);
    std::vector<std::int64_t> sheet(static_cast<std::size_t>(span.width / unit) + 1, 0);
    std::int64_t total = 0;
    for (const Certificate::Girth& girth : certificate.girths) {
        const std::int64_t width = (girth.width + problem.rules().kerf).inNanometres();
        const auto found = byWidth.find(width);
        if (found == byWidth.end() || girth.value < 0 || girth.value > mostValue || girth.mostStripValue < 1)
            return 0;
        std::int64_t divisorAlong = 0, sum = 0;
        for (const Item& item : found->second) {
            divisorAlong = std::gcd(divisorAlong, item.along);
            sum += item.value * item.count;
        }
        const std::int64_t unitAlong = unitFor(divisorAlong, span.along, mostUnits);
        std::vector<std::int64_t> strip(static_cast<std::size_t>(span.along / unitAlong) + 1, 0);
        for (const Item& item : found->second)
            addItem(strip, item.along / unitAlong, item.value, item.count);
        const std::int64_t strips = ceilOf(sum, std::max(strip.back(), girth.mostStripValue));
        byWidth.erase(found);
        total += strips * girth.value;
        addItem(sheet, width / unit, girth.value, strips);
    }
    return ceilOf(total, std::max<std::int64_t>({1, sheet.back(), certificate.perCost})) *
           costOfPart(problem, 0, 0);
}

/// How metal is counted where only areas matter: what the edge trim leaves, with the kerf each blank takes;
/// or whole sheets and bare blanks.
enum class Metal { Usable, Whole };

/// What the blanks cover, bought where a square metre is cheapest as far as that stock reaches.
long double costOfArea(const Problem& problem, Metal metal, int lastDue)
{
    const Length kerf = metal == Metal::Usable ? problem.rules().kerf : Length();
    long double area = 0.0L;
    for (const Blank& blank : problem.blanks())
        area += blank.dueClass > lastDue
                    ? 0.0L
                    : static_cast<long double>((blank.girth + kerf).inNanometres()) *
                          static_cast<long double>((blank.length + kerf).inNanometres()) *
                          static_cast<long double>(blank.count);
    struct Offer {
        long double price, area;
    };
    std::vector<Offer> offers;
    for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
        const Stock& entry = problem.stocks()[stock];
        const bool coil = entry.kind == StockKind::Coil;
        Span span = spanOf(problem, stock);
        if (metal == Metal::Whole)
            span = {entry.width.inNanometres(), entry.length.inNanometres()};
        const long double size = static_cast<long double>(span.width) *
                                 static_cast<long double>(coil ? 1'000'000'000 : span.along);
        const bool plenty = coil || (entry.kind == StockKind::Sheet && !entry.count);
        const long double count = plenty ? 1e18L : static_cast<long double>(entry.count.value_or(1));
        if (size > 0.0L)
            offers.push_back(
                {static_cast<long double>(costOfPart(problem, stock, 1'000'000'000)) / size, size * count});
    }
    std::ranges::sort(offers, [](const Offer& left, const Offer& right) { return left.price < right.price; });
    long double cost = 0.0L;
    for (const Offer& offer : offers) {
        const long double bought = std::min(area, offer.area);
        cost += bought * offer.price;
        area -= bought;
    }
    // The share taken off is a thousand times what the rounding of these sums can come to.
    return std::max(0.0L, cost * (1.0L - 1e-13L) - 1e-9L);
}

std::int64_t boundByArea(const Problem& problem)
{
    return static_cast<std::int64_t>(
        std::ceil(costOfArea(problem, Metal::Usable, std::numeric_limits<int>::max())));
}

/// Every remnant is metal that no blank covers: of what a sheet costs at least the share that is not credited
/// stays, and of its blanks' metal all.
std::int64_t lessCredits(const Problem& problem, std::int64_t costs, int lastDue)
{
    const std::int64_t factor = scaleOf(problem) / scaleOfBounds(problem), bound = costs * factor;
    if (!problem.creditsRemnants())
        return bound;
    const long double share = static_cast<long double>(problem.rules().remnantCreditPercent) / 100.0L;
    const long double left =
        (1.0L - share) * static_cast<long double>(bound) +
        share * static_cast<long double>(factor) * costOfArea(problem, Metal::Whole, lastDue);
    return static_cast<std::int64_t>(std::ceil(left * (1.0L - 1e-13L) - 1e-9L));
}

} // namespace

std::int64_t provenBound(const Problem& problem, const Certificate& certificate, int lastDue)
{
    const bool wellFormed = certificate.method == Certificate::Method::Area ||
                            certificate.method == Certificate::Method::EveryPlan ||
                            areValues(problem, certificate.blankValues);
    if (!wellFormed || certificate.patterns != problem.rules().patterns)
        return 0;
    switch (certificate.method) {
    case Certificate::Method::Area:
        return lessCredits(problem, boundByArea(problem), lastDue);
    case Certificate::Method::Patterns:
        return lessCredits(problem, boundByPatterns(problem, certificate, lastDue), lastDue);
    case Certificate::Method::StripsThenSheets:
        return lessCredits(problem, boundByStrips(problem, certificate), lastDue);
    case Certificate::Method::EveryPlan:
        return noPlanIsCheaper(problem, certificate.least) ? certificate.least : 0;
    }
    return 0;
}

} // namespace lapwright::cutting
