#include "fold/springback.h"

#include "metal/mechanics.h"

namespace lapwright::fold {

std::optional<Angle> angleToSet(const metal::Metal& metal, const metal::Sheet& sheet, Length insideRadius,
                                Angle wanted, const Machine& machine, const Settings& settings)
{
    constexpr Angle sameAngle = Angle::degrees(0.05);
    for (const auto* table : {&settings.measuredSpringback, &machine->measuredSpringback})
        for (const MeasuredSpringback& measured : *table)
            if (measured.metal == metal.id && measured.gauge == sheet.gauge &&
                magnitude(measured.foldAngle - wanted) <= sameAngle)
                return measured.angleToSet;
    return metal::foldAngleToSet(metal, sheet.thickness, insideRadius, wanted);
}

} // namespace lapwright::fold
