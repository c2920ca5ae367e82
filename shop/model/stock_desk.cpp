#include "stock_desk.h"

#include "documents/shop.h"
#include "shop.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"
#include "text.h"

#include <algorithm>
#include <utility>

namespace lapwright::model {

namespace {

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

/// "3 sheets reserved", "20' 0" reserved"; empty where no plan waits for it.
QString reservedOf(const acts::StockRow& row, const Style& style)
{
    if (row.reserved.length > Length())
        return StockDesk::tr("%1 reserved").arg(shown(write(row.reserved.length, style)));
    if (row.reserved.count == 0)
        return {};
    return row.item.stock.kind == cutting::StockKind::Remnant
               ? StockDesk::tr("reserved")
               : StockDesk::tr("%1 reserved").arg(counted(row.reserved.count, "sheet"));
}

} // namespace

StockDesk::StockDesk(Shop& shop) : Desk(shop) {}

void StockDesk::reload()
{
    auto stock = acts::listStock(shop().database());
    if (!stock.ok())
        shop().tellTrouble(stock.errors());
    stock_ = stock.ok() ? *std::move(stock) : std::vector<acts::StockRow>();
    const Style style = shop().style();
    QList<Row> rows;
    for (const acts::StockRow& one : stock_) {
        Row row;
        row.id = row.title = shown(one.item.stock.key);
        row.detail = shop().describe(one.item.material);
        row.trailing = tr("%1 × %2").arg(shown(write(one.item.stock.width, style)),
                                         shown(write(one.item.stock.length, style)));
        QStringList amounts = {kindOf(one.item.stock), reservedOf(one, style)};
        amounts.removeAll(QString());
        row.trailingDetail = amounts.join(QStringLiteral(", "));
        row.swatch = shop().swatchOf(one.item.material.colour);
        rows.append(row);
    }
    items_.setRows(rows);
    if (items_.indexOf(current_) < 0)
        current_ = items_.idAt(0);
    emit currentChanged();
}

void StockDesk::setCurrent(const QString& key)
{
    if (key == current_)
        return;
    current_ = key;
    emit currentChanged();
}

const acts::StockRow* StockDesk::item() const
{
    const auto found = std::find_if(stock_.begin(), stock_.end(), [this](const acts::StockRow& row) {
        return shown(row.item.stock.key) == current_;
    });
    return found == stock_.end() ? nullptr : &*found;
}

int StockDesk::count() const
{
    const acts::StockRow* at = item();
    const bool countedInSheets = at != nullptr && at->item.stock.kind == cutting::StockKind::Sheet;
    return countedInSheets ? static_cast<int>(at->item.stock.count.value_or(-1)) : -1;
}

QString StockDesk::reserved() const
{
    const acts::StockRow* at = item();
    return at == nullptr ? QString() : reservedOf(*at, shop().style());
}

bool StockDesk::isRemnant() const
{
    const acts::StockRow* at = item();
    return at != nullptr && at->item.stock.kind == cutting::StockKind::Remnant;
}

void StockDesk::setCount(int count)
{
    const acts::StockRow* at = item();
    if (count >= 0 && at != nullptr && at->item.stock.kind == cutting::StockKind::Sheet)
        correct(count, tr("%1: %2 counted").arg(current_, counted(count, "sheet")));
}

void StockDesk::removeRemnant()
{
    if (isRemnant())
        correct(0, tr("Remnant %1 is off the shelf").arg(current_));
}

void StockDesk::correct(std::int64_t count, const QString& told)
{
    if (!shop().letsPlan())
        return;
    shop().act([&] {
        const auto change =
            acts::correctStock(shop().database(), {current_.toStdString(), count, {}, {}}, shop().stamp());
        if (!change.ok())
            return shop().tellTrouble(change.errors());
        shop().tell(told);
    });
}

void StockDesk::importStock(const QUrl& file)
{
    if (!shop().letsPlan())
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
