#include "batches.h"

#include "acts/blank_words.h"
#include "acts/cut_words.h"
#include "acts/fold_words.h"
#include "acts/holding.h"
#include "acts/planned_pieces.h"
#include "acts/words.h"
#include "schedule/batch.h"
#include "shop.h"
#include "storage/database.h"
#include "storage/lists.h"
#include "storage/shop_state.h"
#include "text.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lapwright::model {

namespace {

/// So many pieces are read and written down within a frame; more are read beside the window.
constexpr std::int64_t mostAtOnce = 2'000;

Row findingRow(int number, const std::string& place, const std::string& text)
{
    Row row;
    row.id = QString::number(number);
    row.weight = static_cast<int>(rules::Weight::Blocks);
    row.detail = shown(place);
    row.title = shown(text);
    return row;
}

} // namespace

Batches::Batches(Shop& shop) : Desk(shop) {}

void Batches::reload()
{
    if (reading_) {
        again_ = true;
        return;
    }
    const auto counts = storage::shopCounts(shop().database());
    if (counts.of(schedule::PieceState::Ordered) > mostAtOnce)
        return readBeside();
    take(readBatches(shop().database(), read_.waiting, shop().style()));
}

void Batches::readBeside()
{
    reading_ = true;
    again_ = false;
    emit currentChanged();
    reader_.start(
        *this, shop().databasePath().toStdString(),
        [known = read_.waiting, style = shop().style()](const storage::Database& database) {
            return Result<BatchesRead>(readBatches(database, known, style));
        },
        [this](Result<BatchesRead>& read) { finishReading(read); });
}

void Batches::finishReading(Result<BatchesRead>& read)
{
    reading_ = false;
    if (read.ok())
        take(*std::move(read));
    else
        shop().tellTrouble(read.errors());
    if (again_)
        noteChange();
}

void Batches::take(BatchesRead read)
{
    plans_.merge(read.plans);
    std::erase_if(plans_, [&read](const auto& plan) { return read.waiting.count(plan.first) == 0; });
    read_ = std::move(read);
    std::set<site::Material> open;
    for (const storage::PieceToCut& piece : read_.toCut)
        open.insert(materialOf(piece));
    QList<Row> rows;
    for (const site::Material& material : open)
        rows.append(rowOf(material, batchId(material)));
    batches_.setRows(rows);
    if (batches_.indexOf(current_) < 0)
        current_ = batches_.idAt(0);
    showPieces();
    emit currentChanged();
}

Row Batches::rowOf(const site::Material& material, const QString& id) const
{
    std::int64_t toCut = 0, held = 0, planned = 0;
    std::string earliest;
    for (const storage::PieceToCut& piece : read_.toCut) {
        if (materialOf(piece) != material)
            continue;
        (isHeld(piece) ? held : toCut) += piece.piece.count;
        if (!isHeld(piece) && !piece.wantedBy.empty() && (earliest.empty() || piece.wantedBy < earliest))
            earliest = piece.wantedBy;
    }
    QStringList said;
    for (const auto& [planId, plan] : plans_) {
        if (plan.material != material)
            continue;
        for (const storage::PlannedPiece& piece : acts::piecesCutBy(plan.cut))
            planned += piece.count;
        said.append(model::said(acts::summaryInWords(plan.cut, shop().style())));
    }
    if (said.isEmpty())
        said.append(tr("not planned yet"));
    else if (planned < toCut)
        said.prepend(tr("%1 not planned yet").arg(counted(toCut - planned, "piece")));
    Row row;
    row.id = id;
    row.title = shop().describe(material);
    row.detail = said.join(QStringLiteral("; "));
    row.trailing = counted(toCut, "piece");
    QStringList more;
    if (!earliest.empty())
        more.append(tr("first due %1").arg(dayWords(earliest)));
    if (held > 0)
        more.append(tr("%1 held").arg(held));
    row.trailingDetail = more.join(QStringLiteral(", "));
    row.swatch = shop().swatchOf(material.colour);
    return row;
}

void Batches::setCurrent(const QString& id)
{
    if (id == current_)
        return;
    current_ = id;
    showPieces();
    emit currentChanged();
}

void Batches::setCurrentPiece(const QString& id)
{
    if (id == currentPiece_)
        return;
    currentPiece_ = id;
    emit pieceChanged();
}

const storage::PieceToCut* Batches::piece() const
{
    const auto& all = read_.toCut;
    const auto found = std::find_if(all.begin(), all.end(), [this](const storage::PieceToCut& piece) {
        return idOf(piece) == currentPiece_;
    });
    return found == all.end() ? nullptr : &*found;
}

bool Batches::pieceHeld() const
{
    return piece() != nullptr && piece()->pieceHeld;
}

bool Batches::orderHeld() const
{
    return piece() != nullptr && piece()->orderHeld;
}

void Batches::showPieces()
{
    const auto found = read_.pieces.find(current_);
    pieces_.setRows(found == read_.pieces.end() ? QList<Row>() : found->second);
    if (pieces_.indexOf(currentPiece_) < 0)
        currentPiece_ = pieces_.idAt(0);
    emit pieceChanged();
}

void Batches::holdPiece(bool held)
{
    if (piece() == nullptr || !shop().letsPlan())
        return;
    const std::string order = piece()->piece.order, mark = piece()->piece.piece.mark;
    shop().act([&] {
        const auto done = acts::holdPiece(shop().database(), order, mark, held, shop().stamp());
        if (!done.ok())
            return shop().tellTrouble(done.errors());
        if (!*done)
            return shop().tellTrouble(tr("%1 is not in its order any more").arg(shown(mark)));
        shop().tell((held ? tr("%1 is held; plan again") : tr("%1 is let in; plan again")).arg(shown(mark)));
    });
}

void Batches::holdOrder(bool held)
{
    if (piece() == nullptr)
        return;
    const std::string order = piece()->piece.order;
    shop().holdOrder(order, shown(piece()->jobName), held);
}

void Batches::plan()
{
    if (shop().letsPlan())
        shop().planCuts([this](const PlanDone& done) { tell(*done.planned); });
}

void Batches::tell(const acts::Planned& planned)
{
    const Style style = shop().style();
    QList<Row> rows;
    const auto add = [&rows](const std::string& place, const std::string& text) {
        rows.append(findingRow(static_cast<int>(rows.size()), place, text));
    };
    for (const acts::Unfoldable& one : planned.unfoldable)
        for (const std::string& line : acts::inWords(one.outcome, style))
            add(one.name, line);
    for (const acts::PlannedBatch& batch : planned.batches) {
        const std::string place = shop().describe(batch.batch.material).toStdString();
        for (const cutting::Refusal& refusal : batch.refusals)
            add(place, lapwright::say(refusal.reason, style));
        if (batch.plan)
            for (const cutting::Shortfall& missing : batch.plan->plan.notCut)
                add(place, tr("The stock does not suffice for %1 of %2.")
                               .arg(missing.count)
                               .arg(shown(acts::blankInWords(batch.batch,
                                                             batch.plan->problem.blanks[missing.blank].key)))
                               .toStdString());
    }
    findings_.setRows(rows);
    QStringList said;
    said.append(
        planned.batches.empty()
            ? tr("Nothing is left to cut")
            : tr("%1 planned").arg(counted(static_cast<std::int64_t>(planned.batches.size()), "metal")));
    if (planned.held > 0)
        said.append(tr("%1 held").arg(counted(planned.held, "piece")));
    if (rows.isEmpty())
        return shop().tell(said.join(QStringLiteral(", ")));
    shop().tellTrouble(tr("Planned, but not everything can be made: see the list"));
}

} // namespace lapwright::model
