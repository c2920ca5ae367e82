#pragma once

#include "cutting/instance.h"

namespace lapwright::cutting {

/// The plan in lengths and blanks: who gets which piece (due first), in which order, what is left over.
/// Bound, proof and ending stay as they stand in `plan`. Over-production in `raw` is left out.
void writeOut(const Instance& instance, const RawPlan& raw, Plan& plan);

/// Offcuts worth keeping of one pattern, by the rules of the problem.
[[nodiscard]] std::vector<NewRemnant> remnantsOf(const Problem& problem, const Pattern& pattern,
                                                 std::size_t index);

/// Different ordered lists of strip widths among the patterns.
[[nodiscard]] std::int64_t countSetups(const std::vector<Pattern>& patterns);

} // namespace lapwright::cutting
