#pragma once

#include "measure/angle.h"
#include "measure/derivation.h"
#include "measure/length.h"
#include "site/run.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// Which hand a piece has, standing outside and looking at its coloured face; most trim has none.
enum class Hand { None, Left, Right };

/// One end of a piece.
struct PieceEnd {
    enum class Kind { Square, Lap, Butt, Mitre, WrapTab, Closed, TurnUp } kind = Kind::Square;
    /// What the end adds to the measured length (negative: takes away); for a mitre, to its longest point. A
    /// lap is counted on the piece that lies on top, at the end that covers.
    Length allowance;
    /// For a mitre: how far each mould line of the blank (start edge, every bend line, end edge) reaches
    /// beyond the measured end; positive is longer. Empty otherwise.
    std::vector<Length> cut;

    friend bool operator==(const PieceEnd&, const PieceEnd&) = default;
};

/// One folded item, or several that are alike in everything and follow one another in one run (courses of
/// step flashing): `count` of them, marked "mark" to "mark+count-1" by ordinal.
struct Piece {
    /// Unique in the order: run id, the trim's letter where a run has several, ordinal in installing order:
    /// "E3.2", "S1b.4".
    std::string mark;
    std::string run;
    /// Index in Order::profiles.
    std::size_t profile = 0;
    Hand hand = Hand::None;
    std::int64_t count = 1;
    /// Along the measured line, laps and ends included; to the measured corner at a mitre.
    Length length;
    /// What the shop cuts: from longest point to longest point of the blank.
    Length blankLength;
    /// Ends in the direction of the run: `start` is the left end, standing outside.
    PieceEnd start;
    PieceEnd end;
    bool spare = false;

    friend bool operator==(const Piece&, const Piece&) = default;
};

} // namespace lapwright::pieces
