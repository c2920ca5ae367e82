// Guards: for every kind of stock, rule and pattern the plan of a handful of blanks is the best of all plans
// there are, credits for remnants counted, which an enumeration of its own, in lengths and without the
// search's code, tries one by one; and the plan carries the proof of it.
#include "cutting/certificate_check.h"
#include "cutting/checker.h"
#include "cutting/first_fit.h"
#include "cutting/level_counts.h"
#include "cutting/nested_patterns.h"
#include "cutting/solve.h"

#include <QtTest>

#include <algorithm>
#include <limits>
#include <random>

using namespace lapwright;
using namespace lapwright::cutting;

namespace {

constexpr std::int64_t mm = 1'000'000;

struct OpenStrip {
    std::int64_t width = 0, used = 0;
};

struct OpenSheet {
    std::size_t stock = 0;
    std::vector<OpenStrip> strips;
};

/// Lays each blank, either way where it may turn, into every open strip, a new strip, or a new sheet of every
/// stock.
class Enumeration {
public:
    explicit Enumeration(const Problem& problem) : problem_(problem)
    {
        for (const Blank& blank : problem.blanks())
            for (std::int64_t copy = 0; copy < blank.count; ++copy)
                blanks_.push_back(blank);
        lay(0);
    }

    /// In the measure of the plan; none where the stock does not suffice.
    [[nodiscard]] std::optional<std::int64_t> least() const { return least_; }

private:
    [[nodiscard]] std::int64_t kerf() const { return problem_.rules().kerf.inNanometres(); }
    [[nodiscard]] bool crosswise(std::size_t stock) const
    {
        return problem_.rules().order == CutOrder::LengthsFirst &&
               problem_.stocks()[stock].kind != StockKind::Coil;
    }
    [[nodiscard]] std::int64_t spanAcross(std::size_t stock) const
    {
        return (crosswise(stock) ? problem_.longestPart(stock) : problem_.usableWidth(stock)).inNanometres();
    }
    [[nodiscard]] std::int64_t spanAlong(std::size_t stock) const
    {
        return (crosswise(stock) ? problem_.usableWidth(stock) : problem_.longestPart(stock)).inNanometres();
    }

