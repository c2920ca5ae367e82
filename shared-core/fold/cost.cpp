#include "fold/cost.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

Move moveBetween(Placement from, Placement to)
{
    const bool spun = from.endToGauge != to.endToGauge, turned = from.up != to.up;
    if (spun && turned)
        return Move::TurnOverAndSpin;
    if (spun)
        return Move::Spin;
    return turned ? Move::TurnOver : Move::None;
}

CostModel::CostModel(const Settings& settings, double kilograms, Length length, bool twoPeople)
    : times_(settings.times), slidesOver_(settings.slidesOver)
{
    const HandlingTimes& times = times_;
    const double lift = kilograms * static_cast<double>(times.perKilogram) +
                        inMetres(length) * static_cast<double>(times.perMetre);
    // Nobody turns a piece for a day; the sums of a sequence stay far within what 64 bits hold.
    lift_ = lift > 0.0 ? std::llround(std::min(lift, static_cast<double>(longestTime))) : 0;
    lift_ += twoPeople ? times.secondPerson : 0;
}

std::int64_t CostModel::move(Placement from, Placement to) const
{
    switch (moveBetween(from, to)) {
    case Move::None:
        return 0;
    case Move::TurnOver:
        return times_.turnOver + lift_;
    case Move::Spin:
        return times_.spin + lift_;
    case Move::TurnOverAndSpin:
        break;
    }
    return times_.turnOverAndSpin + lift_;
}

std::int64_t CostModel::leastStep(bool hem) const
{
    return times_.fold + (hem ? times_.gaugeChange + times_.flatten : 0);
}

std::int64_t CostModel::step(const std::optional<AtMachine>& before, const AtMachine& next, bool hem,
                             Length settingToFold) const
{
    std::int64_t sum = leastStep(hem) + handling(next.handling);
    if (before)
        sum += move(before->placement, next.placement);
    if (!before || before->gaugeSetting != settingToFold)
        sum += times_.gaugeChange;
    if (!before || std::abs(before->angleToSet - next.angleToSet) > 1e-6)
        sum += times_.angleChange;
    return sum;
}

} // namespace lapwright::fold
