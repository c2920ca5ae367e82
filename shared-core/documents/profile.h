#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "site/job.h"
#include "trim/profile.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::documents {

/// A cross-section typed leg by leg, with the metal it is folded from and, if it is known, how long the piece
/// is.
struct FreeProfile {
    trim::Profile profile;
    site::Material material;
    std::optional<Length> length;

    friend bool operator==(const FreeProfile&, const FreeProfile&) = default;
};

using ProfileDocument = Document<FreeProfile>;

/// A free profile (lapwright/profile). Errors: those of openDocument; not one bend between each two legs.
[[nodiscard]] Result<ProfileDocument> readProfile(std::string_view text);
[[nodiscard]] std::string writeProfile(const ProfileDocument& profile, Layout layout = Layout::Readable);

} // namespace lapwright::documents
