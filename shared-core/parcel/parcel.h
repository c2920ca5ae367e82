#pragma once

#include "measure/result.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>

/// An order on its way with its photos: one ZIP (PKWARE APPNOTE 6.3) that holds the order document as
/// "order.json" and each photo as "photos/SHA256.jpg". Without photos the order travels as the plain
/// document.
namespace lapwright::parcel {

/// What is taken out of a ZIP at most, far over any order: a bomb costs no more than that.
inline constexpr std::int64_t largestOrder = std::int64_t{64} << 20;
inline constexpr std::int64_t largestPicture = std::int64_t{8} << 20;
inline constexpr std::int64_t largestWhole = std::int64_t{256} << 20;
inline constexpr std::size_t mostPictures = 1000;

struct Parcel {
    /// The text of the order document.
    std::string order;
    /// JPEG files by their SHA-256 (64 hexadecimal digits, lower case).
    std::map<std::string, std::string> pictures;

    friend bool operator==(const Parcel&, const Parcel&) = default;
};

/// The ZIP of an order and its photos; the same parcel gives the same bytes. Errors: more than can be read
/// back (the limits above), or a picture whose name is not its hash.
[[nodiscard]] Result<std::string> pack(const Parcel& parcel);

/// An order as it came, plain or as a ZIP. Every photo is what its name says; one that was altered on the way
/// is left out, as if it were missing. Nothing is written anywhere, no name from inside is ever a path.
/// Errors: no order inside, any other file inside (an order's ZIP holds nothing else), a name twice, beyond
/// the limits, encrypted, damaged.
[[nodiscard]] Result<Parcel> unpack(std::string_view bytes);

/// Whether `bytes` end as a whole plain document or a whole ZIP does: enough to tell a copy that was broken
/// off.
[[nodiscard]] bool endsWhole(std::string_view bytes);

} // namespace lapwright::parcel
