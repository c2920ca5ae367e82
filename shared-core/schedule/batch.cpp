#include "schedule/batch.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace lapwright::schedule {

namespace {

/// Widths of the material's coils, ascending; none if it also stands in sheets or there is only one width.
std::vector<Length> coilWidths(const site::Material& material, const ShopStock& stock)
{
    std::set<Length> widths;
    for (const StockItem& item : stock.items) {
        if (item.material != material || item.stock.kind == cutting::StockKind::Remnant || !isThere(item))
            continue;
        if (item.stock.kind == cutting::StockKind::Sheet)
            return {};
        widths.insert(item.stock.width);
    }
    return widths.size() > 1 ? std::vector<Length>(widths.begin(), widths.end()) : std::vector<Length>();
}

std::optional<Length> coilFor(Length girth, const std::vector<Length>& widths, const cutting::EdgeTrim& trim)
{
    if (widths.empty())
        return std::nullopt;
    for (const Length width : widths)
        if (girth <= width - trim.left - trim.right)
            return width;
    return widths.back();
}

/// No date is later than any.
bool dueBefore(const std::optional<Date>& left, const std::optional<Date>& right)
{
    if (left && right)
        return *left < *right;
    return left.has_value() && !right.has_value();
}

void add(Batch& batch, const OpenPiece& piece)
{
    if (batch.lines.empty() || dueBefore(piece.wantedBy, batch.due))
        batch.due = piece.wantedBy;
    batch.priority = batch.lines.empty() ? piece.priority : std::max(batch.priority, piece.priority);
    batch.pieces += piece.count;
    batch.lines.push_back({piece, 0});
    const auto served = std::find_if(batch.orders.begin(), batch.orders.end(),
                                     [&](const ServedOrder& one) { return one.order == piece.order; });
    if (served == batch.orders.end())
        batch.orders.push_back({piece.order, piece.job, piece.wantedBy, piece.count});
    else
        served->pieces += piece.count;
}

void classify(Batch& batch)
{
    std::set<Date> dates;
    for (const BatchLine& line : batch.lines)
        if (line.piece.wantedBy)
            dates.insert(*line.piece.wantedBy);
    for (BatchLine& line : batch.lines) {
        const auto at = line.piece.wantedBy ? dates.find(*line.piece.wantedBy) : dates.end();
        line.dueClass = static_cast<int>(std::distance(dates.begin(), at));
    }
    std::stable_sort(batch.orders.begin(), batch.orders.end(),
                     [](const ServedOrder& left, const ServedOrder& right) {
                         return dueBefore(left.wantedBy, right.wantedBy);
                     });
}

} // namespace

Batches batchesOf(const std::vector<OpenPiece>& pieces, const ShopStock& stock, bool coilWidthsApart)
{
    Batches result;
    std::map<site::Material, std::vector<Length>> widths;
    std::map<std::tuple<site::Material, std::optional<Length>>, Batch> byKey;
    for (const OpenPiece& piece : pieces) {
        if (piece.held) {
            result.held.push_back(piece);
            continue;
        }
        if (coilWidthsApart && widths.count(piece.material) == 0)
            widths[piece.material] = coilWidths(piece.material, stock);
        const std::optional<Length> width =
            coilWidthsApart ? coilFor(piece.girth, widths[piece.material], stock.rules.edgeTrim)
                            : std::nullopt;
        Batch& batch = byKey[{piece.material, width}];
        batch.material = piece.material;
        batch.coilWidth = width;
        add(batch, piece);
    }
    for (auto& [key, batch] : byKey) {
        classify(batch);
        result.batches.push_back(std::move(batch));
    }
    std::stable_sort(result.batches.begin(), result.batches.end(), [](const Batch& left, const Batch& right) {
        if (left.due != right.due)
            return dueBefore(left.due, right.due);
        return left.priority > right.priority;
    });
    return result;
}

std::vector<cutting::Stock> stockFor(const Batch& batch, const ShopStock& stock)
{
    std::vector<cutting::Stock> result;
    const std::vector<Length> widths =
        batch.coilWidth ? coilWidths(batch.material, stock) : std::vector<Length>();
    for (const StockItem& item : stock.items) {
        if (item.material != batch.material || !isThere(item))
            continue;
        const bool remnant = item.stock.kind == cutting::StockKind::Remnant;
        if (batch.coilWidth &&
            (remnant ? *batch.coilWidth != widths.front() : item.stock.width != *batch.coilWidth))
            continue;
        result.push_back(item.stock);
    }
    return result;
}

std::string blankKey(const std::string& order, const std::string& mark)
{
    return order + "/" + mark;
}

std::string orderOfBlank(const std::string& blankKey)
{
    return blankKey.substr(0, blankKey.find('/'));
}

std::string markOfBlank(const std::string& blankKey)
{
    return blankKey.substr(blankKey.find('/') + 1);
}

} // namespace lapwright::schedule
