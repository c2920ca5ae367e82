#include "cutting/setup_maker.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::cutting {

namespace {

constexpr double tiny = 1e-9;

std::int64_t ceilOf(std::int64_t value, std::int64_t divisor)
{
    return (value + divisor - 1) / divisor;
}

/// The most valuable choice of how many of each width, one width after the other, for every span and, where
/// the strips of a setup are limited, every number of them.
class Choices {
public:
    explicit Choices(const BarProblem& bars)
        : cells_(static_cast<std::size_t>(bars.capacity) + 1),
          limited_(bars.mostPieces < bars.capacity / *std::ranges::min_element(bars.sizes)),
          layers_(limited_ ? static_cast<std::size_t>(bars.mostPieces) + 1 : 1), best_(cells_ * layers_, 0.0)
    {
    }

    void beginWidth(int size)
    {
        sizes_.push_back(static_cast<std::size_t>(size));
        counts_.emplace_back(best_.size(), 0);
        next_ = best_;
    }
    void offer(std::size_t each, double worth)
    {
        const std::size_t step = each * sizes_.back(), lower = limited_ ? each : 0;
        for (std::size_t layer = lower; layer < layers_; ++layer) {
            const double* from = best_.data() + (layer - lower) * cells_;
            for (std::size_t at = step; at < cells_; ++at) {
                const double with = from[at - step] + worth;
                if (with <= next_[layer * cells_ + at] + 1e-12)
                    continue;
                next_[layer * cells_ + at] = with;
                counts_.back()[layer * cells_ + at] = static_cast<int>(each);
            }
        }
        filled_ += static_cast<std::int64_t>(layers_ * (cells_ - std::min(cells_, step)));
    }
    void endWidth() { std::swap(best_, next_); }

    /// How many of each width, in the order they came.
    [[nodiscard]] std::vector<int> counts() const
    {
        std::vector<int> counts(sizes_.size(), 0);
        std::size_t layer = layers_ - 1, at = cells_ - 1;
        for (std::size_t width = sizes_.size(); width-- > 0;) {
            counts[width] = counts_[width][layer * cells_ + at];
            at -= static_cast<std::size_t>(counts[width]) * sizes_[width];
            layer -= limited_ ? static_cast<std::size_t>(counts[width]) : 0;
        }
        return counts;
    }
    [[nodiscard]] std::int64_t cellsFilled() const { return filled_; }

private:
    std::size_t cells_;
    bool limited_;
    std::size_t layers_;
    std::vector<double> best_, next_;
    std::vector<std::size_t> sizes_;
    std::vector<std::vector<int>> counts_;
    std::int64_t filled_ = 0;
};

} // namespace

SetupMaker::SetupMaker(const BarProblem& bars, const std::vector<Setup>& begin, std::int64_t sheets,
                       std::vector<std::int64_t> spare, Stop stop)
    : bars_(bars), stop_(std::move(stop)),
      relaxation_(bars, [this] { return stopped(0); }), state_{
                                                            bars.demands, std::move(spare), sheets, {}, 0.0}
{
    for (const int size : bars.sizes)
        state_.worths.push_back(static_cast<double>(size) / bars.capacity);
    for (const Setup& setup : begin) {
        Pieces pieces;
        for (std::size_t width = 0; width < setup.strips.size(); ++width)
            if (setup.strips[width] > 0)
                pieces.emplace_back(static_cast<int>(width), setup.strips[width]);
        relaxation_.add(pieces);
    }
    if (const auto needed = relax(state_))
        state_.slack = static_cast<double>(sheets) - *needed;
}

bool SetupMaker::stopped(std::int64_t ticks)
{
    stopped_ = stopped_ || stop_(ticks);
    return stopped_;
}

/// What may still be lost, in sheets.
double SetupMaker::budget(const State& state) const
{
    double left = static_cast<double>(state.sheets);
    for (std::size_t width = 0; width < state.wanted.size(); ++width)
        left -= state.worths[width] * static_cast<double>(state.wanted[width]);
    return left;
}

