#pragma once

#include "measure/derivation.h"
#include "metal/metal.h"

#include <optional>
#include <string>

/// Joints that let the metal move with the weather.
namespace lapwright::pieces {

/// How far apart movement joints may stand, and what says so.
struct JointInterval {
    Length length;
    std::string clause;
};

/// The interval kept with the metal; nothing if it has none.
[[nodiscard]] std::optional<JointInterval> jointIntervalOf(const metal::Metal& metal);

/// The shorter of two intervals; the first where they are alike.
[[nodiscard]] std::optional<JointInterval> shorter(std::optional<JointInterval> first,
                                                   std::optional<JointInterval> second);

/// How much `length` of the metal grows and shrinks between winter and summer: ΔL = α L ΔT over 100 K.
/// Source: rules of the German plumbers' association (ZVSHK), quoted at baumetall.de: metal outdoors is
/// designed for 100 K, -20 to +80 °C.
[[nodiscard]] Derivation explainMovement(const metal::Metal& metal, Length length);

} // namespace lapwright::pieces
