#pragma once

#include "measure/result.h"

#include <array>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

/// Signatures of documents: Ed25519 (RFC 8032) over the canonical text, carried in the document's own member
/// "signature". They say which tablet made a document and that nobody changed it since; nothing is encrypted.
namespace lapwright::documents {

struct PublicKey {
    std::array<unsigned char, 32> bytes{};

    friend auto operator<=>(const PublicKey&, const PublicKey&) = default;
};

/// 64 hexadecimal digits in lower case.
[[nodiscard]] std::string write(const PublicKey& key);
/// Error: not 64 hexadecimal digits in lower case.
[[nodiscard]] Result<PublicKey> readPublicKey(std::string_view text);

/// What two people read to each other when a tablet is paired: twelve digits and letters in three groups,
/// "K7QD-2M4X-9TPR", the first 60 bits of the key's SHA-256. Without I, L, O and U, which are misread.
[[nodiscard]] std::string pairingCode(const PublicKey& key);

/// A tablet's secret; leaves nothing in memory behind it. Made from 32 random bytes, from which it can be
/// made again.
class SigningKey {
public:
    using Seed = std::array<unsigned char, 32>;

    explicit SigningKey(const Seed& seed);
    SigningKey(const SigningKey&) = delete;
    SigningKey& operator=(const SigningKey&) = delete;
    SigningKey(SigningKey&&) = delete;
    SigningKey& operator=(SigningKey&&) = delete;
    ~SigningKey();

    [[nodiscard]] const PublicKey& publicKey() const { return public_; }
    /// 64 bytes over `message`.
    [[nodiscard]] std::array<unsigned char, 64> sign(std::string_view message) const;

private:
    std::array<unsigned char, 64> secret_{};
    PublicKey public_;
};

/// Whether `signature` is that of `key` over `message`.
[[nodiscard]] bool holds(const std::array<unsigned char, 64>& signature, std::string_view message,
                         const PublicKey& key);

/// The document with a signature in place of the one it may have had. Errors: those of parseJson; no object;
/// no text "format", whole number "version" or text "program".
[[nodiscard]] Result<std::string> signDocument(std::string_view text, const SigningKey& key);

/// What the signature of a document is worth by itself; whether its key may be trusted is another question.
struct SignatureCheck {
    /// The key it claims; nothing where the document is not signed.
    std::optional<PublicKey> key;
    /// The key signed exactly this document.
    bool holds = false;
};

/// White space and the sequence of members do not count, everything else does. Errors: those of parseJson; no
/// object; a member "signature" that is none.
[[nodiscard]] Result<SignatureCheck> checkSignature(std::string_view text);

} // namespace lapwright::documents
