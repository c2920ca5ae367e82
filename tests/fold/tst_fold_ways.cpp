// Guards: a piece that closes round the clamp is seen before it is folded, slid out endways where the machine
// and its length allow, and drawn clear before the clamp opens where it leans over it; a bend is made in two
// goes where one will not do, and only there; and the animation shows all of it.
#include "fold_cases.h"

#include "fold/check.h"
#include "fold/picture.h"

#include <QtTest>

#include <algorithm>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Obstacle;
using fold::Phase;
using fold::Refusal;
using fold::WayIn;
using fold::WayOut;
using trim::Side;

namespace {

/// Open valley for a square valley of two 6 in 12 roofs, rib 25.4 mm high with its sides 60° to each other.
trim::Profile valleyWithRib()
{
    const trim::Hem hem{trim::HemKind::Open, millimetres(12.7), Side::Left, millimetres(1.5)};
    return profile({{304.8, 78.43}, {30.16, -120}, {30.16, 78.43}, {304.8, 0}}, hem, hem);
}

/// A box 60 mm wide whose lips leave 60 mm less both of them between them.
trim::Profile boxWithLips(double lip)
{
    return profile({{lip, 90}, {80, 90}, {60, 90}, {80, 90}, {lip, 0}});
}

FoldPlan planned(const trim::Profile& profile, const fold::Machine& folder, Length length = Length::feet(4))
{
    const auto outcome = plan(profile, folder, {}, length);
    if (!outcome.ok() || !std::holds_alternative<FoldPlan>(*outcome))
        throw std::runtime_error(tell(outcome));
    return std::get<FoldPlan>(*outcome);
}

std::string problemsOf(const trim::Profile& profile, const fold::Machine& folder, const FoldPlan& plan,
                       Length length = Length::feet(4))
{
    const metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    std::string all;
    const auto check = fold::checkPlan(profile, *flat, metal, metal.sheets[0], folder, plan, length, {});
    for (const std::string& problem : check->problems)
        all += problem + "; ";
    return all;
}

std::size_t stepWith(const FoldPlan& plan, Action action)
{
    const auto found = std::find_if(plan.steps.begin(), plan.steps.end(),
                                    [action](const FoldStep& step) { return step.action == action; });
    return static_cast<std::size_t>(found - plan.steps.begin());
}

fold::FoldPictures picturesOf(const trim::Profile& profile, const fold::Machine& folder, const FoldPlan& plan)
{
    const metal::Metal metal = steel();
    const auto flat = trim::flatPattern(profile, metal, metal.sheets[0]);
    return *fold::FoldPictures::make(profile, *flat, metal, metal.sheets[0], folder, plan, {});
}

} // namespace

class FoldWaysTest : public QObject {
    Q_OBJECT
private slots:
    void aBoxRoundTheClampIsCaught()
    {
        // The clamp is a bar 22 × 8 mm. Lips that leave 20 mm between them let it out when it is a little
        // open, lips that leave 6 mm do not.
        const FoldPlan passes = planned(boxWithLips(20), thinClamp());
        QVERIFY(std::any_of(passes.steps.begin(), passes.steps.end(), [](const FoldStep& step) {
            return step.handling.out == WayOut::LittleOpen && step.handling.open > Length();
        }));
        QVERIFY2(problemsOf(boxWithLips(20), thinClamp(), passes).empty(),
                 problemsOf(boxWithLips(20), thinClamp(), passes).c_str());
        const trim::Profile box = boxWithLips(27);
        const auto outcome = plan(box, thinClamp());
        QVERIFY2(std::holds_alternative<Refusal>(*outcome), tell(outcome).c_str());
        fold::MachineDescription open = thinClamp().description();
        open.slidesEndways = Length::feet(4);
        const fold::Machine openEnded = *fold::Machine::make(open);
        const FoldPlan plan = planned(box, openEnded);
        QVERIFY(std::any_of(plan.steps.begin(), plan.steps.end(),
                            [](const FoldStep& step) { return step.handling.out == WayOut::Endways; }));
        QVERIFY2(problemsOf(box, openEnded, plan).empty(), problemsOf(box, openEnded, plan).c_str());
        // One inch longer than what is slid out, or checked against the machine with closed ends: caught.
        QVERIFY(std::holds_alternative<Refusal>(
            *foldcases::plan(box, openEnded, {}, Length::feet(4) + Length::inches(1))));
        QVERIFY(!problemsOf(box, thinClamp(), plan).empty());
    }

