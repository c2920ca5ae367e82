#pragma once

#include <algorithm>
#include <cstddef>

namespace lapwright::look {

/// How one list becomes another by taking out rows at one place and putting others there.
struct RowChanges {
    int first = 0;
    int removed = 0;
    int inserted = 0;
};

/// Of lists of `before` and `now` rows. `same`: the row of one index before and that of the other now are of
/// one thing, though what they say may differ. Rows that begin or end both lists stay.
template <class Same>
[[nodiscard]] RowChanges rowChanges(std::size_t before, std::size_t now, Same same)
{
    const std::size_t shorter = std::min(before, now);
    std::size_t first = 0;
    while (first < shorter && same(first, first))
        ++first;
    std::size_t last = 0;
    while (last < shorter - first && same(before - 1 - last, now - 1 - last))
        ++last;
    return {static_cast<int>(first), static_cast<int>(before - first - last),
            static_cast<int>(now - first - last)};
}

/// The same of two lists themselves.
template <class Rows, class Same>
[[nodiscard]] RowChanges rowChanges(const Rows& before, const Rows& now, Same same)
{
    return rowChanges(before.size(), now.size(),
                      [&](std::size_t i, std::size_t j) { return same(before[i], now[j]); });
}

} // namespace lapwright::look
