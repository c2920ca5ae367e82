#include "cutting/strip_values.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <utility>

namespace lapwright::cutting {

namespace {

/// Where every length of a coil's levels is looked at: the work grows with the product of the units.
constexpr std::int64_t mostUnitsOfCoils = 2'048;

} // namespace

std::int64_t ceilOf(std::int64_t value, std::int64_t divisor)
{
    return value <= 0 ? 0 : (value - 1) / divisor + 1;
}

void addItem(std::vector<std::int64_t>& best, std::int64_t size, std::int64_t value, std::int64_t count)
{
    const auto span = static_cast<std::int64_t>(best.size()) - 1;
    if (size > span)
        return;
    if (size == 0) {
        for (std::int64_t& entry : best)
            entry += value * count;
        return;
    }
    const auto at = [&best](std::int64_t x) -> std::int64_t& { return best[static_cast<std::size_t>(x)]; };
    if (count >= span / size) {
        for (std::int64_t x = size; x <= span; ++x)
            at(x) = std::max(at(x), at(x - size) + value);
        return;
    }
    for (std::int64_t part = 1; count > 0; part *= 2) {
        const std::int64_t bundle = std::min(part, count);
        for (std::int64_t x = span; x >= bundle * size; --x)
            at(x) = std::max(at(x), at(x - bundle * size) + bundle * value);
        count -= bundle;
    }
}

std::int64_t unitFor(std::int64_t divisor, std::int64_t span, std::int64_t most)
{
    const std::int64_t unit = std::max<std::int64_t>(1, divisor);
    return span / unit > most ? span / most + 1 : unit;
}

StripValues::StripValues(const std::vector<Item>& items, const Problem& problem, std::int64_t widest,
                         std::int64_t longest)
    : mostStrips_(problem.rules().mostStrips)
{
    std::int64_t divisorAlong = 0, divisorWidth = 0;
    for (const Item& item : items) {
        divisorAlong = std::gcd(divisorAlong, item.along);
        divisorWidth = std::gcd(divisorWidth, item.width);
    }
    const std::int64_t most = problem.hasCoil() ? mostUnitsOfCoils : mostUnits;
    unitAlong_ = unitFor(divisorAlong, longest, most);
    unitWidth_ = unitFor(divisorWidth, widest, most);
    std::vector<std::int64_t> best(static_cast<std::size_t>(longest / unitAlong_) + 1, 0);
    std::vector<Holder> holders;
    for (std::size_t at = 0; at < items.size(); ++at) {
        holders.push_back({items[at].along / unitAlong_, items[at].count});
        addItem(best, items[at].along / unitAlong_, items[at].value, items[at].count);
        if (at + 1 < items.size() && items[at + 1].width == items[at].width)
            continue;
        widths_.push_back(items[at].width / unitWidth_);
        holders_.push_back(std::exchange(holders, {}));
        values_.push_back(best);
        if (problem.rules().patterns == PatternClass::Exact)
            std::ranges::fill(best, 0);
    }
}

bool StripValues::moves(std::int64_t along) const
{
    const auto cell = static_cast<std::size_t>(along / unitAlong_);
    return cell == 0 || std::ranges::any_of(values_, [cell](const std::vector<std::int64_t>& row) {
               return row[cell] != row[cell - 1];
           });
}

std::int64_t StripValues::mostOfSheet(std::int64_t width, std::int64_t along) const
{
    const std::int64_t units = width / unitWidth_;
    const auto cell = static_cast<std::size_t>(along / unitAlong_);
    std::int64_t most = 0;
    for (std::size_t at = 0; at < widths_.size(); ++at) {
        if (widths_[at] == 0)
            return std::numeric_limits<std::int64_t>::max() / 2;
        most = std::max(most, ceilOf(values_[at][cell] * units, widths_[at]));
    }
    return most;
}

std::int64_t StripValues::sheet(std::int64_t width, std::int64_t along) const
{
    const auto units = static_cast<std::size_t>(width / unitWidth_);
    const auto cell = static_cast<std::size_t>(along / unitAlong_);
    std::vector<std::int64_t> best(units + 1, 0);
    const bool limited =
        mostStrips_ && !widths_.empty() &&
        static_cast<std::int64_t>(units) / std::max<std::int64_t>(1, widths_.front()) > *mostStrips_;
    const int rounds = limited ? *mostStrips_ : 1;
    for (int round = 0; round < rounds; ++round) {
        std::vector<std::int64_t> next = limited ? best : std::vector<std::int64_t>();
        for (std::size_t at = 0; at < widths_.size(); ++at) {
            if (!limited) {
                std::int64_t most = 0;
                for (const Holder& holder : holders_[at])
                    most += std::cmp_less_equal(holder.along, cell) ? holder.count : 0;
                addItem(best, widths_[at], values_[at][cell], most);
                continue;
            }
            for (auto x = static_cast<std::size_t>(widths_[at]); x <= units; ++x)
                next[x] =
                    std::max(next[x], best[x - static_cast<std::size_t>(widths_[at])] + values_[at][cell]);
        }
        if (limited)
            best = std::move(next);
    }
    return best.back();
}

} // namespace lapwright::cutting
