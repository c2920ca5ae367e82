#include "rules/facts.h"

namespace lapwright::rules {

std::optional<FactType> factType(std::string_view name)
{
    for (const FactName& known : factNames)
        if (known.name == name)
            return known.type;
    for (std::string_view family : factFamilies)
        if (name.size() > family.size() && name.substr(0, family.size()) == family)
            return FactType::Length;
    return std::nullopt;
}

std::string_view meaningOf(std::string_view name)
{
    for (const FactName& known : factNames)
        if (known.name == name)
            return known.meaning;
    return name;
}

FactType typeOf(const Fact& fact)
{
    constexpr std::array<FactType, 6> byAlternative{FactType::Text,   FactType::YesNo, FactType::Count,
                                                    FactType::Length, FactType::Angle, FactType::Slope};
    static_assert(std::variant_size_v<Fact> == byAlternative.size());
    return byAlternative.at(fact.index());
}

} // namespace lapwright::rules
