#pragma once

#include <algorithm>
#include <cstddef>

namespace lapwright::field {

/// How one list becomes another by taking out rows at one place and putting others there.
struct RowChanges {
    int first = 0;
    int removed = 0;
    int inserted = 0;
};

/// `same`: two rows are of one thing, though what they say may differ. Rows that begin or end both lists
/// stay.
template <class Rows, class Same>
[[nodiscard]] RowChanges rowChanges(const Rows& before, const Rows& now, Same same)
{
    const std::size_t shorter = std::min(before.size(), now.size());
    std::size_t first = 0;
    while (first < shorter && same(before[first], now[first]))
        ++first;
    std::size_t last = 0;
    while (last < shorter - first && same(before[before.size() - 1 - last], now[now.size() - 1 - last]))
        ++last;
    return {static_cast<int>(first), static_cast<int>(before.size() - first - last),
            static_cast<int>(now.size() - first - last)};
}

} // namespace lapwright::field
