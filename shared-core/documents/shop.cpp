#include "documents/shop.h"

#include "documents/describe_cutting.h"
#include "documents/describe_site.h"
#include "documents/form_text.h"

#include <initializer_list>
#include <set>

namespace lapwright::documents {

template <class V, Like<schedule::StockItem> T>
void describe(V& fields, T& item)
{
    fields("material", item.material);
    describe(fields, item.stock);
}

template <class V, Like<schedule::ShopStock> T>
void describe(V& fields, T& stock)
{
    fields("shop", stock.shop, std::string());
    fields("machines", stock.machines, std::vector<std::string>());
    fields("colours", stock.colours, {});
    fields("items", stock.items);
    fields("rules", stock.rules, cutting::ShopRules());
    fields("cut_step_mm", stock.cutStep, schedule::ShopStock().cutStep);
}

template <class V, Like<schedule::LoadedPiece> T>
void describe(V& fields, T& piece)
{
    fields("mark", piece.mark);
    fields("count", piece.count);
    fields("run", piece.run, std::string());
    fields("profile", piece.profile);
    fields("length_mm", piece.length);
}

template <class V, Like<schedule::Bundle> T>
void describe(V& fields, T& bundle)
{
    fields("label", bundle.label);
    fields("order", bundle.order);
    fields("job", bundle.job, std::string());
    fields("material", bundle.material);
    fields("pieces", bundle.pieces);
    fields("kilograms", bundle.kilograms);
    fields("two_people", bundle.twoPeople, false);
    fields("area", bundle.area, std::string());
}

template <class V, Like<schedule::Load> T>
void describe(V& fields, T& load)
{
    fields("id", load.id);
    fields("truck", load.truck, std::string());
    fields("made_at", load.madeAt);
    fields("bundles", load.bundles);
}

template <>
struct Words<schedule::PieceState> {
    using K = schedule::PieceState;
    static constexpr std::array<std::pair<K, std::string_view>, 4> all{
        {{K::Received, "received"}, {K::Short, "short"}, {K::Damaged, "damaged"}, {K::Wrong, "wrong"}}};
};

template <class V, Like<schedule::ReceiptEvent> T>
void describe(V& fields, T& event)
{
    fields("id", event.id);
    fields("order", event.order);
    fields("mark", event.mark);
    fields("found", event.found);
    fields("count", event.count);
    fields("at", event.at);
    fields("person", event.person, std::string());
    fields("note", event.note, std::string());
}

template <class V, Like<schedule::Receipt> T>
void describe(V& fields, T& receipt)
{
    fields("id", receipt.id);
    fields("load", receipt.load);
    fields("events", receipt.events);
}

namespace {

/// Each name only once: `name(entry)` of every entry of a list.
template <class List, class Name>
void checkOnce(const List& list, const char* listName, const char* member, Name name, Errors& errors)
{
    std::set<std::string> seen;
    for (std::size_t index = 0; index < list.size(); ++index)
        if (!seen.insert(name(list[index])).second)
            errors.push_back({std::string("/") + listName + "/" + std::to_string(index) + "/" + member,
                              name(list[index]) + " again", "each only once"});
}

/// What no schema says of an item, because a stock may have cut it down to nothing.
void checkItem(const schedule::StockItem& item, Errors& errors)
{
    const cutting::Stock& stock = item.stock;
    const bool isCoil = stock.kind == cutting::StockKind::Coil;
    const auto isSide = [](Length side) {
        return side > Length() && side <= cutting::ProblemBuilder::longestSide;
    };
    if (!isSide(stock.width))
        errors.push_back({"/width_mm", "", "more than nothing and at most 10 km"});
    if (!isSide(stock.length))
        errors.push_back({"/length_mm", "", "more than nothing and at most 10 km"});
    if (stock.kind != cutting::StockKind::Sheet && stock.count.value_or(1) != 1)
        errors.push_back(
            {"/count", std::to_string(*stock.count), "1: each coil and remnant has its own name"});
    else if (stock.count.value_or(0) > cutting::ProblemBuilder::mostPieces)
        errors.push_back({"/count", std::to_string(*stock.count),
                          "at most " + std::to_string(cutting::ProblemBuilder::mostPieces)});
    if (stock.cost == std::int64_t{0})
        errors.push_back({"/cost", "nothing", "a cost, or none where it goes by the area"});
    if (stock.longestCrosscut && (!isCoil || !isSide(*stock.longestCrosscut)))
        errors.push_back({"/longest_crosscut_mm", isCoil ? "nothing" : "no coil", "a length for a coil"});
}

/// The members named first in this order, then the others.
OrderedJson inOrder(const OrderedJson& members, std::initializer_list<const char*> first)
{
    OrderedJson ordered = OrderedJson::object();
    for (const char* name : first)
        if (const auto member = members.find(name); member != members.end())
            ordered[name] = *member;
    ordered.update(members);
    return ordered;
}

} // namespace

Result<Document<schedule::StockItem>> readStockItem(std::string_view text)
{
    Result<Json> members = parseJson(text);
    if (members.ok())
        members = allowedBy("stock-item.schema.json", *std::move(members));
    if (!members.ok())
        return members.errors();
    return takeDocument<schedule::StockItem>(*members, checkItem);
}

std::string writeStockItem(const Document<schedule::StockItem>& item)
{
    Writing out;
    put(item.value, out);
    OrderedJson members = inOrder(OrderedJson::parse(withExtras(out.text, item.extras)),
                                  {"key", "kind", "material", "width_mm", "length_mm", "count"});
    members["material"] = inOrder(members["material"], {"metal", "gauge", "colour"});
    return textOfDocument(members);
}

Result<Document<schedule::ShopStock>> readStock(std::string_view text)
{
    return readDocument<schedule::ShopStock>(
        text, kinds::stock, [](const schedule::ShopStock& stock, Errors& errors) {
            checkOnce(
                stock.items, "items", "key", [](const auto& item) { return item.stock.key; }, errors);
        });
}

std::string writeStock(const Document<schedule::ShopStock>& stock, Layout layout)
{
    return writeDocument(kinds::stock, stock, layout);
}

Result<Document<schedule::Load>> readLoad(std::string_view text)
{
    return readDocument<schedule::Load>(text, kinds::load, [](const schedule::Load& load, Errors& errors) {
        checkOnce(
            load.bundles, "bundles", "label", [](const auto& bundle) { return bundle.label; }, errors);
    });
}

std::string writeLoad(const Document<schedule::Load>& load, Layout layout)
{
    return writeDocument(kinds::load, load, layout);
}

Result<Document<schedule::Receipt>> readReceipt(std::string_view text)
{
    return readDocument<schedule::Receipt>(
        text, kinds::receipt, [](const schedule::Receipt& receipt, Errors& errors) {
            checkOnce(
                receipt.events, "events", "id", [](const auto& event) { return event.id; }, errors);
        });
}

std::string writeReceipt(const Document<schedule::Receipt>& receipt, Layout layout)
{
    return writeDocument(kinds::receipt, receipt, layout);
}

} // namespace lapwright::documents
