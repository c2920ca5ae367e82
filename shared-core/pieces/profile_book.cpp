#include "pieces/profile_book.h"

#include "measure/rounding.h"
#include "measure/writing.h"
#include "pieces/byte_key.h"
#include "pieces/profile_facts.h"

#include <cmath>
#include <utility>

namespace lapwright::pieces {

namespace {

rules::Finding blocking(std::string code, Phrase statement, Phrase remedy)
{
    return {rules::Weight::Blocks, std::move(code),   {},
            std::move(statement),  std::move(remedy), std::nullopt};
}

std::string inputKey(const site::TrimChoice& choice, const std::map<trim::AngleMeasure, Angle>& angles)
{
    ByteKey key;
    key.add(choice.trim).add(choice.colour.value_or(std::string()));
    key.add(static_cast<std::int64_t>(choice.measures.size()));
    for (const auto& [name, measure] : choice.measures)
        key.add(name).add(measure.value);
    key.add(static_cast<std::int64_t>(choice.legs.size()));
    for (const auto& [name, length] : choice.legs)
        key.add(name).add(length);
    key.add(std::int64_t{choice.lap ? 1 : 0}).add(choice.lap.value_or(Length()));
    for (const auto& [name, angle] : angles)
        key.add(static_cast<std::int64_t>(name)).add(angle);
    return key.bytes();
}

void addHem(ByteKey& key, const std::optional<trim::Hem>& hem)
{
    key.add(std::int64_t{hem ? 1 : 0});
    if (hem)
        key.add(static_cast<std::int64_t>(hem->kind))
            .add(hem->flat)
            .add(static_cast<std::int64_t>(hem->side))
            .add(hem->insideRadius);
}

/// Pieces of one shape that lap otherwise are told apart: their profile says how far.
std::string shapeKey(const trim::Profile& profile, const site::Material& material, Length lap)
{
    ByteKey key;
    key.add(profile.trim).add(material.metal).add(material.gauge).add(material.colour).add(lap);
    key.add(static_cast<std::int64_t>(profile.legs.size()));
    for (const trim::Leg& leg : profile.legs)
        key.add(leg.name).add(leg.length);
    for (const trim::Bend& bend : profile.bends)
        key.add(bend.turn).add(bend.insideRadius);
    addHem(key, profile.startHem);
    addHem(key, profile.endHem);
    key.add(static_cast<std::int64_t>(profile.colourFace));
    key.add(profile.firstDirection).add(profile.startX).add(profile.startY);
    return key.bytes();
}

double toThousandths(double value)
{
    return std::round(value * 1'000.0) / 1'000.0;
}

rules::Findings cannotUnfold(const std::vector<Error>& errors)
{
    rules::Findings findings;
    for (const Error& error : errors)
        findings.push_back(blocking("pieces.trim.flat",
                                    {"the trim cannot be laid flat: {error}", {{"error", error.sentence()}}},
                                    {"check the legs, hems and the thickness of the metal", {}}));
    return findings;
}

} // namespace

SheetOfMetal findMaterial(const site::Material& material, const Catalogue& catalogue,
                          rules::Findings& findings)
{
    const auto found = catalogue.metals.find(material.metal);
    if (found == catalogue.metals.end()) {
        std::string known;
        for (const auto& [id, metal] : catalogue.metals)
            known += (known.empty() ? "" : ", ") + id;
        findings.push_back(blocking("pieces.metal.unknown",
                                    {"the job asks for the metal {metal}; known are {known}",
                                     {{"metal", material.metal}, {"known", known}}},
                                    {"choose a metal of the library", {}}));
        return {};
    }
    if (const metal::Sheet* sheet = metal::findSheet(found->second, material.gauge))
        return {&found->second, sheet};
    std::string sold, others;
    for (const metal::Sheet& sheet : found->second.sheets)
        sold += (sold.empty() ? "" : ", ") + sheet.gauge;
    for (const auto& [id, metal] : catalogue.metals)
        if (const metal::Sheet* sheet = metal::findSheet(metal, material.gauge))
            others += (others.empty() ? "" : ", ") + metal.name + " " + writeThickness(sheet->thickness, {});
    findings.push_back(blocking(
        "pieces.gauge.unknown",
        {"{metal} is not sold as {gauge}; it is sold as {sold}; as {gauge} there are: {others}",
         {{"metal", found->second.name},
          {"gauge", material.gauge},
          {"sold", sold},
          {"others", others.empty() ? std::string("none") : others}}},
        {"choose a gauge the metal is sold in; a gauge number means nothing without its metal", {}}));
    return {};
}

std::string profileId(std::size_t index)
{
    std::string id(1, 'P');
    id += std::to_string(index + 1);
    return id;
}

ProfileBook::ProfileBook(const Catalogue& catalogue, site::Material material, SheetOfMetal sheet)
    : catalogue_(catalogue), material_(std::move(material)), sheet_(sheet)
{
}

const MadeTrim& ProfileBook::make(const site::TrimChoice& choice,
                                  const std::map<trim::AngleMeasure, Angle>& angles)
{
    const auto [entry, isNew] = madeByInput_.try_emplace(inputKey(choice, angles), made_.size());
    if (isNew)
        made_.push_back(makeNew(choice, angles));
    return made_[entry->second];
}

MadeTrim ProfileBook::makeNew(const site::TrimChoice& choice,
                              const std::map<trim::AngleMeasure, Angle>& angles)
{
    MadeTrim made;
    made.trim = &catalogue_.trims.at(choice.trim);
    made.lap = trim::lapOf(*made.trim, choice);
    trim::Site site;
    for (const auto& [name, measure] : choice.measures)
        site.measures.emplace(name, measure.value);
    site.angles = angles;
    site.legs = choice.legs;
    site.thickness = sheet_.sheet->thickness;
    site.insideRadius = trim::ownInsideRadius(*sheet_.metal, *sheet_.sheet);
    trim::Resolution resolution = trim::resolve(*made.trim, site);
    made.findings = std::move(resolution.findings);
    if (!resolution.profile)
        return made;
    Result<trim::FlatPattern> flat = trim::flatPattern(*resolution.profile, *sheet_.metal, *sheet_.sheet);
    if (!flat) {
        for (rules::Finding& finding : cannotUnfold(flat.errors()))
            made.findings.push_back(std::move(finding));
        return made;
    }
    made.flat = *std::move(flat);
    site::Material material = material_;
    if (choice.colour)
        material.colour = *choice.colour;
    made.profile = add(std::move(resolution), made.flat, *made.trim, material, made.lap);
    made.facts = profileFacts(profiles_[*made.profile], *made.trim, choice);
    return made;
}

std::size_t ProfileBook::add(trim::Resolution&& resolution, const trim::FlatPattern& flat,
                             const trim::Template& trim, const site::Material& material, Length lap)
{
    const auto [entry, isNew] =
        profileByShape_.try_emplace(shapeKey(*resolution.profile, material, lap), profiles_.size());
    if (!isNew)
        return entry->second;
    OrderedProfile ordered;
    ordered.id = profileId(profiles_.size());
    ordered.profile = *std::move(resolution.profile);
    ordered.material = material;
    ordered.thickness = sheet_.sheet->thickness;
    ordered.girth = flat.girth;
    ordered.kilogramsPerMetre = inMetres(flat.girth) * sheet_.sheet->kilogramsPerSquareMetre;
    ordered.derivations.push_back(flat.derivation);
    for (Derivation& leg : resolution.legDerivations)
        ordered.derivations.push_back(std::move(leg));
    for (Derivation& bend : resolution.bendDerivations)
        ordered.derivations.push_back(std::move(bend));
    if (!trim.installation.courseHeadLap && lap > Length()) {
        const bool ownLap = lap == trim.installation.lap;
        ordered.derivations.push_back({{"each piece laps the one before by {lap}", {{"lap", lap}}},
                                       ownLap ? trim.installation.lapRule : "set by hand",
                                       {}});
    }
    ordered.derivations.push_back(
        {{"{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
          {{"mass", toThousandths(ordered.kilogramsPerMetre)},
           {"girth", flat.girth},
           {"surface", sheet_.sheet->kilogramsPerSquareMetre},
           {"gauge", sheet_.sheet->gauge},
           {"metal", sheet_.metal->name}}},
         {},
         {}});
    profiles_.push_back(std::move(ordered));
    return profiles_.size() - 1;
}

} // namespace lapwright::pieces
