#pragma once

#include "site/job.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// What a shop asks for one metal and gauge, by mass or by area; for one colour of it, or for all that have
/// no rate of their own.
struct MaterialRate {
    std::string metal;
    std::string gauge;
    std::optional<std::string> colour;
    /// One of these is given.
    std::optional<std::int64_t> centsPerKilogram;
    std::optional<std::int64_t> centsPerSquareMetre;

    friend bool operator==(const MaterialRate&, const MaterialRate&) = default;
};

/// Minutes of work, each a whole number of seconds.
struct LabourTimes {
    std::int64_t secondsPerOrder = 0;
    std::int64_t secondsPerProfile = 0; ///< to set up slitter and folder
    std::int64_t secondsPerPiece = 0;
    std::int64_t secondsPerBend = 0; ///< of every piece; a hem is two

    friend bool operator==(const LabourTimes&, const LabourTimes&) = default;
};

/// A shop's own rates. Money is whole cents (hundredths of the currency).
struct CostRates {
    std::string currency; ///< as it is printed: "USD"
    std::vector<MaterialRate> materials;
    /// Of the blanks' metal, added for what cutting loses.
    std::int64_t wastePercent = 0;
    std::int64_t centsPerHour = 0;
    LabourTimes labour;
    /// Added to the sum; hundredths of a percent: 825 is 8.25 %.
    std::int64_t taxHundredths = 0;
    std::string note; ///< printed below the sum

    friend bool operator==(const CostRates&, const CostRates&) = default;
};

} // namespace lapwright::schedule
