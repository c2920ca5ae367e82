#include "cutting/write_out.h"

#include "measure/rounding.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace lapwright::cutting {

namespace {

/// Blanks of each kind not yet given a place, in the order they are served.
class Queue {
public:
    explicit Queue(const Instance& instance) : instance_(instance), at_(instance.kinds.size(), 0)
    {
        for (const Kind& kind : instance.kinds)
            left_.push_back(instance.problem->blanks()[kind.blanks.front()].count);
    }

    /// The blank now served of this kind and how many of it are left; 0 left where the kind is done.
    [[nodiscard]] std::pair<std::size_t, std::int64_t> front(int kind) const
    {
        const auto k = static_cast<std::size_t>(kind);
        if (at_[k] == instance_.kinds[k].blanks.size())
            return {0, 0};
        return {instance_.kinds[k].blanks[at_[k]], left_[k]};
    }

    void take(int kind, std::int64_t count)
    {
        const auto k = static_cast<std::size_t>(kind);
        left_[k] -= count;
        while (left_[k] == 0 && ++at_[k] < instance_.kinds[k].blanks.size())
            left_[k] = instance_.problem->blanks()[instance_.kinds[k].blanks[at_[k]]].count;
    }

private:
    const Instance& instance_;
    std::vector<std::size_t> at_;
    std::vector<std::int64_t> left_;
};

class Writer {
public:
    explicit Writer(const Instance& instance)
        : instance_(instance), problem_(*instance.problem), queue_(instance)
    {
    }

    void add(const RawPattern& raw)
    {
        std::int64_t left = raw.count;
        while (left > 0) {
            const std::int64_t alike = std::max<std::int64_t>(1, std::min(left, copiesAlike(raw)));
            Pattern pattern = one(raw, alike);
            left -= alike;
            if (!pattern.strips.empty())
                append(std::move(pattern));
        }
    }

    std::vector<Pattern> patterns;

private:
    [[nodiscard]] const Frame& frame(const RawPattern& raw) const
    {
        return instance_
            .frames[static_cast<std::size_t>(instance_.stocks[static_cast<std::size_t>(raw.stock)].frame)];
    }

    /// How many copies of the pattern the blanks now served of each kind fill without a change.
    [[nodiscard]] std::int64_t copiesAlike(const RawPattern& raw) const
    {
        std::map<int, std::int64_t> need;
        for (const RawStrip& strip : raw.strips)
            for (const auto& [placement, count] : strip.pieces)
                need[frame(raw).placements[static_cast<std::size_t>(placement)].kind] += count;
        std::int64_t copies = std::numeric_limits<std::int64_t>::max();
        for (const auto& [kind, count] : need)
            copies = std::min(copies, queue_.front(kind).second / count);
        return copies;
    }

    Pattern one(const RawPattern& raw, std::int64_t copies)
    {
        const StockClass& row = instance_.stocks[static_cast<std::size_t>(raw.stock)];
        const Stock& stock = problem_.stocks()[row.stock];
        const Length kerf = problem_.rules().kerf;
        const bool lengthsFirst = frame(raw).order == CutOrder::LengthsFirst;
        const bool trimmed = stock.kind != StockKind::Remnant;
        const EdgeTrim trim = trimmed ? problem_.rules().edgeTrim : EdgeTrim();

        Pattern pattern;
        pattern.stock = row.stock;
        pattern.order = frame(raw).order;
        pattern.count = copies;
        pattern.length = stock.length;
        Length longest;
        for (const RawStrip& rawStrip : raw.strips) {
            Length used;
            Strip strip = fill(raw, rawStrip, copies, used);
            if (strip.crosscuts.empty())
                continue;
            longest = std::max(longest, used);
            strip.rest = used;
            pattern.strips.push_back(std::move(strip));
        }
        if (row.coil)
            pattern.length = longest - kerf;
        const Length partAlong = row.coil ? pattern.length : problem_.usableLength(row.stock);
        const Length spanAcross = lengthsFirst ? partAlong : problem_.usableWidth(row.stock);
        const Length spanAlong = lengthsFirst ? problem_.usableWidth(row.stock) : partAlong;
        Length position = lengthsFirst ? trim.lead : trim.left;
        const Length end = position + spanAcross;
        for (Strip& strip : pattern.strips) {
            strip.rest = std::max(Length(), spanAlong - strip.rest);
            strip.position = position;
            position += strip.width + kerf;
        }
        pattern.rest = std::max(Length(), end - position);
        return pattern;
    }

