#pragma once

#include "measure/rounding.h"
#include "pieces/takeoff.h"

#include <cstdint>
#include <random>
#include <string>
#include <utility>
#include <vector>

/// Invented trims, metals and houses for the tests of the take-off.
namespace invented {

using lapwright::Angle;
using lapwright::Length;
using lapwright::Slope;
namespace pieces = lapwright::pieces;
namespace rules = lapwright::rules;
namespace site = lapwright::site;
namespace trim = lapwright::trim;

inline lapwright::metal::Metal metal(std::string id, std::string name,
                                     std::vector<lapwright::metal::Sheet> sheets)
{
    lapwright::metal::Metal made;
    made.id = std::move(id);
    made.name = std::move(name);
    made.sheets = std::move(sheets);
    return made;
}

inline trim::LegTemplate leg(std::string name, Length length)
{
    trim::LegTemplate made;
    made.name = made.label = std::move(name);
    made.length.constant = length;
    made.least = Length::sixtyFourths(16);
    made.most = Length::inches(40);
    return made;
}

inline trim::BendTemplate bend(Angle constant, std::vector<std::pair<double, trim::AngleMeasure>> terms = {})
{
    trim::BendTemplate made;
    made.turn = {constant, std::move(terms)};
    made.least = Angle::degrees(-170);
    made.most = Angle::degrees(170);
    return made;
}

inline trim::Template trimOf(std::string id, std::string name, std::vector<site::RunKind> suits)
{
    trim::Template made;
    made.id = std::move(id);
    made.name = std::move(name);
    made.suits = std::move(suits);
    made.installation.lap = Length::inches(2);
    made.installation.wrapTab = Length::inches(1);
    made.installation.turnUp = Length::inches(3);
    made.installation.fastenerSpacing = Length::inches(12);
    return made;
}

/// Deck 3 in, face 2 in: a drip edge for eaves, its face plumb.
inline trim::Template eaveTrim()
{
    trim::Template made = trimOf("eave-edge", "Eave edge", {site::RunKind::Eave});
    made.legs = {leg("deck", Length::inches(3)), leg("face", Length::inches(2))};
    made.bends = {bend(Angle::degrees(-90), {{1.0, trim::AngleMeasure::Slope}})};
    made.firstDirection = {Angle(), {{-1.0, trim::AngleMeasure::Slope}}};
    made.installation.sealedLaps = true;
    return made;
}

inline trim::Template rakeTrim()
{
    trim::Template made = trimOf("rake-edge", "Rake edge", {site::RunKind::Rake});
    made.legs = {leg("deck", Length::inches(3)), leg("face", Length::inches(4))};
    made.bends = {bend(Angle::degrees(-90))};
    made.handed = true;
    return made;
}

inline trim::Template stepTrim()
{
    trim::Template made = trimOf("step", "Step flashing", {site::RunKind::Sidewall});
    made.legs = {leg("wall", Length::inches(4)), leg("roof", Length::inches(4))};
    made.bends = {bend(Angle::degrees(90))};
    made.firstDirection = {Angle::degrees(-90), {}};
    made.handed = true;
    made.installation.courseHeadLap = Length::inches(2);
    made.installation.fastenerSpacing.reset();
    return made;
}

/// A wall cap: its width is measured.
inline trim::Template capTrim()
{
    trim::Template made = trimOf("cap", "Wall cap", {site::RunKind::Parapet, site::RunKind::GravelEdge});
    made.measures = {
        {"wall_thickness", "Wall thickness", std::nullopt, Length::inches(2), Length::inches(30)}};
    made.legs = {leg("inner", Length::inches(2)), leg("top", Length()), leg("outer", Length::inches(3))};
    made.legs[1].length.terms = {{1.0, "wall_thickness"}};
    made.bends = {bend(Angle::degrees(-90)), bend(Angle::degrees(-90))};
    made.firstDirection = {Angle::degrees(90), {}};
    return made;
}

inline pieces::Catalogue catalogue()
{
    pieces::Catalogue made;
    // 0.0217 in and 0.906 lb/ft²: galvanised sheet gauge, mill table; 1 lb/ft² = 4.8824 kg/m².
    made.metals["galvanised-steel"] =
        metal("galvanised-steel", "Galvanised steel", {{"26 ga", Length::micrometres(551), 4.424}});
    made.metals["stainless-steel"] =
        metal("stainless-steel", "Stainless steel", {{"26 ga", Length::micrometres(476), 3.78}});
    made.metals["copper"] = metal("copper", "Copper", {{"16 oz", Length::micrometres(549), 4.88}});
    made.metals["aluminium"] = metal("aluminium", "Aluminium", {{"0.032 in", Length::micrometres(813), 2.2}});
    for (const trim::Template& each : {eaveTrim(), rakeTrim(), stepTrim(), capTrim()})
        made.trims[each.id] = each;
    return made;
}

inline site::Measured measured(Length length)
{
    return {length, "as tested"};
}

inline site::Run run(std::string id, site::RunKind kind, Length length, const std::string& trimId = {})
{
    site::Run made;
    made.id = std::move(id);
    made.kind = kind;
    made.lengths = {measured(length)};
    made.slope = Slope::twelfths(6);
    if (!trimId.empty())
        made.trims.push_back({trimId, {}, {}, std::nullopt});
    return made;
}

inline site::Job jobOf(std::vector<site::Chain> chains)
{
    site::Job made;
    made.id = "00000000-0000-4000-8000-000000000001";
    made.name = "Invented house";
    made.material = {"galvanised-steel", "26 ga", "slate grey"};
    made.limits.foldingLength = Length::feet(10);
    made.chains = std::move(chains);
    return made;
}

inline site::Chain alone(site::Run single)
{
    site::Chain chain;
    chain.id = "chain-" + single.id;
    chain.name = "Chain " + single.id;
    chain.runs.push_back(std::move(single));
    return chain;
}

/// A gable house 40 ft by 30 ft, 6 in 12, walked counter-clockwise: eave, two rakes, eave, two rakes. Level
/// run under each rake 15 ft, so 15 ft × √1.25 = 16.7705 ft along the slope: 16 ft 9 1/4 in by tape.
inline site::Job gableHouse()
{
    const Length rake = Length::inches(201) + Length::sixtyFourths(16);
    site::Chain chain;
    chain.id = "eaves";
    chain.name = "House edge";
    chain.closed = true;
    chain.runs = {run("E1", site::RunKind::Eave, Length::feet(40), "eave-edge"),
                  run("R1", site::RunKind::Rake, rake, "rake-edge"),
                  run("R2", site::RunKind::Rake, rake, "rake-edge"),
                  run("E2", site::RunKind::Eave, Length::feet(40), "eave-edge"),
                  run("R3", site::RunKind::Rake, rake, "rake-edge"),
                  run("R4", site::RunKind::Rake, rake, "rake-edge")};
    const site::InteriorAngle straight{Angle::degrees(180), "180°"};
    const site::SquareOutside square;
    chain.corners = {square, straight, square, square, straight, square};
    return jobOf({chain});
}

} // namespace invented
