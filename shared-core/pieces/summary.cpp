#include "pieces/summary.h"

#include "measure/rounding.h"
#include "pieces/laying.h"

#include <algorithm>
#include <string_view>

namespace lapwright::pieces {

namespace {

double kilogramsOf(const Order& order, const Piece& piece)
{
    return kilogramsEach(order, piece) * static_cast<double>(piece.count);
}

bool alike(const PieceLine& line, const Piece& piece)
{
    return line.run == piece.run && line.profile == piece.profile && line.length == piece.blankLength &&
           line.hand == piece.hand && line.spare == piece.spare;
}

/// The mark of the last of several alike: "S1.1" with 12 of them ends in "S1.12".
std::string lastMarkOf(const Piece& piece)
{
    const auto parts = partsOf(piece.mark);
    return parts ? markOf(std::string(parts->prefix), parts->ordinal + piece.count - 1) : piece.mark;
}

} // namespace

double kilogramsEach(const Order& order, const Piece& piece)
{
    return order.profiles[piece.profile].kilogramsPerMetre * inMetres(piece.blankLength);
}

std::vector<PieceLine> pieceLines(const Order& order)
{
    std::vector<PieceLine> lines;
    for (const Piece& piece : order.pieces) {
        if (lines.empty() || !alike(lines.back(), piece))
            lines.push_back({piece.mark, piece.mark, piece.run, piece.profile, piece.hand, piece.blankLength,
                             0, 0.0, piece.spare});
        lines.back().lastMark = lastMarkOf(piece);
        lines.back().count += piece.count;
        lines.back().kilograms += kilogramsOf(order, piece);
    }
    return lines;
}

Totals totalsOf(const Order& order)
{
    Totals totals;
    for (const Piece& piece : order.pieces) {
        totals.pieces += piece.count;
        totals.kilograms += kilogramsOf(order, piece);
    }
    return totals;
}

std::vector<AccessoryTotal> accessoryTotals(const Order& order)
{
    std::vector<AccessoryTotal> totals;
    for (const Accessory& accessory : order.accessories) {
        auto total = std::find_if(totals.begin(), totals.end(), [&accessory](const AccessoryTotal& one) {
            return one.name == accessory.name;
        });
        if (total == totals.end())
            total = totals.insert(totals.end(), {accessory.name, 0, {}});
        total->count += accessory.count;
        total->length += accessory.length;
    }
    return totals;
}

std::map<std::string, std::string> marksByRun(const Order& order)
{
    std::map<std::string_view, std::int64_t> cutOnSite; // how many, by what their marks begin with
    for (const SiteCut& cut : order.siteCuts)
        if (const auto parts = partsOf(cut.mark))
            ++cutOnSite[parts->prefix];
    std::map<std::string, std::string> marks;
    for (const RunTakeoff& run : order.runs) {
        std::string first = markOf(run.mark, 1), last = first;
        if (run.pieceCount > 0)
            last = lastMarkOf(order.pieces[run.firstPiece + run.pieceCount - 1]);
        else if (const auto cuts = cutOnSite.find(run.mark); cuts != cutOnSite.end())
            last = markOf(run.mark, cuts->second);
        std::string& read = marks[run.run];
        read += (read.empty() ? "" : ", ") + (first == last ? first : first + " to " + last);
    }
    return marks;
}

} // namespace lapwright::pieces
