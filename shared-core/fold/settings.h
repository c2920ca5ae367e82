#pragma once

#include "fold/machine.h"
#include "measure/angle.h"
#include "measure/length.h"
#include "measure/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::fold {

/// The longest that any of the times below may be.
inline constexpr std::int64_t longestTime = std::int64_t{24} * 3'600'000;

/// Times in milliseconds. Common practice, no source: a shop measures its own.
struct HandlingTimes {
    std::int64_t fold = 6'000;
    std::int64_t flatten = 8'000;
    std::int64_t gaugeChange = 3'000;
    std::int64_t angleChange = 1'500;
    std::int64_t turnOver = 6'000;
    std::int64_t spin = 7'000;
    std::int64_t turnOverAndSpin = 9'000;
    std::int64_t layInOver = 6'000;     ///< lifting what hangs below the sheet over the bed
    std::int64_t slideEndways = 12'000; ///< each time a piece is slid in or out past the end of the clamp
    /// Added to every turn, spin and lift over the bed, per kilogram and per metre of length.
    std::int64_t perKilogram = 300;
    std::int64_t perMetre = 800;
    std::int64_t secondPerson = 10'000; ///< added to each of them that takes two people
    std::int64_t beamFaceChange = 300'000;
};

struct Settings {
    HandlingTimes times;
    Angle preBend = Angle::degrees(135.0);
    Angle leastPreBend = Angle::degrees(115.0);
    /// Air left between the sheet's face and every part of the machine it does not lie on.
    Length clearance = Length::micrometres(500);
    /// What hangs no further below the sheet slides over the bed by itself.
    Length slidesOver = Length::millimetres(3);
    /// How far behind the bend line the edge of a hem stands when it is pressed.
    Length flattenInset = Length::millimetres(3);
    double twoPeopleFromKilograms = 20.0;
    Length twoPeopleFromLength = Length::millimetres(2'450);
    /// Beside the machine's own table, and before it.
    std::vector<MeasuredSpringback> measuredSpringback;
    /// Index of the beam face to use; none: the planner chooses, the usual one if it will do.
    std::optional<std::size_t> beamFace;
    /// Where no sequence makes every bend in one go, one of them may be made in two: bent partly, finished
    /// once its neighbours are made.
    bool twoGoes = true;
    /// First goes that are tried: every so many degrees.
    Angle firstGoStep = Angle::degrees(15.0);
    /// A refusal plans what might help (suggest.h) and says what does.
    bool findSuggestions = true;
};

/// What is out of its limits: times 0 to 24 hours, pre-bends over 90° and below 180°, steps of first goes
/// from 5°, clearances 0 to 50 mm. Place is the setting's name.
[[nodiscard]] std::vector<Error> faultsIn(const Settings& settings);

/// Bend lines the planner takes: above this the tables of the exact search grow too large.
inline constexpr std::size_t mostBendLines = 16;
/// Above this no bend is made in two goes: each first go is a search of its own.
inline constexpr std::size_t mostLinesInTwoGoes = 12;

} // namespace lapwright::fold
