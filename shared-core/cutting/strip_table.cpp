#include "cutting/strip_table.h"

#include <algorithm>
#include <bit>
#include <cstring>
#include <map>

namespace lapwright::cutting {

StripTable::StripTable(const Instance& instance, int frame, int longest)
    : instance_(instance), frame_(instance.frames[static_cast<std::size_t>(frame)]),
      cells_(static_cast<std::size_t>(longest) + 1), row_(cells_), next_(cells_)
{
}

void StripTable::runPass(const Pass& pass, double value)
{
    const Placement& placement = frame_.placements[static_cast<std::size_t>(pass.placement)];
    const auto step = static_cast<std::size_t>(placement.along) * static_cast<std::size_t>(pass.bundle);
    const std::size_t index = passes_.size();
    passes_.push_back(pass);
    if (index % passesOfWord == 0)
        taken_.resize(taken_.size() + cells_, 0);
    if (step >= cells_)
        return;
    std::uint64_t* taken = taken_.data() + index / passesOfWord * cells_;
    const std::uint64_t bit = std::uint64_t{1} << index % passesOfWord;
    const double gain = value * pass.bundle;
    // Read from one row and written to another, or in blocks no longer than the step: the compiler may take
    // several cells at once.
    const auto look = [gain, step, bit, taken](const double* from, double* to, std::size_t begin,
                                               std::size_t end) {
        for (std::size_t at = begin; at < end; ++at) {
            const double with = from[at - step] + gain;
            const bool better = with > from[at];
            to[at] = better ? with : from[at];
            taken[at] |= better ? bit : 0;
        }
    };
    if (pass.repeats) {
        for (std::size_t begin = step; begin < cells_; begin += step)
            look(row_.data(), row_.data(), begin, std::min(begin + step, cells_));
    } else {
        std::memcpy(next_.data(), row_.data(), step * sizeof(double));
        look(row_.data(), next_.data(), step, cells_);
        std::swap(row_, next_);
    }
}

void StripTable::addPasses(std::size_t index, double value, std::int64_t wanted)
{
    const Placement& placement = frame_.placements[index];
    const auto fit = static_cast<std::int64_t>((cells_ - 1) / static_cast<std::size_t>(placement.along));
    if (fit == 0 || wanted <= 0 || value <= 1e-12)
        return;
    std::int64_t left = std::min(fit, wanted);
    if (left == fit && fit > 1) {
        runPass({static_cast<int>(index), 1, true}, value);
        return;
    }
    for (std::int64_t part = 1; left > 0; part *= 2) {
        runPass({static_cast<int>(index), static_cast<int>(std::min(part, left)), false}, value);
        left -= std::min(part, left);
    }
}

void StripTable::fill(const std::vector<double>& values, const std::vector<std::int64_t>& wanted)
{
    passes_.clear();
    taken_.clear();
    passesFrom_.clear();
    passesUpTo_.clear();
    best_.resize(frame_.widths.size() * cells_);
    std::ranges::fill(row_, 0.0);
    for (std::size_t width = 0; width < frame_.widths.size(); ++width) {
        const bool exact = instance_.patterns == PatternClass::Exact;
        if (exact)
            std::ranges::fill(row_, 0.0);
        passesFrom_.push_back(exact ? static_cast<int>(passes_.size()) : 0);
        for (int index = frame_.firstOfWidth[width]; index < frame_.firstOfWidth[width + 1]; ++index) {
            const auto at = static_cast<std::size_t>(index);
            const auto kind = static_cast<std::size_t>(frame_.placements[at].kind);
            addPasses(at, values[kind], wanted[kind]);
        }
        std::ranges::copy(row_, best_.begin() + static_cast<std::ptrdiff_t>(width * cells_));
        passesUpTo_.push_back(static_cast<int>(passes_.size()));
    }
}

/// The last pass before `limit` that took something there; negative where none did.
int StripTable::lastTaken(std::size_t cell, int limit) const
{
    if (limit <= 0)
        return -1;
    const auto last = static_cast<std::size_t>(limit) - 1;
    std::size_t word = last / passesOfWord;
    std::uint64_t bits =
        taken_[word * cells_ + cell] & (~std::uint64_t{0} >> (passesOfWord - 1 - last % passesOfWord));
    while (bits == 0 && word > 0)
        bits = taken_[--word * cells_ + cell];
    return bits == 0 ? -1 : static_cast<int>(word * passesOfWord + std::bit_width(bits)) - 1;
}

RawStrip StripTable::strip(int width, int along) const
{
    RawStrip strip{width, {}};
    const auto w = static_cast<std::size_t>(width);
    auto at = static_cast<std::size_t>(along);
    std::map<int, int, std::greater<>> counts;
    int limit = passesUpTo_[w];
    for (int pass = lastTaken(at, limit); pass >= passesFrom_[w]; pass = lastTaken(at, limit)) {
        const Pass& entry = passes_[static_cast<std::size_t>(pass)];
        counts[entry.placement] += entry.bundle;
        at -= static_cast<std::size_t>(frame_.placements[static_cast<std::size_t>(entry.placement)].along) *
              static_cast<std::size_t>(entry.bundle);
        limit = entry.repeats ? pass + 1 : pass;
    }
    strip.pieces.assign(counts.begin(), counts.end());
    return strip;
}

} // namespace lapwright::cutting
