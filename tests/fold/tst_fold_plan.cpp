// Guards: profiles whose folding an operator knows are planned in that way, or refused for the right reason;
// the search finds what trying every sequence finds; bad input is refused in bounded time.
#include "fold_cases.h"

#include "fold/blank.h"
#include "fold/search.h"
#include "fold/springback.h"
#include "measure/writing.h"
#include "metal/mechanics.h"

#include <QtTest>

#include <limits>

using namespace foldcases;
using fold::Action;
using fold::FoldPlan;
using fold::FoldStep;
using fold::Move;
using fold::Obstacle;
using fold::Refusal;
using trim::Side;

namespace {

QString tell(const Result<fold::Outcome>& outcome)
{
    if (!outcome)
        return QString::fromStdString("error: " + outcome.errors().front().sentence());
    if (const Refusal* refusal = std::get_if<Refusal>(&*outcome))
        return QString::fromStdString("refused: " +
                                      say(refusal->statement, {LengthUnit::Millimetres, 16, 1}));
    QString text;
    for (const FoldStep& step : std::get<FoldPlan>(*outcome).steps)
        text += QString("[line %1 action %2 gauge %3 end %4 move %5 angle %6] ")
                    .arg(step.line + 1)
                    .arg(static_cast<int>(step.action))
                    .arg(inMillimetres(step.gaugeDistance))
                    .arg(static_cast<int>(step.endToGauge))
                    .arg(static_cast<int>(step.move))
                    .arg(step.foldAngle.inDegrees());
    return text;
}

} // namespace

