#include "cutting/part.h"

#include <algorithm>

namespace lapwright::cutting {

namespace {

Frame frameOfPart(const Frame& whole, const std::vector<int>& kinds, Widths widths,
                  std::vector<int>& placements)
{
    Frame frame;
    frame.order = whole.order;
    frame.unitAcross = whole.unitAcross;
    frame.unitAlong = whole.unitAlong;
    for (std::size_t width = 0; width < whole.widths.size(); ++width) {
        const std::size_t before = frame.placements.size();
        for (int at = whole.firstOfWidth[width]; at < whole.firstOfWidth[width + 1]; ++at) {
            Placement placement = whole.placements[static_cast<std::size_t>(at)];
            placement.kind = kinds[static_cast<std::size_t>(placement.kind)];
            if (placement.kind < 0)
                continue;
            frame.widthOfPlacement.push_back(static_cast<int>(frame.widths.size()));
            frame.placements.push_back(placement);
            placements.push_back(at);
        }
        if (widths == Widths::Wanted && frame.placements.size() == before)
            continue;
        frame.widths.push_back(whole.widths[width]);
        frame.girths.push_back(whole.girths[width]);
        frame.firstOfWidth.push_back(static_cast<int>(before));
    }
    frame.firstOfWidth.push_back(static_cast<int>(frame.placements.size()));
    return frame;
}

} // namespace

Part partOf(const Instance& whole, const std::vector<std::int64_t>& demands,
            const std::vector<std::int64_t>& available, Widths widths)
{
    Part part;
    part.instance.problem = whole.problem;
    part.instance.patterns = whole.patterns;
    part.instance.mostStrips = whole.mostStrips;
    part.instance.measure = whole.measure;
    part.instance.costScale = whole.costScale;
    std::vector<int> kinds(whole.kinds.size(), -1);
    for (std::size_t kind = 0; kind < whole.kinds.size(); ++kind) {
        if (demands[kind] <= 0)
            continue;
        kinds[kind] = static_cast<int>(part.instance.kinds.size());
        part.instance.kinds.push_back(
            {demands[kind], whole.kinds[kind].area, whole.kinds[kind].dueClass, {}});
    }
    std::vector<int> frames(whole.frames.size(), -1);
    for (std::size_t stock = 0; stock < whole.stocks.size(); ++stock) {
        if (available[stock] == 0)
            continue;
        StockClass row = whole.stocks[stock];
        int& frame = frames[static_cast<std::size_t>(row.frame)];
        if (frame < 0) {
            std::vector<int> placements;
            Frame made =
                frameOfPart(whole.frames[static_cast<std::size_t>(row.frame)], kinds, widths, placements);
            if (made.placements.empty())
                continue;
            frame = static_cast<int>(part.instance.frames.size());
            part.instance.frames.push_back(std::move(made));
            part.placements.push_back(std::move(placements));
        }
        row.frame = frame;
        row.available = available[stock];
        if (row.coil && row.available > 0)
            row.along = static_cast<int>(std::min<std::int64_t>(row.along, row.available));
        part.instance.stocks.push_back(row);
        part.stocks.push_back(static_cast<int>(stock));
    }
    return part;
}

RawPlan Part::inWhole(RawPlan plan, const Instance& whole) const
{
    for (RawPattern& pattern : plan) {
        const auto frame = static_cast<std::size_t>(instance.stockAt(pattern.stock).frame);
        pattern.stock = stocks[static_cast<std::size_t>(pattern.stock)];
        for (RawStrip& strip : pattern.strips) {
            for (auto& [placement, count] : strip.pieces)
                placement = placements[frame][static_cast<std::size_t>(placement)];
            if (!strip.pieces.empty())
                strip.width = whole.frameAt(pattern.stock)
                                  .widthOfPlacement[static_cast<std::size_t>(strip.pieces.front().first)];
        }
    }
    return plan;
}

RawPlan inPart(const Part& part, const RawPlan& plan)
{
    RawPlan result;
    for (RawPattern pattern : plan) {
        const auto stock = std::ranges::find(part.stocks, pattern.stock) - part.stocks.begin();
        pattern.stock = static_cast<int>(stock);
        const auto frame = static_cast<std::size_t>(part.instance.stockAt(pattern.stock).frame);
        const std::vector<int>& back = part.placements[frame];
        for (RawStrip& strip : pattern.strips) {
            for (auto& [placement, count] : strip.pieces)
                placement = static_cast<int>(std::ranges::lower_bound(back, placement) - back.begin());
            strip.width = part.instance.frames[frame]
                              .widthOfPlacement[static_cast<std::size_t>(strip.pieces.front().first)];
        }
        result.push_back(std::move(pattern));
    }
    return result;
}

Content contentOf(const Instance& instance, const RawPlan& plan)
{
    Content content{std::vector<std::int64_t>(instance.kinds.size(), 0),
                    std::vector<std::int64_t>(instance.stocks.size(), 0)};
    for (const RawPattern& pattern : plan) {
        content.stocks[static_cast<std::size_t>(pattern.stock)] +=
            pattern.count * (instance.stockAt(pattern.stock).coil ? pattern.along : 1);
        for (const RawStrip& strip : pattern.strips)
            for (const auto& [placement, count] : strip.pieces)
                content.kinds[static_cast<std::size_t>(
                    instance.frameAt(pattern.stock).placements[static_cast<std::size_t>(placement)].kind)] +=
                    count * pattern.count;
    }
    return content;
}

} // namespace lapwright::cutting
