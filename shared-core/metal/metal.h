#pragma once

#include "measure/angle.h"
#include "measure/length.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::metal {

/// One thickness a metal is sold in.
struct Sheet {
    /// How the trade names it for this metal: "26 ga", "16 oz", "0.032 in", "0.7 mm".
    std::string gauge;
    Length thickness;
    double kilogramsPerSquareMetre = 0.0;
    /// How far a sheet as delivered may be from `thickness`, either way; none if the mill does not say.
    std::optional<Length> thicknessTolerance = std::nullopt;

    friend bool operator==(const Sheet&, const Sheet&) = default;
};

/// How the neutral axis is placed in a bend, as a fraction of the thickness from the inside face.
enum class NeutralAxisRule { ConstantK, Din6935 };

/// A shop's own measured bend deduction for one gauge, fold angle and inside radius; it wins over any
/// formula.
struct MeasuredDeduction {
    std::string gauge;
    Angle foldAngle;
    Length insideRadius;
    Length deduction;

    friend bool operator==(const MeasuredDeduction&, const MeasuredDeduction&) = default;
};

/// A metal as data (metal-library/*.json), with the values the formulas need. The source of each value stands
/// in the file, beside the value.
struct Metal {
    std::string id;   ///< "galvanised-steel"
    std::string name; ///< "Galvanised steel"
    std::vector<Sheet> sheets;
    double elasticModulusPascals = 0.0;
    double yieldStrengthPascals = 0.0;
    double tensileStrengthPascals = 0.0;
    double expansionPerKelvin = 0.0;
    /// Inside radius of a folded bend as a multiple of the thickness.
    double insideRadiusPerThickness = 1.0;
    NeutralAxisRule neutralAxis = NeutralAxisRule::ConstantK;
    double k = 0.44;
    std::vector<MeasuredDeduction> measuredDeductions;
    /// A closed hem cracks the coating or the metal: use an open or teardrop hem.
    bool brittle = false;
    /// Greatest distance between joints that let the metal move; none if no rule sets one.
    std::optional<Length> movementJointSpacing = std::nullopt;
    /// Where each value was read, by the member's name in files: "k", "movement_joint_spacing_mm".
    std::map<std::string, std::string> sources;

    friend bool operator==(const Metal&, const Metal&) = default;
};

/// Where the value of this member was read; empty if the file does not say.
[[nodiscard]] inline std::string sourceOf(const Metal& metal, const std::string& member)
{
    const auto found = metal.sources.find(member);
    return found == metal.sources.end() ? std::string() : found->second;
}

/// The sheet of `metal` sold as `gauge`; null if the metal is not sold so.
[[nodiscard]] inline const Sheet* findSheet(const Metal& metal, const std::string& gauge)
{
    for (const Sheet& sheet : metal.sheets)
        if (sheet.gauge == gauge)
            return &sheet;
    return nullptr;
}

} // namespace lapwright::metal
