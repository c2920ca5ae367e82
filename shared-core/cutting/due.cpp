#include "cutting/due.h"

#include "cutting/fill_up.h"
#include "cutting/first_fit.h"

#include <algorithm>
#include <limits>
#include <set>

namespace lapwright::cutting {

std::vector<int> dueClassesOf(const Instance& instance)
{
    std::set<int> classes;
    for (const Kind& kind : instance.kinds)
        classes.insert(kind.dueClass);
    return {classes.begin(), classes.end()};
}

namespace {

/// The part of these classes alone, of this much of each stock.
Part partOfClasses(const Instance& whole, int first, int last, const std::vector<std::int64_t>& available)
{
    std::vector<std::int64_t> demands;
    for (const Kind& kind : whole.kinds)
        demands.push_back(kind.dueClass >= first && kind.dueClass <= last ? kind.demand : 0);
    return partOf(whole, demands, available, Widths::All);
}

/// Adds the stock and frames of another part; its kinds are numbered anew by `kinds`, kinds of the whole.
void append(Part& part, const Part& other, const std::vector<int>& otherKinds, const std::vector<int>& kinds)
{
    const auto offset = static_cast<int>(part.instance.frames.size());
    for (std::size_t index = 0; index < other.instance.frames.size(); ++index) {
        Frame frame = other.instance.frames[index];
        for (Placement& placement : frame.placements)
            placement.kind =
                kinds[static_cast<std::size_t>(otherKinds[static_cast<std::size_t>(placement.kind)])];
        part.instance.frames.push_back(std::move(frame));
        part.placements.push_back(other.placements[index]);
    }
    for (std::size_t index = 0; index < other.instance.stocks.size(); ++index) {
        StockClass row = other.instance.stocks[index];
        row.frame += offset;
        part.instance.stocks.push_back(row);
        part.stocks.push_back(other.stocks[index]);
    }
}

/// Kinds of the whole that lie between these classes, in the order a part of them has.
std::vector<int> kindsBetween(const Instance& whole, int first, int last)
{
    std::vector<int> kinds;
    for (std::size_t kind = 0; kind < whole.kinds.size(); ++kind)
        if (whole.kinds[kind].dueClass >= first && whole.kinds[kind].dueClass <= last)
            kinds.push_back(static_cast<int>(kind));
    return kinds;
}

/// The position among all classes of the earliest blank of a pattern.
std::size_t stageOf(const Instance& whole, const std::vector<int>& classes, const RawPattern& pattern)
{
    int due = std::numeric_limits<int>::max();
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces) {
            const int kind =
                whole.frameAt(pattern.stock).placements[static_cast<std::size_t>(placement)].kind;
            due = std::min(due, whole.kinds[static_cast<std::size_t>(kind)].dueClass);
        }
    return static_cast<std::size_t>(std::ranges::find(classes, due) - classes.begin());
}

} // namespace

StagePart nextStage(const Instance& whole, const DueStages& stages)
{
    const std::size_t stage = stages.taken.size();
    const int last = stages.classes[stage];
    std::vector<std::int64_t> left;
    for (const StockClass& row : whole.stocks)
        left.push_back(row.available);
    for (const auto& taken : stages.taken)
        for (std::size_t stock = 0; stock < left.size(); ++stock)
            left[stock] = left[stock] < 0 ? -1 : left[stock] - taken[stock];

    const std::vector<int> all = kindsBetween(whole, stages.classes.front(), last);
    std::vector<int> number(whole.kinds.size(), -1);
    StagePart result;
    Part& part = result.part;
    part = partOfClasses(whole, stages.classes.front(), last, std::vector<std::int64_t>(left.size(), -1));
    part.instance.frames.clear();
    part.instance.stocks.clear();
    part.placements.clear();
    part.stocks.clear();
    for (std::size_t index = 0; index < all.size(); ++index) {
        number[static_cast<std::size_t>(all[index])] = static_cast<int>(index);
        part.instance.kinds[index].blanks = whole.kinds[static_cast<std::size_t>(all[index])].blanks;
    }
    for (std::size_t at = 0; at <= stage; ++at) {
        const int first = stages.classes[at];
        append(part, partOfClasses(whole, first, last, at < stage ? stages.taken[at] : left),
               kindsBetween(whole, first, last), number);
        result.stageOfStock.resize(part.stocks.size(), at);
    }
    return result;
}

RawPlan stageStart(const Instance& whole, const StagePart& stage, const RawPlan& before,
                   std::vector<std::int64_t>& residual)
{
    const Instance& instance = stage.part.instance;
    const std::vector<int> classes = dueClassesOf(whole);
    RawPlan plan;
    for (RawPattern pattern : before) {
        const std::size_t at = stageOf(whole, classes, pattern);
        std::size_t stock = 0;
        while (stage.stageOfStock[stock] != at || stage.part.stocks[stock] != pattern.stock)
            ++stock;
        pattern.stock = static_cast<int>(stock);
        const auto& back = stage.part.placements[static_cast<std::size_t>(instance.stocks[stock].frame)];
        for (RawStrip& strip : pattern.strips)
            for (auto& [placement, count] : strip.pieces)
                placement = static_cast<int>(std::ranges::lower_bound(back, placement) - back.begin());
        plan.push_back(std::move(pattern));
    }
    residual.clear();
    for (const Kind& kind : instance.kinds)
        residual.push_back(kind.demand);
    Content content = contentOf(instance, plan);
    for (std::size_t kind = 0; kind < residual.size(); ++kind)
        residual[kind] -= content.kinds[kind];
    fillUp(instance, plan, residual);
    RawPlan rest = firstFitPlan(instance, residual, content.stocks);
    plan.insert(plan.end(), rest.begin(), rest.end());
    return plan;
}

std::vector<std::vector<std::int64_t>> takenByStages(const Instance& whole, const RawPlan& plan,
                                                     std::size_t stages)
{
    const std::vector<int> classes = dueClassesOf(whole);
    std::vector<std::vector<std::int64_t>> taken(stages, std::vector<std::int64_t>(whole.stocks.size(), 0));
    for (const RawPattern& pattern : plan) {
        const auto stock = static_cast<std::size_t>(pattern.stock);
        taken[stageOf(whole, classes, pattern)][stock] +=
            pattern.count * (whole.stocks[stock].coil ? pattern.along : 1);
    }
    return taken;
}

} // namespace lapwright::cutting
