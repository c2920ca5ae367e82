#include "acts/fold_words.h"

#include "drawing/fold_step_panel.h"

namespace lapwright::acts {

namespace {

std::string moveInWords(fold::Move move)
{
    switch (move) {
    case fold::Move::None:
        return "";
    case fold::Move::TurnOver:
        return "turn over; ";
    case fold::Move::Spin:
        return "spin end for end; ";
    case fold::Move::TurnOverAndSpin:
        return "turn over and spin; ";
    }
    return "";
}

std::string actionInWords(const fold::FoldStep& step)
{
    switch (step.action) {
    case fold::Action::Fold:
        return step.direction == fold::Direction::Up ? "fold " : "fold down ";
    case fold::Action::FoldPartly:
        return step.direction == fold::Direction::Up ? "fold partly, to " : "fold down partly, to ";
    case fold::Action::FinishFold:
        return step.direction == fold::Direction::Up ? "finish the fold to " : "finish the fold down to ";
    case fold::Action::PreBend:
        return "pre-bend the hem to ";
    case fold::Action::Flatten:
        return step.openGap > Length() ? "press the hem to a gap of " : "flatten the hem";
    }
    return "";
}

std::string stepInWords(const fold::FoldStep& step, const Style& style, drawing::AngleShown angles)
{
    std::string line = moveInWords(step.move) + "gauge " + write(step.gaugeSetting, style) + " from the " +
                       fold::nameOf(step.touching) + ", " + actionInWords(step);
    if (step.action != fold::Action::Flatten)
        line += drawing::writeAngle(step.foldAngle, angles);
    if (magnitude(step.angleToSet - step.foldAngle) > Angle::degrees(0.005))
        line += " (set " + drawing::writeAngle(step.angleToSet, angles) + ")";
    if (step.action == fold::Action::Flatten && step.openGap > Length())
        line += write(step.openGap, style);
    line += step.colourUp ? ", colour up" : ", colour down";
    line += step.endToGauge == fold::End::Start ? ", first edge to the gauge" : ", last edge to the gauge";
    return line + (step.twoPeople ? ", two people" : "");
}

std::vector<std::string> planInWords(const fold::FoldPlan& plan, const Style& style,
                                     drawing::AngleShown angles)
{
    std::vector<std::string> lines = {"machine " + plan.machine + ", handling " +
                                      std::to_string((plan.milliseconds + 500) / 1'000) + " s"};
    for (std::size_t index = 0; index < plan.steps.size(); ++index) {
        lines.push_back(std::to_string(index + 1) + ". " + stepInWords(plan.steps[index], style, angles));
        for (const Phrase& note : plan.steps[index].notes)
            lines.push_back("   " + say(note, style));
    }
    for (const Phrase& caution : plan.cautions)
        lines.push_back("caution: " + say(caution, style));
    return lines;
}

std::vector<std::string> refusalInWords(const fold::Refusal& refusal, const Style& style)
{
    std::vector<std::string> lines = {translated("machine", style) + " " + refusal.machine + " " +
                                      translated("cannot fold this", style) + ": " +
                                      say(refusal.statement, style)};
    for (const Phrase& suggestion : refusal.suggestions)
        lines.push_back(translated("would help", style) + ": " + say(suggestion, style));
    return lines;
}

} // namespace

std::vector<std::string> othersInWords(const std::vector<fold::MachineOutcome>& outcomes, std::size_t shown,
                                       const std::vector<fold::Machine>& machines, const Style& style)
{
    std::vector<std::string> lines;
    for (const fold::MachineOutcome& each : outcomes) {
        if (each.machine == shown)
            continue;
        const std::string& id = machines[each.machine]->id;
        if (const auto* plan = std::get_if<fold::FoldPlan>(&each.outcome))
            lines.push_back("also on " + id + ", handling " +
                            std::to_string((plan->milliseconds + 500) / 1'000) + " s");
        else
            lines.push_back("not on " + id + ": " +
                            say(std::get<fold::Refusal>(each.outcome).statement, style));
    }
    return lines;
}

std::vector<std::string> inWords(const fold::Outcome& outcome, const Style& style, drawing::AngleShown angles)
{
    if (const auto* plan = std::get_if<fold::FoldPlan>(&outcome))
        return planInWords(*plan, style, angles);
    return refusalInWords(std::get<fold::Refusal>(outcome), style);
}

} // namespace lapwright::acts
