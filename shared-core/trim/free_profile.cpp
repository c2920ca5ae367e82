#include "trim/free_profile.h"

#include "trim/girth.h"
#include "trim/profile_checks.h"
#include "trim/unfolded.h"

namespace lapwright::trim {

namespace {

std::optional<Hem> hemFrom(const std::optional<HemTemplate>& hem, Length own)
{
    if (!hem)
        return std::nullopt;
    return Hem{hem->kind, hem->flat, hem->side,
               hem->insideRadius.value_or(hem->kind == HemKind::Closed ? Length() : own)};
}

rules::Findings checkCounts(const FreeProfile& typed)
{
    const auto legs = static_cast<std::int64_t>(typed.legs.size());
    const Phrase remedy{"Type a leg, then a turn and a leg for each bend", {}};
    if (typed.legs.empty())
        return {blocking("trim.free.legs", "legs", {"The profile has no leg", {}}, remedy)};
    if (typed.legs.size() > mostFreeLegs)
        return {blocking("trim.free.legs", "legs",
                         {"The profile has {legs} legs; at most {most} are taken",
                          {{"legs", legs}, {"most", static_cast<std::int64_t>(mostFreeLegs)}}},
                         {"Divide it into two profiles", {}})};
    if (typed.turns.size() + 1 != typed.legs.size())
        return {blocking("trim.free.legs", "turns",
                         {"The profile has {turns} turns between {legs} legs",
                          {{"turns", static_cast<std::int64_t>(typed.turns.size())}, {"legs", legs}}},
                         remedy)};
    return {};
}

void checkTurns(const Profile& profile, rules::Findings& findings)
{
    for (std::size_t bend = 0; bend < profile.bends.size(); ++bend) {
        const Angle turn = profile.bends[bend].turn;
        const std::string place = "bend after " + profile.legs[bend].name;
        if (!(magnitude(turn) < halfTurn)) // also catches what is no number
            findings.push_back(
                blocking("trim.angle.range", place,
                         {"The bend after {leg} turns {turn}; a bend turns less than a half turn",
                          {{"leg", profile.legs[bend].name}, {"turn", turn}}},
                         {"Use a hem to double an edge back", {}}));
        else if (magnitude(turn) < leastTurn)
            findings.push_back(blocking("trim.bend.flat", place,
                                        {"The bend after {leg} turns only {turn}: there is nothing to fold",
                                         {{"leg", profile.legs[bend].name}, {"turn", turn}}},
                                        {"Make one leg of the two", {}}));
    }
}

void checkLegs(const Profile& profile, Length least, rules::Findings& findings)
{
    for (const Leg& leg : profile.legs)
        if (leg.length <= Length() || leg.length < least)
            findings.push_back(blocking(
                "trim.leg.short", leg.name,
                {"{leg} is {length}; a folder takes hold of {least} at least",
                 {{"leg", leg.name}, {"length", writeFine(leg.length)}, {"least", writeFine(least)}}},
                {"Make it longer or leave it out", {}}));
}

} // namespace

Length leastLeg(Length thickness, Length insideRadius)
{
    return 2 * thickness + insideRadius;
}

Resolution resolveFree(const FreeProfile& typed, const metal::Metal& metal, const metal::Sheet& sheet)
{
    Resolution result;
    result.findings = checkCounts(typed);
    if (!result.findings.empty())
        return result;
    const Length own = ownInsideRadius(metal, sheet);
    const Length radius = typed.insideRadius.value_or(own);
    Profile profile;
    profile.trim = "free";
    profile.name = typed.name;
    profile.colourFace = typed.colourFace;
    profile.firstDirection = typed.firstDirection;
    profile.startHem = hemFrom(typed.startHem, own);
    profile.endHem = hemFrom(typed.endHem, own);
    for (std::size_t leg = 0; leg < typed.legs.size(); ++leg) {
        profile.legs.push_back(typed.legs[leg]);
        if (profile.legs.back().name.empty())
            profile.legs.back().name = "leg " + std::to_string(leg + 1);
        result.legDerivations.push_back(
            {{"{leg} {length}, as typed",
              {{"leg", profile.legs.back().name}, {"length", typed.legs[leg].length}}},
             "",
             {}});
    }
    for (std::size_t bend = 0; bend < typed.turns.size(); ++bend) {
        profile.bends.push_back({typed.turns[bend], radius});
        result.bendDerivations.push_back(
            {{"bend {number} turns {turn}, as typed",
              {{"number", static_cast<std::int64_t>(bend + 1)}, {"turn", typed.turns[bend]}}},
             "",
             {}});
    }
    checkTurns(profile, result.findings);
    checkLegs(profile, leastLeg(sheet.thickness, radius), result.findings);
    if (result.findings.empty())
        result.findings = checkFoldable(profile, sheet.thickness);
    if (result.findings.empty())
        result.profile = std::move(profile);
    return result;
}

} // namespace lapwright::trim
