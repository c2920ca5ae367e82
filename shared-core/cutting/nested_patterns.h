#pragma once

#include "cutting/master_program.h"
#include "cutting/warm_start.h"

#include <functional>
#include <memory>
#include <optional>

namespace lapwright::cutting {

/// Column generation over strips and sheets at once, then roundings of its linear program. For every kind of
/// stock and rule.
class NestedPatterns {
public:
    struct Listener {
        std::function<bool(std::int64_t ticks)>
            stop;                                 ///< asked often with the work since; true ends the search
        std::function<bool(const RawPlan&)> plan; ///< takes a cheaper plan; true: nothing more is wanted
        std::function<bool(const Certificate&)> certificate; ///< may be empty; true: nothing more is wanted
    };

    struct Effort {
        std::uint64_t seed = 1;
        std::int64_t slack = 0; ///< plans that cost less than the one given and this together are wanted
        MasterProgram::Columns columns = MasterProgram::Columns::Nested;
    };

    /// `plan` covers all demand.
    NestedPatterns(const Instance& instance, const RawPlan& plan, const std::optional<WarmStart>& start,
                   Effort effort, Listener listener);
    ~NestedPatterns();
    NestedPatterns(const NestedPatterns&) = delete;
    NestedPatterns& operator=(const NestedPatterns&) = delete;
    NestedPatterns(NestedPatterns&&) = delete;
    NestedPatterns& operator=(NestedPatterns&&) = delete;

    /// Whether the spans are such that tables over them can be filled.
    [[nodiscard]] static bool takes(const Instance& instance);

    /// Solves the relaxation. False where no cheaper plan can be, or where it was stopped.
    bool relax();
    /// One rounding of the relaxation; each attempt rounds another way. False once nothing more is wanted.
    bool round(int attempt);
    /// What a blank of each kind is worth in the relaxation; empty before relax().
    [[nodiscard]] const std::vector<double>& worths() const;
    /// Least cost of any plan, in doubles.
    [[nodiscard]] double bound() const;

private:
    class Search;
    std::unique_ptr<Search> search_;
};

} // namespace lapwright::cutting
