#pragma once

#include <string>
#include <string_view>

namespace lapwright::documents {

/// SHA-256 (FIPS 180-4) of `bytes` as 64 hexadecimal digits in lower case.
[[nodiscard]] std::string sha256(std::string_view bytes);

} // namespace lapwright::documents
