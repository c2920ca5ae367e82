#include "unfold.h"

#include "input.h"

namespace lapwright::command {

Result<Unfolded> unfold(const std::string& path, const pieces::Catalogue& catalogue)
{
    const auto profile = readFrom(path, documents::readProfile);
    if (!profile.ok())
        return profile.errors();
    const auto stuff = acts::stuffOf(profile->value.material, catalogue.metals);
    if (!stuff.ok())
        return stuff.errorsWithin(nameOf(path));
    auto flat = trim::flatPattern(profile->value.profile, stuff->metal, stuff->sheet);
    if (!flat.ok())
        return flat.errorsWithin(nameOf(path));
    return Unfolded{profile->value, *stuff, *std::move(flat)};
}

} // namespace lapwright::command
