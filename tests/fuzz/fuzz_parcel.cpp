// Any bytes as an order on its way with its photos: refused with errors, or taken out within bounds, and then
// packed and taken out again as the same.
#include "must.h"
#include "parcel/parcel.h"

#include <cstdint>
#include <string_view>

using namespace lapwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    (void)parcel::endsWhole(bytes);
    const auto came = parcel::unpack(bytes);
    if (!came.ok()) {
        must(!came.errors().empty(), "a refusal says why");
        return 0;
    }
    must(came->pictures.size() <= parcel::mostPictures, "no more pictures than are allowed");
    for (const auto& [hash, picture] : came->pictures)
        must(hash.size() == 64 && hash.find_first_not_of("0123456789abcdef") == std::string::npos,
             "no name from inside is a path");
    const auto packed = parcel::pack(*came);
    if (came->pictures.empty() || !packed.ok())
        return 0;
    const auto again = parcel::unpack(*packed);
    must(again.ok() && *again == *came, "what was packed is taken out as the same");
    return 0;
}
