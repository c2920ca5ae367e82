#pragma once

#include "cutting/problem.h"

/// The most that strips and sheets of valued blanks can be worth, tabulated for the checker in whole numbers.
namespace lapwright::cutting {

/// A blank as it lies, kerf added.
struct Item {
    std::int64_t width, along, value, count;
};

/// Beyond this many units a span is counted in coarser ones: blanks and spans rounded down, which can only
/// make the bound smaller.
inline constexpr std::int64_t mostUnits = 16'384;

[[nodiscard]] std::int64_t ceilOf(std::int64_t value, std::int64_t divisor);

/// best[x] becomes the greatest value with at most `count` more of an item within x units.
void addItem(std::vector<std::int64_t>& best, std::int64_t size, std::int64_t value, std::int64_t count);

/// The divisor, or where that leaves more units than `most` a coarser unit.
[[nodiscard]] std::int64_t unitFor(std::int64_t divisor, std::int64_t span, std::int64_t most);

/// The greatest value of a strip of each width and length, and of a sheet of strips.
class StripValues {
public:
    /// `items` by ascending width.
    StripValues(const std::vector<Item>& items, const Problem& problem, std::int64_t widest,
                std::int64_t longest);

    [[nodiscard]] std::int64_t unitAlong() const { return unitAlong_; }
    /// Whether a level this long can hold more than one a unit shorter.
    [[nodiscard]] bool moves(std::int64_t along) const;
    /// No sheet of this span is worth more: its best strip, side by side as often as its width goes into it.
    [[nodiscard]] std::int64_t mostOfSheet(std::int64_t width, std::int64_t along) const;
    /// Greatest value of one sheet of this span. Of each width there are at most as many strips as blanks of
    /// it that are short enough: in each strip one of them is the widest of value. With a limit of strips as
    /// often as one likes.
    [[nodiscard]] std::int64_t sheet(std::int64_t width, std::int64_t along) const;

private:
    std::optional<int> mostStrips_;
    std::int64_t unitAlong_ = 1, unitWidth_ = 1;
    struct Holder {
        std::int64_t along, count;
    };

    std::vector<std::int64_t> widths_;
    std::vector<std::vector<Holder>> holders_; ///< of each width the blanks that can hold a strip of it
    std::vector<std::vector<std::int64_t>> values_;
};

} // namespace lapwright::cutting
