#include "reference_shelf.h"

#include "acts/catalogue.h"
#include "acts/floor_words.h"
#include "acts/scheduling.h"
#include "acts/shop_library.h"
#include "acts/shop_rates.h"
#include "acts/shop_stock.h"
#include "documents/rates.h"
#include "documents/schedule.h"
#include "drawing/machine_picture.h"
#include "example_trim.h"
#include "reference_drafts.h"
#include "shop.h"
#include "storage/document_file.h"
#include "text.h"

#include <algorithm>
#include <utility>

namespace lapwright::model {

ReferenceShelf::ReferenceShelf(Shop& shop) : Desk(shop), draft_(new Draft(shop))
{
    for (RowsModel* rows : {&machines_, &trims_, &ruleSets_, &floor_, &rates_})
        connect(rows, &RowsModel::searchChanged, this, &ReferenceShelf::show);
}

void ReferenceShelf::reload()
{
    listMachines();
    listTrims();
    listRuleSets();
    listFloor();
    listRates();
    show();
}

RowsModel& ReferenceShelf::list()
{
    switch (kind_) {
    case Kind::Machine:
        return machines_;
    case Kind::Trim:
        return trims_;
    case Kind::Rules:
        return ruleSets_;
    case Kind::Floor:
        return floor_;
    case Kind::Rates:
        break;
    }
    return rates_;
}

void ReferenceShelf::setKind(int kind)
{
    const auto wanted = static_cast<Kind>(std::clamp(kind, 0, static_cast<int>(Kind::Rates)));
    if (wanted == kind_)
        return;
    kind_ = wanted;
    show();
}

void ReferenceShelf::setCurrent(const QString& id)
{
    QString& now = current_[static_cast<std::size_t>(kind_)];
    if (id == now)
        return;
    now = id;
    show();
}

void ReferenceShelf::listMachines()
{
    auto known = acts::loadMachines(shop().libraryFolders());
    if (!known.ok())
        shop().tellTrouble(known.errors());
    known_ = known.ok() ? *std::move(known) : std::vector<fold::Machine>();
    QList<Row> rows;
    for (const fold::Machine& machine : known_) {
        Row row;
        row.id = exact(machine->id);
        row.title = saidWhole(machine->name);
        row.detail = (machine->downFolding ? tr("folds up and down, %1") : tr("folds up, %1"))
                         .arg(shown(write(machine->bendingLength, shop().style())));
        rows.append(row);
    }
    machines_.setRows(rows);
}

void ReferenceShelf::listTrims()
{
    QList<Row> rows;
    for (const auto& [id, trim] : shop().catalogue().trims) {
        Row row;
        row.id = exact(id);
        row.title = saidWhole(trim.name);
        row.detail = counted(static_cast<std::int64_t>(trim.legs.size()), "leg");
        rows.append(row);
    }
    trims_.setRows(rows);
}

void ReferenceShelf::listRuleSets()
{
    QList<Row> rows;
    for (const auto& [id, set] : shop().catalogue().ruleSets) {
        Row row;
        row.id = exact(id);
        row.title = saidWhole(set.name);
        row.detail = shown(set.edition) + QStringLiteral(", ") +
                     counted(static_cast<std::int64_t>(set.clauses.size()), "clause");
        rows.append(row);
    }
    ruleSets_.setRows(rows);
}

void ReferenceShelf::listFloor()
{
    const auto floor = acts::floorInUse(shop().database(), shop().libraryFolders());
    if (!floor.ok())
        shop().tellTrouble(floor.errors());
    QList<Row> rows;
    if (floor.ok())
        for (const schedule::FloorMachine& machine : floor->value.machines) {
            Row row;
            row.id = exact(machine.id);
            row.title = saidWhole(machine.name);
            row.detail = said(acts::hoursInWords(machine.hours.value_or(floor->value.hours)));
            row.also = said(acts::ratesInWords(floor->value, machine));
            rows.append(row);
        }
    floor_.setRows(rows);
}

void ReferenceShelf::listRates()
{
    const auto rates = acts::standingRates(shop().database());
    if (!rates.ok())
        shop().tellTrouble(rates.errors());
    QList<Row> rows;
    if (rates.ok() && rates->has_value())
        for (const schedule::MaterialRate& rate : (*rates)->value.materials) {
            Row row;
            row.id = QString::number(rows.size());
            row.title = shop().describe({rate.metal, rate.gauge, rate.colour.value_or("")});
            row.detail = rate.colour ? QString() : tr("every colour without a rate of its own");
            row.trailing = said(acts::priceInWords(rate, (*rates)->value.currency));
            row.also = said(acts::chargesInWords((*rates)->value)) + shown((*rates)->value.note);
            rows.append(row);
        }
    rates_.setRows(rows);
}

void ReferenceShelf::showRules()
{
    QList<Row> rows;
    const auto set = shop().catalogue().ruleSets.find(current().toStdString());
    if (set != shop().catalogue().ruleSets.end())
        for (const rules::Clause& clause : set->second.clauses) {
            Row row;
            row.id = QString::number(rows.size());
            row.title = saidWhole(clause.statement);
            row.detail = shown(clause.source);
            row.trailing = shown(clause.number);
            row.trailingDetail = shown(clause.edition);
            row.weight = static_cast<int>(clause.weight);
            rows.append(row);
        }
    rules_.setRows(rows);
}

void ReferenceShelf::show()
{
    if (list().indexOf(current()) < 0)
        current_[static_cast<std::size_t>(kind_)] = list().idAt(0);
    picture_ = look::Picture();
    note_.clear();
    if (kind_ == Kind::Rules)
        showRules();
    for (const fold::Machine& machine : known_)
        if (kind_ == Kind::Machine && exact(machine->id) == current()) {
            note_ = saidWhole(machine->note);
            drawing::MachinePicture picture;
            picture.style = shop().style();
            picture_ = look::Picture(drawing::machinePicture(machine, picture));
        }
    const auto trim = shop().catalogue().trims.find(current().toStdString());
    if (kind_ == Kind::Trim && trim != shop().catalogue().trims.end()) {
        note_ = saidWhole(trim->second.note);
        if (auto drawn = drawExample(trim->second, shop().style()))
            picture_ = look::Picture(*std::move(drawn));
    }
    if (const int at = list().indexOf(current()); (kind_ == Kind::Floor || kind_ == Kind::Rates) && at >= 0)
        note_ = list().rows().at(at).also;
    emit currentChanged();
}

Result<std::string> ReferenceShelf::document() const
{
    if (const auto library = libraryKind(kind_))
        return acts::libraryDocument(*library, current().toStdString(), shop().libraryFolders());
    return kind_ == Kind::Floor ? floorDocument() : ratesDocument();
}

Result<std::string> ReferenceShelf::floorDocument() const
{
    const auto floor = acts::floorInUse(shop().database(), shop().libraryFolders());
    if (!floor.ok())
        return floor.errors();
    return documents::writeFloor(*floor);
}

Result<std::string> ReferenceShelf::ratesDocument() const
{
    const auto rates = acts::standingRates(shop().database());
    if (!rates.ok())
        return rates.errors();
    if (rates->has_value())
        return documents::writeRates(**rates);
    const auto stock = acts::standingStock(shop().database());
    if (!stock.ok())
        return stock.errors();
    return documents::writeRates(
        acts::ratesToFillIn(stock->has_value() ? (*stock)->value : schedule::ShopStock()));
}

void ReferenceShelf::edit()
{
    if (!shop().letsPlan())
        return;
    shop().attempt([&] {
        const auto text = document();
        if (!text.ok())
            return shop().tellTrouble(text.errors());
        const int at = list().indexOf(current());
        if (kind_ == Kind::Floor || kind_ == Kind::Rates)
            begin(kind_ == Kind::Floor ? tr("The floor") : tr("The rates"), *text);
        else if (at >= 0)
            begin(list().rows().at(at).title, *text);
    });
}

void ReferenceShelf::begin(const QString& title, const std::string& text)
{
    draft_->begin(referenceDraft(kind_, title, shop()), exact(text));
}

void ReferenceShelf::importFile(const QUrl& file)
{
    if (!shop().letsPlan())
        return;
    const auto text = storage::readDocument(file.toLocalFile().toStdString());
    if (!text.ok())
        return shop().tellTrouble(text.errors());
    begin(file.fileName(), *text);
}

void ReferenceShelf::exportFile(const QUrl& file)
{
    shop().attempt([&] {
        const auto text = document();
        if (!text.ok())
            return shop().tellTrouble(text.errors());
        const auto written = storage::writeDocument(file.toLocalFile().toStdString(), *text);
        if (!written.ok())
            return shop().tellTrouble(written.errors());
        shop().tell(tr("Written to %1").arg(file.toLocalFile()));
    });
}

} // namespace lapwright::model
