#include "cutting/instance.h"

#include "measure/rounding.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace lapwright::cutting {

namespace {

constexpr std::int64_t coilCostScale = 1'000;

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

/// The greatest common divisor: spans are cut down to whole units, blanks divide
/// exactly. Where that would leave more units than the search can count, the unit is coarser and blanks round
/// up.
std::int64_t unitOf(std::int64_t divisor, std::int64_t span)
{
    constexpr std::int64_t mostUnits = 1'000'000'000;
    return divisor == 0 ? 1 : std::max(divisor, span / mostUnits + 1);
}

Frame frameOf(const std::vector<LongPlacement>& placements, CutOrder order, std::int64_t widest,
              std::int64_t longest)
{
    std::int64_t divisorAcross = 0, divisorAlong = 0;
    for (const LongPlacement& placement : placements) {
        divisorAcross = std::gcd(divisorAcross, placement.across);
        divisorAlong = std::gcd(divisorAlong, placement.along);
    }
    const std::int64_t unitAcross = unitOf(divisorAcross, widest), unitAlong = unitOf(divisorAlong, longest);
    Frame frame;
    frame.order = order;
    frame.unitAcross = Length::nanometres(unitAcross);
    frame.unitAlong = Length::nanometres(unitAlong);
    for (const LongPlacement& placement : placements)
        frame.placements.push_back(
            {placement.kind, static_cast<int>((placement.across + unitAcross - 1) / unitAcross),
             static_cast<int>((placement.along + unitAlong - 1) / unitAlong), placement.turned});
    std::ranges::sort(frame.placements, [](const Placement& left, const Placement& right) {
        return std::tie(left.across, left.along, left.kind) < std::tie(right.across, right.along, right.kind);
    });
    for (std::size_t index = 0; index < frame.placements.size(); ++index) {
        const int across = frame.placements[index].across;
        if (frame.widths.empty() || frame.widths.back() != across) {
            frame.widths.push_back(across);
            frame.firstOfWidth.push_back(static_cast<int>(index));
        }
        frame.widthOfPlacement.push_back(static_cast<int>(frame.widths.size()) - 1);
    }
    frame.firstOfWidth.push_back(static_cast<int>(frame.placements.size()));
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
    if (problem.stocks().size() != 1)
        return Measure::Cost;
    return problem.stocks().front().kind == StockKind::Coil ? Measure::CoilLength : Measure::Sheets;
}

std::int64_t costScaleOf(const Problem& problem)
{
    if (measureOf(problem) != Measure::Cost)
        return 1;
    const bool anyCoil = std::ranges::any_of(
        problem.stocks(), [](const Stock& stock) { return stock.kind == StockKind::Coil; });
    return anyCoil ? coilCostScale : 1;
}

std::int64_t costOfLevel(const Problem& problem, std::size_t stock, Length level, Measure measure)
{
    const std::int64_t taken = (level + problem.rules().kerf).inNanometres();
    if (measure != Measure::Cost)
        return taken;
    constexpr std::int64_t metre = 1'000'000'000;
    const std::int64_t perMetre = problem.cost(stock) * coilCostScale;
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
    return costOfLevel(*problem, stock.stock, level, measure);
}

std::int64_t costOf(const Instance& instance, const RawPlan& plan)
{
    std::int64_t cost = 0;
    for (const RawPattern& pattern : plan)
        cost += pattern.count *
                instance.costOf(instance.stocks[static_cast<std::size_t>(pattern.stock)], pattern.along);
    return cost;
}

Instance normalise(const Problem& problem)
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
        instance.frames.push_back(frameOf(placements, order, widest, longest));
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
