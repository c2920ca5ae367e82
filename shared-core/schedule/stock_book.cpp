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
constexpr const char* describedAnew = "described anew";

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

bool isCoil(const StockItem& item)
{
    return item.stock.kind == StockKind::Coil;
}

/// The same with as much of it as there is of `other`.
StockItem withAmountOf(StockItem item, const StockItem& other)
{
    if (isCoil(item))
        item.stock.length = other.stock.length;
    else
        item.stock.count = other.stock.count;
    return item;
}

/// All there is of it.
StockChange allOf(const StockItem& item, StockChange::Kind kind)
{
    return isCoil(item) ? StockChange{kind, item.stock.key, 0, item.stock.length, ""}
                        : StockChange{kind, item.stock.key, item.stock.count.value_or(0), Length(), ""};
}

/// `wanted` as it is to stand: whoever did not touch the amount does not write over what was cut meanwhile.
Result<StockItem> merged(const StockItem& before, const StockItem& now, const StockItem& wanted)
{
    const Error another{now.stock.key, "changed in the meantime", "the item as it is now: open it again"};
    if (before.stock.kind != now.stock.kind || withAmountOf(before, now) != now)
        return another;
    const bool sameKind = wanted.stock.kind == before.stock.kind;
    if (sameKind && withAmountOf(wanted, before) == wanted)
        return withAmountOf(wanted, now);
    if (before != now)
        return another;
    return wanted;
}

std::vector<StockChange> between(const StockItem& now, const StockItem& item)
{
    if (now == item)
        return {};
    StockChange gone = allOf(now, StockChange::Kind::Gone);
    StockChange given = allOf(item, StockChange::Kind::Given);
    if (now.stock.key != item.stock.key || now.stock.kind != item.stock.kind)
        return {gone, given};
    const bool amountOnly = withAmountOf(now, item) == item;
    return {{StockChange::Kind::Corrected, given.key, given.count - gone.count, given.length - gone.length,
             amountOnly ? "" : describedAnew}};
}

} // namespace

Error noSuchItem(const std::string& key)
{
    return {"stock", "no " + key, "a sheet, coil or remnant of the stock"};
}

std::string_view name(StockChange::Kind kind)
{
    constexpr std::array<std::string_view, 5> names = {"taken", "kept", "corrected", "given", "gone"};
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
        return noSuchItem(key);
    const bool coil = isCoil(*item);
    if (coil ? !length || count : !count || length)
        return Error{key, coil ? "no length, or a count" : "no count, or a length",
                     coil ? "the length left on the coil" : "how many there are"};
    if (count.value_or(0) < 0 || length.value_or(Length()) < Length())
        return Error{key, "less than nothing", "nothing or more"};
    StockChange change{StockChange::Kind::Corrected, key, 0, Length(), note};
    if (coil) {
        change.length = *length - item->stock.length;
        item->stock.length = *length;
        item->stock.count = item->stock.count.value_or(1); // that one was measured: no more of it is had
    } else {
        change.count = *count - item->stock.count.value_or(0);
        item->stock.count = *count;
    }
    if (item->stock.kind != StockKind::Sheet && !isThere(*item))
        stock.items.erase(item);
    return change;
}

Result<std::vector<StockChange>> put(ShopStock& stock, const std::optional<StockItem>& before, StockItem item)
{
    const auto holder = find(stock, item.stock.key);
    if (holder != stock.items.end() && (!before || before->stock.key != item.stock.key))
        return Error{item.stock.key, "there already", "a name that nothing else on the racks has"};
    if (!before) {
        const StockChange given = allOf(item, StockChange::Kind::Given);
        stock.items.push_back(std::move(item));
        return std::vector{given};
    }
    const auto now = find(stock, before->stock.key);
    if (now == stock.items.end())
        return noSuchItem(before->stock.key);
    auto wanted = merged(*before, *now, item);
    if (!wanted.ok())
        return wanted.errors();
    return between(std::exchange(*now, *wanted), *wanted);
}

Result<StockChange> remove(ShopStock& stock, const std::string& key)
{
    const auto item = find(stock, key);
    if (item == stock.items.end())
        return noSuchItem(key);
    StockChange gone = allOf(*item, StockChange::Kind::Gone);
    stock.items.erase(item);
    return gone;
}

} // namespace lapwright::schedule
