#pragma once

#include "cutting/master_program.h"
#include "cutting/part.h"

#include <map>
#include <optional>
#include <random>
#include <vector>

namespace lapwright::cutting {

/// A whole plan in the making: columns of the master program are fixed one after the other until nothing is
/// wanted any more.
class Rounding {
public:
    explicit Rounding(const Instance& instance);

    /// Nothing is wanted any more; nothing is fixed yet.
    [[nodiscard]] bool done() const;
    [[nodiscard]] bool empty() const;
    [[nodiscard]] const std::vector<std::int64_t>& residual() const { return residual_; }
    [[nodiscard]] const std::vector<std::int64_t>& used() const { return used_; }
    /// Puts what is still wanted and what is chosen into the rows of the program.
    void setRows(MasterProgram& master) const;
    /// Cost of the whole patterns fixed so far; strips are in the program's objective.
    [[nodiscard]] double costOfWholes() const { return costOfWholes_; }

    /// Cost in the relaxation where sheets may be fractions, as last noted.
    void note(double objective) { cost_ = objective + costOfWholes_; }
    [[nodiscard]] double cost() const { return cost_; }

    /// The whole parts of the program's solution, where they are wanted as they are. False where there is
    /// none.
    bool fixWhole(const MasterProgram& master);
    /// Whole parts first, then the largest fractions that lose least, a `share` of them at once; `noise`
    /// blurs their order. `random` is drawn from only where noise is positive. False where nothing could be
    /// fixed.
    bool fix(const MasterProgram& master, double share, double noise, std::mt19937& random);

    /// The same state for a part of the instance that holds what is still wanted; strips count, unseen.
    [[nodiscard]] Rounding inPart(const Part& part) const;
    /// Takes over what was fixed in the part.
    void takeOver(const Rounding& other, const Part& part);
    /// Gives back some strips and whole patterns, drawn at random, wasteful ones sooner.
    void giveBack(const MasterProgram& master, std::mt19937& random);

    /// Sheets for the strips chosen: fewest by the one-dimensional search, for each kind of sheet, where the
    /// strips of the emptiest sheets may pass on to longer ones. Empty where the stock does not suffice.
    [[nodiscard]] std::optional<RawPlan> finish(const BarSearch& search) const;

private:
    struct Candidate {
        double order;
        std::size_t column;
    };
    struct Clipped {
        RawPattern pattern;
        double value = 0.0; ///< what the blanks in it are worth
    };

    /// A strip of a stock and width, or with stock -1 a whole pattern.
    struct Place {
        int stock, width;
        std::size_t entry;
        double loss;
    };

    void giveBack(const Place& place);
    [[nodiscard]] std::int64_t fits(const MasterProgram::Column& column) const;
    [[nodiscard]] Clipped clip(const MasterProgram& master, const MasterProgram::Column& column);
    void clipStrip(const MasterProgram& master, const RawStrip& strip, int span, Clipped& result);
    void take(const RawPattern& pattern, std::int64_t sign);
    void choose(int stock, bool whole, RawPattern pattern);
    [[nodiscard]] double priceOf(const MasterProgram& master, const MasterProgram::Column& column,
                                 const RawPattern& pattern) const;
    [[nodiscard]] std::optional<RawPlan> finishAsChosen(const BarSearch& search) const;
    bool finishStock(int stock, const BarSearch& search, RawPlan& plan) const;
    [[nodiscard]] bool mayPassOn(int from, int to) const;
    void passOn(const RawPlan& plan, int from, int to, std::int64_t sheets);

    const Instance* instance_;
    std::vector<std::int64_t> residual_, used_;
    /// Strips chosen, by stock and width, with their counts.
    std::vector<std::map<int, std::vector<std::pair<RawStrip, std::int64_t>>>> strips_;
    std::vector<std::map<int, std::int64_t>> chosen_; ///< how many strips that makes
    RawPlan wholes_;
    double costOfWholes_ = 0.0;
    double cost_ = 0.0;
    bool touched_ = false;
};

} // namespace lapwright::cutting
