#include "trim/unfolded.h"

#include "measure/writing.h"

#include <cmath>

namespace lapwright::trim {

namespace {

/// Beyond any sheet; keeps every sum far inside 64 bits.
constexpr Length longestPart = Length::millimetres(100'000);
constexpr Length thickest = Length::millimetres(100);

Unfolded layOut(const Profile& profile)
{
    const auto towards = [](Side side) { return side == Side::Left ? halfTurn : -halfTurn; };
    Unfolded flat;
    if (profile.startHem) {
        flat.parts.push_back({"start hem", profile.startHem->flat});
        flat.lines.push_back({Length(), towards(profile.startHem->side), profile.startHem->insideRadius,
                              Length(), BendLine::Kind::StartHem, 0});
    }
    for (std::size_t leg = 0; leg < profile.legs.size(); ++leg) {
        flat.parts.push_back({profile.legs[leg].name, profile.legs[leg].length});
        if (leg < profile.bends.size())
            flat.lines.push_back({Length(), profile.bends[leg].turn, profile.bends[leg].insideRadius,
                                  Length(), BendLine::Kind::Bend, leg});
    }
    if (profile.endHem) {
        flat.lines.push_back({Length(), towards(profile.endHem->side), profile.endHem->insideRadius, Length(),
                              BendLine::Kind::EndHem, 0});
        flat.parts.push_back({"end hem", profile.endHem->flat});
    }
    return flat;
}

std::vector<Error> structuralErrors(const Profile& profile, Length thickness)
{
    if (profile.legs.empty())
        return {{"legs", "none", "at least one leg"}};
    if (profile.bends.size() + 1 != profile.legs.size())
        return {{"bends", std::to_string(profile.bends.size()),
                 std::to_string(profile.legs.size() - 1) + ", one between each two legs"}};
    std::vector<Error> errors;
    if (thickness <= Length() || thickness > thickest)
        errors.push_back({"thickness", writeFine(thickness), "a thickness over 0 and up to 100 mm"});
    for (std::size_t bend = 0; bend < profile.bends.size(); ++bend) {
        const Angle turn = magnitude(profile.bends[bend].turn);
        if (!(turn < halfTurn)) // also catches a turn that is not a number
            errors.push_back({"bend after " + profile.legs[bend].name, write(turn), "less than a half turn"});
    }
    if (!std::isfinite(profile.firstDirection.inRadians()))
        errors.push_back({"first direction", "no number", "an angle"});
    for (const Length start : {profile.startX, profile.startY})
        if (magnitude(start) > longestPart)
            errors.push_back({"start of the path", writeFine(start), "within 100 m of the measured line"});
    const Unfolded flat = layOut(profile);
    for (const BendLine& line : flat.lines)
        if (line.insideRadius < Length() || line.insideRadius > longestPart)
            errors.push_back({"inside radius", writeFine(line.insideRadius), "0 to 100 m"});
    for (const UnfoldedPart& part : flat.parts)
        if (part.length <= Length() || part.length > longestPart)
            errors.push_back({part.name, writeFine(part.length), "a length over 0 and up to 100 m"});
    return errors;
}

} // namespace

std::string writeFine(Length value)
{
    return writeThickness(value, {LengthUnit::Inches}) + " (" +
           writeThickness(value, {LengthUnit::Millimetres}) + ")";
}

Length straightOf(const Unfolded& unfolded, std::size_t index, Length thickness)
{
    Length straight = unfolded.parts[index].length;
    const auto takeSetback = [&](const BendLine& line) {
        straight -= outsideSetback(magnitude(line.turn), line.insideRadius, thickness);
    };
    if (index > 0)
        takeSetback(unfolded.lines[index - 1]);
    if (index < unfolded.lines.size())
        takeSetback(unfolded.lines[index]);
    return straight;
}

Result<Unfolded> unfold(const Profile& profile, Length thickness)
{
    std::vector<Error> errors = structuralErrors(profile, thickness);
    if (!errors.empty())
        return errors;
    Unfolded flat = layOut(profile);
    for (std::size_t index = 0; index < flat.parts.size(); ++index) {
        const Length straight = straightOf(flat, index, thickness);
        if (straight <= Length())
            errors.push_back(
                {flat.parts[index].name, writeFine(flat.parts[index].length),
                 "more than its bends take up, " + writeFine(flat.parts[index].length - straight)});
    }
    if (!errors.empty())
        return errors;
    return flat;
}

} // namespace lapwright::trim
