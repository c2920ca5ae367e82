#pragma once

#include "pieces/order.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// An order as a person reads it: alike pieces together, and what it comes to.
namespace lapwright::pieces {

/// Mass of one piece of this mark, from its longest point.
[[nodiscard]] double kilogramsEach(const Order& order, const Piece& piece);

/// Pieces that follow one another and are of one profile, length and hand: alike to count and to carry.
struct PieceLine {
    std::string firstMark;
    std::string lastMark; ///< the same as the first where there is one
    std::string run;
    std::size_t profile = 0;
    Hand hand = Hand::None;
    Length length; ///< of the blank
    std::int64_t count = 0;
    double kilograms = 0.0; ///< of all of them
    bool spare = false;

    friend bool operator==(const PieceLine&, const PieceLine&) = default;
};

/// In the order of the pieces. Linear.
[[nodiscard]] std::vector<PieceLine> pieceLines(const Order& order);

struct Totals {
    std::int64_t pieces = 0;
    double kilograms = 0.0;
};
[[nodiscard]] Totals totalsOf(const Order& order);

/// What goes along, all runs together, by name in the order they are first met.
struct AccessoryTotal {
    std::string name;
    std::int64_t count = 0;
    Length length;
};
[[nodiscard]] std::vector<AccessoryTotal> accessoryTotals(const Order& order);

/// The marks on each run as they are to be read, by run id: "E3.1 to E3.3", those of its second trim behind;
/// those of pieces cut on site too.
[[nodiscard]] std::map<std::string, std::string> marksByRun(const Order& order);

} // namespace lapwright::pieces
