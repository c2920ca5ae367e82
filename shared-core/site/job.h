#pragma once

#include "site/chain.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::site {

/// How a run longer than the piece limit is divided.
enum class PiecePolicy {
    FullAndRemainder, ///< as many full lengths as fit, then the rest; the last two share if the rest is too
                      ///< short
    EqualLengths,
    StockLengths ///< full lengths from stock, cut on site by a cutting guide
};

/// Metal, gauge and colour that trim is ordered in.
struct Material {
    std::string metal; ///< metal::Metal::id
    std::string gauge; ///< metal::Sheet::gauge
    std::string colour;

    friend auto operator<=>(const Material&, const Material&) = default;
};

/// What limits the length of one piece, by reason. The thermal limit comes from the rules.
struct PieceLimits {
    Length foldingLength = Length::inches(126); ///< bending length of the shop's folder
    std::optional<Length> stockLength;
    std::optional<Length> transportLength;
    Length shortestPiece = Length::inches(12);

    friend bool operator==(const PieceLimits&, const PieceLimits&) = default;
};

/// A reason given for going on in spite of a warning; it travels with the order.
struct Acknowledgement {
    std::string code;  ///< Finding::code
    std::string place; ///< Finding::place
    std::string reason;

    friend bool operator==(const Acknowledgement&, const Acknowledgement&) = default;
};

/// A photo of a run, or of what a finding says about one.
struct Photo {
    std::string sha256; ///< of the JPEG file, 64 hexadecimal digits in lower case
    std::string place;  ///< as Finding::place names a run: "run E3"
    std::string code;   ///< Finding::code; empty for a photo of the run itself

    friend bool operator==(const Photo&, const Photo&) = default;
};

/// How far the measures of a house may disagree before it is a finding.
struct Tolerance {
    Length closure = Length::sixtyFourths(16); ///< 1/4 in
    std::int64_t perimeterShare = 500;         ///< plus one part in so many of the perimeter
    Angle perCorner = Angle::degrees(1.0);
    Length derived = Length::inches(1);        ///< between a measured and a derived length of one run
    Length repeats = Length::sixtyFourths(32); ///< spread of repeated measures of one run

    friend bool operator==(const Tolerance&, const Tolerance&) = default;
};

/// One building at one address for one customer, as measured.
struct Job {
    std::string id; ///< UUID
    std::string name;
    std::string customer;
    std::string address;
    std::string wantedBy; ///< ISO 8601 date, or empty
    std::string measuredBy;
    Material material;
    PieceLimits limits;
    PiecePolicy policy = PiecePolicy::FullAndRemainder;
    /// Ids of the rule sets to check against.
    std::vector<std::string> ruleSets;
    Tolerance tolerance;
    /// Wind velocity pressure at the building, pounds per square foot, as its engineer or the code's map
    /// gives it.
    std::optional<std::int64_t> velocityPressurePsf;
    /// Spare pieces per profile.
    std::int64_t spares = 0;
    std::vector<Chain> chains;
    std::vector<Acknowledgement> acknowledgements;
    std::vector<Photo> photos;

    friend bool operator==(const Job&, const Job&) = default;
};

} // namespace lapwright::site