class FoldPlanTest : public QObject {
    Q_OBJECT
private slots:
    void dripEdgeIsHemKickAndReverseNinety()
    {
        // Common practice, no source: a drip edge folded from back-gauge distances of 5, 3.5 and 2 in is a
        // hem, a 35° kick and a reverse 90, in that order. Each outside leg is longer than the distance by
        // half of the bend deductions before it, under 1/16 in in this sheet.
        const trim::Profile drip = profile({{50.8, -90}, {38.1, 35}, {38.1, 0}}, {}, closedHem(Side::Right));
        const Result<fold::Outcome> outcome = plan(drip, machine("long-folder-up"));
        QVERIFY2(outcome.ok() && std::holds_alternative<FoldPlan>(*outcome), qPrintable(tell(outcome)));
        const std::vector<FoldStep>& steps = std::get<FoldPlan>(*outcome).steps;
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

    void shortOffsetNeedsTheNarrowFace()
    {
        const trim::Profile z = profile({{60, 90}, {18, -90}, {25, 0}});
        fold::Settings settings;
        settings.beamFace = 0;
        const Result<fold::Outcome> wide = plan(z, machine("long-folder-up"), settings);
        QVERIFY2(wide.ok() && std::holds_alternative<Refusal>(*wide), qPrintable(tell(wide)));
        const Refusal& refusal = std::get<Refusal>(*wide);
        QCOMPARE(refusal.obstacle, Obstacle::Beam);
        QVERIFY(refusal.overBy && *refusal.overBy > Length());
        QVERIFY(say(refusal.suggestions.at(0), {}).find("10 mm") != std::string::npos);
        settings.beamFace = 1;
        const Result<fold::Outcome> narrow = plan(z, machine("long-folder-up"), settings);
        QVERIFY2(narrow.ok() && std::holds_alternative<FoldPlan>(*narrow), qPrintable(tell(narrow)));
        settings.beamFace.reset();
        const Result<fold::Outcome> chosen = plan(z, machine("long-folder-up"), settings);
        QVERIFY(chosen.ok() && std::holds_alternative<FoldPlan>(*chosen));
        QCOMPARE(std::get<FoldPlan>(*chosen).beamFace, std::size_t(1));
    }

    void closedBoxIsRefused()
    {
        const trim::Profile box = profile({{20, 90}, {80, 90}, {60, 90}, {80, 90}, {20, 0}});
        for (const std::string& id : machineIds()) {
            const Result<fold::Outcome> outcome = plan(box, machine(id));
            QVERIFY2(outcome.ok() && std::holds_alternative<Refusal>(*outcome), qPrintable(tell(outcome)));
            QCOMPARE(std::get<Refusal>(*outcome).obstacle, Obstacle::Clamp);
            QVERIFY(std::get<Refusal>(*outcome).overBy.has_value());
        }
    }

    void hatAndCoping()
    {
        const trim::Profile hat = profile({{25, 90}, {40, -90}, {100, -90}, {40, 90}, {25, 0}});
        const trim::Profile coping = profile({{20, 30}, {90, 90}, {200, 90}, {90, 30}, {20, 0}},
                                             closedHem(Side::Left), closedHem(Side::Left));
        const Result<fold::Outcome> hatOutcome = plan(hat, machine("long-folder-up"));
        QVERIFY2(hatOutcome.ok() && std::holds_alternative<FoldPlan>(*hatOutcome),
                 qPrintable(tell(hatOutcome)));
        for (const char* id : {"hand-brake-8", "long-folder-up", "long-folder-up-down"}) {
            const Result<fold::Outcome> outcome = plan(coping, machine(id));
            QVERIFY2(outcome.ok() && std::holds_alternative<FoldPlan>(*outcome), qPrintable(tell(outcome)));
            const std::vector<FoldStep>& steps = std::get<FoldPlan>(*outcome).steps;
            QCOMPARE(steps.size(), std::size_t(8));
            QCOMPARE(steps.front().action, Action::PreBend); // hems first
        }
    }

    void upAndDownSavesTurningOver()
    {
        const trim::Profile z = profile({{60, 90}, {80, -90}, {60, 0}});
        const Result<fold::Outcome> up = plan(z, machine("long-folder-up"));
        const Result<fold::Outcome> both = plan(z, machine("long-folder-up-down"));
        QVERIFY2(up.ok() && std::holds_alternative<FoldPlan>(*up), qPrintable(tell(up)));
        QVERIFY2(both.ok() && std::holds_alternative<FoldPlan>(*both), qPrintable(tell(both)));
        QVERIFY(std::get<FoldPlan>(*both).milliseconds < std::get<FoldPlan>(*up).milliseconds);
        const metal::Metal metal = steel();
        const trim::FlatPattern flat = *trim::flatPattern(z, metal, metal.sheets.front());
        const auto choice = fold::chooseMachine(z, flat, metal, metal.sheets.front(),
                                                {machine("long-folder-up"), machine("long-folder-up-down")},
                                                Length::feet(4), {});
        QCOMPARE(choice->front().machine, std::size_t(1));
    }

    void springbackOfTheTextbook()
    {
        // Kalpakjian and Schmid, Manufacturing Engineering and Technology, bending chapter (from memory):
        // 20 ga steel, T 0.0359 in, Ri 0.5 in, Y 40 ksi, E 29e6 psi: Rf 0.531 in; 90° wanted, 95.3° set.
        metal::Metal metal = steel();
        metal.sheets = {{"20 ga", nearestFromInches(0.0359), 7.0}};
        metal.elasticModulusPascals = 29e6 * 6894.757;
        metal.yieldStrengthPascals = 40e3 * 6894.757;
        const Length radius = nearestFromInches(0.5);
        QVERIFY(std::abs(inInches(*lapwright::metal::radiusAfterRelease(metal, metal.sheets[0].thickness,
                                                                        radius)) -
                         0.531) < 0.0005);
        const Angle set = *fold::angleToSet(metal, metal.sheets[0], radius, quarterTurn, {});
        QVERIFY(std::abs(set.inDegrees() - 95.3) < 0.05);
        fold::Settings measured;
        measured.measuredSpringback.push_back({"steel", "20 ga", quarterTurn, Angle::degrees(92.0)});
        QCOMPARE(fold::angleToSet(metal, metal.sheets[0], radius, quarterTurn, measured)->inDegrees(), 92.0);
    }

    void badInputIsRefused()
    {
        std::vector<Part> many(61, Part{40, 90});
        const Result<fold::Outcome> sixty = plan(profile(many), machine("long-folder-up"));
        QVERIFY(sixty.ok());
        QCOMPARE(std::get<Refusal>(*sixty).obstacle, Obstacle::TooManyBends);
        fold::MachineDescription crossing = describe("long-folder-up");
        std::swap(crossing.clamp[2], crossing.clamp[9]);
        const Result<fold::Machine> bad = fold::Machine::make(crossing);
        QVERIFY(!bad.ok());
        QVERIFY(bad.errors().front().sentence().find("clamp") != std::string::npos);
        fold::MachineDescription unknown = describe("long-folder-up");
        unknown.largestFoldAngle = Angle::degrees(std::numeric_limits<double>::quiet_NaN());
        unknown.capacity.tensileStrengthPascals = std::numeric_limits<double>::quiet_NaN();
        QCOMPARE(fold::Machine::make(unknown).errors().size(), std::size_t(2));
        metal::Metal metal = steel();
        const trim::Profile angle = profile({{50, 90}, {50, 0}});
        const trim::FlatPattern flat = *trim::flatPattern(angle, metal, metal.sheets[0]);
        const auto attempt = [&](const trim::FlatPattern& pattern) {
            return fold::planFold(angle, pattern, metal, metal.sheets[0], machine("long-folder-up"),
                                  Length::feet(4), {});
        };
        QVERIFY(attempt(flat).ok());
        trim::FlatPattern crooked = flat;
        crooked.lines[0].turn = Angle::degrees(std::numeric_limits<double>::quiet_NaN());
        QVERIFY(!attempt(crooked).ok());
        metal.sheets[0].thickness = Length();
        QVERIFY(!attempt(flat).ok());
        metal = steel();
        metal.elasticModulusPascals = std::numeric_limits<double>::quiet_NaN();
        QVERIFY(!attempt(flat).ok());
        QVERIFY(!plan(angle, machine("long-folder-up"), {}, Length()).ok());
    }

    void tooLongTooThick()
    {
        const trim::Profile angle = profile({{50, 90}, {50, 0}});
        const Result<fold::Outcome> longer = plan(angle, machine("long-folder-up"), {}, Length::feet(12));
        QCOMPARE(std::get<Refusal>(*longer).obstacle, Obstacle::BendingLength);
        // t √(σ_ref/σ): 0.9 mm at 400 MPa is 0.6 mm at 900 MPa.
        QCOMPARE(fold::capacityFor({"", Length::micrometres(900), 400e6}, 900e6), Length::micrometres(600));
    }
};

QTEST_APPLESS_MAIN(FoldPlanTest)
#include "tst_fold_plan.moc"
