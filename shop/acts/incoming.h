#pragma once

#include "documents/order.h"
#include "pieces/takeoff.h"
#include "storage/orders.h"

/// From an order document to what the shop keeps of it.
namespace lapwright::acts {

/// The take-off of a job, with findings of texts as entered that say something else than their values.
[[nodiscard]] pieces::Order takeOff(const site::Job& job, const pieces::Catalogue& catalogue);

/// An order as the shop derives it from the same runs, and where that differs from what the document says.
struct Derived {
    pieces::Order order;
    rules::Findings differences;
};

[[nodiscard]] Derived deriveAgain(const documents::OrderDocument& order, const pieces::Catalogue& catalogue);

/// `document` is the text as received.
[[nodiscard]] storage::IncomingOrder incoming(const documents::OrderDocument& order,
                                              const std::string& document, const pieces::Order& derived);

} // namespace lapwright::acts
