#pragma once

#include "acts/fold_programs.h"
#include "paperwork.h"
#include "pictures.h"
#include "pieces/order.h"
#include "ticket_folder.h"

namespace lapwright::command {

/// For each profile of the orders: a fold ticket as PDF, in words and as drawn pages, or, where it cannot be
/// folded, the reason and the section.
class FoldTickets {
public:
    FoldTickets(const acts::FoldPrograms& programs, const Pictures& pictures, const Paperwork& work,
                TicketFolder& folder)
        : programs_(programs), pictures_(pictures), work_(work), folder_(folder)
    {
    }

    /// Says on standard error which profiles no machine of the shop can fold. Throws storage::StorageFailure
    /// where a ticket cannot be written or the order's own data does not hold.
    void print(const pieces::Order& order);

    [[nodiscard]] bool allFold() const { return allFold_; }

private:
    void print(const pieces::Order& order, std::size_t profile, const acts::FoldProgram& program);
    void draw(const pieces::Order& order, std::size_t profile, const acts::FoldProgram& program);

    const acts::FoldPrograms& programs_;
    const Pictures& pictures_;
    const Paperwork& work_;
    TicketFolder& folder_;
    int number_ = 0;
    bool allFold_ = true;
};

} // namespace lapwright::command
