#pragma once

#include "fold/search.h"
#include "metal/metal.h"

#include <optional>
#include <vector>

namespace lapwright::fold {

/// The first goes that are tried of a bend: every Settings::firstGoStep up to half a step short of it, those
/// the sheet does not spring back flat from. None for a hem.
[[nodiscard]] std::vector<FoldLine> firstGoesOf(const FoldLine& line, const metal::Metal& metal,
                                                const metal::Sheet& sheet, const Machine& machine,
                                                const Settings& settings);

/// The sets of bends from which a piece with one bend in two goes can be finished: that bend not begun,
/// begun, and finished. The bend itself is in none of the first two.
struct LeadsOn {
    std::vector<bool> before;
    std::vector<bool> between;
    std::vector<bool> after;
};

/// One bend made in two goes, every other in one: operation i is bend line i, the first go for the bend in
/// two goes; the last operation is its second go.
class TwoGoes {
public:
    /// `partly` belongs to `whole`'s blank with the line as its first go leaves it, and both to the same
    /// machine and face.
    TwoGoes(StepChecker& whole, StepChecker& partly, std::size_t line, const LeadsOn& sets)
        : whole_(whole), partly_(partly), line_(line), sets_(sets)
    {
    }

    [[nodiscard]] bool leadsOn(Made made) const;

    [[nodiscard]] std::size_t count() const { return whole_.lineCount() + 1; }
    [[nodiscard]] bool isHem(std::size_t operation) const
    {
        return operation < whole_.lineCount() && whole_.blank().lines[operation].hem;
    }
    [[nodiscard]] double angleToSet(std::size_t operation) const;
    [[nodiscard]] std::optional<Obstacle> obstacle(Made made, std::size_t operation, Placement placement);
    [[nodiscard]] Length gaugeDistance(Made made, std::size_t operation, Placement placement);
    [[nodiscard]] Handling handlingForTime(Made made, std::size_t operation, Placement placement);
    [[nodiscard]] std::int64_t unhandiness(Made made, std::size_t operation) const;
    [[nodiscard]] Chosen chosen(Made made, std::size_t operation, Placement placement);

private:
    /// The checker that knows how the bends of the set stand, and the set's bend lines alone.
    [[nodiscard]] StepChecker& standing(Made made, std::size_t operation) const;
    [[nodiscard]] Made linesOf(Made made, std::size_t operation) const;
    [[nodiscard]] bool isSecond(std::size_t operation) const { return operation == whole_.lineCount(); }

    StepChecker& whole_;
    StepChecker& partly_;
    std::size_t line_;
    const LeadsOn& sets_;
};

/// The cheapest sequence in which one bend, not a hem, is made in two goes, its neighbours made between them;
/// for a blank that no sequence makes in one go each. None if there is none. Precondition: at most
/// mostLinesInTwoGoes lines.
[[nodiscard]] std::optional<Found> searchTwoGoes(Reach& reach, const CostModel& cost, const Machine& machine,
                                                 std::size_t face, const metal::Metal& metal,
                                                 const metal::Sheet& sheet, const Settings& settings);

} // namespace lapwright::fold
