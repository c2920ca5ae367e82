#pragma once

#include "measure/writing.h"
#include "pieces/order.h"
#include "print/label.h"
#include "print/paper.h"
#include "print/sheet.h"
#include "schedule/load.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// The papers that go along with a load.
namespace lapwright::print {

/// A profile as a load's papers show it.
struct LoadedProfile {
    trim::Profile profile;
    Length thickness;
};

/// What a load's papers know of an order beyond the load itself.
struct LoadedOrder {
    std::int64_t revision = 0;
    std::map<std::string, LoadedProfile> profiles; ///< by their ids in the order
};
using LoadedOrders = std::map<std::string, LoadedOrder>; ///< by the order's id

[[nodiscard]] LoadedOrders loadedOrders(const std::vector<pieces::Order>& orders);

/// For whoever loads the truck: every bundle to tick with its weight, its longest piece, the marks in it and
/// whether it takes two people.
[[nodiscard]] Sheet loadList(const schedule::Load& load, const LoadedOrders& orders, const Printing& printing,
                             const Style& style);

/// For a crew lead without a tablet: every mark with how many should be there, and room to write how many
/// came, are short, damaged or wrong, and to sign.
[[nodiscard]] Sheet checkSheet(const schedule::Load& load, const LoadedOrders& orders,
                               const Printing& printing, const Style& style);

/// One label for each bundle, its code naming order, revision, bundle and pieces.
[[nodiscard]] std::vector<Label> bundleLabels(const schedule::Load& load, const LoadedOrders& orders,
                                              const Printing& printing, const Style& style);

} // namespace lapwright::print
