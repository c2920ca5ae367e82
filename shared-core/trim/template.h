#pragma once

#include "measure/derivation.h"
#include "measure/result.h"
#include "rules/finding.h"
#include "site/run.h"
#include "trim/profile.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lapwright::trim {

/// A measure a template asks for: a length by name, with its limits and what it is if nobody says.
struct MeasureDeclaration {
    std::string name; ///< "fascia_height"
    std::string label;
    std::optional<Length> byDefault; ///< must be given if there is none
    Length least;
    Length most;
};

/// An angle a template may use; the run it is put on supplies it.
enum class AngleMeasure {
    Slope,      ///< θ of the run's plane
    OtherSlope, ///< θ of the other plane
    WallTurn,   ///< 180° − interior angle of a wall corner
    CreaseTurn  ///< turn of a hip (−) or valley (+) crease from the slopes and the plan corner
};

/// constant + Σ coefficient × measure.
struct LengthExpression {
    Length constant;
    std::vector<std::pair<double, std::string>> terms;
};
struct AngleExpression {
    Angle constant;
    std::vector<std::pair<double, AngleMeasure>> terms;
};

struct LegTemplate {
    std::string name;
    std::string label;
    LengthExpression length;
    Length least;
    Length most;
    std::optional<Length> roundUpTo;
    /// Number of the clause that sets `least`, if one does.
    std::string rule;
    /// Where the value stands, for the derivation and the finding.
    std::string source;
};

struct BendTemplate {
    AngleExpression turn;
    Angle least; ///< of the signed turn
    Angle most;
    std::optional<Length> insideRadius; ///< the metal's own if not given
    std::string source;
};

struct HemTemplate {
    HemKind kind = HemKind::Closed;
    Length flat;
    Side side = Side::Left;
    std::optional<Length> insideRadius; ///< if not given, 0 for a closed hem, else the metal's own
};

/// How pieces of this trim follow one another and are fixed.
struct Installation {
    Length lap;
    std::string lapRule;
    Length mitreClearance;
    Length wrapTab;
    Length closedEnd;
    Length turnUp;
    std::optional<Length> fastenerSpacing;
    std::int64_t fastenerRows = 1;
    /// The clause that sets the spacing and rows of fasteners or cleats, or where they come from.
    std::string fixingRule;
    /// Held by cleats hooked to its edges, each edge a row.
    std::optional<Length> cleatSpacing;
    std::int64_t cleatRows = 1;
    bool sealedLaps = false;
    /// Pieces by course (step flashing): piece length = exposure + this head lap.
    std::optional<Length> courseHeadLap;
};

/// A trim as data (trim-library/*.json).
struct Template {
    std::string id;
    std::string name;
    std::string note;
    std::vector<site::RunKind> suits;
    std::vector<MeasureDeclaration> measures;
    std::vector<LegTemplate> legs;
    std::vector<BendTemplate> bends;
    std::optional<HemTemplate> startHem;
    std::optional<HemTemplate> endHem;
    Side colourFace = Side::Left;
    /// Direction of the first leg in the section.
    AngleExpression firstDirection;
    /// Which mould-line point of the path stands at (anchorX, anchorY), from the measured line: 0 the start,
    /// i the apex after the i-th leg, legs.size() the end.
    std::size_t anchorPoint = 0;
    LengthExpression anchorX;
    LengthExpression anchorY;
    Installation installation;
    /// Left and right pieces differ (their ends do).
    bool handed = false;
};

/// How far each piece covers the one before: as a person set it, or the trim's own.
[[nodiscard]] inline Length lapOf(const Template& trim, const site::TrimChoice& choice)
{
    return choice.lap.value_or(trim.installation.lap);
}

/// What a run supplies to a template.
struct Site {
    std::map<std::string, Length> measures;
    std::map<AngleMeasure, Angle> angles;
    std::map<std::string, Length> legs; ///< set by hand
    /// Of the metal and gauge chosen (ownInsideRadius in girth.h); common trim steel until one is chosen.
    Length thickness = Length::thousandths(24);
    Length insideRadius = Length::thousandths(24);
};

/// A template put on a run: the profile with how each leg and turn came about, or findings that say why not.
struct Resolution {
    std::optional<Profile> profile;
    std::vector<Derivation> legDerivations;
    std::vector<Derivation> bendDerivations;
    rules::Findings findings;
};

/// Resolves `trim` with what the run supplies. Findings, by code; places are the names of legs and measures:
/// blocking: trim.measure.missing, trim.measure.range, trim.angle.missing, trim.angle.range, trim.bend.flat
/// (a turn under 1°), trim.leg.unfoldable (no flat left between its bends), trim.section.crossing,
/// trim.template (the template contradicts itself); warning: trim.leg.short, trim.leg.long (limits of the
/// template, with the clause), trim.measure.unknown, trim.leg.unknown (given, but the trim has none of that
/// name). There is a profile exactly when nothing blocks.
[[nodiscard]] Resolution resolve(const Template& trim, const Site& site);

} // namespace lapwright::trim
