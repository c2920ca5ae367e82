#include "cutting/nested_patterns.h"

#include "cutting/fill_up.h"
#include "cutting/pattern_certificate.h"
#include "cutting/relaxation.h"

#include <algorithm>
#include <random>
#include <utility>

namespace lapwright::cutting {

class NestedPatterns::Search {
public:
    Search(const Instance& instance, const RawPlan& plan, const std::optional<WarmStart>& start,
           Effort effort, Listener listener)
        : instance_(instance), columns_(effort.columns), listener_(std::move(listener)),
          random_(static_cast<std::mt19937::result_type>(effort.seed)),
          relaxation_(instance, columns_, Rounding(instance),
                      [this](std::int64_t ticks) { return stopped(ticks); }),
          cost_(costOf(instance, plan) + effort.slack)
    {
        for (const RawPattern& pattern : plan)
            relaxation_.master().addPattern(pattern);
        if (start)
            relaxation_.master().startFrom(*start);
    }

    bool relax()
    {
        const bool solved = relaxation_.solve(goal());
        certify();
        if (solved)
            whole_.emplace(relaxation_.wholeParts());
        return solved && !done_ && wholeCost(relaxation_.bound()) < goal();
    }

    bool round(int attempt)
    {
        static constexpr Relaxation::Way ways[] = {{0.25, 2, 0.0}, {0.1, 4, 0.0}, {0.04, 1, 0.0}};
        Relaxation::Way way = ways[attempt % 3];
        way.noise = attempt < 3 ? 0.0 : 0.3;
        constexpr int between = 16; // from the relaxation again, in case the best so far leads no further
        const bool anew = !best_ || attempt % between == 0;
        Rounding from = anew ? *whole_ : *best_;
        if (attempt > 0)
            from.giveBack(relaxation_.master(), random_);
        complete(std::move(from), way, anew ? goal() : best_->cost() + 1e-9);
        return !done_;
    }

    [[nodiscard]] const std::vector<double>& worths() const { return relaxation_.worths(); }
    [[nodiscard]] double bound() const { return relaxation_.bound(); }

private:
    bool stopped(std::int64_t ticks)
    {
        done_ = done_ || listener_.stop(ticks);
        return done_;
    }

    /// A plan that takes this much or more is not wanted.
    [[nodiscard]] double goal() const { return instance_.mostCost(cost_); }

    /// What is still wanted as a smaller instance of its own, relaxed and rounded.
    void complete(Rounding from, const Relaxation::Way& way, double limit)
    {
        if (!from.done()) {
            std::vector<std::int64_t> available;
            for (std::size_t stock = 0; stock < instance_.stocks.size(); ++stock) {
                const std::int64_t most = instance_.stocks[stock].available;
                available.push_back(most < 0 ? -1 : most - from.used()[stock]);
            }
            const Part part = partOf(instance_, from.residual(), available, Widths::All);
            Relaxation rest(part.instance, columns_, from.inPart(part),
                            [this](std::int64_t ticks) { return stopped(ticks); });
            rest.master().addSingles();
            rest.master().addFrom(relaxation_.master(), part);
            if (!rest.solve(goal()) || rest.objective() >= limit)
                return;
            const std::optional<Rounding> found = rest.round(way, limit, random_);
            if (!found)
                return;
            from.takeOver(*found, part);
        }
        const bool cheaper = !best_ || from.cost() < best_->cost() - 1e-9;
        if (cheaper || from.cost() < best_->cost() + 1e-9)
            best_.emplace(from);
        if (cheaper || wholeCost(from.cost()) < goal())
            take(from);
    }

    void certify()
    {
        if (const auto certificate = patternCertificate(instance_, relaxation_.worths());
            certificate && listener_.certificate)
            done_ = listener_.certificate(*certificate) || done_;
    }

    void take(const Rounding& rounding)
    {
        BarSearch bars;
        bars.attempts = 12;
        bars.seed = random_();
        bars.stop = [this] { return stopped(0); };
        const std::optional<RawPlan> finished = rounding.finish(bars);
        if (!finished)
            return;
        // What the last sheets leave free may make a remnant idle.
        for (const RawPlan& plan : {*finished, withoutIdleRemnants(instance_, *finished)}) {
            if (costOf(instance_, plan) >= cost_)
                continue;
            cost_ = costOf(instance_, plan);
            done_ = listener_.plan(plan) || done_;
        }
    }

    const Instance& instance_;
    MasterProgram::Columns columns_;
    Listener listener_;
    std::mt19937 random_;
    Relaxation relaxation_;
    std::int64_t cost_;
    std::optional<Rounding> whole_; ///< the whole parts of the relaxation
    std::optional<Rounding> best_;  ///< the best completed so far
    bool done_ = false;
};

NestedPatterns::NestedPatterns(const Instance& instance, const RawPlan& plan,
                               const std::optional<WarmStart>& start, Effort effort, Listener listener)
    : search_(std::make_unique<Search>(instance, plan, start, effort, std::move(listener)))
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
