#pragma once

#include <array>
#include <string>
#include <string_view>

namespace lapwright::documents {

/// SHA-256 (FIPS 180-4) of `bytes` as 64 hexadecimal digits in lower case.
[[nodiscard]] std::string sha256(std::string_view bytes);

/// A UUID of version 4 (RFC 9562 5.4) in lower case from 16 random bytes; six of their bits are replaced.
[[nodiscard]] std::string uuidFrom(std::array<unsigned char, 16> random);

/// Whether `text` is a UUID as documents carry it: lower case, version 1 to 8, variant of RFC 9562.
[[nodiscard]] bool isUuid(std::string_view text);

} // namespace lapwright::documents
