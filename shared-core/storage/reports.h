#pragma once

#include "schedule/piece_life.h"
#include "site/job.h"
#include "storage/database.h"
#include "storage/orders.h"

#include <cstdint>
#include <string>
#include <vector>

/// What the whole history says; these read all of it.
namespace lapwright::storage {

/// Metal of all plans that are cut, square metres.
struct MetalUse {
    site::Material material;
    std::int64_t plans = 0;
    std::int64_t pieces = 0;
    double stockArea = 0.0;
    double blankArea = 0.0;
    double remnantArea = 0.0;
};
[[nodiscard]] std::vector<MetalUse> metalUse(const Database& database);

/// An order with a wanted date and when the last of it left on a truck.
struct OrderDelivery {
    OrderSummary order;
    std::string lastLoaded; ///< ISO 8601; empty: nothing left yet
    std::int64_t toGo = 0;  ///< pieces that are still to leave, made again or not
};
[[nodiscard]] std::vector<OrderDelivery> deliveries(const Database& database);

/// Pieces that had to be made once more, by what was wrong: short, damaged or wrong on site, scrap in the
/// shop with the note that was given.
struct RemakeCause {
    std::string cause;
    std::string note;
    std::int64_t events = 0;
    std::int64_t pieces = 0;
};
[[nodiscard]] std::vector<RemakeCause> remakeCauses(const Database& database);

} // namespace lapwright::storage
