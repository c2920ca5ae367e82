#include "cutting/every_plan_check.h"

#include "cutting/plan_value.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::cutting {

namespace {

constexpr std::int64_t mostBlanks = 10, mostSteps = 200'000;

double area(Length width, Length length)
{
    return inMillimetres(width) * inMillimetres(length);
}

/// Lays each blank, either way where it may turn, into every open strip, a new strip, or a new sheet of every
/// stock, as long as what is open and what is still to come could end below the value.
class Enumeration {
public:
    Enumeration(const Problem& problem, std::int64_t value)
        : problem_(problem), value_(value), stocks_(problem.stocks().size()),
          credited_(problem.creditsRemnants() ? problem.rules().remnantCreditPercent / 100.0 : 0.0)
    {
        for (const Blank& blank : problem.blanks())
            for (std::int64_t copy = 0; copy < std::min(blank.count, mostBlanks + 1); ++copy)
                blanks_.push_back(blank);
        std::ranges::stable_sort(blanks_, std::greater<>(), areaOf);
        price_ = wholePrice_ = std::numeric_limits<double>::infinity();
        for (std::size_t stock = 0; stock < problem.stocks().size(); ++stock) {
            // The cost of a level is rounded up.
            const double cost =
                static_cast<double>(costOfOne(problem, stock, sampleLevel) - (isCoil(stock) ? 1 : 0));
            price_ = std::min(price_, cost / area(problem.usableWidth(stock), lengthOfSample(stock, true)));
            wholePrice_ = std::min(wholePrice_,
                                   cost / area(problem.stocks()[stock].width, lengthOfSample(stock, false)));
        }
        for (const Blank& blank : blanks_)
            toCome_ += areaOf(blank);
        all_ = toCome_;
    }

    [[nodiscard]] bool noneIsCheaper()
    {
        if (std::cmp_greater(blanks_.size(), mostBlanks))
            return false;
        lay(0);
        return !found_ && steps_ <= mostSteps;
    }

private:
    struct Open {
        std::size_t stock = 0;
        std::int64_t cost = 0;
        double filled = 0.0;       ///< by blanks
        std::vector<Strip> strips; ///< `rest` holds what their blanks and kerfs take of the length
    };

