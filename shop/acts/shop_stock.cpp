#include "acts/shop_stock.h"

#include "acts/standing_document.h"
#include "documents/cut.h"
#include "documents/shop.h"
#include "storage/shop_state.h"

#include <map>

namespace lapwright::acts {

Result<std::optional<documents::Document<schedule::ShopStock>>>
standingStock(const storage::Database& database)
{
    return standingDocument(storage::stockDocument(database), documents::readStock, "stock in the database");
}

Result<std::vector<StockRow>> listStock(const storage::Database& database)
{
    const auto stock = standingStock(database);
    if (!stock.ok())
        return stock.errors();
    std::map<std::string, schedule::Reserved> reserved;
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        const auto plan = documents::readCutPlan(stored.document);
        if (!plan.ok())
            return plan.errorsWithin("plan " + stored.id);
        schedule::reserve(reserved, {stored.material, plan->value.problem.stocks, plan->value.plan});
    }
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
        storage::saveStockDocument(database, documents::writeStock(**stock));
        logStockChange(database, *change, "", stamp);
        return change;
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
