#include "stock_draft.h"

#include "documents/shop.h"
#include "shop.h"
#include "text.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>

#include <utility>

namespace lapwright::model {

namespace {

using Metals = std::map<std::string, metal::Metal>;

/// What cannot be kept, said before anybody tries to.
std::vector<Error> faultsOf(const std::string& text, const Metals& metals, const StockDraft& draft)
{
    const auto item = documents::readStockItem(text);
    if (!item.ok())
        return item.errors();
    std::vector<Error> faults;
    if (const auto known = acts::stuffOf(item->value.material, metals); !known.ok())
        faults = known.errors();
    const std::string& key = item->value.stock.key;
    if (draft.isTaken(key) && (!draft.before || draft.before->stock.key != key))
        faults.push_back({"/key", key + " again", "a name that nothing else on the racks has"});
    return faults;
}

std::vector<Error> save(Shop& shop, const std::string& text, const StockDraft& draft)
{
    auto item = documents::readStockItem(text);
    if (!item.ok())
        return item.errors();
    const std::string key = item->value.stock.key;
    const auto changes = acts::putOnRacks(shop.database(), {draft.before, *std::move(item)},
                                          shop.catalogue().metals, shop.stamp());
    if (!changes.ok())
        return changes.errors();
    draft.kept(key);
    return {};
}

/// The metals that the shop knows, and the gauges that the one of the item comes in.
Offers offersFor(const std::string& text, const Metals& metals)
{
    Offers offers;
    for (const auto& [id, metal] : metals)
        offers["/material/metal"].push_back({id, saidWhole(metal.name)});
    const QJsonObject item = QJsonDocument::fromJson(QByteArray::fromStdString(text)).object();
    const auto metal = metals.find(item["material"]["metal"].toString().toStdString());
    if (metal != metals.end())
        for (const metal::Sheet& sheet : metal->second.sheets)
            offers["/material/gauge"].push_back({sheet.gauge, saidWhole(sheet.gauge)});
    return offers;
}

} // namespace

DraftSubject stockSubject(Shop& shop, StockDraft draft)
{
    DraftSubject subject;
    subject.title = draft.title;
    subject.schemaFile = "stock-item.schema.json";
    subject.offers = [&shop](const std::string& text) { return offersFor(text, shop.catalogue().metals); };
    subject.draw = [&shop, draft](const std::string& text) -> Result<drawing::DisplayList> {
        auto faults = faultsOf(text, shop.catalogue().metals, draft);
        if (!faults.empty())
            return faults;
        return drawing::DisplayList();
    };
    subject.save = [&shop, draft = std::move(draft)](const std::string& text) {
        return save(shop, text, draft);
    };
    return subject;
}

schedule::StockItem itemToFillIn(const Shop& shop, const schedule::StockItem* like)
{
    schedule::StockItem item;
    if (like != nullptr) {
        item = *like;
    } else if (const auto& metals = shop.catalogue().metals; !metals.empty()) {
        const metal::Metal& metal = metals.begin()->second;
        item.material.metal = metal.id;
        item.material.gauge = metal.sheets.empty() ? "" : metal.sheets.front().gauge;
        item.stock.width = Length::feet(4);
        item.stock.length = Length::feet(10);
    }
    item.stock.key.clear();
    item.stock.count = 1;
    return item;
}

} // namespace lapwright::model
