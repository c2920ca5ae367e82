#pragma once

#include "cutting/problem.h"
#include "site/job.h"

#include <map>
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

/// Whether anything of it is left: a coil, or a count, that came to nothing is not.
[[nodiscard]] inline bool isThere(const StockItem& item)
{
    return item.stock.count != std::int64_t{0} &&
           (item.stock.kind != cutting::StockKind::Coil || item.stock.length > Length());
}

/// What a shop has on its racks, and how it cuts.
struct ShopStock {
    std::string shop; ///< name, for tickets
    std::vector<StockItem> items;
    cutting::ShopRules rules;
    /// Girths and lengths of blanks are rounded up to whole steps of this before they are cut: what a slitter
    /// or shear can be set to. 1/64 in is common practice, no source.
    Length cutStep = Length::nanometres(396'875);
    /// Ids of the folding machines that stand in the shop; empty: all that are known.
    std::vector<std::string> machines;
    /// What the colours on the racks look like, by name: "#5b6770" for red, green and blue.
    std::map<std::string, std::string> colours;

    friend bool operator==(const ShopStock&, const ShopStock&) = default;
};

} // namespace lapwright::schedule
