#pragma once

#include "measure/rounding.h"
#include "source_directory.h"
#include "trim/template.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

/// The shipped trims as templates, read plainly and without mercy: anything unexpected throws. A reading of
/// its own, so that a mistake in the program's reader and one in a trim cannot hide one another.
namespace trim_library {

using lapwright::Angle;
using lapwright::Length;
using nlohmann::json;

inline Length millimetres(const json& value)
{
    return lapwright::nearestFromMillimetres(value.get<double>());
}

template <class Choice>
Choice choose(const json& value, const std::vector<std::pair<std::string, Choice>>& choices)
{
    for (const auto& [name, choice] : choices)
        if (name == value.get<std::string>())
            return choice;
    throw std::runtime_error("unknown word " + value.dump());
}

inline lapwright::site::RunKind runKind(const json& value)
{
    using Kind = lapwright::site::RunKind;
    return choose<Kind>(value, {{"eave", Kind::Eave},
                                {"rake", Kind::Rake},
                                {"ridge", Kind::Ridge},
                                {"hip", Kind::Hip},
                                {"valley", Kind::Valley},
                                {"headwall", Kind::Headwall},
                                {"sidewall", Kind::Sidewall},
                                {"slope_change", Kind::SlopeChange},
                                {"fascia", Kind::Fascia},
                                {"wall_base", Kind::WallBase},
                                {"outside_corner", Kind::OutsideCorner},
                                {"inside_corner", Kind::InsideCorner},
                                {"opening_head", Kind::OpeningHead},
                                {"opening_sill", Kind::OpeningSill},
                                {"opening_jamb", Kind::OpeningJamb},
                                {"parapet", Kind::Parapet},
                                {"gravel_edge", Kind::GravelEdge}});
}

inline lapwright::trim::Side side(const json& value)
{
    using lapwright::trim::Side;
    return choose<Side>(value, {{"left", Side::Left}, {"right", Side::Right}});
}

inline lapwright::trim::LengthExpression lengthExpression(const json& value)
{
    lapwright::trim::LengthExpression expression;
    expression.constant = millimetres(value.value("constant_mm", json(0)));
    for (const json& term : value.value("plus", json::array()))
        expression.terms.emplace_back(term.at("coefficient").get<double>(),
                                      term.at("measure").get<std::string>());
    return expression;
}

inline lapwright::trim::AngleExpression angleExpression(const json& value)
{
    using lapwright::trim::AngleMeasure;
    lapwright::trim::AngleExpression expression;
    expression.constant = Angle::degrees(value.value("constant_degrees", 0.0));
    for (const json& term : value.value("plus", json::array()))
        expression.terms.emplace_back(
            term.at("coefficient").get<double>(),
            choose<AngleMeasure>(term.at("measure"), {{"slope", AngleMeasure::Slope},
                                                      {"other_slope", AngleMeasure::OtherSlope},
                                                      {"wall_turn", AngleMeasure::WallTurn},
                                                      {"crease_turn", AngleMeasure::CreaseTurn}}));
    return expression;
}

inline std::optional<Length> maybeMillimetres(const json& owner, const char* name)
{
    return owner.contains(name) ? std::optional(millimetres(owner.at(name))) : std::nullopt;
}

inline std::optional<lapwright::trim::HemTemplate> hem(const json& trim, const char* name)
{
    using lapwright::trim::HemKind;
    if (!trim.contains(name))
        return std::nullopt;
    const json& value = trim.at(name);
    return lapwright::trim::HemTemplate{choose<HemKind>(value.at("kind"), {{"closed", HemKind::Closed},
                                                                           {"open", HemKind::Open},
                                                                           {"teardrop", HemKind::Teardrop}}),
                                        millimetres(value.at("flat_mm")), side(value.at("side")),
                                        maybeMillimetres(value, "inside_radius_mm")};
}

inline lapwright::trim::Installation installation(const json& value)
{
    lapwright::trim::Installation install;
    install.lap = millimetres(value.value("lap_mm", json(0)));
    install.lapRule = value.value("lap_rule", std::string());
    install.mitreClearance = millimetres(value.value("mitre_clearance_mm", json(0)));
    install.wrapTab = millimetres(value.value("wrap_tab_mm", json(0)));
    install.closedEnd = millimetres(value.value("closed_end_mm", json(0)));
    install.turnUp = millimetres(value.value("turn_up_mm", json(0)));
    install.fastenerSpacing = maybeMillimetres(value, "fastener_spacing_mm");
    install.fastenerRows = value.value("fastener_rows", std::int64_t{1});
    install.fixingRule = value.value("fixing_rule", std::string());
    install.cleatSpacing = maybeMillimetres(value, "cleat_spacing_mm");
    install.cleatRows = value.value("cleat_rows", std::int64_t{1});
    install.sealedLaps = value.value("sealed_laps", false);
    install.courseHeadLap = maybeMillimetres(value, "course_head_lap_mm");
    return install;
}

inline lapwright::trim::Template read(const json& file)
{
    lapwright::trim::Template trim;
    trim.id = file.at("id").get<std::string>();
    trim.name = file.at("name").get<std::string>();
    trim.note = file.value("note", std::string());
    for (const json& kind : file.at("suits"))
        trim.suits.push_back(runKind(kind));
    for (const json& measure : file.value("measures", json::array()))
        trim.measures.push_back({measure.at("name").get<std::string>(),
                                 measure.at("label").get<std::string>(),
                                 maybeMillimetres(measure, "default_mm"), millimetres(measure.at("least_mm")),
                                 millimetres(measure.at("most_mm"))});
    for (const json& leg : file.at("legs"))
        trim.legs.push_back({leg.at("name").get<std::string>(), leg.at("label").get<std::string>(),
                             lengthExpression(leg.at("length")), millimetres(leg.at("least_mm")),
                             millimetres(leg.at("most_mm")), maybeMillimetres(leg, "round_up_to_mm"),
                             leg.value("rule", std::string()), leg.value("source", std::string())});
    for (const json& bend : file.at("bends"))
        trim.bends.push_back(
            {angleExpression(bend.at("turn")), Angle::degrees(bend.at("least_degrees").get<double>()),
             Angle::degrees(bend.at("most_degrees").get<double>()),
             maybeMillimetres(bend, "inside_radius_mm"), bend.value("source", std::string())});
    trim.startHem = hem(file, "start_hem");
    trim.endHem = hem(file, "end_hem");
    trim.colourFace = side(file.at("colour_face"));
    trim.firstDirection = angleExpression(file.value("first_direction", json::object()));
    trim.anchorPoint = file.value("anchor_point", std::size_t{0});
    trim.anchorX = lengthExpression(file.value("anchor_x", json::object()));
    trim.anchorY = lengthExpression(file.value("anchor_y", json::object()));
    trim.installation = installation(file.value("installation", json::object()));
    trim.handed = file.value("handed", false);
    return trim;
}

inline std::map<std::string, json> files()
{
    std::map<std::string, json> all;
    for (const auto& entry :
         std::filesystem::directory_iterator(sourceDirectory() + "/shared-core/trim-library")) {
        if (entry.path().extension() != ".json")
            continue;
        std::ifstream stream(entry.path());
        all[entry.path().stem().string()] = json::parse(stream);
    }
    return all;
}

inline std::map<std::string, lapwright::trim::Template> trims()
{
    std::map<std::string, lapwright::trim::Template> all;
    for (const auto& [name, file] : files())
        all[name] = read(file);
    return all;
}

} // namespace trim_library
