#include "stock_desk.h"

#include "documents/shop.h"
#include "shop.h"
#include "stock_draft.h"
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

StockDesk::StockDesk(Shop& shop) : Desk(shop), draft_(new Draft(shop))
{
    // What a search leaves out is not acted on; what nobody looks at stays closed.
    connect(&items_, &RowsModel::searchChanged, this, [this] {
        if (!current_.isEmpty() && items_.indexOf(current_) < 0)
            setCurrent(items_.idAt(0));
    });
}

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
        row.id = exact(one.item.stock.key);
        row.title = shown(one.item.stock.key);
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

const acts::StockRow* StockDesk::item(const QString& key) const
{
    const auto found = std::find_if(stock_.begin(), stock_.end(), [&](const acts::StockRow& row) {
        return exact(row.item.stock.key) == key;
    });
    return found == stock_.end() ? nullptr : &*found;
}

QString StockDesk::title() const
{
    return shown(current_.toStdString());
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

QString StockDesk::lengthLeft() const
{
    const acts::StockRow* at = item();
    const bool isCoil = at != nullptr && at->item.stock.kind == cutting::StockKind::Coil;
    return isCoil ? shown(write(at->item.stock.length, shop().style())) : QString();
}

QString StockDesk::whyNotTakeOff() const
{
    return reserved().isEmpty()
               ? QString()
               : tr("A plan that waits cuts from it: cut that first, or plan again without it.");
}

void StockDesk::setCount(int count)
{
    const acts::StockRow* at = item();
    if (count >= 0 && at != nullptr && at->item.stock.kind == cutting::StockKind::Sheet)
        correct({current_.toStdString(), count, {}, {}},
                tr("%1: %2 counted").arg(title(), counted(count, "sheet")));
}

void StockDesk::removeRemnant()
{
    if (isRemnant())
        correct({current_.toStdString(), 0, {}, {}}, tr("Remnant %1 is off the shelf").arg(title()));
}

QString StockDesk::setLengthLeft(const QString& entered)
{
    const Style style = shop().style();
    const auto length = typedLength(entered, style, "");
    if (!length.ok())
        return shown(length.errors());
    correct({current_.toStdString(), {}, *length, {}},
            tr("%1: %2 left on the coil").arg(title(), shown(write(*length, style))));
    return {};
}

void StockDesk::begin(const QString& title, const std::optional<schedule::StockItem>& before,
                      const std::string& text)
{
    const auto isTaken = [this](const std::string& key) { return item(exact(key)) != nullptr; };
    const auto kept = [this](const std::string& key) { current_ = exact(key); };
    draft_->begin(stockSubject(shop(), {title, before, isTaken, kept}), exact(text));
}

void StockDesk::addItem()
{
    if (!shop().letsPlan())
        return;
    const acts::StockRow* like = item();
    const schedule::StockItem empty = itemToFillIn(shop(), like == nullptr ? nullptr : &like->item);
    begin(tr("New item"), std::nullopt, documents::writeStockItem({empty, {}}));
}

void StockDesk::changeItem()
{
    if (!shop().letsPlan())
        return;
    shop().attempt([&] {
        const auto standing = acts::stockItem(shop().database(), current_.toStdString());
        if (!standing.ok())
            return shop().tellTrouble(standing.errors());
        if (standing->has_value())
            begin(title(), (*standing)->value, documents::writeStockItem(**standing));
    });
}

void StockDesk::takeOff()
{
    if (!shop().letsPlan())
        return;
    shop().act([&] {
        const auto gone = acts::takeOffRacks(shop().database(), current_.toStdString(), shop().stamp());
        if (!gone.ok())
            return shop().tellTrouble(gone.errors());
        shop().tell(tr("%1 is off the racks").arg(title()));
    });
}

void StockDesk::correct(const acts::Count& counted, const QString& told)
{
    if (!shop().letsPlan())
        return;
    shop().act([&] {
        const auto change = acts::correctStock(shop().database(), counted, shop().stamp());
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
