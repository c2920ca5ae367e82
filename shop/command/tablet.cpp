#include "acts/trust.h"
#include "command.h"
#include "results.h"
#include "storage/shop_key.h"
#include "storage/tablets.h"

/// `tablet`: whose signatures the shop goes by.
namespace lapwright::command {

namespace {

void show(const storage::Tablet& tablet, Results& results)
{
    const auto key = documents::readPublicKey(tablet.key);
    const std::string code = key.ok() ? documents::pairingCode(*key) : "";
    results.add(tablet.name + "  " + code + "  paired " + tablet.pairedAt +
                    (tablet.revokedAt.empty() ? "" : ", trusted no longer since " + tablet.revokedAt),
                {{"name", tablet.name},
                 {"code", code},
                 {"key", tablet.key},
                 {"paired_at", tablet.pairedAt},
                 {"revoked_at", tablet.revokedAt}});
}

Exit list(const storage::Database& database, Results& results)
{
    const auto all = storage::tablets(database);
    for (const storage::Tablet& tablet : all)
        show(tablet, results);
    if (all.empty())
        results.nothing("no tablet is paired: orders are taken whoever sends them");
    return Exit::Done;
}

/// The shop's own code, for a person to compare with what a tablet shows.
Exit showShop(const QCommandLineParser& options, const storage::Database& database, Results& results)
{
    const bool renew = options.positionalArguments().size() == 2;
    const documents::PublicKey key = database.write([&] {
        if (renew)
            storage::renewShopKey(database);
        return storage::shopKey(database).publicKey();
    });
    const std::string code = documents::pairingCode(key);
    results.add("this shop  " + code, {{"code", code}, {"key", documents::write(key)}});
    if (renew)
        tell(
            "load lists are signed with this key from now on; tablets trust it once their crew lead compared the "
            "code, and should trust the old one no longer");
    return Exit::Done;
}

Exit act(const QCommandLineParser& options, const storage::Database& database, Results& results)
{
    const std::string what = argument(options);
    if (what == "list")
        return list(database, results);
    if (what == "shop")
        return showShop(options, database, results);
    const auto key = acts::keyNamed(database, argument(options, 1));
    if (!key.ok()) {
        tell(key.errors());
        return Exit::BadInput;
    }
    const std::string digits = documents::write(*key);
    if (what == "pair")
        storage::pairTablet(database, digits, argument(options, 2), stampOf(options));
    else if (!storage::revokeTablet(database, digits, stampOf(options))) {
        tell("lapwright: tablet " + argument(options, 1) + " is not trusted as it is");
        return Exit::BadInput;
    }
    show(*storage::tabletOf(database, digits), results);
    return Exit::Done;
}

bool isUsage(const QStringList& arguments)
{
    const QString& what = arguments.front();
    const auto given = arguments.size();
    return (what == "list" && given == 1) || (what == "pair" && given == 3) ||
           (what == "revoke" && given == 2) ||
           (what == "shop" && (given == 1 || (given == 2 && arguments[1] == "new")));
}

Exit run(const QCommandLineParser& options)
{
    const std::string what = argument(options);
    if (!isUsage(options.positionalArguments())) {
        tell(
            "lapwright: tablet takes list, pair with a code or key and a name, revoke with a code or key, shop, or "
            "shop new");
        return Exit::BadInput;
    }
    return inShop(
        options,
        [&](const storage::Database& database) {
            Results results(options);
            const Exit exit = act(options, database, results);
            results.finish();
            return exit;
        },
        what == "pair" ? storage::WhenMissing::Make : storage::WhenMissing::Refuse);
}

} // namespace

Subcommand tabletCommand()
{
    return {
        "tablet",
        "list|pair|revoke|shop [CODE|KEY|new [NAME]]",
        "say whose orders and receipts are taken without asking, and by which code tablets know this shop",
        "A tablet signs what it sends and shows a code of twelve letters and digits. Once one is paired, an order or "
        "receipt that no paired tablet signed waits for a person, and so does one that was changed on its way, or "
        "comes from a tablet whose trust was taken back because it was lost. CODE is enough where an order of the "
        "tablet waits; KEY is the tablet's public key. The other way about, the shop signs its load lists: `tablet shop` "
        "shows its code, for the crew lead to compare with what the tablet shows when it opens the first one, and "
        "`tablet shop new` makes a new key where the old one may be known to others. Nothing is encrypted.",
        {databaseOption(), stationOption(), personOption()},
        1,
        3,
        run};
}

} // namespace lapwright::command
