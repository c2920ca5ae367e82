#include "documents/identity.h"

#include <sodium/crypto_hash_sha256.h>

#include <algorithm>
#include <cstddef>

namespace lapwright::documents {
namespace {

constexpr std::string_view hexadecimal = "0123456789abcdef";
constexpr std::array<std::size_t, 4> dashes{8, 13, 18, 23};

void append(unsigned char byte, std::string& text)
{
    text += hexadecimal[byte >> 4U];
    text += hexadecimal[byte & 0x0FU];
}

bool dashAt(std::size_t position)
{
    return std::find(dashes.begin(), dashes.end(), position) != dashes.end();
}

} // namespace

std::string sha256(std::string_view bytes)
{
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    std::string text;
    for (unsigned char byte : hash)
        append(byte, text);
    return text;
}

std::string uuidFrom(std::array<unsigned char, 16> random)
{
    random[6] = static_cast<unsigned char>((random[6] & 0x0FU) | 0x40U);
    random[8] = static_cast<unsigned char>((random[8] & 0x3FU) | 0x80U);
    std::string text;
    for (unsigned char byte : random) {
        if (dashAt(text.size()))
            text += '-';
        append(byte, text);
    }
    return text;
}

bool isUuid(std::string_view text)
{
    constexpr std::size_t length = 36, version = 14, variant = 19;
    if (text.size() != length)
        return false;
    for (std::size_t position = 0; position < length; ++position) {
        const bool hex = hexadecimal.find(text[position]) != std::string_view::npos;
        if (dashAt(position) ? text[position] != '-' : !hex)
            return false;
    }
    const std::string_view variants = "89ab";
    return text[version] >= '1' && text[version] <= '8' &&
           variants.find(text[variant]) != std::string_view::npos;
}

} // namespace lapwright::documents
