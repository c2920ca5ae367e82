#pragma once

#include "acts/stuff.h"
#include "documents/profile.h"
#include "pieces/takeoff.h"
#include "trim/girth.h"

#include <string>

namespace lapwright::command {

/// A profile document with the metal it names and its flat.
struct Unfolded {
    documents::FreeProfile profile;
    acts::Stuff stuff;
    trim::FlatPattern flat;
};

/// Reads the profile document at `path` ("-": standard input) and unfolds it. Errors: those of the reader, a
/// metal or gauge that is not there, a profile with no flat left in a leg.
[[nodiscard]] Result<Unfolded> unfold(const std::string& path, const pieces::Catalogue& catalogue);

} // namespace lapwright::command
