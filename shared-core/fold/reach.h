#pragma once

#include "fold/steps.h"

#include <array>
#include <cstdint>
#include <vector>

namespace lapwright::fold {

inline constexpr std::array<Placement, 4> allPlacements = {{{End::Start, trim::Side::Left},
                                                            {End::Start, trim::Side::Right},
                                                            {End::End, trim::Side::Left},
                                                            {End::End, trim::Side::Right}}};

/// Which sets of bends some sequence comes to, each bend in one go, whatever time it takes. Asked from the
/// whole piece backwards: what cannot be folded last is found before anything else is looked at. Answers are
/// kept.
class Reach {
public:
    explicit Reach(StepChecker& steps);

    [[nodiscard]] StepChecker& steps() { return steps_; }
    [[nodiscard]] Made whole() const { return static_cast<Made>(known_.size() - 1); }
    /// Whether `line` can be folded next in any placement.
    [[nodiscard]] bool canFold(Made made, std::size_t line);
    /// Whether some sequence makes just the bends in `made`.
    [[nodiscard]] bool comesTo(Made made);
    /// The sets of most bends that some sequence comes to, at most `most` of them; the piece is not among
    /// them unless it can be made.
    [[nodiscard]] std::vector<Made> furthest(std::size_t most);
    /// Bend lines in the order in which some sequence makes them. Precondition: comesTo(made).
    [[nodiscard]] std::vector<std::size_t> orderTo(Made made);
    /// For each set of bends whether all others can still be made from there.
    [[nodiscard]] std::vector<bool> finishable();

private:
    enum class Answer : std::uint8_t { Unknown, No, Yes };

    StepChecker& steps_;
    std::vector<Answer> known_;
    Made allowed_ = 0; ///< what can be folded of the flat blank, as far as angle, side and hem go
};

} // namespace lapwright::fold
