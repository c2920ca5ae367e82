#pragma once

#include "measure/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Files in a ZIP, from and to memory.
namespace lapwright::parcel {

struct ZippedFile {
    std::string name;
    std::string bytes;
};

/// How many bytes a file of that name may have; negative for a name that does not belong there.
using SizeAllowed = std::int64_t (*)(std::string_view name);

/// The files of a ZIP in its own sequence; folders are passed over. Stops at the first name that does not
/// belong, at a file longer than allowed, at more than `mostFiles` entries or `mostBytes` together, whatever
/// the ZIP says of its own sizes. Errors name the file inside.
[[nodiscard]] Result<std::vector<ZippedFile>> readZip(std::string_view zip, SizeAllowed sizeAllowed,
                                                      std::size_t mostFiles, std::int64_t mostBytes);

/// The ZIP of these files; `deflated` says of each name whether it is worth compressing. Its times are those
/// of no clock: the same files give the same bytes.
[[nodiscard]] Result<std::string> writeZip(const std::vector<ZippedFile>& files,
                                           bool (*deflated)(std::string_view name));

} // namespace lapwright::parcel
