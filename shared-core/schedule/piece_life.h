#pragma once

#include "measure/result.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

/// The life of a piece from the order to the site, as events that only ever add up.
namespace lapwright::schedule {

enum class PieceState { Ordered, Cut, Folded, Bundled, Loaded, Received, Short, Damaged, Wrong };
inline constexpr std::size_t pieceStates = 9;
/// All but Ordered, in the sequence of a piece's life.
inline constexpr std::array<PieceState, pieceStates - 1> statesBegun = {
    PieceState::Cut,      PieceState::Folded, PieceState::Bundled, PieceState::Loaded,
    PieceState::Received, PieceState::Short,  PieceState::Damaged, PieceState::Wrong};

/// "ordered", "cut"…: the words of files, database and screens.
[[nodiscard]] std::string_view name(PieceState state);
[[nodiscard]] Result<PieceState> pieceState(std::string_view name);

/// How many of one mark stand in each state. A remake adds to Ordered and leaves what was short, damaged or
/// wrong where it is, as history; `remade` counts those already ordered again.
struct PieceCounts {
    std::array<std::int64_t, pieceStates> in{};
    std::int64_t remade = 0;

    [[nodiscard]] std::int64_t of(PieceState state) const { return in[static_cast<std::size_t>(state)]; }
    [[nodiscard]] std::int64_t& of(PieceState state) { return in[static_cast<std::size_t>(state)]; }
    /// Found short, damaged or wrong on site and not yet ordered again.
    [[nodiscard]] std::int64_t awaitingRemake() const
    {
        return of(PieceState::Short) + of(PieceState::Damaged) + of(PieceState::Wrong) - remade;
    }

    friend bool operator==(const PieceCounts&, const PieceCounts&) = default;
};

/// What happened to `count` pieces of one mark.
struct PieceEvent {
    enum class Kind { Order, Withdraw, Advance, Remake, Scrap, Again } kind = Kind::Advance;
    /// Advance: the state reached. Scrap, Again: the state the pieces stood in. Otherwise not used.
    PieceState state = PieceState::Ordered;
    std::int64_t count = 1;
};

/// "order", "withdraw", "advance", "remake", "scrap" or "again", as the database keeps it.
[[nodiscard]] std::string_view name(PieceEvent::Kind kind);
[[nodiscard]] Result<PieceEvent::Kind> pieceEventKind(std::string_view name);

/// The counts after `event`. Error if the pieces are not there: more cut than ordered, more loaded than
/// bundled… An advance takes from the state just before the one reached (Received, Short, Damaged and Wrong
/// all follow Loaded; Short, Damaged and Wrong may also correct Received). A scrapped piece is ordered again
/// at once. Again: a piece said to be folded is not, or not well, and is folded again; no other step is taken
/// back.
[[nodiscard]] Result<PieceCounts> after(const PieceCounts& counts, const PieceEvent& event);

} // namespace lapwright::schedule
