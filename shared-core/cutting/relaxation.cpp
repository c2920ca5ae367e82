#include "cutting/relaxation.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::cutting {

double wholeCost(double cost)
{
    return std::ceil(cost * (1.0 - 1e-12) - 1e-6);
}

Relaxation::Relaxation(const Instance& instance, MasterProgram::Columns columns, Rounding from, Stop stop)
    : instance_(instance), from_(std::move(from)), stop_(std::move(stop)), pricing_(instance),
      master_(instance, columns, [this] { return stopped(0); })
{
    from_.setRows(master_);
    master_.addExchanges();
}

bool Relaxation::stopped(std::int64_t ticks)
{
    done_ = done_ || stop_(ticks);
    return done_;
}

bool Relaxation::solveProgram()
{
    const bool solved = master_.solve();
    return !stopped(master_.ticks()) && solved;
}

/// Blanks by their area at the price of the cheapest metal: a center from which to start.
std::vector<double> Relaxation::worthsByArea() const
{
    double price = std::numeric_limits<double>::infinity();
    for (const StockClass& row : instance_.stocks)
        price =
            std::min(price, static_cast<double>(instance_.costOf(row, row.along)) / row.along / row.across);
    std::vector<double> worths(instance_.kinds.size(), 0.0);
    for (const Frame& frame : instance_.frames)
        for (const Placement& placement : frame.placements)
            worths[static_cast<std::size_t>(placement.kind)] = price * placement.across * placement.along;
    return worths;
}

bool Relaxation::solve(double goal)
{
    center_ = worthsByArea();
    constexpr int mostRounds = 2'000;
    for (int round = 0; round < mostRounds; ++round) {
        if (stopped(0) || !solveProgram())
            return false;
        if (!addColumns(goal))
            break;
    }
    return !done_;
}

/// In-out: prices between the program's duals and those of the best bound, and at the duals themselves where
/// that yields nothing. False where nothing more comes or is needed.
bool Relaxation::addColumns(double goal)
{
    constexpr double share = 0.6;
    std::vector<double> between = master_.worths();
    for (std::size_t kind = 0; kind < between.size(); ++kind)
        between[kind] = share * center_[kind] + (1.0 - share) * between[kind];
    return (price(between, goal) && pricing_.addColumns(master_)) ||
           (!done_ && !tight(goal) && price(master_.worths(), goal) && pricing_.addColumns(master_));
}

/// False where the search is stopped or the bound is tight.
bool Relaxation::price(const std::vector<double>& worths, double goal)
{
    pricing_.fill(worths);
    if (pricing_.bound() > bound_) {
        bound_ = pricing_.bound();
        center_ = worths;
        for (double& worth : center_)
            worth /= pricing_.excess();
    }
    return !stopped(pricing_.ticks()) && !tight(goal);
}

/// Whether more columns could hardly move the bound: it reaches the goal, no further whole sheet, or a
/// hundred-thousandth. Levels of a coil fit large batches so well that blanks are worth their area, and more
/// exactness is idle.
bool Relaxation::tight(double goal) const
{
    if (!from_.empty())
        return false;
    if (wholeCost(bound_) >= goal)
        return true;
    if (instance_.measure == Measure::Sheets)
        return wholeCost(bound_) >= wholeCost(master_.objective());
    constexpr std::size_t manyKinds = 200;
    const bool idle = instance_.measure == Measure::CoilLength && instance_.kinds.size() > manyKinds;
    const double share = idle ? 3e-4 : 1e-5;
    return bound_ >= master_.objective() * (1.0 - share);
}

Rounding Relaxation::wholeParts()
{
    Rounding rounding = from_;
    rounding.fixWhole(master_);
    return rounding;
}

std::optional<Rounding> Relaxation::round(const Way& way, double limit, std::mt19937& random)
{
    Rounding rounding = from_;
    while (!rounding.done()) {
        rounding.setRows(master_);
        if (!solveProgram())
            return std::nullopt;
        for (int round = 0; round < way.rounds; ++round) {
            pricing_.fill(master_.worths());
            if (stopped(pricing_.ticks()))
                return std::nullopt;
            if (!pricing_.addColumns(master_))
                break;
            if (!solveProgram())
                return std::nullopt;
        }
        if (master_.objective() + rounding.costOfWholes() >= limit ||
            !rounding.fix(master_, way.share, way.noise, random))
            return std::nullopt;
    }
    rounding.setRows(master_);
    if (!solveProgram())
        return std::nullopt;
    rounding.note(master_.objective());
    return rounding;
}

} // namespace lapwright::cutting
