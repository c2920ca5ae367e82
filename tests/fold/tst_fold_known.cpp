// Guards: profiles whose folding an operator knows are planned in that way, or refused for the right reason.
#include "fold_cases.h"

#include "fold/blank.h"
#include "fold/steps.h"

#include <QtTest>

#include <algorithm>
#include <set>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Move;
using fold::Obstacle;
using fold::Refusal;
using trim::Side;

namespace {

/// The steps of a plan that must be there.
std::vector<FoldStep> stepsOf(const Result<fold::Outcome>& outcome)
{
    if (!outcome.ok() || !std::holds_alternative<FoldPlan>(*outcome)) {
        qWarning("%s", tell(outcome).c_str());
        return {};
    }
    return std::get<FoldPlan>(*outcome).steps;
}

/// Lines in the order in which they are made, a hem once.
std::vector<std::size_t> orderOf(const std::vector<FoldStep>& steps)
{
    std::vector<std::size_t> order;
    for (const FoldStep& step : steps)
        if (step.action != Action::Flatten)
            order.push_back(step.line);
    return order;
}

int movesOf(const std::vector<FoldStep>& steps, Move move)
{
    return static_cast<int>(std::count_if(steps.begin(), steps.end(),
                                          [move](const FoldStep& step) { return step.move == move; }));
}

/// 250 mm top, 75 mm faces, 25 mm kicks that throw water off, hemmed.
trim::Profile plainCoping(Side hems)
{
    return profile({{25, 35}, {75, -90}, {250, -90}, {75, 35}, {25, 0}}, closedHem(hems), closedHem(hems));
}

} // namespace

class FoldKnownTest : public QObject {
    Q_OBJECT
private slots:
    void plainCopingOnBothLongFolders()
    {
        // Common practice, no source: each hem before its kick, each kick before its square. What is
        // folded hangs below the sheet behind the bend line when the other face is up: the sheet is lifted
        // over the bed.
        bool lifted = false;
        for (const Side hems : {Side::Left, Side::Right})
            for (const char* id : {"long-folder-up", "long-folder-up-down"}) {
                const std::vector<FoldStep> steps = stepsOf(plan(plainCoping(hems), machine(id)));
                QCOMPARE(steps.size(), std::size_t(8));
                const std::vector<std::size_t> order = orderOf(steps);
                const auto place = [&order](std::size_t line) {
                    return std::find(order.begin(), order.end(), line) - order.begin();
                };
                QVERIFY(place(0) < place(1) && place(5) < place(4));
                QVERIFY(place(1) < place(2) && place(4) < place(3));
                for (const FoldStep& step : steps)
                    lifted = lifted || step.handling.lift > fold::Settings().slidesOver;
            }
        QVERIFY(lifted);
    }

    void copingWithKicksTurnedIn()
    {
        const trim::Profile coping = profile({{20, 30}, {90, 90}, {200, 90}, {90, 30}, {20, 0}},
                                             closedHem(Side::Left), closedHem(Side::Left));
        for (const char* id : {"hand-brake-8", "long-folder-up", "long-folder-up-down"}) {
            const std::vector<FoldStep> steps = stepsOf(plan(coping, machine(id)));
            QCOMPARE(steps.size(), std::size_t(8));
            QCOMPARE(steps.front().action, Action::PreBend); // hems first
            // All folds are to one side: nothing is turned over. The last one reaches 90 mm back over the
            // clamp, high above it.
            QCOMPARE(movesOf(steps, Move::TurnOver) + movesOf(steps, Move::TurnOverAndSpin), 0);
        }
    }

    void dripEdgeIsHemKickAndReverseNinety()
    {
        // Common practice, no source: a drip edge folded from back-gauge distances of 5, 3.5 and 2 in is a
        // hem, a 35° kick and a reverse 90, in that order. Each outside leg is longer than the distance by
        // half of the bend deductions before it, under 1/16 in in this sheet.
        const trim::Profile drip = profile({{50.8, -90}, {38.1, 35}, {38.1, 0}}, {}, closedHem(Side::Right));
        const std::vector<FoldStep> steps = stepsOf(plan(drip, machine("long-folder-up")));
        QCOMPARE(steps.size(), std::size_t(4));
        const Action actions[] = {Action::PreBend, Action::Flatten, Action::Fold, Action::Fold};
        const std::size_t lines[] = {2, 2, 1, 0};
        const double distances[] = {5.0, 5.0 + 3.0 / 25.4, 3.5, 2.0};
        for (std::size_t i = 0; i < 4; ++i) {
            QCOMPARE(steps[i].action, actions[i]);
            QCOMPARE(steps[i].line, lines[i]);
            QVERIFY(std::abs(inInches(steps[i].gaugeDistance) - distances[i]) < 1.0 / 16.0);
            QVERIFY(magnitude(steps[i].gaugeSetting - steps[i].gaugeDistance) <= Length::micrometres(50));
        }
        QCOMPARE(steps[2].move, Move::TurnOver);
        QVERIFY(steps[2].angleToSet > steps[2].foldAngle);
    }