    void drawnClearBeforeTheClampOpens()
    {
        // An acute bend leans back over the clamp by 80 mm times the cosine of 50°.
        const fold::Machine folder = machine("long-folder-up");
        const trim::Profile acute = profile({{150, 130}, {80, 0}});
        FoldPlan plan = planned(acute, folder);
        FoldStep& step = plan.steps.front();
        QVERIFY(step.handling.out == WayOut::DrawnFirst);
        const double leans = 80.0 * std::cos(Angle::degrees(50.0).inRadians());
        QVERIFY(std::abs(inMillimetres(step.handling.drawn) - leans - 2.0) < 2.0);
        QVERIFY(problemsOf(acute, folder, plan).empty());
        const auto draws = [](const Phrase& caution) {
            return say(caution, {}).find("towards you before the clamp opens") != std::string::npos;
        };
        QVERIFY(std::any_of(step.notes.begin(), step.notes.end(), draws));
        // The checker sees that the clamp would take the sheet with it.
        step.handling.out = WayOut::Straight;
        step.handling.drawn = Length();
        QVERIFY(!problemsOf(acute, folder, plan).empty());
        // A square bend needs nothing of the kind.
        QVERIFY(planned(profile({{150, 90}, {80, 0}}), folder).steps.front().handling.out ==
                WayOut::Straight);
    }

    void aCopingIsSlidIntoTheHandBrake()
    {
        // 75 mm stand up behind where the clamp opens by 45: from the front it does not go in. With room
        // beside the machine it is slid in past the clamp's end.
        const trim::Profile coping = profile({{25, 35}, {75, -90}, {250, -90}, {75, 35}, {25, 0}},
                                             closedHem(Side::Right), closedHem(Side::Right));
        const fold::Machine brake = machine("hand-brake-8");
        const FoldPlan plan = planned(coping, brake);
        QCOMPARE(std::count_if(plan.steps.begin(), plan.steps.end(),
                               [](const FoldStep& step) { return step.handling.in == WayIn::Endways; }),
                 std::ptrdiff_t(1));
        QVERIFY2(problemsOf(coping, brake, plan).empty(), problemsOf(coping, brake, plan).c_str());
        fold::MachineDescription closed = brake.description();
        closed.slidesEndways.reset();
        const auto refused = foldcases::plan(coping, *fold::Machine::make(closed));
        QVERIFY2(std::holds_alternative<Refusal>(*refused), tell(refused).c_str());
    }

    void aRibIsFoldedInTwoGoes()
    {
        const fold::Machine folder = machine("long-folder-up");
        const FoldPlan plan = planned(valleyWithRib(), folder);
        const std::size_t first = stepWith(plan, Action::FoldPartly);
        const std::size_t second = stepWith(plan, Action::FinishFold);
        QVERIFY(first < second && second < plan.steps.size());
        QCOMPARE(plan.steps[first].line, plan.steps[second].line);
        QCOMPARE(plan.steps[second].foldAngle.inDegrees(), 78.43);
        QVERIFY(plan.steps[first].foldAngle < plan.steps[second].foldAngle);
        QVERIFY(plan.steps[first].angleToSet > plan.steps[first].foldAngle); // springback of its own
        // The apex between the two goes.
        const auto apex = std::find_if(plan.steps.begin(), plan.steps.end(),
                                       [](const FoldStep& step) { return step.line == 2; });
        const auto place = static_cast<std::size_t>(apex - plan.steps.begin());
        QVERIFY(first < place && place < second);
        QVERIFY(plan.feasibility.all());
        QVERIFY2(problemsOf(valleyWithRib(), folder, plan).empty(),
                 problemsOf(valleyWithRib(), folder, plan).c_str());
        fold::Settings oneGo;
        oneGo.twoGoes = false;
        QVERIFY(std::holds_alternative<Refusal>(*foldcases::plan(valleyWithRib(), folder, oneGo)));
        // A bend left unfinished, or finished at another angle, is not the profile.
        FoldPlan unfinished = plan;
        unfinished.steps.erase(unfinished.steps.begin() + static_cast<std::ptrdiff_t>(second));
        QVERIFY(!problemsOf(valleyWithRib(), folder, unfinished).empty());
        FoldPlan twice = plan;
        twice.steps[second].action = Action::Fold;
        QVERIFY(!problemsOf(valleyWithRib(), folder, twice).empty());
    }

