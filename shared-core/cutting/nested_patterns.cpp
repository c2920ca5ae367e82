#include "cutting/nested_patterns.h"

#include "cutting/master_program.h"
#include "cutting/pricing.h"
#include "cutting/rounding.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>

namespace lapwright::cutting {

class NestedPatterns::Search {
public:
    Search(const Instance& instance, const RawPlan& start, const RawPlan& columns, std::uint64_t seed,
           Listener listener)
        : instance_(instance), listener_(std::move(listener)),
          random_(static_cast<std::mt19937::result_type>(seed)), pricing_(instance),
          master_(instance, [this] { return stopped(0); }), cost_(costOf(instance, start))
    {
        for (const RawPattern& pattern : start)
            master_.addPattern(pattern);
        for (const RawPattern& pattern : columns)
            master_.addPattern(pattern);
        master_.addExchanges();
    }

    bool relax()
    {
        constexpr int mostRounds = 2'000;
        for (int round = 0; round < mostRounds; ++round) {
            if (stopped(0) || !solve())
                break;
            pricing_.fill(master_.worths());
            if (pricing_.bound() > bound_) {
                bound_ = pricing_.bound();
                worths_ = master_.worths();
            }
            if (stopped(pricing_.ticks()) || tight() || !pricing_.addColumns(master_))
                break;
        }
        if (!worths_.empty())
            certify();
        return !done_ && whole(bound_) < cost_;
    }

    bool round(int attempt)
    {
        static constexpr double shares[] = {0.25, 0.1, 0.04};
        static constexpr int rounds[] = {2, 4, 1};
        const double noise = attempt < 3 ? 0.0 : 0.3;
        Rounding rounding(instance_);
        while (!rounding.done()) {
            rounding.setRows(master_);
            if (!solve())
                return !done_;
            for (int round = 0; round < rounds[attempt % 3]; ++round) {
                pricing_.fill(master_.worths());
                if (stopped(pricing_.ticks()))
                    return false;
                if (!pricing_.addColumns(master_))
                    break;
                if (!solve())
                    return !done_;
            }
            if (whole(master_.objective() + rounding.costOfWholes()) >= cost_ ||
                !rounding.fix(master_, shares[attempt % 3], noise, random_))
                return !done_;
        }
        take(rounding);
        return !done_;
    }

    [[nodiscard]] const std::vector<double>& worths() const { return worths_; }
    [[nodiscard]] double bound() const { return bound_; }

private:
    /// Costs are whole numbers.
    static std::int64_t whole(double cost) { return static_cast<std::int64_t>(std::ceil(cost * (1.0 - 1e-12) - 1e-6)); }

    bool stopped(std::int64_t ticks)
    {
        done_ = done_ || listener_.stop(ticks);
        return done_;
    }

    bool solve()
    {
        const bool solved = master_.solve();
        return !stopped(master_.ticks()) && solved;
    }

    /// Whether more columns could hardly move the bound: no further whole sheet, or a hundred-thousandth.
    [[nodiscard]] bool tight() const
    {
        const double least = master_.objective();
        if (instance_.measure == Measure::Sheets)
            return whole(bound_) >= whole(least);
        return bound_ >= least * (1.0 - 1e-5);
    }

    void certify()
    {
        const double dearest = *std::ranges::max_element(worths_);
        if (dearest <= 0.0 || !listener_.certificate)
            return;
        double cheapest = 1.0;
        for (const StockClass& row : instance_.stocks)
            cheapest = std::max(cheapest, static_cast<double>(row.coil ? 1 : row.cost));
        const double scale = std::max(1.0, std::floor(std::min(1e7, 1e10 / std::max(dearest, cheapest))));
        Certificate certificate;
        certificate.method = Certificate::Method::Patterns;
        certificate.patterns = instance_.patterns;
        certificate.perCost = static_cast<std::int64_t>(scale);
        certificate.blankValues.assign(instance_.problem->blanks().size(), 0);
        for (std::size_t kind = 0; kind < worths_.size(); ++kind)
            for (const std::size_t blank : instance_.kinds[kind].blanks)
                certificate.blankValues[blank] = static_cast<std::int64_t>(std::floor(worths_[kind] * scale));
        done_ = listener_.certificate(certificate) || done_;
    }

    void take(const Rounding& rounding)
    {
        BarSearch bars;
        bars.attempts = 12;
        bars.seed = random_();
        bars.stop = [this] { return stopped(0); };
        const std::optional<RawPlan> plan = rounding.finish(bars);
        if (!plan || costOf(instance_, *plan) >= cost_)
            return;
        cost_ = costOf(instance_, *plan);
        done_ = listener_.plan(*plan) || done_;
    }

    const Instance& instance_;
    Listener listener_;
    std::mt19937 random_;
    Pricing pricing_;
    MasterProgram master_;
    std::int64_t cost_;
    double bound_ = 0.0;
    std::vector<double> worths_;
    bool done_ = false;
};

NestedPatterns::NestedPatterns(const Instance& instance, const RawPlan& start, const RawPlan& columns,
                               std::uint64_t seed, Listener listener)
    : search_(std::make_unique<Search>(instance, start, columns, seed, std::move(listener)))
{
}

NestedPatterns::~NestedPatterns() = default;

bool NestedPatterns::takes(const Instance& instance)
{
    constexpr int mostUnits = 20'000;
    return std::ranges::all_of(instance.stocks, [](const StockClass& stock) {
        return stock.along <= mostUnits && stock.across <= mostUnits;
    });
}

bool NestedPatterns::relax()
{
    return search_->relax();
}

bool NestedPatterns::round(int attempt)
{
    return search_->round(attempt);
}

const std::vector<double>& NestedPatterns::worths() const
{
    return search_->worths();
}

double NestedPatterns::bound() const
{
    return search_->bound();
}

} // namespace lapwright::cutting
