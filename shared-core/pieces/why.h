#pragma once

#include "measure/derivation.h"
#include "measure/writing.h"
#include "pieces/order.h"

#include <optional>
#include <string>

namespace lapwright::pieces {

/// Where the numbers of the piece `mark` come from: its place in its run, length, girth, legs, turns, mass
/// and what goes along with it, down to what was measured and the rules' sources. The mark may be that of a
/// piece, of one of several alike ("S1.7"), or of a cut from a stock length. Nothing if the order has no
/// such mark.
[[nodiscard]] std::optional<Derivation> explain(const Order& order, const std::string& mark);

/// The tree in words, one statement a line, each level indented by two spaces, sources in brackets.
[[nodiscard]] std::string writeDerivation(const Derivation& derivation, const Style& style);

} // namespace lapwright::pieces
