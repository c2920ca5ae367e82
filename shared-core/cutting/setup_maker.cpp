#include "cutting/setup_maker.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::cutting {

namespace {

std::int64_t ceilOf(std::int64_t value, std::int64_t divisor)
{
    return (value + divisor - 1) / divisor;
}

} // namespace

SetupMaker::SetupMaker(const BarProblem& bars, std::int64_t sheets, const BarPlan& proof,
                       const std::vector<std::int64_t>& parts, Stop stop)
    : bars_(bars), sheets_(sheets), parts_(parts), stop_(std::move(stop))
{
    for (const std::int64_t worth : proof.worth)
        worths_.push_back(static_cast<double>(worth) / static_cast<double>(proof.mostValue));
}

/// What may still be lost.
double SetupMaker::budget() const
{
    double worth = 0.0;
    for (std::size_t width = 0; width < wanted_.size(); ++width)
        worth += worths_[width] * static_cast<double>(wanted_[width]);
    return static_cast<double>(left_) - worth;
}

/// How often a setup would have to be cut to finish a width, most often first.
std::vector<std::int64_t> SetupMaker::frequencies() const
{
    std::vector<std::int64_t> result;
    for (std::size_t width = 0; width < wanted_.size(); ++width) {
        const int most = std::min(bars_.mostPieces, bars_.capacity / bars_.sizes[width]);
        for (int each = 1; wanted_[width] > 0 && each <= most; ++each) {
            const std::int64_t sheets = ceilOf(wanted_[width], each);
            if (sheets <= left_ && sheets * each - wanted_[width] <= spare_[width])
                result.push_back(sheets);
        }
    }
    std::ranges::sort(result, std::greater<>());
    result.erase(std::unique(result.begin(), result.end()), result.end());
    return result;
}

/// The setup of most worth for so many sheets, where finishing a width counts `prize` more.
std::optional<SetupMaker::Offer> SetupMaker::offer(std::int64_t sheets, double prize)
{
    const auto cells = static_cast<std::size_t>(bars_.capacity) + 1;
    std::vector<std::size_t> widths;
    std::vector<double> best(cells, 0.0);
    std::vector<std::vector<short>> choices;
    std::int64_t ticks = 0;
    for (std::size_t width = 0; width < wanted_.size(); ++width) {
        if (wanted_[width] == 0)
            continue;
        const auto size = static_cast<std::size_t>(bars_.sizes[width]);
        widths.push_back(width);
        choices.emplace_back(cells, 0);
        std::vector<double> next = best;
        const std::int64_t full = ceilOf(wanted_[width], sheets);
        const bool finishes = full * sheets - wanted_[width] <= spare_[width];
        const auto most =
            std::min<std::int64_t>(bars_.capacity / bars_.sizes[width], finishes ? full : full - 1);
        for (std::int64_t each = 1; each <= most; ++each) {
            const double worth = worths_[width] *
                                     static_cast<double>(std::min(each * sheets, wanted_[width])) /
                                     static_cast<double>(sheets) +
                                 (each == full ? prize : 0.0);
            const std::size_t step = static_cast<std::size_t>(each) * size;
            for (std::size_t at = step; at < cells; ++at) {
                const double with = best[at - step] + worth;
                if (with > next[at] + 1e-12) {
                    next[at] = with;
                    choices.back()[at] = static_cast<short>(each);
                }
            }
            ticks += static_cast<std::int64_t>(cells - step) / 500;
        }
        best = std::move(next);
    }
    stopped_ = stopped_ || stop_(1 + ticks);
    Offer offer{{std::vector<int>(wanted_.size(), 0), sheets}, static_cast<double>(sheets), 0};
    std::size_t at = cells - 1;
    int pieces = 0;
    for (std::size_t entry = widths.size(); entry-- > 0;) {
        const std::size_t width = widths[entry];
        const int each = choices[entry][at];
        offer.setup.strips[width] = each;
        pieces += each;
        at -= static_cast<std::size_t>(each) * static_cast<std::size_t>(bars_.sizes[width]);
        offer.finished += each > 0 && each * sheets >= wanted_[width] ? 1 : 0;
        offer.loss -= worths_[width] * static_cast<double>(std::min(each * sheets, wanted_[width]));
    }
    if (pieces > bars_.mostPieces || offer.finished == 0)
        return std::nullopt;
    return offer;
}

