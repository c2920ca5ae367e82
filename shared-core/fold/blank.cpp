#include "fold/blank.h"

#include "fold/springback.h"
#include "measure/rounding.h"
#include "measure/writing.h"

#include <algorithm>

namespace lapwright::fold {

namespace {

std::vector<Error> misfits(const trim::Profile& profile, const trim::FlatPattern& flat,
                           const metal::Sheet& sheet)
{
    std::vector<Error> errors;
    const std::size_t hems = (profile.startHem ? 1U : 0U) + (profile.endHem ? 1U : 0U);
    if (flat.lines.size() != profile.bends.size() + hems)
        errors.push_back({"flat", std::to_string(flat.lines.size()) + " bend lines",
                          std::to_string(profile.bends.size() + hems) + ", those of the profile"});
    if (sheet.thickness <= Length() || sheet.thickness > Length::millimetres(100))
        errors.push_back(
            {"thickness", std::to_string(inMillimetres(sheet.thickness)) + " mm", "over 0 and up to 100 mm"});
    if (flat.girth <= Length() || flat.girth > Length::millimetres(100'000))
        errors.push_back(
            {"girth", std::to_string(inMillimetres(flat.girth)) + " mm", "over 0 and up to 100 m"});
    Length last;
    for (const trim::BendLine& line : flat.lines) {
        if (line.position <= last || line.position >= flat.girth)
            errors.push_back({"flat", "bend lines out of order", "positions that rise from edge to edge"});
        if (!(magnitude(line.turn) >= Angle::degrees(0.01) && magnitude(line.turn) <= halfTurn))
            errors.push_back({"bend", write(line.turn), "a fold angle from 0.01° to 180°"});
        last = line.position;
    }
    return errors;
}

} // namespace

Result<Blank> makeBlank(const trim::Profile& profile, const trim::FlatPattern& flat,
                        const metal::Metal& metal, const metal::Sheet& sheet, const Machine& machine,
                        const Settings& settings)
{
    if (std::vector<Error> errors = misfits(profile, flat, sheet); !errors.empty())
        return errors;
    Blank blank;
    blank.girth = inMillimetres(flat.girth);
    blank.thickness = inMillimetres(sheet.thickness);
    blank.exactGirth = flat.girth;
    for (const trim::BendLine& line : flat.lines) {
        FoldLine fold;
        const Angle angle = magnitude(line.turn);
        fold.position = inMillimetres(line.position);
        fold.hem = line.kind != trim::BendLine::Kind::Bend;
        fold.flap = line.kind == trim::BendLine::Kind::StartHem ? End::Start : End::End;
        // What the deduction leaves of the two setbacks is the flat length that becomes the arc.
        fold.halfAllowance =
            inMillimetres(2 * trim::outsideSetback(angle, line.insideRadius, sheet.thickness) -
                          line.deduction) /
            2.0;
        fold.middleRadius = inMillimetres(line.insideRadius) + blank.thickness / 2.0;
        fold.angle = angle.inRadians();
        fold.side = line.turn > Angle() ? trim::Side::Left : trim::Side::Right;
        if (!fold.hem && line.bend + 1 < profile.legs.size() && !profile.legs[line.bend].name.empty() &&
            !profile.legs[line.bend + 1].name.empty())
            fold.between = profile.legs[line.bend].name + " and " + profile.legs[line.bend + 1].name;
        followArc(fold);
        if (fold.hem) {
            fold.angleToSet = std::clamp(settings.preBend, settings.leastPreBend,
                                         std::max(settings.leastPreBend, machine->largestFoldAngle))
                                  .inRadians();
        } else {
            const std::optional<Angle> set =
                angleToSet(metal, sheet, line.insideRadius, angle, machine, settings);
            if (!set)
                return Error{"metal " + metal.id, "no fold angle that leaves " + write(angle),
                             "a positive modulus and strength, and a radius the metal can be folded to"};
            fold.angleToSet = set->inRadians();
        }
        blank.exactPositions.push_back(line.position);
        blank.lines.push_back(fold);
    }
    return blank;
}

} // namespace lapwright::fold