    static constexpr Length sampleLevel = Length::millimetres(1'000);

    static double areaOf(const Blank& blank) { return area(blank.girth, blank.length); }
    [[nodiscard]] Length kerf() const { return problem_.rules().kerf; }
    [[nodiscard]] bool isCoil(std::size_t stock) const
    {
        return problem_.stocks()[stock].kind == StockKind::Coil;
    }
    [[nodiscard]] Length lengthOfSample(std::size_t stock, bool usable) const
    {
        if (isCoil(stock))
            return sampleLevel + kerf();
        return usable ? problem_.usableLength(stock) : problem_.stocks()[stock].length;
    }
    [[nodiscard]] CutOrder orderOf(std::size_t stock) const
    {
        return isCoil(stock) ? CutOrder::StripsFirst : problem_.rules().order;
    }
    [[nodiscard]] Length spanAcross(std::size_t stock) const
    {
        return orderOf(stock) == CutOrder::StripsFirst ? problem_.usableWidth(stock)
                                                       : problem_.usableLength(stock);
    }
    [[nodiscard]] Length spanAlong(std::size_t stock) const
    {
        return orderOf(stock) == CutOrder::StripsFirst ? problem_.longestPart(stock)
                                                       : problem_.usableWidth(stock);
    }
    [[nodiscard]] static Length longest(const Open& open)
    {
        Length most;
        for (const Strip& strip : open.strips)
            most = std::max(most, strip.rest);
        return most;
    }
    [[nodiscard]] Length across(const Open& open) const
    {
        Length sum;
        for (const Strip& strip : open.strips)
            sum += strip.width + kerf();
        return sum;
    }

    /// What is open, and the metal still to be bought for blanks that find no room in it, less the most that
    /// could be credited: no plan from here is worth less.
    [[nodiscard]] double leastValue() const
    {
        double cost = 0.0, room = 0.0;
        for (const Open& open : open_) {
            cost += static_cast<double>(open.cost);
            const Length length = isCoil(open.stock) ? longest(open) : problem_.usableLength(open.stock);
            room += area(problem_.usableWidth(open.stock), length) - open.filled;
        }
        cost += std::max(0.0, toCome_ - room) * price_;
        return (1.0 - credited_) * cost + credited_ * all_ * wholePrice_;
    }

    /// Values are whole numbers; the rounding errors of these sums are far smaller than what is taken off.
    [[nodiscard]] bool isHopeless() const
    {
        return leastValue() * (1.0 - 1e-12) - 1e-6 > static_cast<double>(value_ - 1);
    }

    [[nodiscard]] std::int64_t valueOfPlan() const
    {
        std::vector<Pattern> patterns;
        for (const Open& open : open_) {
            Pattern pattern;
            pattern.stock = open.stock;
            pattern.order = orderOf(open.stock);
            pattern.length =
                isCoil(open.stock) ? longest(open) - kerf() : problem_.stocks()[open.stock].length;
            pattern.rest = std::max(Length(), spanAcross(open.stock) - across(open));
            const Length span = isCoil(open.stock) ? pattern.length : spanAlong(open.stock);
            for (Strip strip : open.strips) {
                strip.rest = std::max(Length(), span - strip.rest);
                pattern.strips.push_back(std::move(strip));
            }
            patterns.push_back(std::move(pattern));
        }
        return valueOf(problem_, patterns);
    }

    void lay(std::size_t at)
    {
        if (found_ || ++steps_ > mostSteps || isHopeless())
            return;
        if (at == blanks_.size()) {
            found_ = valueOfPlan() < value_;
            return;
        }
        const Blank& blank = blanks_[at];
        toCome_ -= areaOf(blank);
        for (const bool turned : {false, true}) {
            if (turned && (!blank.mayTurn || blank.girth == blank.length))
                continue;
            for (std::size_t index = 0; index < open_.size(); ++index)
                layInto(at, index, turned);
            for (std::size_t stock = 0; stock < stocks_; ++stock) {
                open_.push_back({stock, 0, 0.0, {}});
                layInto(at, open_.size() - 1, turned);
                open_.pop_back();
            }
        }
        toCome_ += areaOf(blank);
    }

    void layInto(std::size_t at, std::size_t index, bool turned)
    {
        const std::size_t stock = open_[index].stock;
        const Lying lying = lyingIn(orderOf(stock), blanks_[at], turned);
        const bool exact = problem_.rules().patterns == PatternClass::Exact;
        if (exact && lying.across < problem_.rules().leastStripWidth)
            return;
        const Length width = std::max(lying.across, problem_.rules().leastStripWidth);
        const std::size_t strips = open_[index].strips.size();
        for (std::size_t strip = 0; strip < strips; ++strip) {
            const Strip before = open_[index].strips[strip];
            if (exact && before.width != width)
                continue;
            open_[index].strips[strip].width = std::max(before.width, width);
            open_[index].strips[strip].rest = before.rest + lying.along + kerf();
            goOn(at, index);
            open_[index].strips[strip] = before;
        }
        if (problem_.rules().mostStrips && std::cmp_greater_equal(strips, *problem_.rules().mostStrips))
            return;
        open_[index].strips.push_back({Length(), width, {}, lying.along + kerf()});
        goOn(at, index);
        open_[index].strips.pop_back();
    }

    /// Goes on to the next blank where the sheet, as it is now, can be cut from what is at hand.
    void goOn(std::size_t at, std::size_t index)
    {
        Open& open = open_[index];
        const std::size_t stock = open.stock;
        const Length longestNow = longest(open);
        if (across(open) > spanAcross(stock) + kerf() || longestNow > spanAlong(stock) + kerf())
            return;
        const std::int64_t cost = std::exchange(open.cost, costOfOne(problem_, stock, longestNow - kerf()));
        const double filled = open.filled;
        open.filled += areaOf(blanks_[at]);
        if (suffices(stock))
            lay(at + 1);
        open_[index].cost = cost;
        open_[index].filled = filled;
    }

    [[nodiscard]] bool suffices(std::size_t stock) const
    {
        const Stock& from = problem_.stocks()[stock];
        std::int64_t sheets = 0;
        Length length;
        for (const Open& open : open_) {
            if (open.stock != stock)
                continue;
            ++sheets;
            length += longest(open);
        }
        if (from.kind == StockKind::Coil)
            return !from.count || length <= problem_.usableLength(stock) + kerf();
        return sheets <= (from.kind == StockKind::Remnant ? 1 : from.count.value_or(sheets));
    }

    const Problem& problem_;
    std::int64_t value_;
    std::vector<Blank> blanks_;
    std::vector<Open> open_;
    std::size_t stocks_;
    double credited_;
    double price_, wholePrice_; ///< of a square millimetre of usable metal, of all metal
    double toCome_ = 0.0, all_ = 0.0;
    std::int64_t steps_ = 0;
    bool found_ = false;
};

} // namespace

bool noPlanIsCheaper(const Problem& problem, std::int64_t value)
{
    return Enumeration(problem, value).noneIsCheaper();
}

} // namespace lapwright::cutting
