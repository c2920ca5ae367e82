#pragma once

#include "cutting/plan.h"

#include <cstdint>
#include <utility>
#include <vector>

/// The problem in small whole numbers, as the search sees it: the kerf is added to every blank and to every
/// span, and each axis is divided by the greatest common divisor of the blanks' measures along it. Where that
/// leaves more units than can be tabulated the unit is coarser: blanks round up, so that every plan still
/// fits.
namespace lapwright::cutting {

/// Blanks of equal size that are interchangeable in the metal.
struct Kind {
    std::int64_t demand = 0;
    double area = 0.0; ///< girth × length in square millimetres
    int dueClass = 0;
    std::vector<std::size_t> blanks; ///< in the order they are to be served
};

/// One way a kind may lie in a strip.
struct Placement {
    int kind = 0;
    int across = 0; ///< width of strip it needs
    int along = 0;  ///< what it takes of the strip's length
    bool turned = false;
};

/// The placements as one cut order sees them, by ascending width of strip, then ascending length.
struct Frame {
    CutOrder order = CutOrder::StripsFirst;
    std::vector<Placement> placements;
    std::vector<int> widths;           ///< the distinct strip widths, ascending
    std::vector<Length> girths;        ///< the same as they are, without kerf and rounding to units
    std::vector<int> widthOfPlacement; ///< index into widths
    std::vector<int> firstOfWidth;     ///< placements of width w are [firstOfWidth[w], firstOfWidth[w + 1])
    Length unitAcross, unitAlong;
};

struct StockClass {
    std::size_t stock = 0; ///< index into Problem::stocks()
    int frame = 0;
    int across = 0; ///< span the strips share
    int along = 0;  ///< span of one strip; for a coil the longest level
    bool coil = false;
    bool single = false; ///< there is one of it from the start, as of a remnant: cut by whole patterns
    std::int64_t available = -1; ///< sheets, or units of coil length; negative: no limit
    std::int64_t cost = 1;       ///< of one sheet; of a coil see costOfLevel
};

/// What a level of a coil as long as this or longer costs less: only ever set where a bound is looked for.
struct LevelDiscount {
    int along = 0;
    std::int64_t cost = 0;
};

struct Instance {
    const Problem* problem = nullptr;
    std::vector<Kind> kinds;
    std::vector<Frame> frames;
    std::vector<StockClass> stocks;
    PatternClass patterns = PatternClass::NonExact;
    int mostStrips = 0; ///< always positive: no limit is a number no pattern reaches
    Measure measure = Measure::Sheets;
    std::int64_t costScale = 1;
    std::vector<LevelDiscount> discounts;

    [[nodiscard]] const StockClass& stockAt(int index) const
    {
        return stocks[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] const Frame& frameAt(int stock) const
    {
        return frames[static_cast<std::size_t>(stockAt(stock).frame)];
    }
    /// Cost of one sheet, or of a level of `along` units of a coil, kerf included, less its discounts.
    [[nodiscard]] std::int64_t costOf(const StockClass& stock, int along) const;
    /// A plan that takes this much or more is worth `value` or more, whatever its remnants are credited with.
    [[nodiscard]] double mostCost(std::int64_t value) const;
};

/// Tabulated: no more units than the tables of the search can hold. Finest: as many as 32 bits count, for
/// first fit alone, where rounding would leave a blank that just fits without a place.
enum class Units { Tabulated, Finest };

[[nodiscard]] Instance normalise(const Problem& problem, Units units = Units::Tabulated);

/// Cost of a coil level of this length, in the measure and scale of the plan: the one place that rounds (up).
[[nodiscard]] std::int64_t costOfLevel(const Problem& problem, std::size_t stock, Length level,
                                       Measure measure);
[[nodiscard]] Measure measureOf(const Problem& problem);
[[nodiscard]] std::int64_t costScaleOf(const Problem& problem);

/// A strip as the search builds it: width index of its frame and placements with their counts.
struct RawStrip {
    int width = 0;
    std::vector<std::pair<int, int>> pieces; ///< placement index, count

    friend auto operator<=>(const RawStrip&, const RawStrip&) = default;
};

struct RawPattern {
    int stock = 0; ///< index into Instance::stocks
    int along = 0; ///< the stock's span, or the length of the coil level
    std::int64_t count = 1;
    std::vector<RawStrip> strips; ///< one entry for each strip

    friend auto operator<=>(const RawPattern&, const RawPattern&) = default;
};

using RawPlan = std::vector<RawPattern>;

/// What one copy of the pattern takes less what its remnants are credited with.
[[nodiscard]] std::int64_t netCostOf(const Instance& instance, const RawPattern& pattern);
/// The same of the whole plan.
[[nodiscard]] std::int64_t costOf(const Instance& instance, const RawPlan& plan);

/// What the blanks of one copy of the pattern are worth together, by kind of blank.
[[nodiscard]] double worthOf(const Instance& instance, const RawPattern& pattern,
                             const std::vector<double>& worths);

/// What a strip takes of its length, in units.
[[nodiscard]] int takenBy(const Frame& frame, const RawStrip& strip);

/// Blanks of the strip that are as wide as the strip and so keep its width.
[[nodiscard]] std::int64_t holdersOfWidth(const Frame& frame, const RawStrip& strip);

} // namespace lapwright::cutting
