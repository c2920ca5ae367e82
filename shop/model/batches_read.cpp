#include "batches_read.h"

#include "batches.h"
#include "schedule/batch.h"
#include "storage/shop_state.h"
#include "text.h"

#include <utility>

namespace lapwright::model {

namespace {

Row rowOf(const storage::PieceToCut& one, const Style& style)
{
    const storage::OrderedPiece& ordered = one.piece.piece;
    Row row;
    row.id = idOf(one);
    row.title = shown(ordered.mark);
    row.detail = shown(one.jobName) + (one.orderHeld   ? Batches::tr(", its order is held")
                                       : one.pieceHeld ? Batches::tr(", held")
                                       : one.remade    ? Batches::tr(", made again")
                                                       : QString());
    row.trailing =
        Batches::tr("%1 × %2").arg(shown(write(ordered.girth, style)), shown(write(ordered.length, style)));
    row.trailingDetail = counted(one.piece.count, "piece");
    row.sign = isHeld(one) ? QStringLiteral("hold") : QString();
    return row;
}

} // namespace

QString batchId(const site::Material& material)
{
    return exact(material.metal + "/" + material.gauge + "/" + material.colour);
}

site::Material materialOf(const storage::PieceToCut& piece)
{
    const storage::OrderedPiece& ordered = piece.piece.piece;
    return {ordered.metal, ordered.gauge, ordered.colour};
}

QString idOf(const storage::PieceToCut& piece)
{
    return exact(schedule::blankKey(piece.piece.order, piece.piece.piece.mark));
}

bool isHeld(const storage::PieceToCut& piece)
{
    return piece.orderHeld || piece.pieceHeld;
}

BatchesRead readBatches(const storage::Database& database, const std::set<std::string>& known,
                        const Style& style)
{
    BatchesRead read;
    read.toCut = storage::piecesToCut(database);
    for (const storage::PieceToCut& piece : read.toCut)
        read.pieces[batchId(materialOf(piece))].append(rowOf(piece, style));
    for (const storage::StoredPlan& stored : storage::waitingPlans(database)) {
        read.waiting.insert(stored.id);
        if (known.count(stored.id) > 0)
            continue;
        if (auto plan = documents::readCutPlan(stored.document); plan.ok())
            read.plans.emplace(stored.id, WaitingPlan{stored.material, std::move(plan->value)});
    }
    return read;
}

} // namespace lapwright::model
