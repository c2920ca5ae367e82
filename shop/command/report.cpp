#include "command.h"
#include "results.h"
#include "schedule/civil.h"
#include "storage/reports.h"

#include <QString>

#include <algorithm>
#include <cmath>
#include <map>

/// `report`: what the shop's history says, as comma-separated values (RFC 4180) or JSON.
namespace lapwright::command {

namespace {

using Table = std::vector<nlohmann::ordered_json>;

std::string cell(const nlohmann::ordered_json& value)
{
    if (!value.is_string())
        return value.is_null() ? std::string() : value.dump();
    QString quoted = QString::fromStdString(value.get<std::string>());
    quoted.replace('"', "\"\"");
    return '"' + quoted.toStdString() + '"';
}

void printCsv(const std::vector<std::string>& columns, const Table& table)
{
    std::string line;
    for (const std::string& column : columns)
        line += (line.empty() ? "" : ",") + column;
    printDocument(line + "\r");
    for (const auto& row : table) {
        line.clear();
        for (const std::string& column : columns)
            line += (column == columns.front() ? "" : ",") + cell(row.at(column));
        printDocument(line + "\r");
    }
}

/// Share of the metal taken, to a tenth of a percent.
double percent(double part, double whole)
{
    return whole > 0.0 ? std::round(1000.0 * part / whole) / 10.0 : 0.0;
}

Table yield(const storage::Database& database)
{
    Table table;
    for (const storage::MetalUse& use : storage::metalUse(database))
        table.push_back(
            {{"metal", use.material.metal},
             {"gauge", use.material.gauge},
             {"colour", use.material.colour},
             {"plans", use.plans},
             {"pieces", use.pieces},
             {"stock_m2", use.stockArea},
             {"pieces_m2", use.blankArea},
             {"remnants_m2", use.remnantArea},
             {"yield_percent", percent(use.blankArea, use.stockArea)},
             {"waste_percent", percent(use.stockArea - use.blankArea - use.remnantArea, use.stockArea)}});
    return table;
}

/// Days from the wanted date to the last load, or to today where pieces are still to go; not below nothing.
Table lateness(const storage::Database& database, const std::string& today)
{
    Table table;
    for (const storage::OrderDelivery& one : storage::deliveries(database)) {
        const auto wanted = schedule::readDate(one.order.wantedBy);
        const auto left =
            schedule::readDate(one.toGo > 0 || one.lastLoaded.empty() ? today : one.lastLoaded.substr(0, 10));
        std::int64_t late = 0;
        if (wanted.ok() && left.ok())
            late = std::max<std::int64_t>(0, schedule::daysSinceEpoch(*left) -
                                                 schedule::daysSinceEpoch(*wanted));
        table.push_back({{"order", one.order.id},
                         {"job", one.order.jobName},
                         {"customer", one.order.customer},
                         {"wanted_by", one.order.wantedBy},
                         {"last_loaded", one.lastLoaded},
                         {"unfinished", one.order.unfinished},
                         {"days_late", late}});
    }
    return table;
}

Table remakes(const storage::Database& database)
{
    Table table;
    for (const storage::RemakeCause& cause : storage::remakeCauses(database))
        table.push_back({{"cause", cause.cause},
                         {"note", cause.note},
                         {"events", cause.events},
                         {"pieces", cause.pieces}});
    return table;
}

Exit run(const QCommandLineParser& options)
{
    static const std::map<std::string, std::vector<std::string>> columns = {
        {"yield",
         {"metal", "gauge", "colour", "plans", "pieces", "stock_m2", "pieces_m2", "remnants_m2",
          "yield_percent", "waste_percent"}},
        {"lateness", {"order", "job", "customer", "wanted_by", "last_loaded", "unfinished", "days_late"}},
        {"remakes", {"cause", "note", "events", "pieces"}}};
    const std::string what = argument(options);
    const auto known = columns.find(what);
    if (known == columns.end()) {
        tell("lapwright: report " + what + ", expected yield, lateness or remakes");
        return Exit::BadInput;
    }
    return inShop(options, [&](const storage::Database& database) {
        const Table table = what == "yield"      ? yield(database)
                            : what == "lateness" ? lateness(database, now().substr(0, 10))
                                                 : remakes(database);
        if (options.isSet("json"))
            printDocument(nlohmann::ordered_json(table).dump(2));
        else
            printCsv(known->second, table);
        return Exit::Done;
    });
}

} // namespace

Subcommand reportCommand()
{
    return {
        "report",
        "yield|lateness|remakes",
        "say what the shop's history tells: metal used and wasted, orders late, pieces made again",
        "`report yield` counts the metal of all plans that are cut, by metal, gauge and colour; `report lateness` "
        "the days from each order's wanted date to its last load, or to today where pieces are still to go; "
        "`report remakes` the pieces made once more, by cause. Comma-separated values, or with --json JSON.",
        {databaseOption()},
        1,
        1,
        run};
}

} // namespace lapwright::command