    /// A strip with blanks from the queue; `used` is what they and their kerfs take of its length.
    Strip fill(const RawPattern& raw, const RawStrip& rawStrip, std::int64_t copies, Length& used)
    {
        const Length kerf = problem_.rules().kerf;
        Strip strip;
        for (const auto& [placementIndex, wanted] : rawStrip.pieces) {
            const Placement& placement = frame(raw).placements[static_cast<std::size_t>(placementIndex)];
            std::int64_t left = wanted;
            while (left > 0) {
                const auto [blankIndex, served] = queue_.front(placement.kind);
                const std::int64_t count = std::min(left, served / copies);
                if (count == 0)
                    break;
                queue_.take(placement.kind, count * copies);
                left -= count;
                const Lying lying =
                    lyingIn(frame(raw).order, problem_.blanks()[blankIndex], placement.turned);
                strip.width = std::max(strip.width, lying.across);
                used += (lying.along + kerf) * count;
                strip.crosscuts.push_back({blankIndex, count, placement.turned});
            }
        }
        strip.width = std::max(strip.width, problem_.rules().leastStripWidth);
        return strip;
    }

    void append(Pattern pattern)
    {
        if (!patterns.empty()) {
            Pattern& last = patterns.back();
            const std::int64_t count = last.count;
            last.count = pattern.count;
            const bool alike = last == pattern;
            last.count = alike ? count + pattern.count : count;
            if (alike)
                return;
        }
        patterns.push_back(std::move(pattern));
    }

    const Instance& instance_;
    const Problem& problem_;
    Queue queue_;
};

/// Due first, then by priority, then so that neighbours share as many slits as sorting by widths gives.
std::vector<Pattern> inCuttingOrder(const Problem& problem, std::vector<Pattern> patterns)
{
    using Key = std::tuple<int, int, std::size_t, std::vector<Length>>;
    std::vector<std::pair<Key, std::size_t>> keys;
    for (std::size_t index = 0; index < patterns.size(); ++index) {
        std::pair<int, int> urgency{std::numeric_limits<int>::max(), 0};
        std::vector<Length> widths;
        for (const Strip& strip : patterns[index].strips) {
            widths.push_back(-strip.width);
            for (const Crosscut& crosscut : strip.crosscuts) {
                const Blank& blank = problem.blanks()[crosscut.blank];
                urgency = std::min(urgency, {blank.dueClass, -blank.priority});
            }
        }
        keys.emplace_back(Key{urgency.first, urgency.second, patterns[index].stock, std::move(widths)},
                          index);
    }
    std::ranges::sort(keys);
    std::vector<Pattern> ordered;
    for (const auto& [key, index] : keys)
        ordered.push_back(std::move(patterns[index]));
    return ordered;
}

/// Whether stock at hand, or a copy of a remnant made by an earlier plan, goes by this name.
bool isTaken(const Problem& problem, const std::string& label)
{
    return std::ranges::any_of(problem.stocks(), [&label](const Stock& stock) {
        return stock.key == label || stock.key.rfind(label + ".", 0) == 0;
    });
}

/// A name no other stock has: plans made one after the other would number their remnants alike.
std::string freshLabel(const Problem& problem, const std::string& label)
{
    std::string fresh = label;
    for (int again = 2; isTaken(problem, fresh); ++again)
        fresh = label + "-" + std::to_string(again);
    return fresh;
}

/// Area of the kerfs, blanks, trims of one pattern; what is in no other part is scrap.
void addWaste(const Problem& problem, const Pattern& pattern, Waste& waste)
{
    const Stock& stock = problem.stocks()[pattern.stock];
    const Length kerf = problem.rules().kerf;
    const bool coil = stock.kind == StockKind::Coil;
    const double copies = static_cast<double>(pattern.count);
    const Length partAlong = coil ? pattern.length : problem.usableLength(pattern.stock);
    const bool lengthsFirst = pattern.order == CutOrder::LengthsFirst;
    const Length spanAcross = lengthsFirst ? partAlong : problem.usableWidth(pattern.stock);
    const Length spanAlong = lengthsFirst ? problem.usableWidth(pattern.stock) : partAlong;

    const double whole = metalTaken(stock, kerf, pattern);
    const double usable = inSquareMetres(spanAcross, spanAlong);
    double kerfs = coil ? inSquareMetres(problem.usableWidth(pattern.stock), kerf) : 0.0;
    waste.stock += copies * whole;
    waste.edgeTrim += copies * (whole - usable - kerfs);
    Length end;
    for (const Strip& strip : pattern.strips) {
        end += strip.width;
        const Length slit = std::min(kerf, spanAcross - end);
        end += slit;
        kerfs += inSquareMetres(slit, spanAlong);
        Length used;
        for (const Crosscut& crosscut : strip.crosscuts) {
            const Lying lying = lyingIn(pattern.order, problem.blanks()[crosscut.blank], crosscut.turned);
            const double count = static_cast<double>(crosscut.count);
            waste.blanks += copies * count * inSquareMetres(lying.across, lying.along);
            waste.girthTrim += copies * count * inSquareMetres(strip.width - lying.across, lying.along);
            used += (lying.along + kerf) * crosscut.count;
        }
        const Length cut = std::min(used, spanAlong);
        Length blanksAlong = used;
        for (const Crosscut& crosscut : strip.crosscuts)
            blanksAlong -= kerf * crosscut.count;
        kerfs += inSquareMetres(strip.width, cut - blanksAlong);
    }
    waste.kerf += copies * kerfs;
}

} // namespace

