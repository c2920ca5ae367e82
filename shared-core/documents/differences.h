#pragma once

#include "measure/phrase.h"
#include "pieces/order.h"

#include <string>
#include <vector>

namespace lapwright::documents {

/// One thing that is not the same in two orders.
struct Difference {
    std::string place;  ///< as a person names it: "mark E1.2", "profile P1, eave drip edge"
    std::string aspect; ///< last part of a finding's code: "length", "turn"
    std::string what;   ///< in words: "turn of bend 2"
    Phrase::Value first;
    Phrase::Value second;
};

/// How the pieces and accessories of two orders differ.
struct PieceDifferences {
    std::vector<Difference> changed;
    std::vector<std::string> onlyInFirst; ///< marks
    std::vector<std::string> onlyInSecond;
};

/// Compares pieces by their marks: length, count, hand, ends, cuts; the profiles they are folded from, each
/// pair of profiles once: metal, gauge, colour, girth, legs, turns, radii, hems, coloured face; accessories
/// by name, run and trim; the guide for cutting on site. Lengths within a micrometre and angles within a
/// millionth of a degree are the same: two machines may round the last digit differently, and nothing is cut
/// or folded so finely.
[[nodiscard]] PieceDifferences comparePieces(const pieces::Order& first, const pieces::Order& second);

} // namespace lapwright::documents
