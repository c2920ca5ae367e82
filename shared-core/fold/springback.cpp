#include "fold/springback.h"

#include "metal/mechanics.h"

namespace lapwright::fold {

std::optional<Angle> angleToSet(const metal::Metal& metal, const metal::Sheet& sheet, Length insideRadius,
                                Angle wanted, const Settings& settings)
{
    constexpr Angle sameAngle = Angle::degrees(0.05);
    for (const MeasuredSpringback& measured : settings.measuredSpringback)
        if (measured.metal == metal.id && measured.gauge == sheet.gauge &&
            magnitude(measured.foldAngle - wanted) <= sameAngle)
            return measured.angleToSet;
    return metal::foldAngleToSet(metal, sheet.thickness, insideRadius, wanted);
}

} // namespace lapwright::fold
