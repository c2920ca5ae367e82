#pragma once

#include "measure/reading.h"
#include "metal/metal.h"

#include <map>
#include <string>
#include <string_view>

namespace lapwright::metal {

/// A sheet of one metal. `metal` is Metal::id; empty where only a gauge rule, not a metal in the library,
/// gives the thickness.
struct SheetChoice {
    std::string metal;
    Sheet sheet;

    friend bool operator==(const SheetChoice&, const SheetChoice&) = default;
};

/// Reads what people call a sheet: "26 ga galvanised", "galv 26", "No. 26 galvanized", "16 oz copper", "16
/// oz", "0.032 in aluminum", "0.7 mm zinc", "2.5 lb lead".
///
/// Words name a metal by the beginnings of the words of its name or id, in either spelling (-ized, aluminum).
/// A gauge number without a metal has no thickness: it is ambiguous, with every thickness it might be, by the
/// metals given and by the gauge rules. So is what several metals are sold as. Nonsense: no gauge, a metal
/// that is not there, a gauge it is not sold in; the message lists what there is.
[[nodiscard]] Reading<SheetChoice> findGauge(std::string_view text,
                                             const std::map<std::string, Metal>& metals);

/// The sheet of `metal` that a measured thickness can be: the one whose tolerance takes it in (5 % where the
/// sheet has no tolerance: common practice, no source). Ambiguous if several do, nonsense if none does.
[[nodiscard]] Reading<Sheet> gaugeOfThickness(const Metal& metal, Length measured);

} // namespace lapwright::metal
