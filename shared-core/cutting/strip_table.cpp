#include "cutting/strip_table.h"

#include <algorithm>
#include <map>

namespace lapwright::cutting {

StripTable::StripTable(const Instance& instance, int frame, int longest)
    : instance_(instance), frame_(instance.frames[static_cast<std::size_t>(frame)]),
      cells_(static_cast<std::size_t>(longest) + 1)
{
}

void StripTable::runPass(const Pass& pass, double value, std::vector<double>& row)
{
    const Placement& placement = frame_.placements[static_cast<std::size_t>(pass.placement)];
    const auto step = static_cast<std::size_t>(placement.along) * static_cast<std::size_t>(pass.bundle);
    const std::size_t offset = taken_.size();
    taken_.resize(offset + cells_, 0);
    char* taken = taken_.data() + offset;
    const auto look = [&](std::size_t at) {
        const double with = row[at - step] + value * pass.bundle;
        const bool better = with > row[at];
        row[at] = better ? with : row[at];
        taken[at] = better ? 1 : 0;
    };
    if (pass.repeats)
        for (std::size_t at = step; at < cells_; ++at)
            look(at);
    else
        for (std::size_t at = cells_; at-- > step;)
            look(at);
    passes_.push_back(pass);
}

void StripTable::addPasses(std::size_t index, double value, std::vector<double>& row)
{
    const Placement& placement = frame_.placements[index];
    const auto fit = static_cast<std::int64_t>((cells_ - 1) / static_cast<std::size_t>(placement.along));
    if (fit == 0 || value <= 1e-12)
        return;
    std::int64_t left = instance_.kinds[static_cast<std::size_t>(placement.kind)].demand;
    if (left >= fit) {
        runPass({static_cast<int>(index), 1, true}, value, row);
        return;
    }
    for (std::int64_t part = 1; left > 0; part *= 2) {
        runPass({static_cast<int>(index), static_cast<int>(std::min(part, left)), false}, value, row);
        left -= std::min(part, left);
    }
}

void StripTable::fill(const std::vector<double>& values)
{
    passes_.clear();
    taken_.clear();
    passesFrom_.clear();
    passesUpTo_.clear();
    best_.assign(frame_.widths.size() * cells_, 0.0);
    std::vector<double> row(cells_, 0.0);
    for (std::size_t width = 0; width < frame_.widths.size(); ++width) {
        if (instance_.patterns == PatternClass::Exact)
            std::ranges::fill(row, 0.0);
        passesFrom_.push_back(instance_.patterns == PatternClass::Exact ? passes_.size() : 0);
        for (int index = frame_.firstOfWidth[width]; index < frame_.firstOfWidth[width + 1]; ++index) {
            const auto at = static_cast<std::size_t>(index);
            addPasses(at, values[static_cast<std::size_t>(frame_.placements[at].kind)], row);
        }
        std::ranges::copy(row, best_.begin() + static_cast<std::ptrdiff_t>(width * cells_));
        passesUpTo_.push_back(passes_.size());
    }
}

RawStrip StripTable::strip(int width, int along) const
{
    RawStrip strip{width, {}};
    const auto w = static_cast<std::size_t>(width);
    auto at = static_cast<std::size_t>(along);
    std::map<int, int, std::greater<>> counts;
    for (std::size_t pass = passesUpTo_[w]; pass-- > passesFrom_[w];) {
        const Pass& entry = passes_[pass];
        const auto step =
            static_cast<std::size_t>(frame_.placements[static_cast<std::size_t>(entry.placement)].along) *
            static_cast<std::size_t>(entry.bundle);
        while (at >= step && taken_[pass * cells_ + at] != 0) {
            counts[entry.placement] += entry.bundle;
            at -= step;
            if (!entry.repeats)
                break;
        }
    }
    strip.pieces.assign(counts.begin(), counts.end());
    return strip;
}

} // namespace lapwright::cutting
