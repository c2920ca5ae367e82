#pragma once

#include "measure/length.h"

#include <cstdint>

/// What is counted along a run.
namespace lapwright::pieces {

/// Movement joints inside a run of `length` where one is wanted every `interval` (> 0): none up to one
/// interval; beyond it one at the end of every whole interval inside the run, and one more if the last would
/// stand further from the end of the run than half an interval. They are then spaced evenly: length / (joints
/// + 1). Source: UFGS 07 60 00 (07600) 3.1.10 and 3.1.26 "Expansion joints".
[[nodiscard]] std::int64_t movementJointCount(Length length, Length interval);

/// Fasteners in `rows` rows along `length` so that none are further apart than `spacing` (> 0) and both ends
/// have one: rows * (ceil(length / spacing) + 1); none on no length. The spacing itself is a rule's (IRC
/// R905.2.8.5: at most 12 in).
[[nodiscard]] std::int64_t fastenerCount(Length length, Length spacing, std::int64_t rows);

/// Pieces of step flashing on a slope of `length` where the roofing shows `exposure` (> 0) per course: one
/// for each course, a started course counts (IRC R905.2.8.3), and one for the starter course at the low end
/// (common practice, no source).
[[nodiscard]] std::int64_t courseCount(Length length, Length exposure);

} // namespace lapwright::pieces
