#include "documents/identity.h"

#include <sodium/crypto_hash_sha256.h>

#include <array>

namespace lapwright::documents {

std::string sha256(std::string_view bytes)
{
    constexpr std::string_view hexadecimal = "0123456789abcdef";
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    std::string text;
    for (const unsigned char byte : hash) {
        text += hexadecimal[byte >> 4U];
        text += hexadecimal[byte & 0x0FU];
    }
    return text;
}

} // namespace lapwright::documents
