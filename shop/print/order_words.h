#pragma once

#include "measure/writing.h"
#include "pieces/order.h"

#include <map>
#include <string>

/// What papers say of an order's pieces.
namespace lapwright::print {

/// Where each run is, by its id: "eave, Roof edge".
[[nodiscard]] std::map<std::string, std::string> placesOf(const site::Job& job);
/// "eave S1, Roof edge"; of a piece without a run what it is for instead.
[[nodiscard]] std::string placeOf(const pieces::Piece& piece,
                                  const std::map<std::string, std::string>& places);

/// "left hand"; empty where the piece has none.
[[nodiscard]] std::string handInWords(pieces::Hand hand);
/// "left end mitre, right end lap"; empty where both are square.
[[nodiscard]] std::string endsInWords(const pieces::Piece& piece);

} // namespace lapwright::print
