#pragma once

#include "trim/girth.h"

#include <string>
#include <vector>

/// A profile as one strip of parts and bend lines, hems included: what the flat and the section are both made
/// of.
namespace lapwright::trim {

/// A leg or a hem by its outside length.
struct UnfoldedPart {
    std::string name;
    Length length;
};

struct Unfolded {
    std::vector<UnfoldedPart> parts;
    /// lines[i] stands between parts[i] and parts[i + 1]; positions and deductions are not filled in.
    std::vector<BendLine> lines;
};

/// Start hem, legs, end hem in path order. Errors: see flatPattern.
[[nodiscard]] Result<Unfolded> unfold(const Profile& profile, Length thickness);

/// The flat of part `index` between the tangent lines of its bends, > 0.
[[nodiscard]] Length straightOf(const Unfolded& unfolded, std::size_t index, Length thickness);

/// Too small for the fractions of a tape: written to four decimals of an inch and in millimetres.
[[nodiscard]] std::string writeFine(Length value);

} // namespace lapwright::trim
