#include "acts/shop_stock.h"

#include "acts/standing_document.h"
#include "acts/stuff.h"
#include "acts/words.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <utility>

namespace lapwright::acts {

namespace {

using StockDocument = documents::Document<schedule::ShopStock>;
using ItemDocument = documents::Document<schedule::StockItem>;

constexpr const char* items = "items"; ///< of a stock document

using ReservedByKey = std::map<std::string, schedule::Reserved>;

/// Adds what that plan will take. Error: a plan that does not hold.
Result<bool> reserve(ReservedByKey& reserved, const storage::StoredPlan& stored)
{
    const auto plan = documents::readCutPlan(stored.document);
    if (!plan.ok())
        return plan.errorsWithin("plan " + stored.id);
    schedule::reserve(reserved, {stored.material, plan->value.problem.stocks, plan->value.plan});
    return true;
}

/// Why only the amount of it may change: a plan that waits cuts from it. Empty: none does.
std::vector<Error> heldByPlan(const storage::Database& database, const std::string& key)
{
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        ReservedByKey reserved;
        if (const auto read = reserve(reserved, stored); !read.ok())
            return read.errors();
        if (reserved.count(key) > 0)
            return {{key, "in the plan that waits for " + describe(stored.material),
                     "an item that no plan waits for: cut that plan first, or plan again without it"}};
    }
    return {};
}

const schedule::StockItem* find(const schedule::ShopStock& stock, const std::string& key)
{
    const auto found = std::find_if(stock.items.begin(), stock.items.end(),
                                    [&](const schedule::StockItem& item) { return item.stock.key == key; });
    return found == stock.items.end() ? nullptr : &*found;
}

/// Changes the standing stock within the transaction it is in, so that no station writes over another's.
void keep(const storage::Database& database, const StockDocument& stock,
          const std::vector<schedule::StockChange>& changes, const storage::Stamp& stamp)
{
    storage::saveStockDocument(database, documents::writeStock(stock));
    for (const schedule::StockChange& change : changes)
        logStockChange(database, change, "", stamp);
}

/// More than another amount of the same.
bool isDescribedAnew(const std::vector<schedule::StockChange>& changes)
{
    return std::any_of(changes.begin(), changes.end(), [](const schedule::StockChange& change) {
        return change.kind != schedule::StockChange::Kind::Corrected || !change.note.empty();
    });
}

} // namespace

Result<std::optional<StockDocument>> standingStock(const storage::Database& database)
{
    return standingDocument(storage::stockDocument(database), documents::readStock, "stock in the database");
}

Result<std::vector<StockRow>> listStock(const storage::Database& database)
{
    const auto stock = standingStock(database);
    if (!stock.ok())
        return stock.errors();
    ReservedByKey reserved;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database))
        if (const auto read = reserve(reserved, stored); !read.ok())
            return read.errors();
    std::vector<StockRow> rows;
    if (stock->has_value())
        for (const schedule::StockItem& item : (*stock)->value.items)
            rows.push_back({item, reserved[item.stock.key]});
    return rows;
}

Result<schedule::StockChange> correctStock(const storage::Database& database, const Count& counted,
                                           const storage::Stamp& stamp)
{
    return database.write([&]() -> Result<schedule::StockChange> {
        auto stock = standingStock(database);
        if (!stock.ok())
            return stock.errors();
        if (!stock->has_value())
            return Error{"stock", "none", "a stock in the database; `lapwright plan --stock` puts it there"};
        auto change =
            schedule::correct((*stock)->value, counted.key, counted.count, counted.length, counted.note);
        if (!change.ok())
            return change;
        keep(database, **stock, {*change}, stamp);
        return change;
    });
}

Result<std::optional<ItemDocument>> stockItem(const storage::Database& database, const std::string& key)
{
    const auto stock = standingStock(database);
    if (!stock.ok())
        return stock.errors();
    const schedule::StockItem* item = stock->has_value() ? find((*stock)->value, key) : nullptr;
    if (item == nullptr)
        return std::optional<ItemDocument>();
    return std::optional(ItemDocument{*item, (*stock)->extras.ofEntry(items, key)});
}

Result<std::vector<schedule::StockChange>> putOnRacks(const storage::Database& database,
                                                      const Described& described,
                                                      const std::map<std::string, metal::Metal>& metals,
                                                      const storage::Stamp& stamp)
{
    using Changes = std::vector<schedule::StockChange>;
    const std::optional<schedule::StockItem>& before = described.before;
    const ItemDocument& item = described.item;
    if (auto known = stuffOf(item.value.material, metals); !known.ok())
        return known.errors();
    return database.write([&]() -> Result<Changes> {
        auto standing = standingStock(database);
        if (!standing.ok())
            return standing.errors();
        StockDocument stock = standing->value_or(StockDocument());
        auto changes = schedule::put(stock.value, before, item.value);
        if (!changes.ok())
            return changes;
        if (before && isDescribedAnew(*changes))
            if (auto held = heldByPlan(database, before->stock.key); !held.empty())
                return held;
        if (before)
            stock.extras.putEntry(items, before->stock.key, {});
        stock.extras.putEntry(items, item.value.stock.key, item.extras);
        keep(database, stock, *changes, stamp);
        return changes;
    });
}

Result<schedule::StockChange> takeOffRacks(const storage::Database& database, const std::string& key,
                                           const storage::Stamp& stamp)
{
    return database.write([&]() -> Result<schedule::StockChange> {
        auto standing = standingStock(database);
        if (!standing.ok())
            return standing.errors();
        StockDocument stock = standing->value_or(StockDocument());
        auto gone = schedule::remove(stock.value, key);
        if (!gone.ok())
            return gone;
        if (auto held = heldByPlan(database, key); !held.empty())
            return held;
        keep(database, stock, {*gone}, stamp);
        return gone;
    });
}

void logStockChange(const storage::Database& database, const schedule::StockChange& change,
                    const std::string& plan, const storage::Stamp& stamp)
{
    storage::logStock(database,
                      {change.key, std::string(schedule::name(change.kind)), change.count, change.length,
                       plan, change.note},
                      stamp);
}

} // namespace lapwright::acts
