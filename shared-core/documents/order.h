#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "measure/result.h"
#include "pieces/order.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using OrderDocument = Document<pieces::Order>;

/// An order (lapwright/order). Errors: those of openDocument and of readJob for its job; marks or profile ids
/// used twice; a profile or piece that is referred to and not there; a profile without one bend between each
/// two legs; a first revision with a hash before it or a later one without.
[[nodiscard]] Result<OrderDocument> readOrder(std::string_view text);

[[nodiscard]] std::string writeOrder(const OrderDocument& order, Layout layout = Layout::Readable);

/// SHA-256 of the order's canonical bytes, extras included, as 64 hexadecimal digits: what the next revision
/// carries.
[[nodiscard]] std::string revisionHash(const OrderDocument& order);

/// The next revision of `order`, to be changed: counted up, with the hash of this one.
[[nodiscard]] OrderDocument nextRevision(const OrderDocument& order);

} // namespace lapwright::documents
