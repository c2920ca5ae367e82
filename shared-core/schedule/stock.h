#pragma once

#include "cutting/problem.h"
#include "site/job.h"

#include <string>
#include <vector>

namespace lapwright::schedule {

/// Stock of one metal, gauge and colour: a rack of sheets, a coil, or one remnant, as the cutting problem
/// sees it. `stock.key` is unique in the shop: the rack's name, the coil's number, the remnant's label.
struct StockItem {
    site::Material material;
    cutting::Stock stock;

    friend bool operator==(const StockItem&, const StockItem&) = default;
};

/// What a shop has on its racks, and how it cuts.
struct ShopStock {
    std::string shop; ///< name, for tickets
    std::vector<StockItem> items;
    cutting::ShopRules rules;
    /// Id of the folding machine the fold programs are made for.
    std::string machine;

    friend bool operator==(const ShopStock&, const ShopStock&) = default;
};

} // namespace lapwright::schedule
