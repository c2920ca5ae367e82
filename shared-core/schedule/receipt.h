#pragma once

#include "schedule/piece_life.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lapwright::schedule {

/// One thing the crew lead found: so many pieces of a mark received, short, damaged or wrong. Events merge by
/// id, so the same receipt twice, or two tablets' receipts of one load, never count anything twice.
struct ReceiptEvent {
    std::string id; ///< UUID
    std::string order;
    std::string mark;
    PieceState found = PieceState::Received; ///< Received, Short, Damaged or Wrong
    std::int64_t count = 1;
    std::string at; ///< ISO 8601
    std::string person;
    std::string note;

    friend bool operator==(const ReceiptEvent&, const ReceiptEvent&) = default;
};

/// The crew lead's finding for a load.
struct Receipt {
    std::string id; ///< UUID
    std::string load;
    std::vector<ReceiptEvent> events;

    friend bool operator==(const Receipt&, const Receipt&) = default;
};

} // namespace lapwright::schedule
