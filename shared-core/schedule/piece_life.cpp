#include "schedule/piece_life.h"

#include <algorithm>

namespace lapwright::schedule {

namespace {

constexpr std::array<std::string_view, pieceStates> names = {
    "ordered", "cut", "folded", "bundled", "loaded", "received", "short", "damaged", "wrong"};

constexpr std::array<std::string_view, 6> kinds = {"order",  "withdraw", "advance",
                                                   "remake", "scrap",    "again"};

PieceState stateBefore(PieceState reached)
{
    if (reached > PieceState::Loaded)
        return PieceState::Loaded;
    return static_cast<PieceState>(static_cast<std::size_t>(reached) - 1);
}

Error notThere(std::int64_t found, PieceState state, std::int64_t wanted)
{
    return {"", std::to_string(found) + " " + std::string(name(state)), "at least " + std::to_string(wanted)};
}

Result<PieceCounts> advance(PieceCounts counts, PieceState reached, std::int64_t count)
{
    if (reached == PieceState::Ordered)
        return Error{"", "an advance to ordered", "an order or a remake"};
    const PieceState before = stateBefore(reached);
    if (counts.of(before) >= count) {
        counts.of(before) -= count;
    } else {
        const bool corrects =
            reached > PieceState::Received && counts.of(before) + counts.of(PieceState::Received) >= count;
        if (!corrects)
            return notThere(counts.of(before), before, count);
        counts.of(PieceState::Received) -= count - counts.of(before);
        counts.of(before) = 0;
    }
    counts.of(reached) += count;
    return counts;
}

} // namespace

std::string_view name(PieceEvent::Kind kind)
{
    return kinds[static_cast<std::size_t>(kind)];
}

Result<PieceEvent::Kind> pieceEventKind(std::string_view text)
{
    const auto* at = std::find(kinds.begin(), kinds.end(), text);
    if (at == kinds.end())
        return Error{"", std::string(text), "order, withdraw, advance, remake, scrap or again"};
    return static_cast<PieceEvent::Kind>(at - kinds.begin());
}

std::string_view name(PieceState state)
{
    return names[static_cast<std::size_t>(state)];
}

Result<PieceState> pieceState(std::string_view text)
{
    const auto* at = std::find(names.begin(), names.end(), text);
    if (at == names.end())
        return Error{"", std::string(text),
                     "ordered, cut, folded, bundled, loaded, received, short, damaged or wrong"};
    return static_cast<PieceState>(at - names.begin());
}

Result<PieceCounts> after(const PieceCounts& counts, const PieceEvent& event)
{
    if (event.count <= 0)
        return Error{"", std::to_string(event.count) + " pieces", "one or more"};
    PieceCounts next = counts;
    switch (event.kind) {
    case PieceEvent::Kind::Order:
        next.of(PieceState::Ordered) += event.count;
        return next;
    case PieceEvent::Kind::Withdraw:
        if (counts.of(PieceState::Ordered) < event.count)
            return notThere(counts.of(PieceState::Ordered), PieceState::Ordered, event.count);
        next.of(PieceState::Ordered) -= event.count;
        return next;
    case PieceEvent::Kind::Advance:
        return advance(counts, event.state, event.count);
    case PieceEvent::Kind::Remake:
        if (counts.awaitingRemake() < event.count)
            return Error{"", std::to_string(counts.awaitingRemake()) + " awaiting a remake",
                         "at least " + std::to_string(event.count)};
        next.remade += event.count;
        next.of(PieceState::Ordered) += event.count;
        return next;
    case PieceEvent::Kind::Scrap:
        if (event.state == PieceState::Ordered || event.state > PieceState::Bundled)
            return Error{"", "scrap of a piece that is " + std::string(name(event.state)),
                         "cut, folded or bundled"};
        if (counts.of(event.state) < event.count)
            return notThere(counts.of(event.state), event.state, event.count);
        next.of(event.state) -= event.count;
        next.of(PieceState::Ordered) += event.count;
        return next;
    case PieceEvent::Kind::Again:
        if (event.state != PieceState::Folded)
            return Error{"", "once more what is " + std::string(name(event.state)), "folded pieces"};
        if (counts.of(PieceState::Folded) < event.count)
            return notThere(counts.of(PieceState::Folded), PieceState::Folded, event.count);
        next.of(PieceState::Folded) -= event.count;
        next.of(PieceState::Cut) += event.count;
        return next;
    }
    return next;
}

} // namespace lapwright::schedule