/// How often a setup would have to be cut to finish a width, most often first.
std::vector<std::int64_t> SetupMaker::frequencies() const
{
    std::vector<std::int64_t> result;
    for (std::size_t width = 0; width < state_.wanted.size(); ++width) {
        const std::int64_t wanted = state_.wanted[width];
        const int most = std::min(bars_.mostPieces, bars_.capacity / bars_.sizes[width]);
        for (int each = 1; wanted > 0 && each <= most; ++each) {
            const std::int64_t sheets = ceilOf(wanted, each);
            if (sheets <= state_.sheets && sheets * each - wanted <= state_.spare[width])
                result.push_back(sheets);
        }
    }
    std::ranges::sort(result, std::greater<>());
    result.erase(std::unique(result.begin(), result.end()), result.end());
    return result;
}

/// The setup of most worth for so many sheets, where finishing a width counts more than the strips alone.
SetupMaker::Offer SetupMaker::offer(std::int64_t sheets, const Manner& manner, std::mt19937& random)
{
    std::uniform_real_distribution<double> part(0.0, 1.0);
    const double prize = manner.prize * part(random);
    Choices choices(bars_);
    std::vector<std::size_t> widths;
    for (std::size_t width = 0; width < state_.wanted.size(); ++width) {
        const std::int64_t wanted = state_.wanted[width];
        if (wanted == 0)
            continue;
        widths.push_back(width);
        choices.beginWidth(bars_.sizes[width]);
        const std::int64_t full = ceilOf(wanted, sheets);
        const bool finishes = full * sheets - wanted <= state_.spare[width];
        const auto most = std::min<std::int64_t>(
            {bars_.mostPieces, bars_.capacity / bars_.sizes[width], finishes ? full : full - 1});
        const double worth = state_.worths[width] * (1.0 + manner.blur * part(random));
        for (std::int64_t each = 1; each <= most; ++each)
            choices.offer(static_cast<std::size_t>(each),
                          worth * static_cast<double>(std::min(each * sheets, wanted)) /
                                  static_cast<double>(sheets) +
                              (each == full ? prize : 0.0));
        choices.endWidth();
    }
    (void)stopped(1 + choices.cellsFilled() / 500);
    Offer offer{{std::vector<int>(state_.wanted.size(), 0), sheets}, 0};
    const std::vector<int> counts = choices.counts();
    for (std::size_t entry = 0; entry < widths.size(); ++entry) {
        offer.setup.strips[widths[entry]] = counts[entry];
        offer.finished += counts[entry] * sheets >= state_.wanted[widths[entry]] ? 1 : 0;
    }
    return offer;
}

double SetupMaker::lossOf(const Offer& offer) const
{
    double loss = static_cast<double>(offer.setup.count);
    for (std::size_t width = 0; width < state_.wanted.size(); ++width)
        loss -=
            state_.worths[width] * static_cast<double>(std::min(offer.setup.strips[width] * offer.setup.count,
                                                                state_.wanted[width]));
    return loss;
}

SetupMaker::State SetupMaker::after(const Setup& setup) const
{
    State state = state_;
    state.sheets -= setup.count;
    for (std::size_t width = 0; width < state.wanted.size(); ++width) {
        const std::int64_t left = state.wanted[width] - setup.strips[width] * setup.count;
        state.spare[width] += std::min<std::int64_t>(0, left);
        state.wanted[width] = std::max<std::int64_t>(0, left);
    }
    return state;
}

/// What the relaxation needs for the state, which takes over its worths where they show more of it.
std::optional<double> SetupMaker::relax(State& state)
{
    const auto needed = relaxation_.fewest(state.wanted, static_cast<double>(state.sheets));
    (void)stopped(relaxation_.ticks());
    if (!needed)
        return std::nullopt;
    State other = state;
    other.worths = relaxation_.duals();
    for (double& worth : other.worths)
        worth /= std::max(1.0, relaxation_.mostWorth());
    if (budget(other) < budget(state))
        state.worths = std::move(other.worths);
    return needed;
}

