#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace lapwright::store {

/// The one place where two texts differ: `removed` at byte `place` of the first, `inserted` there in the
/// second.
struct Splice {
    std::size_t place = 0;
    std::string removed;
    std::string inserted;

    [[nodiscard]] bool empty() const { return removed.empty() && inserted.empty(); }
    [[nodiscard]] Splice reversed() const { return {place, inserted, removed}; }
    friend bool operator==(const Splice&, const Splice&) = default;
};

/// What turns `before` into `after`: everything between the longest common beginning and end. Linear.
[[nodiscard]] Splice spliceBetween(std::string_view before, std::string_view after);

/// `text` with the splice made. Throws StoreFailure if `text` does not hold what the splice removes: the
/// journal and the document do not belong together.
[[nodiscard]] std::string spliced(const std::string& text, const Splice& splice);

} // namespace lapwright::store
