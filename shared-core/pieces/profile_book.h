#pragma once

#include "metal/metal.h"
#include "pieces/order.h"
#include "pieces/takeoff.h"
#include "rules/finding.h"
#include "rules/rule_set.h"
#include "trim/girth.h"
#include "trim/template.h"

#include <deque>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::pieces {

/// A trim made to the measures of a run. Runs that give the same measures share it.
struct MadeTrim {
    const trim::Template* trim = nullptr;
    Length lap;
    /// Index of its profile in the book; nothing if it cannot be made, and the findings say why.
    std::optional<std::size_t> profile;
    trim::FlatPattern flat;
    /// Findings about the trim itself; their places are names of legs and measures.
    rules::Findings findings;
    /// What rules may ask about trim, metal and profile, whatever the run.
    rules::Facts facts;
};

/// The metal and sheet an order is made from.
struct SheetOfMetal {
    const metal::Metal* metal = nullptr;
    const metal::Sheet* sheet = nullptr;
};

/// Metal and gauge by name, or a finding that blocks: "pieces.metal.unknown", "pieces.gauge.unknown" (a gauge
/// has no thickness without its metal; the finding names the metals that are sold so, and how thick it is).
[[nodiscard]] SheetOfMetal findMaterial(const site::Material& material, const Catalogue& catalogue,
                                        rules::Findings& findings);

/// "P1" for index 0.
[[nodiscard]] std::string profileId(std::size_t index);

/// The profiles of an order while it is taken off: equal ones are made once and share an id.
class ProfileBook {
public:
    /// Precondition: `sheet` is there.
    ProfileBook(const Catalogue& catalogue, site::Material material, SheetOfMetal sheet);

    /// The trim chosen, made to `angles` and the measures of the choice. The reference stays valid.
    /// Precondition: the catalogue has the trim.
    const MadeTrim& make(const site::TrimChoice& choice, const std::map<trim::AngleMeasure, Angle>& angles);

    [[nodiscard]] const std::vector<OrderedProfile>& profiles() const { return profiles_; }
    [[nodiscard]] std::vector<OrderedProfile> takeProfiles() { return std::move(profiles_); }

private:
    MadeTrim makeNew(const site::TrimChoice& choice, const std::map<trim::AngleMeasure, Angle>& angles);
    std::size_t add(trim::Resolution&& resolution, const trim::FlatPattern& flat, const trim::Template& trim,
                    const site::Material& material, Length lap);

    const Catalogue& catalogue_;
    site::Material material_;
    SheetOfMetal sheet_;
    std::deque<MadeTrim> made_;
    std::map<std::string, std::size_t> madeByInput_;
    std::vector<OrderedProfile> profiles_;
    std::map<std::string, std::size_t> profileByShape_;
};

} // namespace lapwright::pieces