std::optional<SetupMaker::Offer> SetupMaker::choose(std::mt19937& random)
{
    const double budget = this->budget();
    static const double prizeScale = getenv("PRIZE") ? atof(getenv("PRIZE")) : 0.01;
    static const double lambda = getenv("LAMBDA") ? atof(getenv("LAMBDA")) : 2.0;
    static const double half = getenv("HALF") ? atof(getenv("HALF")) : 0.5;
    static const int few = getenv("FEW") ? atoi(getenv("FEW")) : 4;
    std::uniform_real_distribution<double> part(0.0, 1.0);
    std::optional<Offer> best;
    double bestScore = 0;
    int good = 0;
    const double slack = std::max(budget, 1e-9);
    for (const std::int64_t sheets : frequencies()) {
        auto next = offer(sheets, prizeScale * part(random));
        if (stopped_)
            return std::nullopt;
        if (!next || next->loss > budget + 1e-9)
            continue;
        while (next->setup.count > 0) {
        const BarPlan rest = proofOf(next->setup);
        if (stopped_) return std::nullopt;
        const double after = static_cast<double>(left_ - next->setup.count) - rest.relaxed;
        if (rest.bound <= left_ - next->setup.count) {
        const double lost = std::max(0.0, slack - after) / slack;
        const double score = std::log(1.0+static_cast<double>(next->setup.count)) + std::log(next->finished + half) - lambda*lost + part(random);
        if (!best || score > bestScore) {
            best = std::move(next);
            best->proof = rest;
            bestScore = score;
        }
        ++good;
        break;
        }
        next->setup.count /= 2; next->finished = 0;
        }
        if (good >= few)
            return best;
    }
    return best;
}

BarPlan SetupMaker::proofOf(const Setup& setup)
{
    BarProblem rest = bars_;
    rest.demands = wanted_;
    for (std::size_t width = 0; width < wanted_.size(); ++width)
        rest.demands[width] =
            std::max<std::int64_t>(0, wanted_[width] - setup.strips[width] * setup.count);
    BarSearch search;
    search.attempts = 0;
    BarPlan plan = cutBars(rest, search);
    stopped_ = stopped_ || stop_(plan.work);
    return plan;
}

void SetupMaker::take(const Setup& setup)
{
    left_ -= setup.count;
    for (std::size_t width = 0; width < wanted_.size(); ++width) {
        const std::int64_t cut = setup.strips[width] * setup.count;
        spare_[width] -= std::max<std::int64_t>(0, cut - wanted_[width]);
        wanted_[width] = std::max<std::int64_t>(0, wanted_[width] - cut);
    }
}

/// The fewest sheets for what is left, whatever the setups.
bool SetupMaker::finishRest(std::mt19937& random, std::vector<Setup>& setups)
{
    BarProblem rest = bars_;
    rest.demands = wanted_;
    BarSearch search;
    search.seed = random();
    search.noise = 0.3;
    search.stop = [this] { return stop_(0); };
    const BarPlan plan = cutBars(rest, search);
    stopped_ = stopped_ || stop_(plan.work);
    if (plan.bars > left_)
        return false;
    for (const BarPattern& pattern : plan.patterns) {
        Setup setup{std::vector<int>(wanted_.size(), 0), pattern.count};
        for (const auto& [width, count] : pattern.pieces)
            setup.strips[static_cast<std::size_t>(width)] = count;
        setups.push_back(std::move(setup));
    }
    left_ -= plan.bars;
    return true;
}

void SetupMaker::takeBack(const Setup& setup, const std::vector<std::int64_t>& before)
{
    left_ += setup.count;
    for (std::size_t width = 0; width < wanted_.size(); ++width) {
        const std::int64_t cut = setup.strips[width] * setup.count;
        spare_[width] += std::max<std::int64_t>(0, cut - before[width]);
    }
    wanted_ = before;
}

std::optional<std::vector<Setup>> SetupMaker::make(std::mt19937& random)
{
    wanted_ = bars_.demands;
    spare_ = parts_;
    left_ = sheets_;
    std::vector<Setup> setups;
    std::vector<std::vector<std::int64_t>> before;
    static const int tries = getenv("TRIES") ? atoi(getenv("TRIES")) : 20;
    int failed = 0;
    while (std::ranges::any_of(wanted_, [](std::int64_t wanted) { return wanted > 0; })) {
        auto next = choose(random);
        if (stopped_)
            return std::nullopt;
        if (getenv("TELL")) fprintf(stderr, "  left %ld alive %ld budget %.4f x %ld fin %d loss %.4f\n", left_, std::ranges::count_if(wanted_, [](auto w){return w>0;}), budget(), next ? next->setup.count : 0, next ? next->finished : 0, next ? next->loss : 0);
        if (!next) {
            std::size_t sz = setups.size();
            if (finishRest(random, setups)) {
                if (getenv("TELL")) fprintf(stderr, "  tail %zu total %zu\n", setups.size()-sz, setups.size());
                break;
            }
            if (++failed > tries || setups.empty())
                return std::nullopt;
            const std::size_t back = std::min<std::size_t>(setups.size(), 1 + random() % static_cast<unsigned>(2 + 2*failed));
            for (std::size_t step = 0; step < back; ++step) {
                takeBack(setups.back(), before.back());
                setups.pop_back();
                before.pop_back();
            }
            continue;
        }
        before.push_back(wanted_);
        take(next->setup);
        for (std::size_t w=0;w<worths_.size();++w) worths_[w]=double(next->proof.worth[w])/double(next->proof.mostValue);
        setups.push_back(std::move(next->setup));
    }
    return setups;
}

} // namespace lapwright::cutting
