#include "acts/catalogue.h"
#include "acts/words.h"
#include "command.h"
#include "results.h"
#include "storage/catalogue.h"
#include "storage/health.h"
#include "storage/piece_events.h"

#include <QFontDatabase>
#include <QSqlDatabase>
#include <QTemporaryFile>

#include <string>
#include <vector>

/// `check`: whether a shop's database, or this installation, is whole.
namespace lapwright::command {

namespace {

nlohmann::json asJson(const std::vector<Error>& errors)
{
    nlohmann::json list = nlohmann::json::array();
    for (const Error& error : errors)
        list.push_back({{"place", error.place}, {"found", error.found}, {"expected", error.expected}});
    return list;
}

void report(const storage::Health& health, Results& results)
{
    results.add(counted(health.orders, "order revision") + ", " + counted(health.events, "event") + ", " +
                    counted(health.documents, "document") + ": " +
                    (health.sound() ? "all agree" : "not all agree"),
                {{"orders", health.orders},
                 {"events", health.events},
                 {"documents", health.documents},
                 {"damage", asJson(health.damage)},
                 {"miscounts", asJson(health.miscounts)}});
    tell(health.damage);
    tell(health.miscounts);
    if (!health.damage.empty())
        tell(
            "  work on a copy, and go back to a backup where the file or the log is damaged; what is not named here is "
            "as it was written");
    if (!health.miscounts.empty())
        tell("  the log is what counts; `lapwright check --rebuild` makes the counts beside it anew");
}

Exit checkDatabase(const QCommandLineParser& options, const storage::Database& database)
{
    Results results(options);
    storage::Health health = storage::examine(database);
    if (options.isSet("rebuild") && !health.miscounts.empty()) {
        const auto rebuilt = storage::rebuildCounts(database);
        if (!rebuilt.ok()) {
            tell(rebuilt.errors());
            return Exit::Blocked;
        }
        tell("counts made anew from the log: " + std::to_string(health.miscounts.size()) +
             " were not what it tells");
        health = storage::examine(database);
    }
    report(health, results);
    results.finish();
    return health.sound() ? Exit::Done : Exit::Blocked;
}

/// One thing an installation needs, or can do without.
struct Need {
    std::string what;
    bool there = false;
    bool needed = true;
    std::string without; ///< what cannot be done
};

std::vector<Need> needs(const QCommandLineParser& options)
{
    QTemporaryFile scratch;
    return {
        {"trims, metals and rules", storage::loadCatalogue(libraryFolders(options)).ok(), true,
         "no order can be derived"},
        {"machines", acts::loadMachines(libraryFolders(options)).ok(), true,
         "nothing can be planned or folded"},
        {"SQLite driver of Qt", QSqlDatabase::isDriverAvailable("QSQLITE"), true, "no shop can be kept"},
        {"PostgreSQL driver of Qt", QSqlDatabase::isDriverAvailable("QPSQL"), false,
         "no database for several stations (Debian: libqt6sql6-psql)"},
        {"a font", !QFontDatabase::families().isEmpty(), true,
         "nothing can be printed (Debian: fonts-dejavu-core)"},
        {"a temporary folder", scratch.open(), true, "no file can be written whole"},
    };
}

Exit checkInstallation(const QCommandLineParser& options)
{
    Results results(options);
    bool whole = true;
    for (const Need& need : needs(options)) {
        whole = whole && (need.there || !need.needed);
        results.add((need.there ? "there    " : "missing  ") + need.what +
                        (need.there ? "" : ": " + need.without),
                    {{"what", need.what}, {"there", need.there}, {"needed", need.needed}});
    }
    results.finish();
    return whole ? Exit::Done : Exit::Blocked;
}

Exit run(const QCommandLineParser& options)
{
    if (options.isSet("install"))
        return checkInstallation(options);
    return inShop(options,
                  [&](const storage::Database& database) { return checkDatabase(options, database); });
}

} // namespace

Subcommand checkCommand()
{
    return {
        "check",
        "",
        "say whether a shop's database is whole, and what is safe if it is not",
        "Reads everything again: the database's own pages, the log from its beginning against every count, every "
        "document, the hashes of orders and what waiting plans take. Changes nothing unless --rebuild is given. With "
        "--install it looks at this machine instead: what the programs need to run. Exit status 1 if something is "
        "wrong or missing.",
        {databaseOption(),
         {"rebuild", "Make counts that differ anew from the log."},
         {"install", "Say what this machine lacks."},
         libraryOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
