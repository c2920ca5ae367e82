#pragma once

#include "cutting/plan.h"
#include "measure/result.h"
#include "schedule/stock.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What comes onto the racks and what leaves them. No count or length ever falls below nothing.
namespace lapwright::schedule {

/// One entry of the book.
struct StockChange {
    enum class Kind {
        Taken,     ///< cut by a plan
        Kept,      ///< a remnant of a plan, back on the shelf
        Corrected, ///< a person counted or described it anew, or a plan took what the book did not have
        Given,     ///< a person put it on the racks
        Gone       ///< a person took it off them
    } kind = Kind::Taken;
    std::string key;
    std::int64_t count =
        0;         ///< of sheets and remnants; corrected: how many more there are, less where negative
    Length length; ///< of a coil; corrected: how much more there is
    std::string note;

    friend bool operator==(const StockChange&, const StockChange&) = default;
};

/// That nothing on the racks is called so.
[[nodiscard]] Error noSuchItem(const std::string& key);

/// "taken", "kept", "corrected", "given", "gone": the words of the database.
[[nodiscard]] std::string_view name(StockChange::Kind kind);

/// What a plan cuts from: its stocks, its patterns and the remnants it leaves.
struct PlanMetal {
    site::Material material;
    const std::vector<cutting::Stock>& stocks;
    const cutting::Plan& plan;
};

/// Takes from `stock` what the plan cuts and puts its remnants on the shelf, each under a label of its own.
/// Where the book has less than was cut, it stands at nothing afterwards and a correction says how much was
/// missing.
[[nodiscard]] std::vector<StockChange> consume(ShopStock& stock, const PlanMetal& metal);

/// What waiting plans will take, by key.
struct Reserved {
    std::int64_t count = 0;
    Length length;

    friend bool operator==(const Reserved&, const Reserved&) = default;
};
void reserve(std::map<std::string, Reserved>& reserved, const PlanMetal& metal);

/// A person's count of one item, or the length a person measured on a coil, of which no more is had from then
/// on than that; a remnant or coil counted as none leaves the stock. Error: no such item, a count or length
/// below nothing, a count of what is not counted, a length of what is no coil.
[[nodiscard]] Result<StockChange> correct(ShopStock& stock, const std::string& key,
                                          std::optional<std::int64_t> count, std::optional<Length> length,
                                          const std::string& note);

/// Puts `item` on the racks; with `before`, in place of that, which is how the person saw it. An amount that
/// the person left as it was stays what it is by now. No changes where nothing differs. Errors: a key that
/// something else has; no such item to replace, or one that is another by now.
[[nodiscard]] Result<std::vector<StockChange>> put(ShopStock& stock, const std::optional<StockItem>& before,
                                                   StockItem item);

/// Takes the item off the racks, whatever is left of it. Error: no such item.
[[nodiscard]] Result<StockChange> remove(ShopStock& stock, const std::string& key);

} // namespace lapwright::schedule
