#pragma once

#include "measure/length.h"

#include <optional>

/// The rules that generate gauge tables. A gauge number alone has no thickness: which rule applies depends on
/// the metal.
namespace lapwright::metal {

/// Gauge numbers run from 7/0 (-6) over 1/0 (0) and 1 upwards to thin.
inline constexpr int usStandardThickest = -6;
inline constexpr int usStandardThinnest = 38;

/// Weight of US Standard gauge sheet, in quarters of an ounce per square foot (all of the statute's weights
/// are whole quarters). None outside 7/0 … 38. Source: 15 U.S.C. 206 (Act of 3 March 1893).
[[nodiscard]] std::optional<int> usStandardQuarterOunces(int gauge);

/// US Standard gauge, used for stainless steel: inches = pounds per square foot / 40. Nearest nanometre.
/// Source: 15 U.S.C. 206, whose thicknesses follow iron of 480 pounds per cubic foot.
[[nodiscard]] std::optional<Length> usStandardThickness(int gauge);

/// Manufacturers' Standard Gauge, uncoated steel sheet: inches = pounds per square foot / 41.82, rounded to
/// 0.0001 in. Gauges 3 … 38. Source of the rule: offroaders.com/tech/sheet-metal-gauge-thickness.htm.
[[nodiscard]] std::optional<Length> manufacturersStandardThickness(int gauge);

/// Galvanised sheet gauge: the US Standard weight and 2.5 ounces of zinc, / 41.82, rounded to 0.0001 in.
/// Gauges 8 … 32. Source: from memory; it gives the table at
/// greaseralley.com/2010/12/09/sheet-metal-gauge-chart.
[[nodiscard]] std::optional<Length> galvanisedThickness(int gauge);

/// American wire (Brown & Sharpe) gauge, used for aluminium and copper alloys: inches = 0.005 × 92^((36 − n)
/// / 39), rounded to 0.0001 in. Gauges 4/0 (-3) … 40. Source: ASTM B258 (from memory).
[[nodiscard]] std::optional<Length> americanWireThickness(int gauge);

/// Sheet copper by weight: inches = oz / 16 / 144 / 0.322, rounded to 0.0001 in. 1 … 1 000 ounces per square
/// foot. Source: density 0.322 lb per cubic inch, Copper Development Association, Copper in Architecture
/// Design Handbook, Table 1.1A.
[[nodiscard]] std::optional<Length> copperThickness(int ouncesPerSquareFoot);

/// Kilograms per square metre of a weight in quarters of an ounce per square foot.
[[nodiscard]] double surfaceMass(int quarterOuncesPerSquareFoot);

} // namespace lapwright::metal
