#pragma once

#include "cutting/instance.h"

#include <functional>
#include <memory>

namespace lapwright::cutting {

/// Column generation over strips and sheets at once: strip columns bring blanks, sheet columns bring strips,
/// remnants and coil levels are whole patterns. For every kind of stock and rule.
class NestedPatterns {
public:
    /// `start` covers all demand. `stop` is asked often; true ends the search. `report` takes plans and
    /// certificates as they are found and returns true once nothing more is wanted.
    struct Listener {
        std::function<bool(std::int64_t workDone)> stop;
        std::function<bool(const RawPlan&)> plan;
        std::function<bool(const Certificate&)> certificate;
        std::function<std::int64_t()> bound; ///< the best proven so far
    };

    NestedPatterns(const Instance& instance, const RawPlan& start, std::uint64_t seed, Listener listener);
    ~NestedPatterns();
    NestedPatterns(const NestedPatterns&) = delete;
    NestedPatterns& operator=(const NestedPatterns&) = delete;
    NestedPatterns(NestedPatterns&&) = delete;
    NestedPatterns& operator=(NestedPatterns&&) = delete;

    /// Whether the spans are such that tables over them can be filled.
    [[nodiscard]] static bool takes(const Instance& instance);

    void run();

private:
    class Search;
    std::unique_ptr<Search> search_;
};

} // namespace lapwright::cutting
