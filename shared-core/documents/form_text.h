#pragma once

#include "documents/json_text.h"
#include "measure/length.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>

/// Values of a document as a form shows them. The order of members is that of the document.
namespace lapwright::documents {

using OrderedJson = nlohmann::ordered_json;

/// Errors: those of parseJson; no object; more values than anybody fills in.
[[nodiscard]] Result<OrderedJson> parseOrdered(std::string_view document);
/// In the readable layout, members in their order.
[[nodiscard]] std::string textOfDocument(const OrderedJson& document);

/// "text", "12.5", "true", "a, b", "0, 0; 40, -12.5"; a part has none.
[[nodiscard]] std::string textOf(const OrderedJson& value);
/// Nothing for what no length holds.
[[nodiscard]] std::optional<Length> lengthIn(double millimetres);

} // namespace lapwright::documents
