#include "model/load_trust.h"

#include "documents/signature.h"
#include "model/words.h"
#include "store/shops.h"

#include <QCoreApplication>

#include <algorithm>

namespace lapwright::field {

namespace {

using Standing = LoadTrust::Standing;

struct Say {
    Q_DECLARE_TR_FUNCTIONS(LoadTrust)
};

LoadTrust doubtful(const QString& words)
{
    return {Standing::Doubtful, words, {}};
}

LoadTrust ofSigned(const documents::PublicKey& signer, const std::vector<store::KnownShop>& known)
{
    const std::string key = documents::write(signer);
    const QString code = shown(documents::pairingCode(signer));
    if (known.empty())
        return {
            Standing::Offered,
            Say::tr(
                "A shop signed this load list. If the shop shows the same code, %1, trust it: load lists of "
                "anybody else are questioned from then on.")
                .arg(code),
            key};
    const auto shop = std::find_if(known.begin(), known.end(),
                                   [&key](const store::KnownShop& one) { return one.key == key; });
    if (shop == known.end())
        return {
            Standing::Doubtful,
            Say::tr(
                "A shop that this tablet does not trust signed this load list. Its code is %1: compare it "
                "with the one your shop shows.")
                .arg(code),
            key};
    if (!shop->refusedAt.empty())
        return {
            Standing::Doubtful,
            Say::tr("This load list is signed with a key that this tablet trusts no longer, %1.").arg(code),
            key};
    return {Standing::Good, {}, {}};
}

} // namespace

LoadTrust trustIn(const store::Connection& connection, const std::string& loadList)
{
    const auto signature = documents::checkSignature(loadList);
    if (!signature.ok())
        return doubtful(Say::tr("What stands in this load list as its signature is none."));
    if (signature->key && !signature->holds)
        return doubtful(Say::tr("This load list was changed after the shop signed it."));
    const std::vector<store::KnownShop> known = store::knownShops(connection);
    if (signature->key)
        return ofSigned(*signature->key, known);
    return known.empty() ? LoadTrust{} : doubtful(Say::tr("No shop signed this load list."));
}

} // namespace lapwright::field
