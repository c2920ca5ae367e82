#include "trim/profile_checks.h"

#include "trim/section.h"

namespace lapwright::trim {

rules::Finding blocking(std::string code, std::string place, Phrase statement, Phrase remedy)
{
    return {rules::Weight::Blocks, std::move(code),   std::move(place),
            std::move(statement),  std::move(remedy), std::nullopt};
}

rules::Findings checkFoldable(const Profile& profile, Length thickness)
{
    rules::Findings findings;
    const Result<std::optional<Crossing>> crossing = findCrossing(profile, thickness);
    if (!crossing) {
        for (const Error& error : crossing.errors())
            findings.push_back(
                blocking("trim.leg.unfoldable", error.place,
                         {"{part} is {found}; it must be {expected}",
                          {{"part", error.place}, {"found", error.found}, {"expected", error.expected}}},
                         {"Make it longer, or the bends beside it less sharp", {}}));
    } else if (*crossing) {
        findings.push_back(blocking("trim.section.crossing", (*crossing)->second,
                                    {"{first} and {second} would lie in one another",
                                     {{"first", (*crossing)->first}, {"second", (*crossing)->second}}},
                                    {"Shorten one of them or change a turn between them", {}}));
    }
    return findings;
}

} // namespace lapwright::trim
