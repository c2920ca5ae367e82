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
    case Obstacle::WayOut:
        flags.loads = false;
        return;
    case Obstacle::Sheet:
        flags.clearsSheet = false;
        return;
    default:
        flags.clearsMachine = false;
    }
}

/// Goes through the steps, each held to the blank as the ones before leave it.
class Replay {
public:
    Replay(const FoldPlan& plan, const Blank& blank, const Machine& machine, const Settings& settings)
        : plan_(plan), blank_(blank), machine_(machine), settings_(settings),
          whole_(blank, machine, plan.beamFace, settings)
    {
    }

    void run(Feasibility& flags)
    {
        for (const FoldStep& step : plan_.steps)
            follow(step, flags);
        for (std::size_t line = 0; line < blank_.lines.size(); ++line)
            if (((blank_.lines[line].hem ? pressed_ : made_) >> line & 1U) == 0U)
                flags.everyBendMade = false;
        if (partly_)
            flags.everyBendMade = false;
    }

private:
    void follow(const FoldStep& step, Feasibility& flags)
    {
        const Made bit = Made{1} << step.line;
        const bool finishes = step.action == Action::FinishFold;
        if (step.action == Action::Flatten) {
            pressed_ |= made_ & bit;
            return;
        }
        if (finishes ? !partly_ || bentLine_ != step.line
                     : (made_ & bit) != 0U || (step.action == Action::FoldPartly && partly_))
            flags.everyBendMade = false;
        if (step.action == Action::FoldPartly)
            bendPartly(step);
        const Made others = made_ & ~bit;
        StepChecker& checker = partly_ && !finishes ? *partly_ : whole_;
        const Placement placement{step.endToGauge, step.faceUp};
        std::optional<Obstacle> met = checker.obstacle(others, step.line, placement);
        if (!met && finishes && partly_)
            met = checker.layingInBent(others, step.line, placement, bent_->lines[step.line]);
        if (met)
            clear(flags, *met);
        else if (checker.gaugeDistance(others, step.line, placement) != step.gaugeDistance ||
                 roundToNearest(step.gaugeDistance, machine_->displayStep) != step.gaugeSetting)
            flags.withinGauge = false;
        else if (checker.handling(others, step.line, placement) != step.handling)
            flags.loads = false;
        made_ |= bit;
        if (finishes)
            partly_.reset();
    }

    void bendPartly(const FoldStep& step)
    {
        bentLine_ = step.line;
        bent_ = withLine(
            blank_, step.line,
            bentTo(blank_.lines[step.line], step.foldAngle.inRadians(), step.angleToSet.inRadians()));
        partly_.emplace(*bent_, machine_, plan_.beamFace, settings_);
    }

    const FoldPlan& plan_;
    const Blank& blank_;
    const Machine& machine_;
    const Settings& settings_;
    StepChecker whole_;
    Made made_ = 0, pressed_ = 0;
    std::optional<Blank> bent_;
    std::optional<StepChecker> partly_; ///< between the two goes at a bend
    std::size_t bentLine_ = 0;
};

} // namespace

Feasibility replay(const FoldPlan& plan, const Blank& blank, const Machine& machine, const Settings& settings,
                   Length pieceLength, Length capacity)
{
    Feasibility flags{true, true, true, true, true, true, true, true};
    flags.withinLength = pieceLength <= machine->bendingLength;
    flags.withinCapacity = nearestFromMillimetres(blank.thickness) <= capacity;
    if (!blank.lines.empty())
        Replay(plan, blank, machine, settings).run(flags);
    return flags;
}

} // namespace lapwright::fold
