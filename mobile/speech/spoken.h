#pragma once

#include "measure/derivation.h"
#include "measure/phrase.h"

#include <string>

/// What the core says in English, in the language that is spoken (context "core"; tests/tools/core_phrases.py
/// lists what there is to say). Where there is no translation the English stays.
namespace lapwright {

/// The text whole, or, where the core put it together, part by part: "chain front, run E3".
[[nodiscard]] std::string spoken(const std::string& text);

/// The text whole, or as it is: what people may have written themselves is never put together from parts.
[[nodiscard]] std::string spokenWhole(const std::string& text);

/// The sentence, the names among its values (kinds of runs, labels of legs) and its slopes, 6 in 12. What
/// people wrote themselves stays.
[[nodiscard]] Phrase spoken(Phrase phrase);
[[nodiscard]] Derivation spoken(Derivation derivation);

} // namespace lapwright
