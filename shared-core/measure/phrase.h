#pragma once

#include "measure/angle.h"
#include "measure/length.h"
#include "measure/mass.h"
#include "measure/slope.h"

#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace lapwright {

/// A sentence for a person with its values still typed: `text` is English with {names}, which is also the key
/// a translation is looked up by; the values are put in when it is shown, in the units of whoever reads it.
///
/// Phrase{"{run} measures {measured}, the roof says {derived}", {{"run", "E3"}, {"measured", a}, {"derived",
/// b}}}
struct Phrase {
    using Value = std::variant<std::string, Length, Angle, Slope, std::int64_t, double, Mass>;

    std::string text;
    std::vector<std::pair<std::string, Value>> values;

    friend bool operator==(const Phrase&, const Phrase&) = default;
};

} // namespace lapwright
