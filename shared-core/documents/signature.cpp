#include "documents/signature.h"

#include "documents/envelope.h"
#include "documents/identity.h"

#include <sodium/crypto_sign_ed25519.h>
#include <sodium/utils.h>

#include <algorithm>
#include <cstdint>
#include <span>

namespace lapwright::documents {
namespace {

constexpr std::string_view hexadecimal = "0123456789abcdef";
constexpr std::string_view algorithm = "Ed25519";
/// Ahead of what is signed, so that a signature made here never fits a text signed for something else.
constexpr std::string_view purpose = "Lapwright document\n";

std::string inDigits(std::span<const unsigned char> bytes)
{
    std::string text;
    for (const unsigned char byte : bytes) {
        text += hexadecimal[byte >> 4U];
        text += hexadecimal[byte & 0x0FU];
    }
    return text;
}

/// False if `text` is not as many hexadecimal digits as fill `bytes`.
bool fromDigits(std::string_view text, std::span<unsigned char> bytes)
{
    if (text.size() != 2 * bytes.size())
        return false;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const std::size_t high = hexadecimal.find(text[2 * i]), low = hexadecimal.find(text[2 * i + 1]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return false;
        bytes[i] = static_cast<unsigned char>(high * 16U + low);
    }
    return true;
}

Result<Json> objectIn(std::string_view text)
{
    Result<Json> document = parseJson(text);
    if (document && !document->is_object())
        return Error{"", "no object", "an object"};
    return document;
}

/// What is signed: all of the document but its signature.
std::string messageOf(Json document)
{
    document.erase("signature");
    std::string message(purpose);
    writeJson(document, message);
    return message;
}

std::string textAt(const Json& object, const char* member)
{
    const auto found = object.find(member);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

} // namespace

std::string write(const PublicKey& key)
{
    return inDigits(key.bytes);
}

Result<PublicKey> readPublicKey(std::string_view text)
{
    PublicKey key;
    if (!fromDigits(text, key.bytes))
        return Error{"", "\"" + std::string(text.substr(0, 70)) + "\"",
                     "a key of 64 hexadecimal digits in lower case"};
    return key;
}

std::string pairingCode(const PublicKey& key)
{
    constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    constexpr unsigned letterBits = 5, codeLetters = 12, group = 4;
    const std::string digest =
        sha256(std::string_view(reinterpret_cast<const char*>(key.bytes.data()), key.bytes.size()));
    std::uint64_t bits = 0;
    for (const char digit : digest.substr(0, codeLetters * letterBits / 4))
        bits = bits * 16 + hexadecimal.find(digit);
    std::string code;
    for (unsigned i = 0; i < codeLetters; ++i) {
        if (i > 0 && i % group == 0)
            code += '-';
        code += letters[(bits >> (letterBits * (codeLetters - 1 - i))) & 0x1FU];
    }
    return code;
}

SigningKey::SigningKey(const Seed& seed)
{
    crypto_sign_ed25519_seed_keypair(public_.bytes.data(), secret_.data(), seed.data());
}

SigningKey::~SigningKey()
{
    sodium_memzero(secret_.data(), secret_.size());
}

std::array<unsigned char, 64> SigningKey::sign(std::string_view message) const
{
    std::array<unsigned char, 64> signature{};
    crypto_sign_ed25519_detached(signature.data(), nullptr,
                                 reinterpret_cast<const unsigned char*>(message.data()), message.size(),
                                 secret_.data());
    return signature;
}

bool holds(const std::array<unsigned char, 64>& signature, std::string_view message, const PublicKey& key)
{
    return crypto_sign_ed25519_verify_detached(signature.data(),
                                               reinterpret_cast<const unsigned char*>(message.data()),
                                               message.size(), key.bytes.data()) == 0;
}

Result<std::string> signDocument(std::string_view text, const SigningKey& key)
{
    const Result<Json> document = objectIn(text);
    if (!document)
        return document.errors();
    const auto version = document->find("version");
    const std::string format = textAt(*document, "format"), program = textAt(*document, "program");
    if (format.empty() || program.empty() || version == document->end() || !version->is_number_integer())
        return Error{"", "no format, version or program", "a document with all three"};

    std::map<std::string, std::string> written;
    for (const auto& [name, value] : document->items())
        if (name != "format" && name != "version" && name != "program" && name != "signature")
            writeJson(value, written[name]);
    const Json signature = {{"algorithm", algorithm},
                            {"key", write(key.publicKey())},
                            {"value", inDigits(key.sign(messageOf(*document)))}};
    writeJson(signature, written["signature"]);
    const Kind kind{format, version->get<std::int64_t>(), {}, program, {}};
    return closeDocument(kind, Members(written.begin(), written.end()), {}, Layout::Readable);
}

Result<SignatureCheck> checkSignature(std::string_view text)
{
    const Result<Json> document = objectIn(text);
    if (!document)
        return document.errors();
    const auto signature = document->find("signature");
    if (signature == document->end())
        return SignatureCheck{};
    if (!signature->is_object() || textAt(*signature, "algorithm") != algorithm)
        return Error{"/signature", "no signature of this program",
                     "an object with \"algorithm\": \"Ed25519\", \"key\" and \"value\""};
    const Result<PublicKey> key = readPublicKey(textAt(*signature, "key"));
    if (!key)
        return key.errorsWithin("/signature/key");
    std::array<unsigned char, 64> value{};
    if (!fromDigits(textAt(*signature, "value"), value))
        return Error{"/signature/value", "no signature", "128 hexadecimal digits in lower case"};
    return SignatureCheck{*key, holds(value, messageOf(*document), *key)};
}

} // namespace lapwright::documents
