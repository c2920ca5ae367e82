#pragma once

#include "measure/phrase.h"
#include "measure/result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What has to be cut and from what. A ProblemBuilder takes everything in, names what cannot be right, and
/// yields a const Problem that every other function of this folder may trust.
namespace lapwright::cutting {

/// `count` equal flat rectangles, girth × length. Turning a blank lays its girth along the stock's length:
/// only where coating and folder allow it.
struct Blank {
    std::string key; ///< opaque to this folder; names the blank in findings and plans
    Length girth;
    Length length;
    std::int64_t count = 1;
    bool mayTurn = false;
    int dueClass = 0; ///< 0 is due first; classes are planned one after the other
    int priority = 0; ///< among blanks due together the higher is cut earlier

    friend bool operator==(const Blank&, const Blank&) = default;
};

enum class StockKind { Sheet, Coil, Remnant };

/// One kind of metal rectangle at hand. Of a remnant there is one; of a coil there is one, or with no `count`
/// more of it can be had whatever its length; of a sheet there are `count`, or with no `count` as many as
/// needed.
struct Stock {
    std::string key; ///< the sheet's or coil's name, the remnant's label
    StockKind kind = StockKind::Sheet;
    Length width;
    Length length; ///< of a coil: what is left on it
    std::optional<std::int64_t> count;
    /// Of one sheet or remnant, or of one metre of coil, in any one unit of money or weight. Missing: the
    /// area in square millimetres, for a remnant less the discount of the rules.
    std::optional<std::int64_t> cost;
    std::optional<Length> longestCrosscut; ///< coil only: the longest level the line or the table takes

    friend bool operator==(const Stock&, const Stock&) = default;
};

/// Strips first: slit lengthwise, then crosscut each strip. Lengths first: crosscut the sheet, then slit each
/// part. A coil is always crosscut to levels, slit, and its strips crosscut.
enum class CutOrder { StripsFirst, LengthsFirst };

/// Exact: every blank fills its strip's width. Non-exact: a narrower blank may lie in a wider strip and is
/// trimmed to its girth by one more slit.
enum class PatternClass { Exact, NonExact };

/// Metal lost at the edges of sheets and coils before the first blank, the cut that removes it included.
/// Remnants were trimmed when they were made.
struct EdgeTrim {
    Length left;
    Length right;
    Length lead;
    Length tail;

    friend bool operator==(const EdgeTrim&, const EdgeTrim&) = default;
};

/// How this shop cuts.
struct ShopRules {
    CutOrder order = CutOrder::StripsFirst;
    PatternClass patterns = PatternClass::NonExact;
    Length kerf; ///< width of metal each cut destroys; 0 for shears and slitters
    EdgeTrim edgeTrim;
    std::optional<int> mostStrips; ///< strips with blanks in one setup
    Length leastStripWidth;
    Length leastRemnantWidth; ///< an offcut smaller than either measure is scrap
    Length leastRemnantLength;
    int remnantDiscountPercent = 40; ///< taken off the area cost of a remnant without a cost of its own
    /// Of what the metal of a new remnant cost, credited for it: the plan's value is less by that.
    int remnantCreditPercent = 0;

    friend bool operator==(const ShopRules&, const ShopRules&) = default;
};

/// Why a blank, a stock or the rules were not admitted.
struct Refusal {
    enum class Part { Blank, Stock, Rules };
    Part part = Part::Blank;
    std::size_t index = 0; ///< position in the order of adding; 0 for rules
    std::string key;
    Phrase reason;

    friend bool operator==(const Refusal&, const Refusal&) = default;
};

class ProblemBuilder;

/// A validated cutting problem; sums of what it holds cannot overflow.
class Problem {
public:
    [[nodiscard]] const std::vector<Blank>& blanks() const { return blanks_; }
    [[nodiscard]] const std::vector<Stock>& stocks() const { return stocks_; }
    [[nodiscard]] const ShopRules& rules() const { return rules_; }

    /// The cost of one sheet or remnant, or of one metre of coil, given or by area.
    [[nodiscard]] std::int64_t cost(std::size_t stock) const;
    [[nodiscard]] bool hasCoil() const;
    /// Whether new remnants lower the value of a plan.
    [[nodiscard]] bool creditsRemnants() const;
    /// What an offcut of this size of this stock is credited with, in thousandths of the unit of cost; 0
    /// where the rules do not keep it. By its share of the stock's area, of one metre for a coil; rounded
    /// down.
    [[nodiscard]] std::int64_t credit(std::size_t stock, Length width, Length length) const;
    /// Whether the rules keep an offcut of this size.
    [[nodiscard]] bool isRemnant(Length width, Length length) const;
    /// Width left between the edge trims; never negative.
    [[nodiscard]] Length usableWidth(std::size_t stock) const;
    /// Length left between the edge trims; for a coil, all that is left to cut.
    [[nodiscard]] Length usableLength(std::size_t stock) const;
    /// Longest single rectangle the stock yields: usableLength, for a coil at most the longest crosscut.
    [[nodiscard]] Length longestPart(std::size_t stock) const;

    friend bool operator==(const Problem&, const Problem&) = default;

private:
    friend class ProblemBuilder;
    Problem() = default;

    std::vector<Blank> blanks_;
    std::vector<Stock> stocks_;
    ShopRules rules_;
};

/// What could be admitted, and what not. `problem` is missing where nothing is left to plan.
struct Admission {
    std::optional<Problem> problem;
    std::vector<Refusal> refusals;
};

class ProblemBuilder {
public:
    /// The most pieces, kinds of stock and the longest side a problem may have: far beyond any shop, far
    /// inside what 64 bits hold in every sum and product that is formed of them.
    static constexpr std::int64_t mostPieces = 5'000'000;
    static constexpr std::size_t mostStocks = 5'000;
    static constexpr Length longestSide = Length::millimetres(10'000'000);
    static constexpr std::int64_t highestCost = 100'000'000'000;

    ProblemBuilder& rules(const ShopRules& rules);
    ProblemBuilder& blank(Blank blank);
    ProblemBuilder& stock(Stock stock);

    /// All or nothing: the problem, or one error for each part that cannot be right.
    [[nodiscard]] Result<Problem> build() const;
    /// The problem of what can be right, beside the reasons for the rest. Rules that cannot be right admit
    /// nothing.
    [[nodiscard]] Admission admit() const;

private:
    ShopRules rules_;
    std::vector<Blank> blanks_;
    std::vector<Stock> stocks_;
};

} // namespace lapwright::cutting
