#include "acts/shop_stock.h"
#include "acts/words.h"
#include "command.h"
#include "documents/shop.h"
#include "input.h"
#include "measure/reading.h"
#include "measure/rounding.h"
#include "results.h"
#include "storage/catalogue.h"

/// `stock`: what is on the racks, what a person counted there, put there and took off.
namespace lapwright::command {

namespace {

std::string amountInWords(const acts::StockRow& row, const Style& style)
{
    const cutting::Stock& stock = row.item.stock;
    const std::string size = write(stock.width, style) + " by " + write(stock.length, style);
    if (stock.kind == cutting::StockKind::Coil)
        return "coil " + write(stock.width, style) + " wide, " + write(stock.length, style) + " left" +
               (row.reserved.length > Length() ? ", " + write(row.reserved.length, style) + " reserved" : "");
    if (stock.kind == cutting::StockKind::Remnant)
        return "remnant " + size + (row.reserved.count > 0 ? ", reserved" : "");
    return (stock.count ? counted(*stock.count, "sheet") : "sheets as needed") + " " + size +
           (row.reserved.count > 0 ? ", " + std::to_string(row.reserved.count) + " reserved" : "");
}

Exit list(const QCommandLineParser& options, const storage::Database& database)
{
    const auto rows = acts::listStock(database);
    if (!rows.ok()) {
        tell(rows.errors());
        return Exit::CouldNot;
    }
    Results results(options);
    for (const acts::StockRow& row : *rows) {
        const cutting::Stock& stock = row.item.stock;
        nlohmann::json value = {{"key", stock.key},
                                {"metal", row.item.material.metal},
                                {"gauge", row.item.material.gauge},
                                {"colour", row.item.material.colour},
                                {"width_mm", inMillimetres(stock.width)},
                                {"length_mm", inMillimetres(stock.length)},
                                {"reserved_count", row.reserved.count},
                                {"reserved_mm", inMillimetres(row.reserved.length)}};
        if (stock.count)
            value["count"] = *stock.count;
        results.add(stock.key + ": " + acts::describe(row.item.material) + ", " +
                        amountInWords(row, styleOf(options)),
                    std::move(value));
    }
    if (rows->empty())
        results.nothing("no stock; `lapwright plan --stock` takes the stock document in");
    results.finish();
    return Exit::Done;
}

/// The count or length given. Errors name the option.
Result<acts::Count> countFrom(const QCommandLineParser& options)
{
    acts::Count counted{argument(options), std::nullopt, std::nullopt, text(options, "note")};
    if (options.isSet("count")) {
        bool isNumber = false;
        counted.count = options.value("count").toLongLong(&isNumber);
        if (!isNumber)
            return Error{"--count", text(options, "count"), "a whole number"};
    }
    if (options.isSet("length")) {
        const auto length = readLength(text(options, "length"), {}).result("--length");
        if (!length.ok())
            return length.errors();
        counted.length = *length;
    }
    return counted;
}

void add(Results& results, const schedule::StockChange& change)
{
    const std::string kind(schedule::name(change.kind));
    results.add(change.key + ": " + kind, {{"key", change.key},
                                           {"kind", kind},
                                           {"count", change.count},
                                           {"length_mm", inMillimetres(change.length)}});
}

/// What is asked for beside what it does not go with, or without the item it is for; empty: all goes
/// together.
std::string contradiction(const QCommandLineParser& options)
{
    const QStringList changes = {"put", "remove", "count", "length"};
    QStringList asked;
    for (const QString& change : changes)
        if (options.isSet(change))
            asked << "--" + change;
    if (asked.size() > 1)
        return asked.join(" and ").toStdString() + ": expected one of them";
    if (!asked.isEmpty() && asked.front() != "--put" && options.positionalArguments().isEmpty())
        return asked.front().toStdString() + ": found no KEY, expected the item that it is for";
    return {};
}

Exit put(const QCommandLineParser& options, const storage::Database& database)
{
    auto item = readFrom(text(options, "put"), documents::readStockItem);
    const auto catalogue = item.ok() ? storage::loadCatalogue(libraryFolders(options))
                                     : Result<pieces::Catalogue>(item.errors());
    if (!catalogue.ok()) {
        tell(catalogue.errors());
        return Exit::BadInput;
    }
    const bool isNamed = !options.positionalArguments().isEmpty();
    const std::string key = isNamed ? argument(options) : item->value.stock.key;
    const auto standing = acts::stockItem(database, key);
    if (!standing.ok()) {
        tell(standing.errors());
        return Exit::CouldNot;
    }
    if (isNamed && !standing->has_value()) {
        tell({schedule::noSuchItem(key)});
        return Exit::BadInput;
    }
    acts::Described described{std::nullopt, *std::move(item)};
    if (standing->has_value())
        described.before = (*standing)->value;
    const auto changes = acts::putOnRacks(database, described, catalogue->metals, stampOf(options));
    if (!changes.ok()) {
        tell(changes.errors());
        return Exit::BadInput;
    }
    Results results(options);
    for (const schedule::StockChange& change : *changes)
        add(results, change);
    if (changes->empty())
        results.nothing(described.item.value.stock.key + ": as it was");
    results.finish();
    return Exit::Done;
}

Exit remove(const QCommandLineParser& options, const storage::Database& database)
{
    const auto gone = acts::takeOffRacks(database, argument(options), stampOf(options));
    if (!gone.ok()) {
        tell(gone.errors());
        return Exit::BadInput;
    }
    Results results(options);
    add(results, *gone);
    results.finish();
    return Exit::Done;
}

Exit correct(const QCommandLineParser& options, const storage::Database& database)
{
    const auto counted = countFrom(options);
    if (!counted.ok()) {
        tell(counted.errors());
        return Exit::BadInput;
    }
    const auto change = acts::correctStock(database, *counted, stampOf(options));
    if (!change.ok()) {
        tell(change.errors());
        return Exit::BadInput;
    }
    Results results(options);
    results.add(
        change->key + ": corrected by " +
            (counted->length ? write(change->length, styleOf(options)) : std::to_string(change->count)),
        {{"key", change->key},
         {"count", change->count},
         {"length_mm", inMillimetres(change->length)},
         {"note", change->note}});
    results.finish();
    return Exit::Done;
}

} // namespace

Subcommand stockCommand()
{
    return {
        "stock",
        "[KEY]",
        "list the stock with what waiting plans reserve, or change one item",
        "Without KEY every sheet, coil and remnant with what is left and what plans that wait to be cut will take. "
        "With KEY what a person counted there: --count of sheets or of a remnant, --length of a coil. --put puts an "
        "item on the racks, in place of KEY, or without KEY of the one of its own key if there is such; --remove takes "
        "KEY off. "
        "An item that a waiting plan cuts from keeps all but its amount. Each change is logged.",
        {databaseOption(),
         {"put", "An item as an entry of a stock document describes it.", "ITEM"},
         {"remove", "It stands on the racks no more."},
         libraryOption(),
         {"count", "How many there are.", "NUMBER"},
         {"length", "How much is left on the coil.", "LENGTH"},
         {"note", "Why it is corrected.", "TEXT"},
         stationOption(),
         personOption()},
        0,
        1,
        [](const QCommandLineParser& options) {
            if (const std::string why = contradiction(options); !why.empty()) {
                tell(why);
                return Exit::BadInput;
            }
            return inShop(options, [&](const storage::Database& database) {
                if (options.isSet("put"))
                    return put(options, database);
                if (options.positionalArguments().isEmpty())
                    return list(options, database);
                return options.isSet("remove") ? remove(options, database) : correct(options, database);
            });
        }};
}

} // namespace lapwright::command
