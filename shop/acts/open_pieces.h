#pragma once

#include "pieces/order.h"
#include "schedule/piece_life.h"
#include "storage/database.h"

#include <cstdint>
#include <initializer_list>
#include <map>
#include <string>
#include <utility>

namespace lapwright::acts {

/// How many pieces of each mark stand in one of some states: what is still to be made.
class OpenPieces {
public:
    OpenPieces(const storage::Database& database, std::initializer_list<schedule::PieceState> states);

    /// Whether any piece of the order is open.
    [[nodiscard]] bool any(const std::string& order) const;
    /// The order with only its open pieces, each with its open count.
    [[nodiscard]] pieces::Order of(pieces::Order order) const;

private:
    std::map<std::pair<std::string, std::string>, std::int64_t> counts_; ///< by order and mark
};

} // namespace lapwright::acts
