#include "cutting/instance.h"

#include "measure/rounding.h"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>
#include <tuple>

namespace lapwright::cutting {

namespace {

constexpr std::int64_t fineCostScale = 1'000;

bool lengthsFirst(const Problem& problem, std::size_t stock)
{
    return problem.rules().order == CutOrder::LengthsFirst && problem.stocks()[stock].kind != StockKind::Coil;
}

std::vector<Kind> kindsOf(const Problem& problem)
{
    const auto& blanks = problem.blanks();
    using Key = std::tuple<Length, Length, bool, int>;
    std::map<Key, Kind> byKey;
    for (std::size_t index = 0; index < blanks.size(); ++index) {
        const Blank& blank = blanks[index];
        Kind& kind =
            byKey[{blank.girth, blank.length, blank.mayTurn && blank.girth != blank.length, blank.dueClass}];
        kind.demand += blank.count;
        kind.dueClass = blank.dueClass;
        kind.blanks.push_back(index);
    }
    std::vector<Kind> kinds;
    for (auto& [key, kind] : byKey) {
        std::ranges::stable_sort(kind.blanks, [&](std::size_t left, std::size_t right) {
            return blanks[left].priority > blanks[right].priority;
        });
        kinds.push_back(std::move(kind));
    }
    return kinds;
}

struct LongPlacement {
    int kind;
    std::int64_t across, along;
    bool turned;
};

std::vector<LongPlacement> placementsOf(const Problem& problem, const std::vector<Kind>& kinds,
                                        CutOrder order, std::int64_t widest, std::int64_t longest)
{
    const std::int64_t kerf = problem.rules().kerf.inNanometres();
    const std::int64_t least = problem.rules().leastStripWidth.inNanometres();
    std::vector<LongPlacement> placements;
    for (std::size_t index = 0; index < kinds.size(); ++index) {
        const Blank& blank = problem.blanks()[kinds[index].blanks.front()];
        for (const bool turned : {false, true}) {
            if (turned && (!blank.mayTurn || blank.girth == blank.length))
                continue;
            std::int64_t across = blank.girth.inNanometres(), along = blank.length.inNanometres();
            if (turned != (order == CutOrder::LengthsFirst))
                std::swap(across, along);
            if (across < least && problem.rules().patterns == PatternClass::Exact)
                continue;
            across = std::max(across, least) + kerf;
            along += kerf;
            if (across <= widest && along <= longest)
                placements.push_back({static_cast<int>(index), across, along, turned});
        }
    }
    return placements;
}

/// Of the units that leave at most `most` to the span, the one that loses least of a bar by rounding blanks
/// up and the span down.
std::int64_t coarseUnit(const std::vector<std::int64_t>& sizes, std::int64_t span, std::int64_t most)
{
    constexpr std::size_t samples = 64;
    const std::size_t step = std::max<std::size_t>(1, sizes.size() / samples);
    const std::int64_t longest = *std::ranges::max_element(sizes);
    std::int64_t best = span / most + 1;
    double least = std::numeric_limits<double>::infinity();
    for (std::int64_t units = most; units > most / 2; --units) {
        const std::int64_t unit = (span + units - 1) / units;
        if ((longest + unit - 1) / unit > span / unit)
            continue;
        double lost = 0.0, sum = 0.0;
        for (std::size_t at = 0; at < sizes.size(); at += step) {
            const std::int64_t roundedUp = (sizes[at] + unit - 1) / unit * unit;
            lost += static_cast<double>(roundedUp - sizes[at]);
            sum += static_cast<double>(sizes[at]);
        }
        const double loss = static_cast<double>(span % unit) + static_cast<double>(span) * lost / sum;
        if (loss < least) {
            least = loss;
            best = unit;
        }
    }
    return best;
}

std::int64_t unitOf(const std::vector<std::int64_t>& sizes, std::int64_t span, std::int64_t most)
{
    std::int64_t divisor = 0;
    for (const std::int64_t size : sizes)
        divisor = std::gcd(divisor, size);
    if (span / divisor <= most)
        return divisor;
    constexpr std::int64_t worthSearching = 100'000;
    return most <= worthSearching ? coarseUnit(sizes, span, most) : span / most + 1;
}

/// Tables hold one cell for each blank and unit along, and for levels of a coil one for each unit along,
/// width and unit across: their sizes bound the units.
struct MostUnits {
    std::int64_t across = 20'000, along = 20'000;
};

MostUnits mostUnits(std::size_t placements, bool coil, Units units)
{
    constexpr std::int64_t countable = 1'000'000'000;
    if (units == Units::Finest)
        return {countable, countable};
    constexpr std::int64_t cells = 120'000'000, least = 2'000;
    MostUnits most;
    most.along = std::clamp(cells / static_cast<std::int64_t>(placements), least, most.along);
    if (coil)
        most = {4'096, 2'048};
    return most;
}

Frame frameOf(const Problem& problem, std::vector<LongPlacement> placements, CutOrder order,
              std::int64_t widest, std::int64_t longest, Units units)
{
    std::ranges::sort(placements, [](const LongPlacement& left, const LongPlacement& right) {
        return std::tie(left.across, left.along, left.kind) < std::tie(right.across, right.along, right.kind);
    });
    std::vector<std::int64_t> across, along;
    for (const LongPlacement& placement : placements) {
        across.push_back(placement.across);
        along.push_back(placement.along);
    }
    const bool coil = order == CutOrder::StripsFirst && problem.hasCoil();
    const MostUnits most = mostUnits(placements.size(), coil, units);
    const std::int64_t unitAcross = unitOf(across, widest, most.across);
    const std::int64_t unitAlong = unitOf(along, longest, most.along);
    Frame frame;
    frame.order = order;
    frame.unitAcross = Length::nanometres(unitAcross);
    frame.unitAlong = Length::nanometres(unitAlong);
    for (std::size_t index = 0; index < placements.size(); ++index) {
        const LongPlacement& from = placements[index];
        frame.placements.push_back({from.kind, static_cast<int>((from.across + unitAcross - 1) / unitAcross),
                                    static_cast<int>((from.along + unitAlong - 1) / unitAlong), from.turned});
        if (index == 0 || from.across != placements[index - 1].across) {
            frame.widths.push_back(frame.placements.back().across);
            frame.girths.push_back(Length::nanometres(from.across) - problem.rules().kerf);
            frame.firstOfWidth.push_back(static_cast<int>(index));
        }
        frame.widthOfPlacement.push_back(static_cast<int>(frame.widths.size()) - 1);
    }
    frame.firstOfWidth.push_back(static_cast<int>(placements.size()));
    return frame;
}

struct Span {
    std::int64_t across, along;
};

Span spanOf(const Problem& problem, std::size_t stock)
{
    const std::int64_t kerf = problem.rules().kerf.inNanometres();
    Span span{problem.usableWidth(stock).inNanometres() + kerf,
              problem.longestPart(stock).inNanometres() + kerf};
    if (lengthsFirst(problem, stock))
        std::swap(span.across, span.along);
    return span;
}

} // namespace

Measure measureOf(const Problem& problem)
{
    if (problem.stocks().size() != 1 || problem.creditsRemnants())
        return Measure::Cost;
    return problem.stocks().front().kind == StockKind::Coil ? Measure::CoilLength : Measure::Sheets;
}

std::int64_t costScaleOf(const Problem& problem)
{
    if (problem.creditsRemnants())
        return fineCostScale;
    if (measureOf(problem) != Measure::Cost)
        return 1;
    return problem.hasCoil() ? fineCostScale : 1;
}

std::int64_t costOfLevel(const Problem& problem, std::size_t stock, Length level, Measure measure)
{
    const std::int64_t taken = (level + problem.rules().kerf).inNanometres();
    if (measure != Measure::Cost)
        return taken;
    constexpr std::int64_t metre = 1'000'000'000;
    const std::int64_t perMetre = problem.cost(stock) * fineCostScale;
    const std::int64_t whole = taken / metre, part = taken % metre;
    // Split so that no product passes 64 bits: perMetre stays below 10^14.
    const std::int64_t high = perMetre / 1'000'000, low = perMetre % 1'000'000;
    const std::int64_t lowPart = low * part;
    const std::int64_t sum = high * part + lowPart / 1'000'000;
    const std::int64_t quotient = sum / 1'000, remainder = sum % 1'000;
    return perMetre * whole + quotient + (remainder != 0 || lowPart % 1'000'000 != 0 ? 1 : 0);
}

std::int64_t Instance::costOf(const StockClass& stock, int along) const
{
    if (!stock.coil)
        return stock.cost;
    const Length level =
        frames[static_cast<std::size_t>(stock.frame)].unitAlong * along - problem->rules().kerf;
    std::int64_t cost = costOfLevel(*problem, stock.stock, level, measure);
    for (const LevelDiscount& discount : discounts)
        cost -= along >= discount.along ? discount.cost : 0;
    return cost;
}

double Instance::mostCost(std::int64_t value) const
{
    const double share = problem->creditsRemnants() ? problem->rules().remnantCreditPercent / 100.0 : 0.0;
    if (share == 0.0)
        return static_cast<double>(value);
    double price = std::numeric_limits<double>::infinity(), area = 0.0;
    for (const StockClass& row : stocks) {
        const Stock& entry = problem->stocks()[row.stock];
        const Length length = row.coil ? Length::millimetres(1'000) : entry.length;
        price = std::min(price, static_cast<double>(problem->cost(row.stock) * costScale) /
                                    inMillimetres(entry.width) / inMillimetres(length));
    }
    for (const Kind& kind : kinds)
        area += kind.area * static_cast<double>(kind.demand);
    // Of the blanks' metal nothing is credited, of the rest of a sheet at most that share.
    const double left = static_cast<double>(value) - share * price * area;
    return share < 1.0 ? left / (1.0 - share) : std::numeric_limits<double>::infinity();
}

namespace {

/// Of the offcuts of one copy of the pattern.
std::int64_t creditOf(const Instance& instance, const RawPattern& pattern)
{
    const Problem& problem = *instance.problem;
    const Frame& frame = instance.frameAt(pattern.stock);
    const StockClass& row = instance.stockAt(pattern.stock);
    const bool crosswise = frame.order == CutOrder::LengthsFirst;
    const Length kerf = problem.rules().kerf;
    const auto credit = [&](Length across, Length along) {
        return crosswise ? problem.credit(row.stock, along, across)
                         : problem.credit(row.stock, across, along);
    };
    const Length level = row.coil ? frame.unitAlong * pattern.along - kerf : problem.usableLength(row.stock);
    const Length across = crosswise ? level : problem.usableWidth(row.stock);
    const Length along = crosswise ? problem.usableWidth(row.stock) : level;
    Length beside = across;
    std::int64_t sum = 0;
    for (const RawStrip& strip : pattern.strips) {
        const Length width = frame.girths[static_cast<std::size_t>(strip.width)];
        beside -= width + kerf;
        sum += credit(width, along - frame.unitAlong * takenBy(frame, strip));
    }
    return sum + credit(beside, along);
}

} // namespace

std::int64_t netCostOf(const Instance& instance, const RawPattern& pattern)
{
    const std::int64_t cost = instance.costOf(instance.stockAt(pattern.stock), pattern.along);
    return instance.problem->creditsRemnants() ? cost - creditOf(instance, pattern) : cost;
}

std::int64_t costOf(const Instance& instance, const RawPlan& plan)
{
    std::int64_t cost = 0;
    for (const RawPattern& pattern : plan)
        cost += pattern.count * netCostOf(instance, pattern);
    return cost;
}

double worthOf(const Instance& instance, const RawPattern& pattern, const std::vector<double>& worths)
{
    const Frame& frame = instance.frameAt(pattern.stock);
    double worth = 0.0;
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces)
            worth +=
                count *
                worths[static_cast<std::size_t>(frame.placements[static_cast<std::size_t>(placement)].kind)];
    return worth;
}

int takenBy(const Frame& frame, const RawStrip& strip)
{
    int sum = 0;
    for (const auto& [placement, count] : strip.pieces)
        sum += count * frame.placements[static_cast<std::size_t>(placement)].along;
    return sum;
}

std::int64_t holdersOfWidth(const Frame& frame, const RawStrip& strip)
{
    std::int64_t holders = 0;
    for (const auto& [placement, count] : strip.pieces)
        if (frame.widthOfPlacement[static_cast<std::size_t>(placement)] == strip.width)
            holders += count;
    return holders;
}

Instance normalise(const Problem& problem, Units units)
{
    Instance instance;
    instance.problem = &problem;
    instance.patterns = problem.rules().patterns;
    instance.mostStrips = problem.rules().mostStrips.value_or(std::numeric_limits<int>::max() / 2);
    instance.measure = measureOf(problem);
    instance.costScale = costScaleOf(problem);
    instance.kinds = kindsOf(problem);
    for (const bool crosswise : {false, true}) {
        const CutOrder order = crosswise ? CutOrder::LengthsFirst : CutOrder::StripsFirst;
        std::int64_t widest = 0, longest = 0;
        for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
            if (lengthsFirst(problem, stock) != crosswise)
                continue;
            widest = std::max(widest, spanOf(problem, stock).across);
            longest = std::max(longest, spanOf(problem, stock).along);
        }
        const auto placements = placementsOf(problem, instance.kinds, order, widest, longest);
        if (placements.empty())
            continue;
        const int frameIndex = static_cast<int>(instance.frames.size());
        instance.frames.push_back(frameOf(problem, placements, order, widest, longest, units));
        const Frame& frame = instance.frames.back();
        for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
            if (lengthsFirst(problem, stock) != crosswise)
                continue;
            const Stock& entry = problem.stocks()[stock];
            const Span span = spanOf(problem, stock);
            StockClass row;
            row.stock = stock;
            row.frame = frameIndex;
            row.across = static_cast<int>(span.across / frame.unitAcross.inNanometres());
            row.along = static_cast<int>(span.along / frame.unitAlong.inNanometres());
            row.coil = entry.kind == StockKind::Coil;
            row.cost = instance.measure == Measure::Sheets ? 1 : problem.cost(stock) * instance.costScale;
            if (entry.kind == StockKind::Remnant)
                row.available = 1;
            else if (entry.count)
                row.available = row.coil
                                    ? (problem.usableLength(stock) + problem.rules().kerf) / frame.unitAlong
                                    : *entry.count;
            row.single = !row.coil && row.available == 1;
            instance.stocks.push_back(row);
        }
    }
    for (Kind& kind : instance.kinds) {
        const Blank& blank = problem.blanks()[kind.blanks.front()];
        kind.area = inMillimetres(blank.girth) * inMillimetres(blank.length);
    }
    return instance;
}

} // namespace lapwright::cutting
