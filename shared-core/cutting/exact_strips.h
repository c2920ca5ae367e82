#pragma once

#include "cutting/instance.h"

#include <cstdint>

namespace lapwright::cutting {

struct StripsPlan {
    RawPlan plan;
    Certificate certificate;
    std::int64_t work = 0;
};

/// Whether the exact class falls apart into fewest strips in each girth, then fewest sheets for the strips:
/// one kind of sheet that suffices, nothing turned, spans the search can count.
[[nodiscard]] bool decomposes(const Instance& instance);

/// The exact plan by that decomposition. Precondition: decomposes(instance). The girths are shared out over
/// `threads`; the plan does not depend on how.
[[nodiscard]] StripsPlan cutByStrips(const Instance& instance, std::uint64_t seed, int threads);

} // namespace lapwright::cutting
