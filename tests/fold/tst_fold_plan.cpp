// Guards: the machine of least handling is chosen, springback comes from the formula or the shop's table, and
// bad input is refused in bounded time.
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

class FoldPlanTest : public QObject {
    Q_OBJECT
private slots:
    void upAndDownSavesTurningOver()
    {
        const trim::Profile z = profile({{60, 90}, {80, -90}, {60, 0}});
        const Result<fold::Outcome> up = plan(z, machine("long-folder-up"));
        const Result<fold::Outcome> both = plan(z, machine("long-folder-up-down"));
        QVERIFY2(up.ok() && std::holds_alternative<FoldPlan>(*up), tell(up).c_str());
        QVERIFY2(both.ok() && std::holds_alternative<FoldPlan>(*both), tell(both).c_str());
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
        const Angle set =
            *fold::angleToSet(metal, metal.sheets[0], radius, quarterTurn, machine("long-folder-up"), {});
        QVERIFY(std::abs(set.inDegrees() - 95.3) < 0.05);
        fold::Settings measured;
        measured.measuredSpringback.push_back({"steel", "20 ga", quarterTurn, Angle::degrees(92.0)});
        const auto setOn = [&](const fold::Machine& folder) {
            return fold::angleToSet(metal, metal.sheets[0], radius, quarterTurn, folder, measured)
                ->inDegrees();
        };
        QCOMPARE(setOn(machine("long-folder-up")), 92.0);
        // The machine's own table wins over the formula as well, and the settings' over the machine's.
        fold::MachineDescription tried = describe("long-folder-up");
        tried.measuredSpringback = {{"steel", "20 ga", quarterTurn, Angle::degrees(91.5)}};
        QCOMPARE(setOn(*fold::Machine::make(tried)), 92.0);
        measured.measuredSpringback.clear();
        QCOMPARE(setOn(*fold::Machine::make(tried)), 91.5);
        tried.measuredSpringback[0].angleToSet = halfTurn;
        QVERIFY(!fold::Machine::make(tried).ok());
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

    void aProfileThroughItselfIsRefusedAsSuch()
    {
        // The third leg crosses the first: no machine is at fault.
        const trim::Profile knot = profile({{100, 90}, {40, 90}, {50, 90}, {80, 0}});
        for (const std::string& id : machineIds()) {
            const Result<fold::Outcome> outcome = plan(knot, machine(id));
            const Refusal& refusal = std::get<Refusal>(*outcome);
            QCOMPARE(refusal.obstacle, Obstacle::Itself);
            const std::string said = say(refusal.statement, {});
            QVERIFY2(said.find("leg 1 and leg 4 run through each other") != std::string::npos, said.c_str());
        }
        // Wound once more, inside itself, it does not cross.
        const Result<fold::Outcome> coil =
            plan(profile({{100, 90}, {40, 90}, {50, 90}, {20, 0}}), machine("hand-brake-8"));
        QVERIFY(!std::holds_alternative<Refusal>(*coil) ||
                std::get<Refusal>(*coil).obstacle != Obstacle::Itself);
    }

    void spoiltSettingsAreRefused()
    {
        const Angle unknown = Angle::radians(std::numeric_limits<double>::quiet_NaN());
        const trim::Profile angle = profile({{50, 90}, {50, 0}});
        std::vector<fold::Settings> spoilt(7);
        spoilt[0].times.turnOver = -1;
        spoilt[1].times.perKilogram = std::numeric_limits<std::int64_t>::max();
        spoilt[2].preBend = unknown;
        spoilt[3].leastPreBend = halfTurn;
        spoilt[4].clearance = -Length::millimetres(1);
        spoilt[5].flattenInset = Length::millimetres(51);
        spoilt[6].measuredSpringback = {{"steel", "26 ga", quarterTurn, unknown}};
        for (const fold::Settings& settings : spoilt) {
            const auto outcome = plan(angle, machine("long-folder-up"), settings);
            QVERIFY(!outcome.ok());
            QVERIFY(outcome.errors().front().place.rfind("settings/", 0) == 0);
        }
    }

    void spoiltMachinesAreRefusedOrUsed()
    {
        // Each number of a good machine in turn becomes one that no machine has: an error, or an outcome.
        const double unknown = std::numeric_limits<double>::quiet_NaN();
        const Length lengths[] = {Length(), -Length::millimetres(5), Length::nanometres(1),
                                  Length::millimetres(100'000), Length::millimetres(1'000'000'000)};
        const trim::Profile drip = profile({{50, -90}, {38, 35}, {38, 0}}, {}, closedHem(trim::Side::Right));
        int refused = 0, used = 0;
        const auto attempt = [&](const fold::MachineDescription& description) {
            const Result<fold::Machine> made = fold::Machine::make(description);
            made.ok() ? ++used : ++refused;
            if (made.ok())
                QVERIFY(plan(drip, *made).ok());
        };
        for (const std::string& id : machineIds()) {
            const fold::MachineDescription good = describe(id);
            for (const Length length : lengths) {
                for (Length fold::MachineDescription::*field :
                     {&fold::MachineDescription::bendingLength, &fold::MachineDescription::clampOpening,
                      &fold::MachineDescription::throat, &fold::MachineDescription::displayStep,
                      &fold::MachineDescription::leastLeg, &fold::MachineDescription::largestOpenHem}) {
                    fold::MachineDescription spoilt = good;
                    spoilt.*field = length;
                    attempt(spoilt);
                }
                for (fold::Outline fold::MachineDescription::*outline :
                     {&fold::MachineDescription::bed, &fold::MachineDescription::clamp})
                    for (std::size_t corner = 0; corner < (good.*outline).size(); ++corner) {
                        fold::MachineDescription spoilt = good;
                        (spoilt.*outline)[corner].x = length;
                        attempt(spoilt);
                        spoilt = good;
                        (spoilt.*outline)[corner].y = length;
                        attempt(spoilt);
                    }
            }
            for (const double number : {unknown, 0.0, -1.0, 180.0, 1e300}) {
                fold::MachineDescription spoilt = good;
                spoilt.largestFoldAngle = Angle::degrees(number);
                QVERIFY(!fold::Machine::make(spoilt).ok());
                spoilt = good;
                spoilt.capacity.tensileStrengthPascals = number;
                attempt(spoilt);
            }
            fold::MachineDescription noFace = good;
            noFace.beamFaces.clear();
            QVERIFY(!fold::Machine::make(noFace).ok());
        }
        QVERIFY2(refused > 200 && used > 100, qPrintable(QString("%1 %2").arg(refused).arg(used)));
    }

    void aLongPieceIsForTwoInTheReadersUnits()
    {
        const trim::Profile angle = profile({{50, 90}, {50, 0}});
        const Result<fold::Outcome> outcome = plan(angle, machine("long-folder-up"), {}, Length::feet(9));
        QVERIFY2(outcome.ok() && std::holds_alternative<FoldPlan>(*outcome), tell(outcome).c_str());
        const auto& made = std::get<FoldPlan>(*outcome);
        const auto toldOfTwo = [&made](LengthUnit unit) {
            for (const Phrase& caution : made.steps.front().cautions)
                if (const std::string said = say(caution, {unit, 16, 5}); said.find("Two people") == 0)
                    return said;
            return std::string();
        };
        const double kilograms = made.kilograms;
        QVERIFY(kilograms > 0.5);
        for (const LengthUnit unit : {LengthUnit::FeetInches, LengthUnit::Inches, LengthUnit::Millimetres})
            QCOMPARE(toldOfTwo(unit), "Two people: " + writeMass(kilograms, {unit, 16, 5}) + ", " +
                                          write(Length::feet(9), {unit, 16, 5}) + " long.");
        QVERIFY(toldOfTwo(LengthUnit::Inches).find(" lb, ") != std::string::npos);
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