    void noSecondGoWhereOneWillDo()
    {
        const trim::Profile hat = profile({{25, 90}, {40, -90}, {100, -90}, {40, 90}, {25, 0}});
        const FoldPlan plan = planned(hat, machine("long-folder-up"));
        QCOMPARE(stepWith(plan, Action::FoldPartly), plan.steps.size());
    }

    void theAnimationRunsThroughEveryPhase()
    {
        const fold::Machine folder = machine("long-folder-up");
        for (const trim::Profile& shape :
             {valleyWithRib(), profile({{50.8, -90}, {38.1, 35}, {38.1, 0}}, {}, closedHem(Side::Right))}) {
            const FoldPlan plan = planned(shape, folder);
            const fold::FoldPictures pictures = picturesOf(shape, folder, plan);
            QCOMPARE(pictures.milliseconds() + (plan.beamFace > 0 ? fold::HandlingTimes().beamFaceChange : 0),
                     plan.milliseconds);
            std::size_t step = 0;
            Phase phase = Phase::LayIn;
            for (std::int64_t at = 0; at < pictures.milliseconds(); at += 100) {
                const fold::Frame frame = pictures.sectionAt(at);
                QVERIFY(frame.step == step ? frame.phase >= phase : frame.step == step + 1);
                step = frame.step;
                phase = frame.phase;
                const bool presses = plan.steps[step].action == Action::Flatten;
                if (phase == Phase::LayIn)
                    QCOMPARE(frame.clampLift, folder->clampOpening);
                if (phase == Phase::Fold && !presses)
                    QCOMPARE(frame.clampLift, Length());
                if (phase != Phase::Fold && phase != Phase::OpenClamp)
                    QCOMPARE(frame.beamTurn, Angle());
                QVERIFY(magnitude(frame.beamTurn) <= plan.steps[step].angleToSet);
            }
            QCOMPARE(step + 1, plan.steps.size());
            for (std::size_t i = 0; i < plan.steps.size(); ++i) {
                if (plan.steps[i].action == Action::Flatten)
                    continue;
                // Half way through the work the sheet is where the picture of the step has it.
                const std::int64_t begins = pictures.beginOf(i);
                const std::int64_t ends =
                    i + 1 < plan.steps.size() ? pictures.beginOf(i + 1) : pictures.milliseconds();
                bool laidIn = false, folded = false;
                for (std::int64_t at = begins; at < ends; at += 20) {
                    const fold::Frame frame = pictures.sectionAt(at);
                    laidIn = laidIn || frame.sheet.middle == pictures.step(i).before.middle;
                    folded = folded || (frame.phase == Phase::OpenClamp &&
                                        frame.sheet.middle.size() == pictures.step(i).released.middle.size());
                }
                QVERIFY2(laidIn && folded, qPrintable(QString("step %1").arg(i + 1)));
            }
            // Past both ends it stands still.
            QCOMPARE(pictures.sectionAt(-5).sheet.middle, pictures.sectionAt(0).sheet.middle);
            QCOMPARE(pictures.sectionAt(pictures.milliseconds() + 9).step, plan.steps.size() - 1);
        }
    }
};

QTEST_APPLESS_MAIN(FoldWaysTest)
#include "tst_fold_ways.moc"
