#pragma once

#include "measure/derivation.h"
#include "pieces/piece.h"
#include "site/chain.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// The order in which the pieces of a run are laid, and the marks that say it.
namespace lapwright::pieces {

/// The end of the run at which the first piece is laid.
enum class LaidFrom { Start, End };

struct Laying {
    LaidFrom from = LaidFrom::Start;
    Derivation derivation;
};

/// Where laying begins so that each later piece covers the one before and sheds water over it: a sloping run
/// (rake, hip, valley, sidewall) from its low end, a vertical one from its foot, a level one from the start
/// of the run, which is taken for the hidden or down-wind end. A sloping or vertical run starts at its low
/// end unless its neighbours in the chain say otherwise: it is low where it meets a level eave, fascia,
/// gutter or wall base, high where it meets a ridge, a headwall, or another run of its own kind (two rakes
/// meet at the peak). Source: UFGS 07600 3.1.6.5, seams in the direction of flow.
[[nodiscard]] Laying layingOf(const site::Chain& chain, std::size_t run);

/// The hand of a handed trim. Standing outside, the start of a run is at its left: pieces laid from the left
/// end (a rake left of its gable) are left, those laid from the right end are right.
[[nodiscard]] Hand handOf(LaidFrom from);

/// The letter of the trim at `index` on a run that has several: a … z, aa, ab….
[[nodiscard]] std::string trimLetter(std::size_t index);

/// A mark: `prefix`, a point, the ordinal in installing order, "E3.2". The part before the last point is the
/// prefix again, so equal marks have equal prefixes.
[[nodiscard]] std::string markOf(const std::string& prefix, std::int64_t ordinal);

/// A mark taken apart; `prefix` is part of the text it was read from. Nothing for what markOf() does not
/// make.
struct MarkParts {
    std::string_view prefix;
    std::int64_t ordinal = 0;
};
[[nodiscard]] std::optional<MarkParts> partsOf(std::string_view mark);

} // namespace lapwright::pieces
