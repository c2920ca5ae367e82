#pragma once

#include "drawing/display_list.h"
#include "print/sheet.h"

#include <cstddef>
#include <string>
#include <vector>

/// A table set into the width of a page: what its rows hold line by line, and how high they are.
namespace lapwright::print {

/// A row with its cells' text broken into lines.
struct SetRow {
    enum class Kind { Band, Body } kind = Kind::Body;
    std::size_t group = 0;
    double height = 0.0;
    std::vector<std::vector<std::string>> lines; ///< by column; of a band: title, note
    std::vector<Cell> cells;                     ///< by column; empty for a band
    std::vector<double> sizes;                   ///< of the cells' type, by column
};

class SetTable {
public:
    /// Precondition: every row has a cell for each column. A row higher than `mostHeight` becomes several.
    SetTable(const Table& table, double width, double mostHeight);

    /// Rows in their order, bands among them.
    [[nodiscard]] const std::vector<SetRow>& rows() const { return rows_; }
    [[nodiscard]] double headHeight() const { return headHeight_; }
    /// Of titles and all rows.
    [[nodiscard]] double height() const;
    /// Of the band that says again which group goes on, on top of row `row`; 0 where none is needed.
    [[nodiscard]] double againHeight(std::size_t row) const;
    /// Whether the table may go on to the next page before row `row`: no band without its rows, no row of a
    /// group alone on either side.
    [[nodiscard]] bool mayBreakBefore(std::size_t row) const;
    /// The row to break before so that all from `first` on stands in `room`; `first` if nothing may stand
    /// there.
    [[nodiscard]] std::size_t breakAfter(std::size_t first, double room) const;
    /// The same with no regard to what stands together: at least one row.
    [[nodiscard]] std::size_t breakAnywhere(std::size_t first, double room) const;

    /// Draws the column titles, and rows `first` to before `last`, from `top` down; returns where it ends.
    double draw(std::size_t first, std::size_t last, double left, double top,
                std::vector<drawing::Shape>& onto) const;

private:
    void setColumns(double width);
    void setGroup(std::size_t group, double mostHeight);
    void addBody(std::size_t group, const Row& row, double mostHeight);
    [[nodiscard]] double bandHeight() const;
    void drawHead(double left, double top, std::vector<drawing::Shape>& onto) const;
    void drawBand(const SetRow& row, bool again, double left, double top,
                  std::vector<drawing::Shape>& onto) const;
    void drawBody(const SetRow& row, double left, double top, std::vector<drawing::Shape>& onto) const;
    void drawCell(const SetRow& row, std::size_t column, double left, double top,
                  std::vector<drawing::Shape>& onto) const;

    const Table& table_;
    double width_;
    std::vector<double> widths_;
    std::vector<std::vector<std::string>> titles_;
    double headHeight_ = 0.0;
    std::vector<SetRow> rows_;
    std::vector<std::size_t> bodiesOf_; ///< of each group
};

} // namespace lapwright::print
