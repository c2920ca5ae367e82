#include "batches.h"

#include "acts/cut_words.h"
#include "acts/fold_words.h"
#include "acts/words.h"
#include "documents/cut.h"
#include "shop.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"
#include "text.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <set>

namespace lapwright::model {

namespace {

using schedule::PieceState;

QString keyOf(const site::Material& material)
{
    return shown(material.metal + "/" + material.gauge + "/" + material.colour);
}

site::Material materialOf(const storage::OrderedPiece& piece)
{
    return {piece.metal, piece.gauge, piece.colour};
}

std::map<std::string, storage::OrderSummary> ordersById(const storage::Database& database)
{
    std::map<std::string, storage::OrderSummary> orders;
    for (storage::OrderSummary& order : storage::currentOrders(database))
        orders[order.id] = std::move(order);
    return orders;
}

struct OpenBatch {
    std::int64_t pieces = 0;
    std::set<std::string> orders;
    std::string earliest;
};

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

Batches::Batches(Shop& shop) : Desk(shop)
{
    connect(&worker_, &PlanWorker::progressed, this, [this](const QString& phase) {
        progress_ = tr("Looking: %1").arg(phase);
        emit progressChanged();
    });
    connect(&worker_, &PlanWorker::finished, this, &Batches::finish);
}

void Batches::reload()
{
    const auto orders = ordersById(shop().database());
    std::map<site::Material, OpenBatch> open;
    for (const storage::PieceInState& piece : storage::piecesIn(shop().database(), PieceState::Ordered)) {
        OpenBatch& batch = open[materialOf(piece.piece)];
        batch.pieces += piece.count;
        batch.orders.insert(piece.order);
        const auto order = orders.find(piece.order);
        if (order != orders.end() && !order->second.wantedBy.empty() &&
            (batch.earliest.empty() || order->second.wantedBy < batch.earliest))
            batch.earliest = order->second.wantedBy;
    }
    std::map<site::Material, std::string> planned;
    for (const storage::StoredPlan& stored : storage::waitingPlans(shop().database()))
        if (const auto plan = documents::readCutPlan(stored.document); plan.ok())
            planned[stored.material] = acts::summaryInWords(plan->value, shop().style());
    QList<Row> rows;
    for (const auto& [material, batch] : open) {
        const auto plan = planned.find(material);
        Row row;
        row.id = keyOf(material);
        row.title = shop().describe(material);
        row.detail = plan == planned.end() ? tr("not planned yet") : shown(plan->second);
        row.trailing = shown(lapwright::counted(batch.pieces, "piece"));
        row.trailingDetail =
            batch.earliest.empty()
                ? shown(lapwright::counted(static_cast<std::int64_t>(batch.orders.size()), "order"))
                : tr("first due %1").arg(shown(batch.earliest));
        row.swatch = shop().swatchOf(material.colour);
        rows.append(row);
    }
    batches_.setRows(rows);
    if (batches_.indexOf(current_) < 0)
        current_ = batches_.idAt(0);
    showPieces();
    emit currentChanged();
}

void Batches::setCurrent(const QString& id)
{
    if (id == current_)
        return;
    current_ = id;
    shop().attempt([this] { showPieces(); });
    emit currentChanged();
}

void Batches::showPieces()
{
    const auto orders = ordersById(shop().database());
    QList<Row> rows;
    for (const storage::PieceInState& piece : storage::piecesIn(shop().database(), PieceState::Ordered)) {
        if (keyOf(materialOf(piece.piece)) != current_)
            continue;
        const auto order = orders.find(piece.order);
        Row row;
        row.id = shown(piece.order + "/" + piece.piece.mark);
        row.title = shown(piece.piece.mark);
        row.detail = order == orders.end() ? QString() : shown(order->second.jobName);
        row.trailing = tr("%1 × %2").arg(shown(write(piece.piece.girth, shop().style())),
                                         shown(write(piece.piece.length, shop().style())));
        row.trailingDetail = shown(lapwright::counted(piece.count, "piece"));
        rows.append(row);
    }
    pieces_.setRows(rows);
}

void Batches::plan()
{
    if (worker_.running() || !shop().mayPlan())
        return;
    acts::PlanRequest request;
    request.settings.timeLimit = std::chrono::seconds(shop().preferences()->planSeconds());
    request.libraryFolders = shop().libraryFolders();
    PlanWork work;
    work.cuts = std::move(request);
    work.schedule.from = shop().wallClock();
    work.schedule.libraryFolders = shop().libraryFolders();
    progress_ = tr("Gathering what is to be cut");
    worker_.start(shop().databasePath().toStdString(), std::move(work), shop().stamp());
    emit progressChanged();
}

void Batches::stopPlanning()
{
    worker_.stop();
    progress_ = tr("Stopping; the best plan so far is kept");
    emit progressChanged();
}

void Batches::finish()
{
    emit progressChanged();
    const PlanWorker::Outcome& outcome = worker_.outcome();
    if (!outcome.ok()) {
        shop().tellTrouble(outcome.errors());
        return;
    }
    const Style style = shop().style();
    QList<Row> rows;
    for (const acts::Unfoldable& one : outcome->planned->unfoldable)
        for (const std::string& line : acts::inWords(one.outcome, style))
            rows.append(findingRow(static_cast<int>(rows.size()), one.name, line));
    for (const acts::PlannedBatch& batch : outcome->planned->batches) {
        const std::string place = shop().describe(batch.batch.material).toStdString();
        for (const cutting::Refusal& refusal : batch.refusals)
            rows.append(
                findingRow(static_cast<int>(rows.size()), place, lapwright::say(refusal.reason, style)));
        if (batch.plan)
            for (const cutting::Shortfall& missing : batch.plan->plan.notCut)
                rows.append(findingRow(static_cast<int>(rows.size()), place,
                                       "The stock does not suffice for " + std::to_string(missing.count) +
                                           " of " + batch.plan->problem.blanks[missing.blank].key + "."));
    }
    findings_.setRows(rows);
    shop().noteChange();
    if (rows.isEmpty())
        shop().tell(
            outcome->planned->batches.empty()
                ? tr("Nothing is left to cut")
                : tr("%1 planned")
                      .arg(counted(static_cast<std::int64_t>(outcome->planned->batches.size()), "metal")));
    else
        shop().tellTrouble(tr("Planned, but not everything can be made: see the list"));
}

} // namespace lapwright::model
