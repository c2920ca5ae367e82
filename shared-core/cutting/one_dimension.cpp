#include "cutting/one_dimension.h"

#include "cutting/bar_relaxation.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <random>

namespace lapwright::cutting {

namespace {

/// Worths are scaled to whole numbers by this: seven digits, as the simplex is not trusted beyond.
constexpr double worthScale = 1e7;

std::int64_t ceilOf(std::int64_t value, std::int64_t divisor)
{
    return value <= 0 ? 0 : (value - 1) / divisor + 1;
}

class Cutter {
public:
    Cutter(const BarProblem& problem, const BarSearch& search)
        : problem_(problem), search_(search), random_(static_cast<std::mt19937::result_type>(search.seed)),
          relaxation_(problem, search.stop)
    {
        bySize_.resize(problem.sizes.size());
        std::iota(bySize_.begin(), bySize_.end(), 0);
        std::ranges::stable_sort(bySize_, [&](int left, int right) { return size(left) > size(right); });
    }

    BarPlan run()
    {
        std::vector<std::int64_t> residual = problem_.demands;
        plan_.patterns = firstFit(residual);
        plan_.bars = bars(plan_.patterns);
        plan_.worth.assign(problem_.sizes.begin(), problem_.sizes.end());
        plan_.mostValue = problem_.capacity;
        std::int64_t total = 0;
        for (std::size_t item = 0; item < problem_.sizes.size(); ++item)
            total += problem_.demands[item] * problem_.sizes[item];
        plan_.bound = ceilOf(total, plan_.mostValue);
        plan_.relaxed = static_cast<double>(total) / static_cast<double>(plan_.mostValue);
        if (plan_.bound < plan_.bars) {
            for (const BarPattern& pattern : plan_.patterns)
                relaxation_.add(pattern.pieces);
            generate(0, 1'000);
            keepBasis();
            for (int attempt = 0; attempt < search_.attempts && !ended(); ++attempt) {
                dive(attempt);
                for (int time = 0; time < search_.repackings && !ended(); ++time)
                    repack();
            }
        }
        return std::move(plan_);
    }

private:
    [[nodiscard]] bool ended() const { return plan_.bound >= plan_.bars || stopped(); }

    [[nodiscard]] bool stopped() const
    {
        return plan_.work >= search_.workLimit || (search_.stop && search_.stop());
    }

    [[nodiscard]] int size(int item) const { return problem_.sizes[static_cast<std::size_t>(item)]; }

    static std::int64_t bars(const std::vector<BarPattern>& patterns)
    {
        std::int64_t sum = 0;
        for (const BarPattern& pattern : patterns)
            sum += pattern.count;
        return sum;
    }

    /// First fit decreasing, bar by bar, equal bars at once. Empties the residual.
    std::vector<BarPattern> firstFit(std::vector<std::int64_t>& residual) const
    {
        std::vector<BarPattern> patterns;
        for (;;) {
            BarPattern pattern;
            int left = problem_.capacity, room = problem_.mostPieces;
            for (const int item : bySize_) {
                const std::int64_t wanted = residual[static_cast<std::size_t>(item)];
                const int count =
                    static_cast<int>(std::min<std::int64_t>({wanted, left / size(item), std::int64_t{room}}));
                if (count == 0)
                    continue;
                pattern.pieces.emplace_back(item, count);
                left -= count * size(item);
                room -= count;
            }
            if (pattern.pieces.empty())
                return patterns;
            pattern.count = repeats(pattern.pieces, residual);
            take(pattern, residual);
            patterns.push_back(std::move(pattern));
        }
    }

    static std::int64_t repeats(const Pieces& pieces, const std::vector<std::int64_t>& residual)
    {
        std::int64_t times = std::numeric_limits<std::int64_t>::max();
        for (const auto& [item, count] : pieces)
            times = std::min(times, residual[static_cast<std::size_t>(item)] / count);
        return times;
    }

    static void take(const BarPattern& pattern, std::vector<std::int64_t>& residual)
    {
        for (const auto& [item, count] : pattern.pieces)
            residual[static_cast<std::size_t>(item)] -= count * pattern.count;
    }

    /// Solves the relaxation for the program's present demands; at the root it also certifies a bound. `used`
    /// bars are fixed already. False where the program failed.
    bool generate(std::int64_t used, int rounds)
    {
        for (int round = 0; round < rounds; ++round) {
            if (stopped() || !relaxation_.solve())
                return false;
            plan_.work += relaxation_.ticks();
            if (used == 0 && (round % 8 == 7 || relaxation_.mostWorth() < 1.0 + 1e-3))
                certify(relaxation_.duals());
            if (used == 0 &&
                (plan_.bound >= plan_.bars ||
                 plan_.bound >= static_cast<std::int64_t>(std::ceil(relaxation_.objective() - 1e-6))))
                return true;
            if (!relaxation_.price())
                return true;
        }
        return true;
    }

    void certify(const std::vector<double>& duals)
    {
        std::vector<std::int64_t> worth;
        std::int64_t total = 0;
        for (std::size_t item = 0; item < duals.size(); ++item) {
            worth.push_back(static_cast<std::int64_t>(std::floor(duals[item] * worthScale)));
            total += worth.back() * problem_.demands[item];
        }
        Knapsack<std::int64_t> exact(problem_);
        exact.fill(worth);
        const std::int64_t most = std::max<std::int64_t>(1, exact.best(problem_.capacity, false));
        const double relaxed = static_cast<double>(total) / static_cast<double>(most);
        if (relaxed > plan_.relaxed) {
            plan_.relaxed = relaxed;
            plan_.bound = ceilOf(total, most);
            plan_.worth = std::move(worth);
            plan_.mostValue = most;
        }
    }

    void keepBasis()
    {
        const LinearProgram::Basis basis = relaxation_.basis();
        for (std::size_t column = 0; column < basis.columns.size(); ++column)
            if (basis.columns[column])
                plan_.basicBars.push_back(relaxation_.bars()[column]);
        for (std::size_t item = 0; item < basis.rows.size(); ++item)
            if (basis.rows[item])
                plan_.slackItems.push_back(static_cast<int>(item));
    }

    /// Pieces of a column that are still wanted, topped up first fit: never more than the residual.
    [[nodiscard]] Pieces clipped(const Pieces& column, const std::vector<std::int64_t>& residual) const
    {
        std::map<int, int> counts;
        int left = problem_.capacity, room = problem_.mostPieces;
        const auto put = [&](int item, std::int64_t most) {
            const std::int64_t wanted = residual[static_cast<std::size_t>(item)] - counts[item];
            const int count =
                static_cast<int>(std::min<std::int64_t>({most, wanted, left / size(item), room}));
            counts[item] += count;
            left -= count * size(item);
            room -= count;
        };
        for (const auto& [item, count] : column)
            put(item, count);
        for (const int item : bySize_)
            if (left >= size(item))
                put(item, problem_.mostPieces);
        Pieces pieces;
        for (const auto& [item, count] : counts)
            if (count > 0)
                pieces.emplace_back(item, count);
        return pieces;
    }

    /// Takes whole parts of the relaxation, then its largest fractional bar, and solves again for what is
    /// left.
    void dive(int attempt)
    {
        std::vector<std::int64_t> residual = problem_.demands;
        std::vector<BarPattern> chosen;
        std::int64_t used = 0;
        std::uniform_real_distribution<double> noise(0.0, attempt == 0 ? search_.noise : 0.3);
        while (std::ranges::any_of(residual, [](std::int64_t left) { return left > 0; })) {
            relaxation_.setDemands(residual);
            if (!generate(std::max<std::int64_t>(used, 1), 30))
                return;
            if (used + static_cast<std::int64_t>(std::ceil(relaxation_.objective() - 1e-6)) >= plan_.bars)
                return;
            const std::vector<double> values = relaxation_.values();
            const std::vector<Pieces>& columns = relaxation_.bars();
            std::size_t largest = 0;
            double largestPart = -1.0;
            bool any = false;
            for (std::size_t column = 0; column < values.size(); ++column) {
                const auto whole = static_cast<std::int64_t>(std::floor(values[column] + 1e-6));
                if (whole > 0) {
                    BarPattern pattern{std::min(whole, repeats(columns[column], residual)), columns[column]};
                    if (pattern.count > 0) {
                        take(pattern, residual);
                        used += pattern.count;
                        chosen.push_back(std::move(pattern));
                        any = true;
                    }
                }
                const double part = values[column] - std::floor(values[column]);
                if (values[column] > 1e-6 &&
                    part + noise(random_) * (part > 1e-6 ? 1.0 : 0.0) > largestPart) {
                    largestPart = part + noise(random_) * (part > 1e-6 ? 1.0 : 0.0);
                    largest = column;
                }
            }
            if (any && attempt % 2 == 0)
                continue;
            BarPattern pattern{1, clipped(columns[largest], residual)};
            if (pattern.pieces.empty())
                continue;
            take(pattern, residual);
            ++used;
            chosen.push_back(std::move(pattern));
            finish(residual, chosen);
        }
        if (bars(chosen) < plan_.bars) {
            plan_.bars = bars(chosen);
            plan_.patterns = std::move(chosen);
        }
    }

    /// Takes bars that are not full and some others out of the plan and cuts their pieces anew, from fewer
    /// bars where that can be.
    void repack()
    {
        std::vector<std::pair<std::int64_t, std::size_t>> emptiest;
        for (std::size_t index = 0; index < plan_.patterns.size(); ++index) {
            std::int64_t left = problem_.capacity;
            for (const auto& [item, count] : plan_.patterns[index].pieces)
                left -= std::int64_t{count} * size(item);
            const auto luck = static_cast<std::int64_t>(random_() % 1'000);
            emptiest.emplace_back(left > 0 ? -1'000 - left * luck : -luck, index);
        }
        std::ranges::sort(emptiest);
        const std::size_t bars = 8 + random_() % 24;
        BarProblem part = problem_;
        std::ranges::fill(part.demands, 0);
        std::int64_t taken = 0;
        for (std::size_t at = 0; at < std::min(bars, emptiest.size()); ++at) {
            BarPattern& pattern = plan_.patterns[emptiest[at].second];
            for (const auto& [item, count] : pattern.pieces)
                part.demands[static_cast<std::size_t>(item)] += count;
            --pattern.count;
            ++taken;
        }
        const BarPlan better = cutPart(part);
        std::erase_if(plan_.patterns, [](const BarPattern& pattern) { return pattern.count == 0; });
        plan_.patterns.insert(plan_.patterns.end(), better.patterns.begin(), better.patterns.end());
        plan_.bars += better.bars - taken;
    }

    /// Only the items that are wanted, so that the tables stay small.
    BarPlan cutPart(const BarProblem& part)
    {
        BarProblem wanted{part.capacity, {}, {}, part.mostPieces};
        std::vector<int> items;
        for (std::size_t item = 0; item < part.sizes.size(); ++item)
            if (part.demands[item] > 0) {
                wanted.sizes.push_back(part.sizes[item]);
                wanted.demands.push_back(part.demands[item]);
                items.push_back(static_cast<int>(item));
            }
        BarSearch search{3, 0, random_(), 0.0, std::numeric_limits<std::int64_t>::max(), search_.stop};
        BarPlan plan = cutBars(wanted, search);
        plan_.work += plan.work;
        for (BarPattern& pattern : plan.patterns)
            for (auto& [item, count] : pattern.pieces)
                item = items[static_cast<std::size_t>(item)];
        return plan;
    }

    /// First fit on what is left, kept where it already makes the better plan.
    void finish(std::vector<std::int64_t> residual, const std::vector<BarPattern>& chosen)
    {
        std::vector<BarPattern> rest = firstFit(residual);
        if (bars(chosen) + bars(rest) >= plan_.bars)
            return;
        plan_.patterns = chosen;
        plan_.patterns.insert(plan_.patterns.end(), rest.begin(), rest.end());
        plan_.bars = bars(plan_.patterns);
    }

    const BarProblem& problem_;
    const BarSearch& search_;
    std::mt19937 random_;
    BarRelaxation relaxation_;
    std::vector<int> bySize_;
    BarPlan plan_;
};

} // namespace

BarPlan cutBars(const BarProblem& problem, const BarSearch& search)
{
    if (problem.sizes.empty())
        return {};
    BarProblem fitting = problem;
    for (int& size : fitting.sizes)
        size = std::min(size, problem.capacity);
    return Cutter(fitting, search).run();
}

} // namespace lapwright::cutting
