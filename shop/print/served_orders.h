#pragma once

#include "cutting/problem.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace lapwright::print {

/// An order that a cut plan serves, and the letter its marks bear on the maps.
struct ServedOrder {
    std::string letter;
    std::string job;
    std::int64_t revision = 0;
    std::string wantedBy;
    std::int64_t blanks = 0;
};

/// Each order that a plan serves under one letter, so that a mark on a sheet says which house it is for.
class ServedOrders {
public:
    /// Of a plan that cuts these blanks; their keys are those of schedule::blankKey().
    explicit ServedOrders(const std::vector<cutting::Blank>& blanks);

    /// The order of that id, if the plan serves it; it gets the next letter (A to Z, AA to ZZ…) and its
    /// count.
    void add(const std::string& id, ServedOrder order);

    [[nodiscard]] const std::vector<ServedOrder>& all() const { return orders_; }
    /// What each blank is called, by its index: "A E1.2"; only the mark where the plan serves one order.
    [[nodiscard]] std::vector<std::string> names(const std::vector<cutting::Blank>& blanks) const;

private:
    std::map<std::string, std::int64_t> blanks_; ///< how many, by the order's id
    std::map<std::string, std::size_t> place_;   ///< in orders_, by the order's id
    std::vector<ServedOrder> orders_;
};

} // namespace lapwright::print
