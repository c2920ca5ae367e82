#pragma once

#include "cutting/level_table.h"
#include "cutting/master_program.h"
#include "cutting/strip_table.h"

#include <optional>
#include <vector>

namespace lapwright::cutting {

/// Finds the columns that would better the master program, and what no plan can cost less than.
class Pricing {
public:
    explicit Pricing(const Instance& instance, LevelTable::Lengths lengths = LevelTable::Lengths::All);

    /// The best strips, levels and sheets for these worths of the kinds; they need not be the program's own.
    void fill(const std::vector<double>& worths);
    /// The same with no more of each kind than this.
    void fill(const std::vector<double>& worths, const std::vector<std::int64_t>& wanted);
    /// Of those, the ones that better the program by its own duals. True where a column came that was not
    /// there.
    bool addColumns(MasterProgram& master) const;
    /// Least cost of any plan by the worths of the last fill, in doubles: what a certificate would prove.
    [[nodiscard]] double bound() const { return bound_; }
    /// By how much the worths of the last fill have to be divided so that no pattern is worth more than it
    /// costs.
    [[nodiscard]] double excess() const { return excess_; }
    /// The most valuable whole pattern of one stock; of a coil the level of this length.
    [[nodiscard]] RawPattern patternOf(int stock, int along) const;
    /// Its value.
    [[nodiscard]] double valueOf(int stock, int along) const;
    /// Ticks of work of the last fill.
    [[nodiscard]] std::int64_t ticks() const { return ticks_; }

private:
    [[nodiscard]] const StripTable& strips(int stock) const
    {
        return tables_[static_cast<std::size_t>(instance_.stockAt(stock).frame)];
    }
    [[nodiscard]] std::vector<double> worthOfWidths(int stock) const;
    void findBound(const std::vector<double>& worths);
    bool addSheets(MasterProgram& master, int stock) const;
    bool addStrips(MasterProgram& master, int stock, const std::vector<double>& slots) const;
    bool addLevels(MasterProgram& master, int stock) const;
    [[nodiscard]] std::optional<RawStrip> stripWith(int stock, int width, int placement) const;

    const Instance& instance_;
    std::vector<std::int64_t> demands_;
    std::vector<StripTable> tables_;
    std::vector<BarProblem> across_;
    std::vector<std::optional<LevelTable>> levels_;
    std::vector<Pieces> bestWidths_;
    std::vector<double> bestValues_;
    double bound_ = 0.0, excess_ = 1.0;
    std::int64_t ticks_ = 0;
};

} // namespace lapwright::cutting
