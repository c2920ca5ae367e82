#include "stock_desk.h"

#include "acts/shop_stock.h"
#include "acts/words.h"
#include "documents/shop.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"
#include "text.h"

#include <algorithm>
#include <functional>

namespace lapwright::model {

namespace {

using StockDocument = documents::Document<schedule::ShopStock>;

QString kindOf(const cutting::Stock& stock)
{
    switch (stock.kind) {
    case cutting::StockKind::Sheet:
        return stock.count ? counted(*stock.count, "sheet") : StockDesk::tr("sheets as needed");
    case cutting::StockKind::Coil:
        return StockDesk::tr("coil");
    case cutting::StockKind::Remnant:
        return StockDesk::tr("remnant");
    }
    return {};
}

schedule::StockItem* find(StockDocument& stock, const QString& key)
{
    const auto found =
        std::find_if(stock.value.items.begin(), stock.value.items.end(),
                     [&](const schedule::StockItem& item) { return shown(item.stock.key) == key; });
    return found == stock.value.items.end() ? nullptr : &*found;
}

/// Changes the stock that stands in the database, as it stands there now, in one transaction.
void change(Shop& shop, const std::function<void(StockDocument&)>& work)
{
    shop.act([&] {
        shop.database().write([&] {
            auto stock = acts::standingStock(shop.database());
            if (!stock.ok())
                return shop.tellTrouble(stock.errors());
            if (!stock->has_value())
                return;
            work(**stock);
            storage::saveStockDocument(shop.database(), documents::writeStock(**stock));
        });
    });
}

} // namespace

StockDesk::StockDesk(Shop& shop) : Desk(shop) {}

void StockDesk::reload()
{
    QList<Row> rows;
    const auto stock = acts::standingStock(shop().database());
    if (!stock.ok())
        shop().tellTrouble(stock.errors());
    if (stock.ok() && stock->has_value()) {
        const Style style = shop().style();
        for (const schedule::StockItem& item : (*stock)->value.items) {
            Row row;
            row.id = row.title = shown(item.stock.key);
            row.detail = shop().describe(item.material);
            row.trailing = tr("%1 × %2").arg(shown(write(item.stock.width, style)),
                                             shown(write(item.stock.length, style)));
            row.trailingDetail = kindOf(item.stock);
            row.swatch = shop().swatchOf(item.material.colour);
            rows.append(row);
        }
    }
    items_.setRows(rows);
    if (items_.indexOf(current_) < 0)
        current_ = items_.idAt(0);
    showCurrent();
}

void StockDesk::setCurrent(const QString& key)
{
    if (key == current_)
        return;
    current_ = key;
    shop().attempt([this] { showCurrent(); });
}

void StockDesk::showCurrent()
{
    count_ = -1;
    remnant_ = false;
    auto stock = acts::standingStock(shop().database());
    if (stock.ok() && stock->has_value()) {
        if (const schedule::StockItem* item = find(**stock, current_)) {
            remnant_ = item->stock.kind == cutting::StockKind::Remnant;
            if (item->stock.kind == cutting::StockKind::Sheet && item->stock.count)
                count_ = static_cast<int>(*item->stock.count);
        }
    }
    emit currentChanged();
}

void StockDesk::setCount(int count)
{
    if (count < 0 || !shop().mayPlan())
        return;
    change(shop(), [&](StockDocument& stock) {
        schedule::StockItem* item = find(stock, current_);
        if (item == nullptr || item->stock.kind != cutting::StockKind::Sheet)
            return;
        item->stock.count = count;
        shop().tell(tr("%1: %2 counted").arg(current_, counted(count, "sheet")));
    });
}

void StockDesk::removeRemnant()
{
    if (!shop().mayPlan())
        return;
    change(shop(), [&](StockDocument& stock) {
        const schedule::StockItem* item = find(stock, current_);
        if (item == nullptr || item->stock.kind != cutting::StockKind::Remnant)
            return;
        stock.value.items.erase(stock.value.items.begin() + (item - stock.value.items.data()));
        shop().tell(tr("Remnant %1 is off the shelf").arg(current_));
    });
}

void StockDesk::importStock(const QUrl& file)
{
    if (!shop().mayPlan())
        return;
    shop().act([&] {
        const auto text = storage::readDocument(file.toLocalFile().toStdString());
        if (!text.ok())
            return shop().tellTrouble(text.errors());
        const auto stock = documents::readStock(*text);
        if (!stock.ok())
            return shop().tellTrouble(stock.errorsWithin(file.fileName().toStdString()));
        shop().database().write(
            [&] { storage::saveStockDocument(shop().database(), documents::writeStock(*stock)); });
        shop().tell(
            tr("%1 of stock read from %2")
                .arg(counted(static_cast<std::int64_t>(stock->value.items.size()), "item"), file.fileName()));
    });
}

void StockDesk::exportStock(const QUrl& file)
{
    shop().attempt([&] {
        const auto stock = storage::stockDocument(shop().database());
        if (!stock)
            return;
        const auto written = storage::writeDocument(file.toLocalFile().toStdString(), *stock);
        if (!written.ok())
            return shop().tellTrouble(written.errors());
        shop().tell(tr("Stock written to %1").arg(file.toLocalFile()));
    });
}

} // namespace lapwright::model
