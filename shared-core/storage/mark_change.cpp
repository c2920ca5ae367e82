#include "storage/mark_change.h"

#include "storage/order_changes.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <string_view>

namespace lapwright::storage {

using schedule::PieceCounts;
using schedule::PieceState;

std::int64_t MarkChange::begun() const
{
    return std::accumulate(counts.in.begin() + 1, counts.in.end(), std::int64_t{0});
}

bool MarkChange::samePiece() const
{
    if (!before || !now)
        return false;
    OrderedPiece likeNow = *before;
    likeNow.count = now->count;
    return likeNow == *now;
}

std::int64_t MarkChange::surplus() const
{
    if (!samePiece())
        return begun();
    return std::max<std::int64_t>(0, before->count - counts.of(PieceState::Ordered) - now->count);
}

std::int64_t MarkChange::scrap() const
{
    const std::int64_t inShop =
        counts.of(PieceState::Cut) + counts.of(PieceState::Folded) + counts.of(PieceState::Bundled);
    return std::min(surplus(), inShop);
}

std::vector<MarkChange> markChanges(const Database& database, const IncomingOrder& order)
{
    const bool known = currentRevision(database, order.id).has_value();
    const auto countsOf = [&](const std::string& mark) {
        return known ? pieceCounts(database, order.id, mark) : PieceCounts();
    };
    const auto before = standingPieces(database, order.id);
    static const std::vector<OrderedPiece> nothing;
    const std::vector<OrderedPiece>& wanted = order.cancelled ? nothing : order.pieces;
    std::set<std::string_view> now;
    for (const OrderedPiece& piece : wanted)
        now.insert(piece.mark);
    std::vector<MarkChange> list;
    for (const auto& [mark, piece] : before)
        if (now.find(mark) == now.end())
            list.push_back({mark, piece, std::nullopt, countsOf(mark)});
    for (const OrderedPiece& piece : wanted) {
        const auto old = before.find(piece.mark);
        if (old == before.end())
            list.push_back({piece.mark, std::nullopt, piece, countsOf(piece.mark)});
        else if (!(old->second == piece))
            list.push_back({piece.mark, old->second, piece, countsOf(piece.mark)});
    }
    return list;
}

} // namespace lapwright::storage
