#pragma once

#include "cutting/instance.h"

#include <cstdint>
#include <functional>

namespace lapwright::cutting {

struct StripsPlan {
    RawPlan plan;
    Certificate certificate;
    RawPlan columns; ///< one pattern for each strip and each sheet of strips the search looked at
    std::int64_t work = 0;
};

struct StripsSearch {
    std::uint64_t seed = 1;
    int threads = 1;
    std::int64_t workLimit = std::numeric_limits<std::int64_t>::max(); ///< for each girth
    std::function<bool()> stop; ///< asked often, on the calling thread only; true ends the search
};

/// Whether the exact class falls apart into fewest strips in each girth, then fewest sheets for the strips:
/// one kind of sheet that suffices, nothing turned.
[[nodiscard]] bool decomposes(const Instance& instance);

/// The exact plan by that decomposition. Precondition: decomposes(instance). The girths are shared out over
/// the threads; the plan does not depend on how. Stopped early the plan is whole, the certificate weaker.
[[nodiscard]] StripsPlan cutByStrips(const Instance& instance, const StripsSearch& search);

} // namespace lapwright::cutting
