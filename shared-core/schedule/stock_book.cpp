#include "schedule/stock_book.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lapwright::schedule {

namespace {

using cutting::StockKind;

auto find(ShopStock& stock, const std::string& key)
{
    return std::find_if(stock.items.begin(), stock.items.end(),
                        [&](const StockItem& item) { return item.stock.key == key; });
}

constexpr const char* bookHadLess = "cut, but not in the book";

/// Takes `count` sheets; what the book does not have is noted.
void takeSheets(StockItem& item, std::int64_t count, std::vector<StockChange>& changes)
{
    changes.push_back({StockChange::Kind::Taken, item.stock.key, count, Length(), ""});
    if (!item.stock.count)
        return;
    const std::int64_t missing = std::max<std::int64_t>(0, count - *item.stock.count);
    if (missing > 0)
        changes.push_back({StockChange::Kind::Corrected, item.stock.key, missing, Length(), bookHadLess});
    *item.stock.count -= count - missing;
}

void takeFromCoil(StockItem& item, Length length, std::vector<StockChange>& changes)
{
    changes.push_back({StockChange::Kind::Taken, item.stock.key, 0, length, ""});
    const Length missing = std::max(Length(), length - item.stock.length);
    if (missing > Length())
        changes.push_back({StockChange::Kind::Corrected, item.stock.key, 0, missing, bookHadLess});
    item.stock.length -= length - missing;
}

void take(ShopStock& stock, const cutting::Stock& source, const cutting::Pattern& pattern,
          std::vector<StockChange>& changes)
{
    const auto item = find(stock, source.key);
    if (item == stock.items.end()) {
        changes.push_back({StockChange::Kind::Corrected, source.key, pattern.count, Length(), bookHadLess});
        return;
    }
    if (source.kind == StockKind::Coil)
        takeFromCoil(*item, pattern.length * pattern.count, changes);
    else
        takeSheets(*item, pattern.count, changes);
    if (source.kind == StockKind::Remnant)
        stock.items.erase(item);
}

void keep(ShopStock& stock, const site::Material& material, const cutting::NewRemnant& remnant,
          std::vector<StockChange>& changes)
{
    for (std::string& key : cutting::keysOf(remnant)) {
        cutting::Stock left;
        left.key = std::move(key);
        while (find(stock, left.key) != stock.items.end())
            left.key += "'";
        left.kind = StockKind::Remnant;
        left.width = remnant.width;
        left.length = remnant.length;
        left.count = 1;
        changes.push_back({StockChange::Kind::Kept, left.key, 1, left.length, ""});
        stock.items.push_back({material, left});
    }
}

} // namespace

std::string_view name(StockChange::Kind kind)
{
    constexpr std::array<std::string_view, 3> names = {"taken", "kept", "corrected"};
    return names[static_cast<std::size_t>(kind)];
}

std::vector<StockChange> consume(ShopStock& stock, const PlanMetal& metal)
{
    std::vector<StockChange> changes;
    for (const cutting::Pattern& pattern : metal.plan.patterns)
        take(stock, metal.stocks[pattern.stock], pattern, changes);
    for (const cutting::NewRemnant& remnant : metal.plan.remnants)
        keep(stock, metal.material, remnant, changes);
    return changes;
}

void reserve(std::map<std::string, Reserved>& reserved, const PlanMetal& metal)
{
    for (const cutting::Pattern& pattern : metal.plan.patterns) {
        const cutting::Stock& source = metal.stocks[pattern.stock];
        Reserved& of = reserved[source.key];
        if (source.kind == StockKind::Coil)
            of.length += pattern.length * pattern.count;
        else
            of.count += pattern.count;
    }
}

Result<StockChange> correct(ShopStock& stock, const std::string& key, std::optional<std::int64_t> count,
                            std::optional<Length> length, const std::string& note)
{
    const auto item = find(stock, key);
    if (item == stock.items.end())
        return Error{"stock", "no " + key, "a sheet, coil or remnant of the stock"};
    const bool coil = item->stock.kind == StockKind::Coil;
    if (coil ? !length || count : !count || length)
        return Error{key, coil ? "no length, or a count" : "no count, or a length",
                     coil ? "the length left on the coil" : "how many there are"};
    if (count.value_or(0) < 0 || length.value_or(Length()) < Length())
        return Error{key, "less than nothing", "nothing or more"};
    StockChange change{StockChange::Kind::Corrected, key, 0, Length(), note};
    if (coil) {
        change.length = *length - item->stock.length;
        item->stock.length = *length;
    } else {
        change.count = *count - item->stock.count.value_or(0);
        item->stock.count = *count;
    }
    if (item->stock.kind != StockKind::Sheet && !isThere(*item))
        stock.items.erase(item);
    return change;
}

} // namespace lapwright::schedule