    /// The cost of all sheets so far; none where one breaks a rule or the stock is used up.
    [[nodiscard]] std::optional<std::int64_t> cost() const
    {
        const bool credited = problem_.creditsRemnants();
        const bool single = problem_.stocks().size() == 1 && !credited;
        const bool coils = std::ranges::any_of(
            problem_.stocks(), [](const Stock& stock) { return stock.kind == StockKind::Coil; });
        std::int64_t sum = 0;
        std::vector<std::int64_t> taken(problem_.stocks().size(), 0);
        for (const OpenSheet& sheet : sheets_) {
            const Stock& stock = problem_.stocks()[sheet.stock];
            std::int64_t across = 0, longest = 0;
            for (const OpenStrip& strip : sheet.strips) {
                across += strip.width + kerf();
                longest = std::max(longest, strip.used);
            }
            if (across > spanAcross(sheet.stock) + kerf() || longest > spanAlong(sheet.stock) + kerf() ||
                (problem_.rules().mostStrips &&
                 std::cmp_greater(sheet.strips.size(), *problem_.rules().mostStrips)))
                return std::nullopt;
            if (stock.kind == StockKind::Coil) {
                taken[sheet.stock] += longest;
                // The costs of these tests are such that a millimetre has a whole cost.
                sum += single ? longest : problem_.cost(sheet.stock) * (longest / mm);
            } else {
                taken[sheet.stock] += 1;
                sum += single ? 1 : problem_.cost(sheet.stock) * (coils || credited ? 1'000 : 1);
            }
        }
        for (std::size_t index = 0; index < taken.size(); ++index) {
            const Stock& stock = problem_.stocks()[index];
            std::int64_t most = std::numeric_limits<std::int64_t>::max();
            if (stock.kind == StockKind::Remnant)
                most = 1;
            else if (stock.count)
                most = stock.kind == StockKind::Coil ? (problem_.usableLength(index)).inNanometres() + kerf()
                                                     : *stock.count;
            if (taken[index] > most)
                return std::nullopt;
        }
        return sum;
    }

    /// Of the offcuts at strip ends and beside the strips.
    [[nodiscard]] std::int64_t credits() const
    {
        std::int64_t sum = 0;
        for (const OpenSheet& sheet : sheets_) {
            const bool coil = problem_.stocks()[sheet.stock].kind == StockKind::Coil;
            std::int64_t left = spanAcross(sheet.stock), along = spanAlong(sheet.stock), longest = 0;
            for (const OpenStrip& strip : sheet.strips) {
                left -= strip.width + kerf();
                longest = std::max(longest, strip.used - kerf());
            }
            along = coil ? longest : along;
            const auto credit = [&](std::int64_t across, std::int64_t length) {
                const Length one = Length::nanometres(across), other = Length::nanometres(length);
                return crosswise(sheet.stock) ? problem_.credit(sheet.stock, other, one)
                                              : problem_.credit(sheet.stock, one, other);
            };
            sum += credit(left, along);
            for (const OpenStrip& strip : sheet.strips)
                sum += credit(strip.width, along - strip.used);
        }
        return sum;
    }

    void lay(std::size_t at)
    {
        const auto now = cost();
        if (!now || (least_ && *now >= *least_ && !problem_.creditsRemnants()))
            return;
        if (at == blanks_.size()) {
            const std::int64_t value = *now - credits();
            least_ = std::min(value, least_.value_or(value));
            return;
        }
        const Blank& blank = blanks_[at];
        for (const bool turned : {false, true}) {
            if (turned && !blank.mayTurn)
                continue;
            for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
                layInto(at, sheet, turned);
            for (std::size_t stock = 0; stock < problem_.stocks().size(); ++stock) {
                sheets_.push_back({stock, {}});
                layInto(at, sheets_.size() - 1, turned);
                sheets_.pop_back();
            }
        }
    }

    void layInto(std::size_t at, std::size_t sheet, bool turned)
    {
        const Blank& blank = blanks_[at];
        std::int64_t across = blank.girth.inNanometres(), along = blank.length.inNanometres();
        if (turned != crosswise(sheets_[sheet].stock))
            std::swap(across, along);
        const bool exact = problem_.rules().patterns == PatternClass::Exact;
        const std::int64_t thinnest = problem_.rules().leastStripWidth.inNanometres();
        if (exact && across < thinnest)
            return;
        across = std::max(across, thinnest);
        for (std::size_t strip = 0; strip < sheets_[sheet].strips.size(); ++strip) {
            const OpenStrip before = sheets_[sheet].strips[strip];
            if (exact && before.width != across)
                continue;
            sheets_[sheet].strips[strip] = {std::max(before.width, across), before.used + along + kerf()};
            lay(at + 1);
            sheets_[sheet].strips[strip] = before;
        }
        sheets_[sheet].strips.push_back({across, along + kerf()});
        lay(at + 1);
        sheets_[sheet].strips.pop_back();
    }

    const Problem& problem_;
    std::vector<Blank> blanks_;
    std::vector<OpenSheet> sheets_;
    std::optional<std::int64_t> least_;
};

/// Rules and stock of every kind, four or five blanks; lengths in whole millimetres.
std::optional<Problem> smallProblem(std::mt19937& random)
{
    const auto upTo = [&random](int most) {
        return static_cast<std::int64_t>(random() % static_cast<unsigned>(most));
    };
    const auto length = [](std::int64_t count) { return Length::millimetres(count); };
    ShopRules rules;
    rules.order = upTo(2) == 0 ? CutOrder::StripsFirst : CutOrder::LengthsFirst;
    rules.patterns = upTo(2) == 0 ? PatternClass::Exact : PatternClass::NonExact;
    rules.kerf = length(upTo(3));
    if (upTo(4) == 0)
        rules.edgeTrim = {length(1), length(0), length(2), length(1)};
    if (upTo(4) == 0)
        rules.mostStrips = static_cast<int>(1 + upTo(3));
    if (upTo(4) == 0)
        rules.leastStripWidth = length(4);
    if (upTo(3) == 0) {
        rules.leastRemnantWidth = length(2 + upTo(6));
        rules.leastRemnantLength = length(2 + upTo(6));
        rules.remnantCreditPercent = static_cast<int>(upTo(3) * 50);
    }
    ProblemBuilder builder;
    builder.rules(rules);
    const std::int64_t stocks = 1 + upTo(3);
    for (std::int64_t index = 0; index < stocks; ++index) {
        const auto kind = static_cast<StockKind>(upTo(3));
        Stock stock{std::to_string(index), kind,         length(12 + upTo(12)), length(15 + upTo(15)),
                    std::nullopt,          std::nullopt, std::nullopt};
        if (kind != StockKind::Remnant && upTo(2) == 0)
            stock.count = kind == StockKind::Coil ? 1 : 1 + upTo(3);
        if (kind == StockKind::Coil && upTo(2) == 0)
            stock.longestCrosscut = length(12 + upTo(10));
        stock.cost = 1 + upTo(40);
        builder.stock(std::move(stock));
    }
    const std::int64_t blanks = 2 + upTo(3);
    for (std::int64_t index = 0; index < blanks; ++index)
        builder.blank({std::to_string(index), length(2 + upTo(11)), length(3 + upTo(13)),
                       1 + upTo(2) * upTo(2), upTo(4) == 0, 0, 0});
    auto admission = builder.admit();
    std::int64_t pieces = 0;
    for (const Blank& blank : admission.problem ? admission.problem->blanks() : std::vector<Blank>())
        pieces += blank.count;
    constexpr std::int64_t most = 5;
    return pieces <= most ? std::move(admission.problem) : std::nullopt;
}

/// A plan that covers all demand, if first fit finds one.
std::optional<RawPlan> planOfAll(const Instance& instance)
{
    std::vector<std::int64_t> residual, used(instance.stocks.size(), 0);
    for (const Kind& kind : instance.kinds)
        residual.push_back(kind.demand);
    RawPlan plan = firstFitPlan(instance, residual, used);
    const bool isShort = std::ranges::any_of(residual, [](std::int64_t left) { return left > 0; });
    return isShort ? std::nullopt : std::optional(std::move(plan));
}

/// One coil, few lengths, so that long blanks share levels.
std::optional<Problem> smallCoil(std::mt19937& random)
{
    const auto upTo = [&random](int most) {
        return static_cast<std::int64_t>(random() % static_cast<unsigned>(most));
    };
    const auto length = [](std::int64_t count) { return Length::millimetres(count); };
    ShopRules rules;
    rules.patterns = upTo(3) == 0 ? PatternClass::Exact : PatternClass::NonExact;
    rules.kerf = length(upTo(3));
    if (upTo(4) == 0)
        rules.mostStrips = static_cast<int>(1 + upTo(3));
    if (upTo(4) == 0)
        rules.leastStripWidth = length(4);
    ProblemBuilder builder;
    builder.rules(rules);
    builder.stock({"coil", StockKind::Coil, length(12 + upTo(10)), length(1'000), std::nullopt, std::nullopt,
                   length(16 + upTo(4))});
    const std::int64_t blanks = 2 + upTo(3);
    for (std::int64_t index = 0; index < blanks; ++index)
        builder.blank({std::to_string(index), length(3 + upTo(9)), length(upTo(2) == 0 ? 16 : 3 + upTo(13)),
                       1 + upTo(3), upTo(4) == 0, 0, 0});
    auto admission = builder.admit();
    std::int64_t pieces = 0;
    for (const Blank& blank : admission.problem ? admission.problem->blanks() : std::vector<Blank>())
        pieces += blank.count;
    constexpr std::int64_t most = 6;
    return pieces <= most ? std::move(admission.problem) : std::nullopt;
}

} // namespace

class CuttingEveryKindTest : public QObject {
    Q_OBJECT
private slots:
    void thePlanIsTheBestOfAll_data() { addSeeds(23); }
    void thePlanIsTheBestOfAll();
    void noBoundOfPatternsPassesIt_data() { addSeeds(1'023); }
    void noBoundOfPatternsPassesIt();
    void noBoundOfLevelCountsPassesIt_data() { addSeeds(2'023); }
    void noBoundOfLevelCountsPassesIt();
    void countsOfOtherBlanksProveNothing();

private:
    static void addSeeds(unsigned first);
};

/// A thousand cases each, with LAPWRIGHT_LONG ten thousand; each seed is a row of its own, so that none takes
/// longer than a test may.
void CuttingEveryKindTest::addSeeds(unsigned first)
{
    QTest::addColumn<unsigned>("seed");
    const unsigned rows = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 10 : 1;
    for (unsigned row = 0; row < rows; ++row)
        QTest::addRow("seed %u", first + row) << first + row;
}

void CuttingEveryKindTest::thePlanIsTheBestOfAll()
{
    QFETCH(unsigned, seed);
    constexpr int cases = 1'000;
    std::mt19937 random(seed);
    int done = 0, tried = 0, credited = 0, shortOfStock = 0;
    while (done < cases) {
        const auto problem = smallProblem(random);
        if (!problem)
            continue;
        ++done;
        Settings settings;
        settings.workLimit = 100;
        settings.fewerSetups = done % 2 == 0;
        const Plan plan = solve(*problem, settings);
        const std::string which = "case " + std::to_string(done);
        QVERIFY2(plan.feasibility.cuttable(), which.c_str());
        const auto least = Enumeration(*problem).least();
        QVERIFY2(plan.notCut.empty() == least.has_value(), which.c_str());
        if (!least) {
            ++shortOfStock;
            continue;
        }
        QVERIFY2(plan.bound <= *least, which.c_str());
        QVERIFY2(plan.value == *least,
                 (which + ": " + std::to_string(plan.value) + " for " + std::to_string(*least)).c_str());
        QVERIFY2(plan.proof == Proof::ProvenLeast, which.c_str());
        tried += plan.certificate.method == Certificate::Method::EveryPlan ? 1 : 0;
        credited += problem->creditsRemnants() ? 1 : 0;
    }
    qInfo("%d cases, %d proven by trying every plan, %d with credits, %d short of stock", done, tried,
          credited, shortOfStock);
}

/// Plans so small are proven by trying all; the certificates of the linear program have to hold for them too.
void CuttingEveryKindTest::noBoundOfPatternsPassesIt()
{
    QFETCH(unsigned, seed);
    constexpr int cases = 1'000;
    std::mt19937 random(seed);
    int done = 0, tight = 0;
    while (done < cases) {
        const auto problem = smallProblem(random);
        const auto least = problem ? Enumeration(*problem).least() : std::nullopt;
        if (!least)
            continue;
        ++done;
        const Instance instance = normalise(*problem);
        const std::optional<RawPlan> first = planOfAll(instance);
        if (!first)
            continue;
        std::int64_t bound = 0;
        for (const auto columns : {MasterProgram::Columns::Nested, MasterProgram::Columns::Whole}) {
            NestedPatterns::Listener listener;
            listener.stop = [](std::int64_t) { return false; };
            listener.plan = [](const RawPlan&) { return false; };
            listener.certificate = [&](const Certificate& certificate) {
                bound = std::max(bound, provenBound(*problem, certificate));
                return false;
            };
            NestedPatterns(instance, *first, std::nullopt, {seed, 1'000'000'000, columns},
                           std::move(listener))
                .relax();
        }
        QVERIFY2(bound <= *least, ("case " + std::to_string(done) + ": " + std::to_string(bound) + " for " +
                                   std::to_string(*least))
                                      .c_str());
        tight += bound == *least ? 1 : 0;
    }
    qInfo("%d cases, the bound reached in %d", done, tight);
    QVERIFY(tight > 0);
}

/// A bound by the number of long levels lies above that of the relaxation and never above the least. Where
/// worths of no blanks or of shorter ones are claimed to count levels, nothing is proven.
void CuttingEveryKindTest::noBoundOfLevelCountsPassesIt()
{
    QFETCH(unsigned, seed);
    constexpr int cases = 1'000;
    std::mt19937 random(seed);
    int done = 0, lifted = 0;
    while (done < cases) {
        const auto problem = smallCoil(random);
        const auto least = problem ? Enumeration(*problem).least() : std::nullopt;
        if (!least)
            continue;
        ++done;
        const Instance instance = normalise(*problem);
        if (!LevelCounts::takes(instance))
            continue;
        const std::optional<RawPlan> first = planOfAll(instance);
        if (!first)
            continue;
        const auto certificate =
            LevelCounts(instance, *first, [](std::int64_t) { return false; }).certificate();
        if (!certificate)
            continue;
        ++lifted;
        const std::int64_t bound = provenBound(*problem, *certificate);
        QVERIFY2(bound > 0, ("case " + std::to_string(done)).c_str());
        QVERIFY2(bound <= *least, ("case " + std::to_string(done) + ": " + std::to_string(bound) + " for " +
                                   std::to_string(*least))
                                      .c_str());
        // Prices other than the best prove less, never more.
        Certificate dearer = *certificate;
        for (Certificate::LevelCount& count : dearer.levelCounts)
            count.value += static_cast<std::int64_t>(random() % 1'000) * certificate->perCost * 10'000;
        QVERIFY(provenBound(*problem, dearer) <= *least);
    }
    qInfo("%d cases, %d with a number of levels", done, lifted);
    QVERIFY(lifted > 0);
}

void CuttingEveryKindTest::countsOfOtherBlanksProveNothing()
{
    const auto length = [](std::int64_t count) { return Length::millimetres(count); };
    ProblemBuilder builder;
    builder.stock(
        {"coil", StockKind::Coil, length(10), length(1'000), std::nullopt, std::nullopt, length(10)});
    builder.blank({"long", length(6), length(10), 3, false, 0, 0});
    builder.blank({"turns", length(6), length(9), 1, true, 0, 0});
    const auto problem = builder.build();
    QVERIFY(problem.ok());
    Certificate certificate;
    certificate.method = Certificate::Method::Patterns;
    certificate.perCost = 1'000;
    certificate.blankValues = {1, 0};
    certificate.levelCounts = {{length(10), {1, 0}, 10'000 * mm - 1}};
    // Three long levels of 10 mm.
    QCOMPARE(provenBound(*problem, certificate), 30 * mm);
    certificate.levelCounts = {{length(9), {1, 1}, mm}};
    QCOMPARE(provenBound(*problem, certificate), 0);
    certificate.levelCounts = {{length(0), {1, 0}, mm}};
    QCOMPARE(provenBound(*problem, certificate), 0);
    certificate.levelCounts = {{length(10), {1}, mm}};
    QCOMPARE(provenBound(*problem, certificate), 0);
}

QTEST_APPLESS_MAIN(CuttingEveryKindTest)
#include "tst_cutting_every_kind.moc"
