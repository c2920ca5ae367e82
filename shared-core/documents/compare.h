#pragma once

#include "pieces/order.h"

/// Where two orders differ, as a person would tell it.
namespace lapwright::documents {

/// Where the pieces an order claims differ from those derived again from its runs: marks missing on either
/// side, length, count, girth. Every finding warns; codes documents.derived.*; the place is the mark. The
/// derived ones count.
[[nodiscard]] rules::Findings compareDerived(const pieces::Order& received, const pieces::Order& derived);

} // namespace lapwright::documents
