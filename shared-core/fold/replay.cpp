#include "fold/replay.h"

#include "fold/steps.h"
#include "measure/rounding.h"

namespace lapwright::fold {

namespace {

void clear(Feasibility& flags, Obstacle obstacle)
{
    switch (obstacle) {
    case Obstacle::Gauge:
    case Obstacle::Throat:
        flags.withinGauge = false;
        return;
    case Obstacle::ClampAngle:
    case Obstacle::FoldsOneWayOnly:
    case Obstacle::Flattening:
    case Obstacle::LeastLeg:
        flags.withinAngles = false;
        return;
    case Obstacle::ClampOpening:
        flags.loads = false;
        return;
    case Obstacle::Sheet:
        flags.clearsSheet = false;
        return;
    default:
        flags.clearsMachine = false;
    }
}

} // namespace

Feasibility replay(const FoldPlan& plan, const Blank& blank, const Machine& machine, const Settings& settings,
                   Length pieceLength, Length capacity)
{
    Feasibility flags{true, true, true, true, true, true, true, true};
    flags.withinLength = pieceLength <= machine->bendingLength;
    flags.withinCapacity = nearestFromMillimetres(blank.thickness) <= capacity;
    Made made = 0, pressed = 0;
    if (!blank.lines.empty()) {
        StepChecker checker(blank, machine, plan.beamFace, settings);
        for (const FoldStep& step : plan.steps) {
            const Made bit = Made{1} << step.line;
            const Placement placement{step.endToGauge, step.faceUp};
            if (step.action == Action::Flatten) {
                pressed |= made & bit;
                continue;
            }
            if ((made & bit) != 0U)
                flags.everyBendMade = false;
            if (const std::optional<Obstacle> met = checker.obstacle(made, step.line, placement))
                clear(flags, *met);
            else if (checker.gaugeDistance(made, step.line, placement) != step.gaugeDistance ||
                     roundToNearest(step.gaugeDistance, machine->displayStep) != step.gaugeSetting)
                flags.withinGauge = false;
            made |= bit;
        }
    }
    for (std::size_t line = 0; line < blank.lines.size(); ++line)
        if (((blank.lines[line].hem ? pressed : made) >> line & 1U) == 0U)
            flags.everyBendMade = false;
    return flags;
}

} // namespace lapwright::fold