/// One more setup: of some that finish a width and leave enough, one that is cut often, finishes much and
/// costs little slack.
bool SetupMaker::step(const Manner& manner, std::mt19937& random)
{
    constexpr int few = 4;
    std::uniform_real_distribution<double> part(0.0, 1.0);
    const double most = budget(state_) + tiny;
    double bestScore = -std::numeric_limits<double>::infinity();
    std::optional<State> best;
    Setup bestSetup;
    int found = 0;
    for (const std::int64_t sheets : frequencies()) {
        Offer next = offer(sheets, manner, random);
        if (stopped_)
            return false;
        if (next.finished == 0 || lossOf(next) > most)
            continue;
        State state = after(next.setup);
        const auto needed = relax(state);
        if (stopped_)
            return false;
        if (!needed)
            continue;
        state.slack = static_cast<double>(state.sheets) - *needed;
        const double lost = std::max(0.0, state_.slack - state.slack) / std::max(tiny, state_.slack);
        const double score = std::log(1.0 + static_cast<double>(sheets)) + std::log(0.5 + next.finished) -
                             manner.thrift * lost + part(random);
        if (score > bestScore) {
            bestScore = score;
            best = std::move(state);
            bestSetup = std::move(next.setup);
        }
        if (++found == few)
            break;
    }
    if (!best)
        return false;
    before_.push_back(std::exchange(state_, std::move(*best)));
    setups_.push_back(std::move(bestSetup));
    return true;
}

void SetupMaker::stepBack(std::size_t count)
{
    for (std::size_t step = 0; step < count && !setups_.empty(); ++step) {
        state_ = std::move(before_.back());
        before_.pop_back();
        setups_.pop_back();
    }
}

/// The fewest sheets for what is left, whatever the setups. False where they are too many.
bool SetupMaker::finish(std::mt19937& random)
{
    BarProblem rest = bars_;
    rest.demands = state_.wanted;
    BarSearch search;
    search.seed = random();
    search.noise = 0.3;
    search.stop = [this] { return stopped(0); };
    const BarPlan plan = cutBars(rest, search);
    if (stopped(plan.work) || plan.bars > state_.sheets)
        return false;
    for (const BarPattern& pattern : plan.patterns) {
        Setup setup{std::vector<int>(state_.wanted.size(), 0), pattern.count};
        for (const auto& [width, count] : pattern.pieces)
            setup.strips[static_cast<std::size_t>(width)] = count;
        before_.push_back(state_);
        setups_.push_back(std::move(setup));
    }
    return true;
}

std::optional<std::vector<Setup>> SetupMaker::make(std::size_t limit, std::mt19937& random)
{
    constexpr int mostFailures = 8;
    // Even an attempt that finds nothing to try is work, or a search by work alone would never end.
    constexpr std::int64_t ticksOfAttempt = 100;
    stepBack(setups_.size());
    if (stopped(ticksOfAttempt))
        return std::nullopt;
    std::uniform_real_distribution<double> part(0.0, 1.0);
    const Manner manner{std::pow(10.0, -3.0 + 1.3 * part(random)), 1.0 + 4.0 * part(random),
                        std::pow(10.0, -3.0 + 1.3 * part(random))};
    int failures = 0;
    while (std::ranges::any_of(state_.wanted, [](std::int64_t wanted) { return wanted > 0; })) {
        if (setups_.size() + 1 >= limit)
            return std::nullopt;
        if (step(manner, random))
            continue;
        if (stopped_)
            return std::nullopt;
        if (finish(random))
            break;
        if (stopped_ || ++failures > mostFailures)
            return std::nullopt;
        stepBack(1 + random() % static_cast<unsigned>(2 + 2 * failures));
    }
    return setups_.size() < limit ? std::optional(setups_) : std::nullopt;
}

} // namespace lapwright::cutting
