#include "cutting/bar_relaxation.h"

#include <algorithm>
#include <numeric>

namespace lapwright::cutting {

namespace {

constexpr double tolerance = 1e-7;

} // namespace

BarRelaxation::BarRelaxation(const BarProblem& problem, std::function<bool()> stop)
    : problem_(problem), stop_(std::move(stop)), knapsack_(problem),
      program_(std::make_unique<LinearProgram>(
          std::vector<double>(problem.demands.begin(), problem.demands.end()), stop_)),
      bySize_(problem.sizes.size())
{
    std::iota(bySize_.begin(), bySize_.end(), 0);
    std::ranges::stable_sort(bySize_, std::greater<>(),
                             [&problem](int item) { return problem.sizes[static_cast<std::size_t>(item)]; });
}

void BarRelaxation::add(const Pieces& bar)
{
    if (!known_.emplace(bar, static_cast<int>(bars_.size())).second)
        return;
    bars_.push_back(bar);
    program_->addColumn(1.0, {bar.begin(), bar.end()});
}

void BarRelaxation::setDemands(const std::vector<std::int64_t>& demands)
{
    for (std::size_t item = 0; item < demands.size(); ++item)
        program_->setLeast(static_cast<int>(item), static_cast<double>(demands[item]));
}

bool BarRelaxation::solve()
{
    if (!program_->solve())
        return false;
    duals_ = program_->duals();
    knapsack_.fill(duals_);
    ticks_ += 20 + program_->iterations() * static_cast<std::int64_t>(duals_.size()) / 100 +
              static_cast<std::int64_t>(duals_.size()) * problem_.capacity / 500;
    return true;
}

/// The best bar, and for each item the best bar that holds it: the most attractive of them join.
bool BarRelaxation::price()
{
    if (mostWorth() <= 1.0 + tolerance)
        return false;
    const auto size = [this](int item) { return problem_.sizes[static_cast<std::size_t>(item)]; };
    const std::size_t before = bars_.size();
    add(knapsack_.pieces(problem_.capacity, false));
    std::vector<std::pair<double, int>> offers;
    for (const int item : bySize_) {
        const double value =
            duals_[static_cast<std::size_t>(item)] + knapsack_.best(problem_.capacity - size(item), true);
        if (value > 1.0 + tolerance)
            offers.emplace_back(-value, item);
    }
    std::ranges::sort(offers);
    const std::size_t most = std::max<std::size_t>(10, problem_.sizes.size() / 4);
    for (std::size_t index = 0; index < std::min(most, offers.size()); ++index) {
        const int item = offers[index].second;
        Pieces pieces = knapsack_.pieces(problem_.capacity - size(item), true);
        const auto at =
            std::ranges::find_if(pieces, [item](const auto& entry) { return entry.first >= item; });
        if (at != pieces.end() && at->first == item) {
            if (++at->second > problem_.demands[static_cast<std::size_t>(item)])
                continue;
        } else {
            pieces.insert(at, {item, 1});
        }
        add(pieces);
    }
    return bars_.size() > before;
}

/// Each item alone: with them all demands can be met.
void BarRelaxation::addSingles()
{
    for (std::size_t item = 0; item < problem_.sizes.size(); ++item)
        add({{static_cast<int>(item), 1}});
}

/// Bars that were of use once and no longer are slow the program down.
void BarRelaxation::keepBasisOnly(const std::vector<std::int64_t>& demands)
{
    const LinearProgram::Basis basis = program_->basis();
    // Before the first solution there is none, and nothing is known to be of no use.
    if (basis.rows.empty())
        return;
    std::vector<Pieces> kept;
    for (std::size_t bar = 0; bar < basis.columns.size(); ++bar)
        if (basis.columns[bar])
            kept.push_back(bars_[bar]);
    program_ = std::make_unique<LinearProgram>(std::vector<double>(demands.begin(), demands.end()), stop_);
    bars_.clear();
    known_.clear();
    for (const Pieces& bar : kept)
        add(bar);
    program_->startFrom({std::vector<bool>(kept.size(), true), basis.rows});
    addSingles();
}

std::optional<double> BarRelaxation::fewest(const std::vector<std::int64_t>& demands, double most)
{
    constexpr int mostRounds = 200;
    constexpr double slack = 1e-6;
    const std::size_t mostBars = 6 * demands.size();
    if (bars_.size() > mostBars)
        keepBasisOnly(demands);
    addSingles();
    setDemands(demands);
    for (int round = 0; round < mostRounds; ++round) {
        if (!solve())
            return std::nullopt;
        const double bound = objective() / std::max(1.0, mostWorth());
        if (bound > most + slack)
            return std::nullopt;
        if (bound > objective() - 1e-4 || !price())
            return objective() <= most + slack ? std::optional(objective()) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace lapwright::cutting
