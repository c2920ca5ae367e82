// Guards: closed, open and teardrop hems at either end and on either side are pre-bent, pressed to the gap
// they need and no further, in time and on the machines that can; and what cannot be is refused.
#include "fold_cases.h"

#include "fold/check.h"

#include <QtTest>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Obstacle;
using fold::Refusal;
using trim::HemKind;
using trim::Side;

namespace {

trim::Hem hem(HemKind kind, Side side, double radius)
{
    return {kind, millimetres(12.7), side, millimetres(radius)};
}

/// A wall angle with a hem at one end.
trim::Profile hemmed(const trim::Hem& hem, fold::End end)
{
    return end == fold::End::Start ? profile({{60, 90}, {80, 0}}, hem)
                                   : profile({{60, 90}, {80, 0}}, {}, hem);
}

fold::PlanCheck checked(const trim::Profile& profile, const fold::Machine& folder, const FoldPlan& plan)
{
    const metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    return fold::checkPlan(profile, *flat, metal, metal.sheets[0], folder, plan, Length::feet(4), {}).value();
}

} // namespace

class FoldHemsTest : public QObject {
    Q_OBJECT
private slots:
    void everyKindEndAndSide()
    {
        const std::pair<HemKind, double> kinds[] = {
            {HemKind::Closed, 0.0}, {HemKind::Open, 1.5}, {HemKind::Teardrop, 2.5}};
        for (const auto& [kind, radius] : kinds)
            for (const fold::End end : {fold::End::Start, fold::End::End})
                for (const Side side : {Side::Left, Side::Right})
                    for (const char* id : {"long-folder-up", "long-folder-up-down"}) {
                        const trim::Profile angle = hemmed(hem(kind, side, radius), end);
                        const auto outcome = plan(angle, machine(id));
                        QVERIFY2(outcome.ok() && std::holds_alternative<FoldPlan>(*outcome),
                                 tell(outcome).c_str());
                        const auto& made = std::get<FoldPlan>(*outcome);
                        QCOMPARE(made.steps.size(), std::size_t(3));
                        const auto press =
                            std::find_if(made.steps.begin(), made.steps.end(),
                                         [](const FoldStep& step) { return step.action == Action::Flatten; });
                        QVERIFY(press != made.steps.end() && press != made.steps.begin());
                        QCOMPARE((press - 1)->action, Action::PreBend);
                        QCOMPARE((press - 1)->foldAngle.inDegrees(), 135.0);
                        QCOMPARE(press->openGap, 2 * millimetres(radius));
                        const fold::PlanCheck check = checked(angle, machine(id), made);
                        QVERIFY2(check.problems.empty(),
                                 check.problems.empty() ? "" : check.problems.front().c_str());
                    }
    }

    void bentDownWhereThatSavesTurningOver()
    {
        // Hem and bend to opposite sides: up only, the sheet is turned over between them; a machine that also
        // folds down does both as it lies, with the hem bent down.
        for (const auto& [kind, radius] : std::initializer_list<std::pair<HemKind, double>>{
                 {HemKind::Closed, 0.0}, {HemKind::Open, 1.5}, {HemKind::Teardrop, 2.5}}) {
            const trim::Profile angle = hemmed(hem(kind, Side::Right, radius), fold::End::End);
            const auto up = std::get<FoldPlan>(*plan(angle, machine("long-folder-up")));
            const auto both = std::get<FoldPlan>(*plan(angle, machine("long-folder-up-down")));
            const auto turns = [](const FoldPlan& plan) {
                return std::count_if(plan.steps.begin(), plan.steps.end(),
                                     [](const FoldStep& step) { return step.move != fold::Move::None; });
            };
            QVERIFY(turns(up) > 0);
            QCOMPARE(turns(both), std::ptrdiff_t(0));
            QVERIFY(std::any_of(both.steps.begin(), both.steps.end(), [](const FoldStep& step) {
                return step.action == Action::PreBend && step.direction == fold::Direction::Down;
            }));
            const fold::PlanCheck check = checked(angle, machine("long-folder-up-down"), both);
            QVERIFY2(check.problems.empty(), check.problems.empty() ? "" : check.problems.front().c_str());
        }
        // Not where the second beam does not go round far enough.
        fold::MachineDescription shallow = describe("long-folder-up-down");
        shallow.downFolding->largestFoldAngle = Angle::degrees(100.0);
        const auto plan = std::get<FoldPlan>(*foldcases::plan(
            hemmed(hem(HemKind::Closed, Side::Right, 0.0), fold::End::End), *fold::Machine::make(shallow)));
        QVERIFY(std::none_of(plan.steps.begin(), plan.steps.end(), [](const FoldStep& step) {
            return step.action == Action::PreBend && step.direction == fold::Direction::Down;
        }));
    }

    void openHemsNeedAClampThatStopsShort()
    {
        // The hand brake presses closed hems only; the long folders leave up to 6 mm.
        const auto hand =
            plan(hemmed(hem(HemKind::Open, Side::Left, 1.5), fold::End::End), machine("hand-brake-8"));
        QCOMPARE(std::get<Refusal>(*hand).obstacle, Obstacle::Flattening);
        const auto wide =
            plan(hemmed(hem(HemKind::Open, Side::Left, 3.2), fold::End::End), machine("long-folder-up"));
        QCOMPARE(std::get<Refusal>(*wide).obstacle, Obstacle::Flattening);
        const auto closed =
            plan(hemmed(hem(HemKind::Closed, Side::Left, 0.0), fold::End::End), machine("hand-brake-8"));
        QVERIFY2(std::holds_alternative<FoldPlan>(*closed), tell(closed).c_str());
        const auto pan =
            plan(hemmed(hem(HemKind::Closed, Side::Left, 0.0), fold::End::End), machine("box-and-pan-4"));
        QVERIFY(std::holds_alternative<Refusal>(*pan));
    }

    void aHemIsPressedBeforeTheFlapWouldMeetALip()
    {
        // The flap of a 30 mm hem comes down 30 mm along the leg, where a lip stands up at 20 mm if it is
        // made first.
        const trim::Profile lip =
            profile({{40, 90}, {20, 0}}, {}, {{HemKind::Closed, millimetres(15), Side::Left, Length()}});
        const trim::Profile blocked =
            profile({{40, 90}, {13, 0}}, {}, {{HemKind::Closed, millimetres(15), Side::Left, Length()}});
        const auto free = plan(lip, machine("long-folder-up"));
        QVERIFY2(std::holds_alternative<FoldPlan>(*free), tell(free).c_str());
        QCOMPARE(std::get<FoldPlan>(*free).steps.front().action, Action::PreBend);
        // Wider than the leg it lies on: pressed first it would lie across the bend line.
        const auto never = plan(blocked, machine("long-folder-up"));
        QVERIFY2(std::holds_alternative<Refusal>(*never), tell(never).c_str());
    }
};

QTEST_APPLESS_MAIN(FoldHemsTest)
#include "tst_fold_hems.moc"
