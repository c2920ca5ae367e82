#include "pieces/profile_facts.h"

#include "rules/facts.h"

#include <array>
#include <string_view>
#include <utility>

namespace lapwright::pieces {

namespace {

constexpr std::array<std::pair<std::string_view, const char*>, 9> factsOfLegs{{
    {"deck", "deck_width"},
    {"face", "face_height"},
    {"wall", "wall_height"},
    {"roof", "roof_width"},
    {"first_wing", "roof_width"},
    {"second_wing", "roof_width"},
    {"upper", "roof_width"},
    {"lower", "roof_width"},
    {"joint", "masonry_depth"},
}};

void addLegs(const trim::Profile& profile, rules::Facts& facts)
{
    for (const trim::Leg& leg : profile.legs) {
        facts.emplace("leg." + leg.name, leg.length);
        for (const auto& [name, fact] : factsOfLegs) {
            if (leg.name != name)
                continue;
            const auto [entry, isNew] = facts.emplace(fact, leg.length);
            if (!isNew && leg.length < std::get<Length>(entry->second))
                entry->second = leg.length;
        }
    }
}

void addMeasures(const trim::Template& trim, const site::TrimChoice& choice, rules::Facts& facts)
{
    for (const trim::MeasureDeclaration& asked : trim.measures) {
        const auto given = choice.measures.find(asked.name);
        std::optional<Length> value = asked.byDefault;
        if (given != choice.measures.end())
            value = given->second.value;
        if (!value)
            continue;
        facts.emplace("measure." + asked.name, *value);
        if (rules::factType(asked.name) == rules::FactType::Length)
            facts.emplace(asked.name, *value);
    }
}

} // namespace

rules::Facts profileFacts(const OrderedProfile& ordered, const trim::Template& trim,
                          const site::TrimChoice& choice)
{
    const trim::Installation& how = trim.installation;
    rules::Facts facts{{"trim", trim.id},
                       {"metal", ordered.material.metal},
                       {"gauge", ordered.material.gauge},
                       {"colour", ordered.material.colour},
                       {"thickness", ordered.thickness},
                       {"girth", ordered.girth},
                       {"lap", trim::lapOf(trim, choice)},
                       {"lap_sealed", how.sealedLaps}};
    if (how.fastenerSpacing) {
        facts.emplace("fastener_spacing", *how.fastenerSpacing);
        facts.emplace("fastener_rows", how.fastenerRows);
    }
    if (how.cleatSpacing)
        facts.emplace("cleat_spacing", *how.cleatSpacing);
    if (how.courseHeadLap)
        facts.emplace("head_lap", *how.courseHeadLap);
    addLegs(ordered.profile, facts);
    addMeasures(trim, choice, facts);
    return facts;
}

} // namespace lapwright::pieces
