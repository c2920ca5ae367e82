#pragma once

#include "fold/machine.h"
#include "fold/planner.h"
#include "measure/rounding.h"
#include "measure/writing.h"
#include "source_directory.h"
#include "trim/girth.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <random>
#include <stdexcept>

namespace foldcases {

using namespace lapwright;

inline Length millimetres(double value)
{
    return nearestFromMillimetres(value);
}

inline fold::Outline outlineFrom(const nlohmann::json& json)
{
    fold::Outline outline;
    for (const auto& point : json)
        outline.push_back({millimetres(point.at(0).get<double>()), millimetres(point.at(1).get<double>())});
    return outline;
}

inline fold::BeamFace faceFrom(const nlohmann::json& json)
{
    return {json.at("name").get<std::string>(), millimetres(json.at("width_mm").get<double>()),
            outlineFrom(json.at("body"))};
}

inline fold::MachineDescription describe(const std::string& id)
{
    std::ifstream file(sourceDirectory() + "/shared-core/machines/" + id + ".json");
    const nlohmann::json json = nlohmann::json::parse(file);
    fold::MachineDescription m;
    const auto length = [&json](const char* key) { return millimetres(json.at(key).get<double>()); };
    m.id = json.at("id").get<std::string>();
    m.name = json.at("name").get<std::string>();
    m.bendingLength = length("bending_length_mm");
    const auto& capacity = json.at("capacity");
    m.capacity = {capacity.at("metal").get<std::string>(),
                  millimetres(capacity.at("thickness_mm").get<double>()),
                  capacity.at("tensile_strength_mpa").get<double>() * 1e6};
    m.bed = outlineFrom(json.at("bed"));
    m.clamp = outlineFrom(json.at("clamp"));
    m.largestFoldAngle = Angle::degrees(json.at("largest_fold_angle_degrees").get<double>());
    m.clampOpening = length("clamp_opening_mm");
    m.throat = length("throat_mm");
    for (const auto& face : json.at("beam_faces"))
        m.beamFaces.push_back(faceFrom(face));
    if (json.contains("down_folding")) {
        const auto& down = json.at("down_folding");
        m.downFolding = fold::DownFolding{
            faceFrom(down.at("beam")), Angle::degrees(down.at("largest_fold_angle_degrees").get<double>())};
    }
    if (json.contains("back_gauge")) {
        const auto& gauge = json.at("back_gauge");
        m.backGauge = fold::BackGauge{millimetres(gauge.at("least_mm").get<double>()),
                                      millimetres(gauge.at("most_mm").get<double>()),
                                      millimetres(gauge.at("finger_height_mm").get<double>())};
    }
    m.displayStep = length("display_step_mm");
    m.leastLeg = length("least_leg_mm");
    if (json.contains("slides_endways_mm"))
        m.slidesEndways = length("slides_endways_mm");
    m.flattensHems = json.at("flattens_hems").get<bool>();
    m.largestOpenHem = length("largest_open_hem_mm");
    return m;
}

inline fold::Machine machine(const std::string& id)
{
    Result<fold::Machine> made = fold::Machine::make(describe(id));
    if (!made)
        throw std::runtime_error(id + ": " + made.errors().front().sentence());
    return *made;
}

/// The long folder with a clamp no deeper than its nose, under which the sheet meets itself before it meets
/// the clamp.
inline fold::Machine thinClamp()
{
    fold::MachineDescription thin = describe("long-folder-up");
    thin.id = "thin-clamp";
    thin.clamp = {{Length(), Length()},
                  {millimetres(-12), millimetres(8)},
                  {millimetres(-22), millimetres(8)},
                  {millimetres(-22), Length()}};
    return *fold::Machine::make(thin);
}

inline const std::vector<std::string>& machineIds()
{
    static const std::vector<std::string> ids{"hand-brake-8", "long-folder-up", "long-folder-up-down",
                                              "box-and-pan-4"};
    return ids;
}

/// Galvanised steel 26 ga; strength and modulus of ordinary soft sheet, from memory.
inline metal::Metal steel()
{
    metal::Metal metal;
    metal.id = "steel";
    metal.name = "Steel";
    metal.sheets.push_back({"26 ga", Length::micrometres(551), 4.33});
    metal.elasticModulusPascals = 200e9;
    metal.yieldStrengthPascals = 230e6;
    metal.tensileStrengthPascals = 330e6;
    return metal;
}

struct Part {
    double millimetres;
    double turnAfterDegrees;
};

/// A profile from legs and the turns after them (the last leg's turn is not used), radius one thickness.
inline trim::Profile profile(const std::vector<Part>& parts, std::optional<trim::Hem> start = {},
                             std::optional<trim::Hem> end = {})
{
    trim::Profile made;
    made.trim = "free";
    for (std::size_t i = 0; i < parts.size(); ++i) {
        made.legs.push_back({"leg " + std::to_string(i + 1), foldcases::millimetres(parts[i].millimetres)});
        if (i + 1 < parts.size())
            made.bends.push_back({Angle::degrees(parts[i].turnAfterDegrees), Length::micrometres(551)});
    }
    made.startHem = start;
    made.endHem = end;
    return made;
}

inline trim::Hem closedHem(trim::Side side, double flat = 12.7)
{
    return {trim::HemKind::Closed, millimetres(flat), side, Length()};
}

inline Result<fold::Outcome> plan(const trim::Profile& profile, const fold::Machine& machine,
                                  const fold::Settings& settings = {}, Length length = Length::feet(4))
{
    const metal::Metal metal = steel();
    const Result<trim::FlatPattern> flat = trim::flatPattern(profile, metal, metal.sheets.front());
    if (!flat)
        return flat.errors();
    return fold::planFold(profile, *flat, metal, metal.sheets.front(), machine, length, settings);
}

/// An outcome as text, for a failed test.
inline std::string tell(const Result<fold::Outcome>& outcome)
{
    if (!outcome)
        return "error: " + outcome.errors().front().sentence();
    if (const auto* refusal = std::get_if<fold::Refusal>(&*outcome))
        return "refused: " + say(refusal->statement, {LengthUnit::Millimetres, 16, 1});
    std::string text;
    for (const fold::FoldStep& step : std::get<fold::FoldPlan>(*outcome).steps)
        text += "[line " + std::to_string(step.line + 1) + " action " +
                std::to_string(static_cast<int>(step.action)) + " gauge " +
                std::to_string(inMillimetres(step.gaugeDistance)) + " end " +
                std::to_string(static_cast<int>(step.endToGauge)) + " move " +
                std::to_string(static_cast<int>(step.move)) + " angle " +
                std::to_string(step.foldAngle.inDegrees()) + "] ";
    return text;
}

/// A profile of 1 to `most` bends with the lengths, angles and hems of trim, hems now and then.
inline trim::Profile randomProfile(std::mt19937& random, int most, int least = 1)
{
    const auto pick = [&random](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    std::vector<Part> parts;
    const int bends = pick(least, most);
    for (int i = 0; i <= bends; ++i) {
        const double turn = pick(0, 2) == 0 ? pick(15, 120) : 90.0;
        parts.push_back({static_cast<double>(pick(15, 150)), pick(0, 1) == 0 ? turn : -turn});
    }
    std::optional<trim::Hem> start, end;
    if (bends < most && pick(0, 3) == 0)
        start = closedHem(pick(0, 1) == 0 ? trim::Side::Left : trim::Side::Right);
    if (bends + (start ? 1 : 0) < most && pick(0, 3) == 0)
        end = closedHem(pick(0, 1) == 0 ? trim::Side::Left : trim::Side::Right);
    return profile(parts, start, end);
}

/// A long panel edge of small ribs: shallow turns to and fro, which a folder can make in many orders.
inline trim::Profile ribbed(std::mt19937& random, int bends)
{
    std::vector<Part> parts;
    for (int i = 0; i <= bends; ++i) {
        const double turn = 10.0 + static_cast<double>(random() % 25);
        parts.push_back({30.0 + static_cast<double>(random() % 60), random() % 2 == 0 ? turn : -turn});
    }
    return profile(parts);
}

/// Steps of a stair, square or nearly, now and then a kick at the edge: what can be folded from one end on,
/// as far as the machine has room for what is made.
inline trim::Profile stepped(std::mt19937& random, int bends)
{
    std::vector<Part> parts;
    for (int i = 0; i <= bends; ++i) {
        const double turn = random() % 4 == 0 ? 90.0 : 35.0 + static_cast<double>(random() % 50);
        parts.push_back({25.0 + static_cast<double>(random() % 50), i % 2 == 0 ? turn : -turn});
    }
    return profile(parts);
}

/// A profile that is the same from both ends, or of few lengths: gauge settings come again.
inline trim::Profile evenProfile(std::mt19937& random, int bends)
{
    std::vector<Part> parts;
    for (int i = 0; i <= bends; ++i)
        parts.push_back({25.0 * static_cast<double>(1 + random() % 4), random() % 2 == 0 ? 90.0 : -90.0});
    if (random() % 2 == 0)
        for (int i = 0; i <= bends / 2; ++i) {
            parts[static_cast<std::size_t>(bends - i)].millimetres =
                parts[static_cast<std::size_t>(i)].millimetres;
            if (i < bends - 1 - i)
                parts[static_cast<std::size_t>(bends - 1 - i)].turnAfterDegrees =
                    parts[static_cast<std::size_t>(i)].turnAfterDegrees;
        }
    return profile(parts);
}

} // namespace foldcases
