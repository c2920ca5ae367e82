#include "pieces/counts.h"

namespace lapwright::pieces {

namespace {

/// Parts of at most `part` that `whole` divides into, rounded up.
std::int64_t partsUp(Length whole, Length part)
{
    return whole / part + (whole % part > Length() ? 1 : 0);
}

} // namespace

std::int64_t movementJointCount(Length length, Length interval)
{
    if (length <= interval)
        return 0;
    const std::int64_t atWholeIntervals = partsUp(length, interval) - 1;
    const Length rest = length - interval * atWholeIntervals;
    return atWholeIntervals + (rest * 2 > interval ? 1 : 0);
}

std::int64_t fastenerCount(Length length, Length spacing, std::int64_t rows)
{
    return length > Length() ? rows * (partsUp(length, spacing) + 1) : 0;
}

std::int64_t courseCount(Length length, Length exposure)
{
    return length > Length() ? partsUp(length, exposure) + 1 : 0;
}

} // namespace lapwright::pieces
