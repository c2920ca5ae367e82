#include "acts/open_pieces.h"

#include "storage/piece_events.h"

namespace lapwright::acts {

OpenPieces::OpenPieces(const storage::Database& database, std::initializer_list<schedule::PieceState> states)
{
    for (const schedule::PieceState state : states)
        for (const storage::PieceInState& piece : storage::piecesIn(database, state))
            counts_[{piece.order, piece.piece.mark}] += piece.count;
}

bool OpenPieces::any(const std::string& order) const
{
    const auto first = counts_.lower_bound({order, std::string()});
    return first != counts_.end() && first->first.first == order;
}

pieces::Order OpenPieces::of(pieces::Order order) const
{
    std::vector<pieces::Piece> open;
    for (pieces::Piece& piece : order.pieces) {
        const auto count = counts_.find({order.id, piece.mark});
        if (count == counts_.end() || count->second == 0)
            continue;
        piece.count = count->second;
        open.push_back(std::move(piece));
    }
    order.pieces = std::move(open);
    return order;
}

} // namespace lapwright::acts
