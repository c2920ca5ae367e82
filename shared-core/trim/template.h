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
};

struct BendTemplate {
    AngleExpression turn;
    Angle least; ///< of the signed turn
    Angle most;
    std::optional<Length> insideRadius; ///< the metal's own if not given
};

struct HemTemplate {
    HemKind kind = HemKind::Closed;
    Length flat;
    Side side = Side::Left;
    std::optional<Length> insideRadius;
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
    /// Direction of the first leg and position of the path's start, in the section.
    AngleExpression firstDirection;
    LengthExpression startX;
    LengthExpression startY;
    Installation installation;
    /// Left and right pieces differ (their ends do).
    bool handed = false;
};

/// What a run supplies to a template.
struct Site {
    std::map<std::string, Length> measures;
    std::map<AngleMeasure, Angle> angles;
    std::map<std::string, Length> legs; ///< set by hand
};

/// A template put on a run: the profile with how each leg and turn came about, or findings that say why not.
struct Resolution {
    std::optional<Profile> profile;
    std::vector<Derivation> legDerivations;
    std::vector<Derivation> bendDerivations;
    rules::Findings findings;
};

/// Resolves `trim` with what the run supplies. A missing measure or angle, a leg or turn outside its limits,
/// and a section that crosses itself are findings; places are the names of legs and measures.
[[nodiscard]] Resolution resolve(const Template& trim, const Site& site);

} // namespace lapwright::trim
