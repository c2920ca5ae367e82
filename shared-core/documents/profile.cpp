#include "documents/profile.h"

#include "documents/describe_profile.h"
#include "documents/describe_site.h"

namespace lapwright::documents {
template <class V, Like<FreeProfile> T>
void describe(V& fields, T& free)
{
    fields("profile", free.profile);
    fields("material", free.material);
    fields("length_mm", free.length);
}

Result<ProfileDocument> readProfile(std::string_view text)
{
    return readDocument<FreeProfile>(text, kinds::profile, [](const FreeProfile& free, Errors& errors) {
        checkProfile(free.profile, "/profile", errors);
    });
}

std::string writeProfile(const ProfileDocument& profile, Layout layout)
{
    return writeDocument(kinds::profile, profile, layout);
}

} // namespace lapwright::documents
