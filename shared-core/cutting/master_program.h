#pragma once

#include "cutting/instance.h"
#include "cutting/knapsack.h"
#include "cutting/linear_program.h"
#include "cutting/part.h"
#include "cutting/warm_start.h"

#include <map>
#include <set>
#include <vector>

namespace lapwright::cutting {

/// The linear program of the nested column generation. Strip columns bring blanks and take a slot of their
/// width, sheet columns bring slots (a coil's sheet is its longest level), whole columns are remnants and
/// other levels with all their blanks. Exchange columns let a larger blank stand for a smaller one and a
/// wider slot for a narrower: one new column then serves all its like, and the duals come out in order of
/// size.
class MasterProgram {
public:
    struct Column {
        enum class Sort { Strip, Sheet, Whole, Exchange };
        Sort sort = Sort::Strip;
        int stock = 0;
        RawStrip strip;     ///< Strip
        RawPattern pattern; ///< Whole

        [[nodiscard]] bool cutsBlanks() const { return sort == Sort::Strip || sort == Sort::Whole; }
    };

    /// Nested: strips and sheets of strips. Whole: patterns with all their blanks, for small instances, where
    /// fixing one settles more.
    enum class Columns { Nested, Whole };

    MasterProgram(const Instance& instance, Columns columns, std::function<bool()> stop);

    /// Remnants and other single sheets are cut by whole patterns only.
    [[nodiscard]] bool cutWhole(int stock) const
    {
        return kind_ == Columns::Whole || instance_.stockAt(stock).single;
    }

    /// False where the column is there already.
    bool addStrip(int stock, RawStrip strip);
    bool addSheet(int stock, const Pieces& widths);
    bool addWhole(RawPattern pattern);
    void addPattern(const RawPattern& pattern);
    /// Each kind alone in a strip, each width alone in a sheet: with them every demand can be met where stock
    /// without limit takes it. In a remnant only what no such stock takes.
    void addSingles();
    /// Columns of a program for the whole of which this one's instance is a part, as far as they belong to
    /// it.
    void addFrom(const MasterProgram& whole, const Part& part);
    void addExchanges();
    /// Adds the columns of the start and lets the next solve begin there.
    void startFrom(const WarmStart& start);

    /// What is still wanted of each kind, taken of each stock, and strips already chosen by stock and width.
    void setRows(const std::vector<std::int64_t>& residual, const std::vector<std::int64_t>& used,
                 const std::vector<std::map<int, std::int64_t>>& chosen);

    /// False where no plan satisfies the rows, or where it was stopped.
    [[nodiscard]] bool solve();
    [[nodiscard]] double objective() const { return unit_ * program_.objective(); }
    [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }
    [[nodiscard]] std::vector<double> values() const { return program_.values(); }

    /// Duals of the last solve: worth of a blank of each kind, of a slot, of a unit of limited stock.
    [[nodiscard]] const std::vector<double>& worths() const { return worths_; }
    [[nodiscard]] double slot(int stock, int width) const
    {
        return duals_[static_cast<std::size_t>(rowOfStrip(stock, width))];
    }
    [[nodiscard]] double scarcity(int stock) const
    {
        const int row = availabilityRow_[static_cast<std::size_t>(stock)];
        return row >= 0 ? duals_[static_cast<std::size_t>(row)] : 0.0;
    }
    /// What the blanks of a strip, of a pattern are worth.
    [[nodiscard]] double worthOf(int stock, const RawStrip& strip) const;
    [[nodiscard]] double worthOf(const RawPattern& pattern) const;
    /// Ticks of work of the last solve.
    [[nodiscard]] std::int64_t ticks() const { return ticks_; }

private:
    [[nodiscard]] int rowOfStrip(int stock, int width) const
    {
        return stripRow_[static_cast<std::size_t>(stock)] + width;
    }
    std::vector<double> layRows();
    [[nodiscard]] std::vector<bool> plentiful() const;
    void addBlanks(int stock, const RawStrip& strip, std::map<int, double>& entries) const;
    void add(double cost, const std::map<int, double>& entries, Column column);
    void exchangeKinds();

    const Instance& instance_;
    Columns kind_;
    std::vector<int> availabilityRow_, stripRow_;
    std::size_t rows_ = 0;
    double unit_ = 1.0; ///< of the costs in the program: its numbers are near 1 whatever the money
    LinearProgram program_;
    std::vector<Column> columns_;
    std::map<std::pair<int, RawStrip>, std::size_t> knownStrips_; ///< their columns
    std::map<std::pair<int, Pieces>, std::size_t> knownSheets_;
    std::set<RawPattern> knownWholes_;
    std::vector<double> duals_, worths_;
    std::int64_t ticks_ = 0;
};

} // namespace lapwright::cutting