std::vector<NewRemnant> remnantsOf(const Problem& problem, const Pattern& pattern, std::size_t index)
{
    const ShopRules& rules = problem.rules();
    std::vector<NewRemnant> remnants;
    const Stock& stock = problem.stocks()[pattern.stock];
    const EdgeTrim trim = stock.kind == StockKind::Remnant ? EdgeTrim() : rules.edgeTrim;
    const bool coil = stock.kind == StockKind::Coil;
    const bool lengthsFirst = pattern.order == CutOrder::LengthsFirst;
    const Length partAlong = coil ? pattern.length : problem.usableLength(pattern.stock);
    const Length lead = coil ? Length() : trim.lead;
    const auto keep = [&](std::optional<std::size_t> strip, Length across, Length along, Length width,
                          Length length) {
        if (!problem.isRemnant(width, length))
            return;
        std::string label = stock.key;
        label.append("-").append(std::to_string(index + 1));
        label.append("-").append(strip ? std::to_string(*strip + 1) : std::string("R"));
        remnants.push_back({std::move(label), index, strip, across, along, width, length, pattern.count});
    };
    const Length right = trim.left + problem.usableWidth(pattern.stock), tail = lead + partAlong;
    for (std::size_t strip = 0; strip < pattern.strips.size(); ++strip) {
        const Strip& entry = pattern.strips[strip];
        if (lengthsFirst)
            keep(strip, right - entry.rest, entry.position, entry.rest, entry.width);
        else
            keep(strip, entry.position, tail - entry.rest, entry.width, entry.rest);
    }
    if (lengthsFirst)
        keep(std::nullopt, trim.left, tail - pattern.rest, problem.usableWidth(pattern.stock), pattern.rest);
    else
        keep(std::nullopt, right - pattern.rest, lead, pattern.rest, partAlong);
    return remnants;
}

std::int64_t countSetups(const std::vector<Pattern>& patterns)
{
    std::set<std::pair<CutOrder, std::vector<Length>>> setups;
    for (const Pattern& pattern : patterns) {
        std::vector<Length> widths;
        for (const Strip& strip : pattern.strips)
            widths.push_back(strip.width);
        setups.emplace(pattern.order, std::move(widths));
    }
    return static_cast<std::int64_t>(setups.size());
}

void writeOut(const Instance& instance, const RawPlan& raw, Plan& plan)
{
    const Problem& problem = *instance.problem;
    Writer writer(instance);
    for (const RawPattern& pattern : raw)
        writer.add(pattern);
    plan.patterns = inCuttingOrder(problem, std::move(writer.patterns));

    std::vector<std::int64_t> left;
    for (const Blank& blank : problem.blanks())
        left.push_back(blank.count);
    plan.waste = Waste();
    plan.remnants.clear();
    for (std::size_t index = 0; index < plan.patterns.size(); ++index) {
        const Pattern& pattern = plan.patterns[index];
        for (const Strip& strip : pattern.strips)
            for (const Crosscut& crosscut : strip.crosscuts)
                left[crosscut.blank] -= crosscut.count * pattern.count;
        addWaste(problem, pattern, plan.waste);
        for (NewRemnant& remnant : remnantsOf(problem, pattern, index)) {
            plan.waste.remnants +=
                inSquareMetres(remnant.width, remnant.length) * static_cast<double>(remnant.count);
            remnant.label = freshLabel(problem, remnant.label);
            plan.remnants.push_back(std::move(remnant));
        }
    }
    Waste& waste = plan.waste;
    waste.scrap = std::max(0.0, waste.stock - waste.blanks - waste.edgeTrim - waste.kerf - waste.girthTrim -
                                    waste.remnants);
    plan.notCut.clear();
    for (std::size_t blank = 0; blank < left.size(); ++blank)
        if (left[blank] > 0)
            plan.notCut.push_back({blank, left[blank]});
    plan.measure = instance.measure;
    plan.costScale = instance.costScale;
    plan.value = 0;
    for (const Pattern& pattern : plan.patterns) {
        const std::size_t stock = pattern.stock;
        const bool coil = problem.stocks()[stock].kind == StockKind::Coil;
        const std::int64_t each = instance.measure == Measure::Sheets ? 1
                                  : coil ? costOfLevel(problem, stock, pattern.length, instance.measure)
                                         : problem.cost(stock) * instance.costScale;
        plan.value += each * pattern.count;
    }
    for (const NewRemnant& remnant : plan.remnants)
        plan.value -= remnant.count *
                      problem.credit(plan.patterns[remnant.pattern].stock, remnant.width, remnant.length);
    plan.setups = countSetups(plan.patterns);
}

} // namespace lapwright::cutting
