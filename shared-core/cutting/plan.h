#pragma once

#include "cutting/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a cutting plan says. All positions are from the stock's own left lead corner, edge trim included:
/// `across` is measured along the width, `along` down the length.
namespace lapwright::cutting {

/// `count` blanks of one entry, one after the other.
struct Crosscut {
    std::size_t blank = 0; ///< index into Problem::blanks()
    std::int64_t count = 0;
    bool turned = false;

    friend bool operator==(const Crosscut&, const Crosscut&) = default;
};

/// One part the first cuts make. Strips first: lies lengthwise, `position` across, `width` its slit width,
/// blanks follow each other along the length. Lengths first: lies crosswise, `position` along, `width` its
/// length along the sheet, blanks follow each other across the width.
struct Strip {
    Length position;
    Length width;
    std::vector<Crosscut> crosscuts;
    Length rest; ///< what is left at the strip's end after the last blank and its kerf; 0 where nothing is

    friend bool operator==(const Strip&, const Strip&) = default;
};

/// How a blank lies in its strip: `across` the strip's width, `along` its run of blanks.
struct Lying {
    Length across;
    Length along;
};

/// A blank that is not turned has its length down the stock, whichever cut comes first.
[[nodiscard]] Lying lyingIn(CutOrder order, const Blank& blank, bool turned);

/// `count` sheets, remnants or coil levels cut alike, in the order they are to be cut.
struct Pattern {
    std::size_t stock = 0; ///< index into Problem::stocks()
    CutOrder order = CutOrder::StripsFirst;
    Length length; ///< of the sheet or remnant; of a coil the length of the level
    std::int64_t count = 1;
    std::vector<Strip> strips; ///< in the order they are cut
    Length rest;               ///< left beside the last strip and its kerf, inside the edge trim

    friend bool operator==(const Pattern&, const Pattern&) = default;
};

/// Square metres of metal that one sheet, remnant or level of the pattern takes from `stock`: a level takes
/// the kerf of its crosscut along.
[[nodiscard]] double metalTaken(const Stock& stock, Length kerf, const Pattern& pattern);

/// An offcut worth keeping, with the data of its label.
struct NewRemnant {
    std::string label;
    std::size_t pattern = 0;          ///< index into Plan::patterns; one remnant for each of its `count`
    std::optional<std::size_t> strip; ///< the end of this strip; missing: what lies beside the last strip
    Length across, along;             ///< its left lead corner
    Length width, length;             ///< as stock: width across, length along
    std::int64_t count = 1;

    friend bool operator==(const NewRemnant&, const NewRemnant&) = default;
};

/// What each of its `count` pieces bears on its label and in the stock: "R22", or where there are several
/// "R22.1", "R22.2".
[[nodiscard]] std::vector<std::string> keysOf(const NewRemnant& remnant);
/// The same in one line: "R22", or of several "R22.1 – R22.3".
[[nodiscard]] std::string keysInWords(const NewRemnant& remnant);

/// Where the metal goes, in square metres; the parts add up to `stock`.
struct Waste {
    double stock = 0.0;
    double blanks = 0.0;
    double edgeTrim = 0.0;
    double kerf = 0.0;
    double girthTrim = 0.0; ///< beside blanks in wider strips
    double remnants = 0.0;
    double scrap = 0.0;

    friend bool operator==(const Waste&, const Waste&) = default;
};

/// In what the plan and its bound are counted.
enum class Measure {
    Sheets,     ///< one kind of sheet: how many
    CoilLength, ///< one coil: nanometres taken from it, kerf of the crosscuts included
    Cost,       ///< anything else: cost less credits for remnants, × Plan::costScale
};

enum class Proof { ProvenLeast, ProvenWithinOne, Gap };

/// Why no plan of the stated class can be better, in integers that need no linear program to be checked.
/// By patterns: if each blank is worth `blankValues`, no pattern of a stock is worth more than `perCost`
/// times its cost (plus what a limited stock is worth in itself), so the blanks' total worth over perCost
/// bounds the cost. By strips then sheets (exact class, one kind of sheet): the same twice, once in each
/// girth for the number of strips, then over girths for the number of sheets. By area: what the blanks cover.
/// By every plan: so few blanks that all plans can be tried, and none is worth less than `least`.
/// By patterns of one coil, levels of some length may be worth something in themselves: how many there are at
/// least is shown by a worth of the blanks that lie in no shorter one, rounded up to whole levels.
struct Certificate {
    enum class Method { Area, Patterns, StripsThenSheets, EveryPlan };
    struct Girth {
        Length width;                    ///< strip width
        std::int64_t mostStripValue = 1; ///< no strip of this width is worth more
        std::int64_t value = 0;          ///< worth of one such strip in the sheet
        friend bool operator==(const Girth&, const Girth&) = default;
    };

