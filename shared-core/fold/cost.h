#pragma once

#include "fold/settings.h"
#include "fold/steps.h"

#include <cstdint>
#include <optional>

namespace lapwright::fold {

/// What a step leaves behind that the next one's time depends on.
struct AtMachine {
    Placement placement;
    Length gaugeSetting; ///< after flattening, if the step was a hem
    double angleToSet = 0.0;
    Handling handling;
};

/// Handling and folding times of one piece.
class CostModel {
public:
    CostModel(const Settings& settings, double kilograms, Length length, bool twoPeople);

    /// Milliseconds of moving the sheet between two placements.
    [[nodiscard]] std::int64_t move(Placement from, Placement to) const;
    /// Milliseconds of folding `next`, `hem` or plain, coming from `before` (none: the first step).
    [[nodiscard]] std::int64_t step(const std::optional<AtMachine>& before, const AtMachine& next, bool hem,
                                    Length settingToFold) const;
    /// Milliseconds of bringing the sheet in and taking it out that other ways do without.
    [[nodiscard]] std::int64_t handling(const Handling& handling) const
    {
        if (handling.in == WayIn::Endways || handling.out == WayOut::Endways)
            return ((handling.in == WayIn::Endways ? 1 : 0) + (handling.out == WayOut::Endways ? 1 : 0)) *
                   (times_.slideEndways + lift_);
        return handling.lift > slidesOver_ ? times_.layInOver + lift_ : 0;
    }
    /// The part of step() that never falls away.
    [[nodiscard]] std::int64_t leastStep(bool hem) const;
    [[nodiscard]] const HandlingTimes& times() const { return times_; }

private:
    HandlingTimes times_;
    Length slidesOver_;
    std::int64_t lift_ = 0;
};

[[nodiscard]] Move moveBetween(Placement from, Placement to);

} // namespace lapwright::fold
