#pragma once

#include "cutting/warm_start.h"

#include <cstdint>
#include <functional>

namespace lapwright::cutting {

struct StripsPlan {
    RawPlan plan;
    Certificate certificate;
    WarmStart start; ///< for the search among all patterns
    std::int64_t work = 0;
};

struct StripsSearch {
    int stock = 0; ///< which is cut; of a coil its longest level
    std::uint64_t seed = 1;
    int threads = 1;
    std::int64_t workLimit = std::numeric_limits<std::int64_t>::max(); ///< for each girth
    std::function<bool()> stop; ///< asked often, on the calling thread only; true ends the search
};

/// Whether the exact class falls apart into fewest strips in each girth, then fewest sheets for the strips:
/// one kind of sheet that suffices, nothing turned.
[[nodiscard]] bool decomposes(const Instance& instance);

/// Whether the strips of this stock alone could hold all blanks, unturned.
[[nodiscard]] bool holdsAll(const Instance& instance, int stock);

/// The exact plan by that decomposition, of the one stock. Precondition: holdsAll(instance, stock). The
/// girths are shared out over the threads; the plan does not depend on how. Stopped early the plan is whole,
/// the certificate weaker.
[[nodiscard]] StripsPlan cutByStrips(const Instance& instance, const StripsSearch& search);

} // namespace lapwright::cutting
