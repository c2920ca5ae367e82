#pragma once

#include "measure/angle.h"
#include "measure/derivation.h"
#include "measure/length.h"
#include "site/chain.h"

#include <cstddef>
#include <optional>

namespace lapwright::site {

/// What the building says about one run: all that its trim and its pieces need.
struct RunGeometry {
    /// The length that counts: measured, else derived from the level run.
    Length length;
    /// Slope angles of the run's plane and of the other plane, where given.
    std::optional<Angle> slope;
    std::optional<Angle> otherSlope;
    /// 180° − interior angle of a wall corner (outside and inside corners): outside +, inside −.
    std::optional<Angle> wallTurn;
    /// Turn of the section where two planes meet: hip and ridge −, valley +, slope change either.
    std::optional<Angle> creaseTurn;
    /// Turn of the chain, 180° − interior angle, at the corner where the run starts and where it ends:
    /// outside +, inside −. Nothing at the ends of an open chain, and where the corner cannot be.
    std::optional<Angle> startCornerTurn;
    std::optional<Angle> endCornerTurn;
    /// How the length came about.
    Derivation derivation;
    /// How the crease or wall turn came about; nothing where there is none.
    std::optional<Derivation> turnDerivation;
};

/// Geometry of `chain.runs[index]`. Nothing while the run has no length, measured or derived; what is missing
/// is told by checkRun (checks.h). Precondition: index < chain.runs.size().
[[nodiscard]] std::optional<RunGeometry> runGeometry(const Chain& chain, std::size_t index);

/// The corner where a run starts or ends. Nothing at the ends of an open chain.
[[nodiscard]] const Corner* cornerAtStart(const Chain& chain, std::size_t index);
[[nodiscard]] const Corner* cornerAtEnd(const Chain& chain, std::size_t index);

} // namespace lapwright::site
