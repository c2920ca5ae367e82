#include "measure/reading.h"

namespace lapwright {

Phrase sentence(const Misreading& misreading)
{
    Phrase phrase = misreading.expected;
    const bool isMissing = misreading.found.empty();
    phrase.text = (isMissing ? "{entered}: at character {position} expected "
                             : "{entered}: found {found} at character {position}, expected ") +
                  phrase.text;
    phrase.values.emplace_back("entered", misreading.entered);
    phrase.values.emplace_back("position", static_cast<std::int64_t>(misreading.position));
    if (!isMissing)
        phrase.values.emplace_back("found", misreading.found);
    return phrase;
}

Phrase ambiguitySentence(const std::string& entered, const std::vector<std::string>& readings,
                         const std::string& settledBy)
{
    Phrase phrase{"{entered} can be read as ", {{"entered", entered}}};
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const std::string name = "reading" + std::to_string(i + 1);
        phrase.text += (i == 0 ? "{" : " or {") + name + "}";
        phrase.values.emplace_back(name, readings[i]);
    }
    phrase.text += ": " + settledBy;
    return phrase;
}

} // namespace lapwright
