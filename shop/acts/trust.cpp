#include "acts/trust.h"

#include "storage/tablets.h"

#include <algorithm>
#include <cctype>
#include <vector>

namespace lapwright::acts {

namespace {

/// Letters and digits of a code as typed: case and dashes do not count.
std::string plain(const std::string& code)
{
    std::string letters;
    for (const char letter : code)
        if (std::isalnum(static_cast<unsigned char>(letter)) != 0)
            letters += static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    return letters;
}

/// Keys of tablets that are paired, and of those whose orders wait.
std::vector<documents::PublicKey> keysSeen(const storage::Database& database)
{
    std::vector<documents::PublicKey> keys;
    for (const storage::Tablet& tablet : storage::tablets(database))
        if (const auto key = documents::readPublicKey(tablet.key); key.ok())
            keys.push_back(*key);
    for (const std::string& document : storage::waitingDocuments(database)) {
        const auto signature = documents::checkSignature(document);
        if (signature.ok() && signature->key && signature->holds)
            keys.push_back(*signature->key);
    }
    return keys;
}

} // namespace

Result<std::optional<std::string>> distrust(const storage::Database& database, const std::string& text)
{
    using Doubt = std::optional<std::string>;
    const auto signature = documents::checkSignature(text);
    if (!signature.ok())
        return signature.errors();
    if (signature->key && !signature->holds)
        return Doubt("it was changed after a tablet signed it");
    const std::vector<storage::Tablet> known = storage::tablets(database);
    if (known.empty())
        return Doubt();
    if (!signature->key)
        return Doubt("no tablet signed it");
    const std::string code = documents::pairingCode(*signature->key);
    const std::string key = documents::write(*signature->key);
    const auto tablet = std::find_if(known.begin(), known.end(),
                                     [&key](const storage::Tablet& one) { return one.key == key; });
    if (tablet == known.end())
        return Doubt("it is signed by a tablet this shop does not know, whose code is " + code);
    if (!tablet->revokedAt.empty())
        return Doubt("it is signed by " + tablet->name + " (" + code +
                     "), which is trusted no longer since " + tablet->revokedAt);
    return Doubt();
}

Result<documents::PublicKey> keyNamed(const storage::Database& database, const std::string& name)
{
    if (const auto key = documents::readPublicKey(name); key.ok())
        return *key;
    for (const documents::PublicKey& key : keysSeen(database))
        if (plain(documents::pairingCode(key)) == plain(name))
            return key;
    return Error{name, "no tablet of this code",
                 "64 hexadecimal digits, or the code of a tablet that is paired or whose order waits"};
}

} // namespace lapwright::acts