    struct LevelCount {
        Length from;                           ///< counts the levels as long as this or longer
        std::vector<std::int64_t> blankValues; ///< one for each blank; 0 for those that fit a shorter level
        std::int64_t value = 0;                ///< worth of one such level in itself
        friend bool operator==(const LevelCount&, const LevelCount&) = default;
    };

    Method method = Method::Area;
    PatternClass patterns = PatternClass::NonExact; ///< the class no better plan exists in
    std::vector<std::int64_t> blankValues;          ///< one for each blank; empty for Area
    std::int64_t perCost = 1;
    std::vector<Girth> girths;           ///< StripsThenSheets only
    std::int64_t least = 0;              ///< EveryPlan only
    std::vector<LevelCount> levelCounts; ///< Patterns of one coil only

    friend bool operator==(const Certificate&, const Certificate&) = default;
};

/// One flag for each rule; true where it is kept.
struct Feasibility {
    bool allBlanksCut = true;
    bool nothingCutTwice = true;
    bool stockSuffices = true;
    bool stripsFit = true;
    bool crosscutsFit = true;
    bool girthsFit = true;
    bool turnsAllowed = true;
    bool stripCountKept = true;
    bool stripWidthKept = true;
    bool crosscutLimitKept = true;
    bool remnantsRight = true;
    bool wasteAddsUp = true;
    bool valueRight = true;
    bool boundCertified = true;
    bool dueStagesRight = true;

    /// Every rule but allBlanksCut: the plan can be cut as it stands.
    [[nodiscard]] bool cuttable() const;
    [[nodiscard]] bool all() const { return cuttable() && allBlanksCut; }

    friend bool operator==(const Feasibility&, const Feasibility&) = default;
};

struct Shortfall {
    std::size_t blank = 0;
    std::int64_t count = 0;
    friend bool operator==(const Shortfall&, const Shortfall&) = default;
};

/// A plan with fewer slitter setups or fewer sheets than its neighbour in the list.
struct SetupTrade {
    std::int64_t value = 0; ///< in the plan's measure
    std::int64_t setups = 0;
    friend bool operator==(const SetupTrade&, const SetupTrade&) = default;
};

/// What the blanks due by a class cost where they come first: the patterns that hold any of them, and a bound
/// below which no plan can cut them, with its certificate, in which later blanks are worth nothing.
struct DueStage {
    int dueClass = 0;
    std::int64_t value = 0;
    std::int64_t bound = 0; ///< 0 where nothing is proven
    Certificate certificate;
    friend bool operator==(const DueStage&, const DueStage&) = default;
};

enum class Ending { Proven, NothingBetterFound, WorkLimit, TimeLimit, Cancelled };

struct Plan {
    std::vector<Pattern> patterns; ///< in cutting order: due first, then so that the slitter moves least
    std::vector<NewRemnant> remnants;
    std::vector<Shortfall> notCut; ///< only where the stock does not suffice
    Waste waste;

    Measure measure = Measure::Sheets;
    std::int64_t costScale = 1; ///< value and bound are this many times the cost
    std::int64_t value = 0;
    std::int64_t bound = 0; ///< no plan of the certificate's class has less
    Proof proof = Proof::Gap;
    Certificate certificate;

    std::int64_t setups = 0; ///< different ordered lists of strip widths
    std::vector<SetupTrade> setupTrades;
    std::vector<DueStage>
        dueStages;           ///< earliest first; empty where all is due together or that was not asked for
    Feasibility feasibility; ///< as the independent checker found it
    Ending ending = Ending::NothingBetterFound;
    std::int64_t work = 0; ///< counted in the unit of Settings::workLimit

    /// (value - bound) / bound; 0 where nothing is to be cut.
    [[nodiscard]] double gap() const;
    /// The share of its value that a better plan could save at most: between 0 and 1.
    [[nodiscard]] double saving() const;

    friend bool operator==(const Plan&, const Plan&) = default;
};

} // namespace lapwright::cutting