    void zIsTurnedOverOnce()
    {
        const trim::Profile z = profile({{60, 90}, {80, -90}, {60, 0}});
        for (const char* id : {"hand-brake-8", "long-folder-up", "box-and-pan-4"}) {
            const std::vector<FoldStep> steps = stepsOf(plan(z, machine(id)));
            QCOMPARE(steps.size(), std::size_t(2));
            QVERIFY(steps[1].move == Move::TurnOver || steps[1].move == Move::TurnOverAndSpin);
        }
        const std::vector<FoldStep> both = stepsOf(plan(z, machine("long-folder-up-down")));
        QCOMPARE(both.size(), std::size_t(2));
        QCOMPARE(movesOf(both, Move::None), 2); // up, then down, as it lies
        QVERIFY(both[0].direction != both[1].direction);
    }

    void hatIsFlangesThenWebs()
    {
        const trim::Profile hat = profile({{25, 90}, {40, -90}, {100, -90}, {40, 90}, {25, 0}});
        const std::vector<FoldStep> steps = stepsOf(plan(hat, machine("long-folder-up")));
        const std::vector<std::size_t> order = orderOf(steps);
        QCOMPARE(order.size(), std::size_t(4));
        // Common practice, no source: both flanges from one face, turn over once, both webs from the other.
        QCOMPARE(std::set<std::size_t>(order.begin(), order.begin() + 2), (std::set<std::size_t>{0, 3}));
        QCOMPARE(movesOf(steps, Move::TurnOver) + movesOf(steps, Move::TurnOverAndSpin), 1);
    }

    void shortOffsetNeedsTheNarrowFace()
    {
        const trim::Profile z = profile({{60, 90}, {18, -90}, {25, 0}});
        fold::Settings settings;
        settings.beamFace = 0;
        const Result<fold::Outcome> wide = plan(z, machine("long-folder-up"), settings);
        QVERIFY2(wide.ok() && std::holds_alternative<Refusal>(*wide), tell(wide).c_str());
        const Refusal& refusal = std::get<Refusal>(*wide);
        QCOMPARE(refusal.obstacle, Obstacle::Beam);
        QVERIFY(refusal.overBy && *refusal.overBy > Length());
        QVERIFY(say(refusal.suggestions.at(0), {}).find("10 mm") != std::string::npos);
        settings.beamFace = 1;
        QVERIFY(!stepsOf(plan(z, machine("long-folder-up"), settings)).empty());
        settings.beamFace.reset();
        const Result<fold::Outcome> chosen = plan(z, machine("long-folder-up"), settings);
        QVERIFY(chosen.ok() && std::holds_alternative<FoldPlan>(*chosen));
        QCOMPARE(std::get<FoldPlan>(*chosen).beamFace, std::size_t(1));
    }

    void aBoxClosesUntilItsLipsMeet()
    {
        // The last fold of a box 60 mm wide, under a clamp that is nowhere in the way; it comes out endways.
        const metal::Metal metal = steel();
        fold::MachineDescription openEnded = thinClamp().description();
        openEnded.slidesEndways = Length::feet(4);
        const fold::Machine folder = *fold::Machine::make(openEnded);
        const fold::Settings settings;
        const auto lastFold = [&](double lip) {
            const trim::Profile box = profile({{lip, 90}, {80, 90}, {60, 90}, {80, 90}, {lip, 0}});
            const auto flat = trim::flatPattern(box, metal, metal.sheets[0]);
            const auto blank = fold::makeBlank(box, *flat, metal, metal.sheets[0], folder, settings);
            fold::StepChecker steps(*blank, folder, 0, settings);
            return steps.explain(0b1011, 2, {fold::End::Start, Side::Left});
        };
        const auto isPlanned = [&](double lip) {
            return std::holds_alternative<FoldPlan>(
                *plan(profile({{lip, 90}, {80, 90}, {60, 90}, {80, 90}, {lip, 0}}), folder));
        };
        QVERIFY(isPlanned(20));
        QVERIFY(!isPlanned(35));
        QCOMPARE(lastFold(35).obstacle, Obstacle::Sheet);
        QVERIFY(lastFold(35).overByAngle && *lastFold(35).overByAngle > Angle::degrees(1.0));
        // Two lips of 29 mm leave 2 mm between them, more than the sheet is thick; of 29.9 mm they do not.
        QVERIFY(isPlanned(29));
        QVERIFY(!isPlanned(29.9));
    }

    void closedBoxIsRefused()
    {
        const trim::Profile box = profile({{20, 90}, {80, 90}, {60, 90}, {80, 90}, {20, 0}});
        for (const std::string& id : machineIds()) {
            const Result<fold::Outcome> outcome = plan(box, machine(id));
            QVERIFY2(outcome.ok() && std::holds_alternative<Refusal>(*outcome), tell(outcome).c_str());
            QCOMPARE(std::get<Refusal>(*outcome).obstacle, Obstacle::Clamp);
            QVERIFY(std::get<Refusal>(*outcome).overBy.has_value());
            QVERIFY(say(std::get<Refusal>(*outcome).statement, {}).find(", between leg ") !=
                    std::string::npos);
        }
    }
};

QTEST_APPLESS_MAIN(FoldKnownTest)
#include "tst_fold_known.moc"
