#include "cutting/level_counts.h"

#include "cutting/pattern_certificate.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <set>

namespace lapwright::cutting {

namespace {

constexpr double anyCost = std::numeric_limits<double>::infinity();

} // namespace

bool LevelCounts::takes(const Instance& instance)
{
    constexpr std::size_t mostKinds = 40;
    if (instance.stocks.size() != 1 || !instance.stocks.front().coil ||
        instance.measure != Measure::CoilLength || instance.kinds.size() > mostKinds)
        return false;
    std::int64_t wanted = 0, all = 0;
    for (const Kind& kind : instance.kinds)
        wanted += kind.demand;
    for (const Blank& blank : instance.problem->blanks())
        all += blank.count;
    return wanted == all &&
           std::ranges::none_of(instance.kinds, [](const Kind& kind) { return kind.blanks.empty(); });
}

LevelCounts::LevelCounts(const Instance& instance, const RawPlan& plan, Stop stop)
    : instance_(instance), plan_(plan), stop_(std::move(stop)),
      alongOfKind_(instance.kinds.size(), std::numeric_limits<int>::max())
{
    for (const Kind& kind : instance.kinds) {
        // One that may turn but is too long to is the same kind as one that may not.
        leastOfKind_.push_back(instance.problem->blanks()[kind.blanks.front()].length);
        for (const std::size_t index : kind.blanks) {
            const Blank& blank = instance.problem->blanks()[index];
            leastOfKind_.back() =
                std::min({leastOfKind_.back(), blank.length, blank.mayTurn ? blank.girth : blank.length});
        }
    }
    for (const Placement& placement : instance.frames.front().placements) {
        int& along = alongOfKind_[static_cast<std::size_t>(placement.kind)];
        along = std::min(along, placement.along);
    }
}

/// Longest first.
std::vector<Length> LevelCounts::lengths() const
{
    const std::set<Length, std::greater<>> distinct(leastOfKind_.begin(), leastOfKind_.end());
    return {distinct.begin(), distinct.end()};
}

/// As many as longest levels, were they sheets, for the blanks that lie in no shorter one.
std::optional<LevelCounts::Count> LevelCounts::countFrom(Length length)
{
    Count count{length, std::numeric_limits<int>::max(), 0, {}, 0};
    std::vector<std::int64_t> demands;
    for (std::size_t kind = 0; kind < instance_.kinds.size(); ++kind) {
        const bool counts = leastOfKind_[kind] >= length;
        demands.push_back(counts ? instance_.kinds[kind].demand : 0);
        if (counts)
            count.along = std::min(count.along, alongOfKind_[kind]);
    }
    Instance part = partOf(instance_, demands, {-1}, Widths::Wanted).instance;
    part.measure = Measure::Sheets;
    part.stocks.front().coil = false;
    part.stocks.front().cost = 1;
    Relaxation relaxation(part, MasterProgram::Columns::Nested, Rounding(part), stop_);
    relaxation.master().addSingles();
    if (!relaxation.solve(anyCost))
        return std::nullopt;
    count.levels = static_cast<std::int64_t>(wholeCost(relaxation.bound()));
    auto worth = relaxation.worths().begin();
    for (const std::int64_t demand : demands)
        count.worths.push_back(demand > 0 ? *worth++ : 0.0);
    return count;
}

LevelCounts::Bound LevelCounts::boundWith(std::vector<Count> counts)
{
    Instance discounted = instance_;
    double levels = 0.0;
    for (const Count& count : counts) {
        discounted.discounts.push_back({count.along, count.discount});
        levels += static_cast<double>(count.levels) * static_cast<double>(count.discount);
    }
    Relaxation relaxation(discounted, MasterProgram::Columns::Nested, Rounding(discounted), stop_);
    for (const RawPattern& pattern : plan_)
        relaxation.master().addPattern(pattern);
    if (!relaxation.solve(anyCost))
        return {};
    return {relaxation.bound() + levels, relaxation.worths(), std::move(counts)};
}

/// The bound is a concave function of the discount: its highest point between none and half of what such a
/// level costs, by golden section.
void LevelCounts::lift(Count count)
{
    const std::vector<Count> others = best_.counts;
    const double before = best_.value;
    const auto at = [&](double discount) {
        std::vector<Count> counts = others;
        counts.push_back(count);
        counts.back().discount = static_cast<std::int64_t>(discount);
        Bound bound = boundWith(std::move(counts));
        const double value = bound.value;
        if (value > best_.value)
            best_ = std::move(bound);
        return value;
    };
    constexpr double golden = 0.6180339887498949;
    constexpr int steps = 18;
    double low = 0.0,
           high = 0.5 * static_cast<double>(instance_.costOf(instance_.stocks.front(), count.along));
    if (at(high / 64.0) <= before)
        return;
    double left = high * (1.0 - golden), right = high * golden;
    double ofLeft = at(left), ofRight = at(right);
    for (int step = 0; step < steps && !stop_(0); ++step) {
        if (ofLeft >= ofRight) {
            high = right;
            right = left;
            ofRight = ofLeft;
            left = high - golden * (high - low);
            ofLeft = at(left);
        } else {
            low = left;
            left = right;
            ofLeft = ofRight;
            right = low + golden * (high - low);
            ofRight = at(right);
        }
    }
}

std::optional<Certificate> LevelCounts::certificate()
{
    best_ = boundWith({});
    for (const Length length : lengths()) {
        if (stop_(0))
            break;
        if (std::optional<Count> count = countFrom(length))
            lift(std::move(*count));
    }
    double dearest = 0.0;
    for (const Count& count : best_.counts)
        dearest = std::max(dearest, static_cast<double>(count.discount));
    std::optional<Certificate> certificate = patternCertificate(instance_, best_.worths, dearest);
    if (!certificate || best_.counts.empty())
        return std::nullopt;
    for (const Count& count : best_.counts) {
        constexpr double scale = 1e7;
        Certificate::LevelCount entry{count.from, {}, count.discount * certificate->perCost};
        entry.blankValues.assign(instance_.problem->blanks().size(), 0);
        for (std::size_t kind = 0; kind < count.worths.size(); ++kind)
            for (const std::size_t blank : instance_.kinds[kind].blanks)
                entry.blankValues[blank] = wholeWorth(count.worths[kind], scale);
        certificate->levelCounts.push_back(std::move(entry));
    }
    return certificate;
}

} // namespace lapwright::cutting
