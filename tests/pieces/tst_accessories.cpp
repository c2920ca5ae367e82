// Guards: what goes along with the pieces is counted, each thing once: fasteners, cleats, sealant, the tab
// behind each mitre, movement joints.
#include "taken_off.h"

#include "pieces/why.h"

#include <QtTest>

#include <optional>

using namespace invented;
using pieces::Order;
using pieces::takeoff;

namespace {

rules::RuleSet jointRules()
{
    // UFGS 07600 3.1.10: copper and stainless every 40 ft, aluminium every 32 ft, aluminium gravel stops and
    // fascias every 12 ft.
    const auto clause = [](std::vector<rules::Fact> metals, std::vector<rules::Fact> kinds, Length interval) {
        rules::Clause made;
        made.number = "UFGS 07600 3.1.10";
        made.statement = "movement joints are {joint_interval} apart, {demanded} is the most";
        made.applies.push_back({rules::Condition::Comparison::In, "metal", std::move(metals)});
        if (!kinds.empty())
            made.applies.push_back({rules::Condition::Comparison::In, "run_kind", std::move(kinds)});
        made.demands.push_back({rules::Condition::Comparison::AtMost, "joint_interval", {interval}});
        return made;
    };
    rules::RuleSet set;
    set.id = "joints";
    set.clauses = {clause({std::string("copper"), std::string("stainless-steel")}, {}, Length::feet(40)),
                   clause({std::string("aluminium")}, {}, Length::feet(32)),
                   clause({std::string("aluminium")}, {std::string("gravel_edge")}, Length::feet(12))};
    return set;
}

} // namespace

class AccessoriesTest : public QObject {
    Q_OBJECT
private slots:
    void fastenersAndSealantAreCounted()
    {
        const Order order = takeoff(gableHouse(), catalogue());
        // IRC R905.2.8.5: at most 12 in on centre: 40 ft has 40 spaces and 41 fasteners.
        QCOMPARE(countOf(order, "E1", "fastener"), std::int64_t{41});
        QCOMPARE(countOf(order, "E1", "sealant"), std::int64_t{4});
        QCOMPARE(countOf(order, "R1", "sealant"), std::int64_t{0});
        // A bead across the girth at each of the four laps.
        for (const pieces::Accessory& accessory : order.accessories)
            if (accessory.run == "E1" && accessory.name == "sealant")
                QCOMPARE(accessory.length, order.profiles[order.runs[0].profile].girth * 4);
    }
    void aCornerIsCountedOnceForEachTrimRoundIt()
    {
        site::Chain chain = alone(run("E1", site::RunKind::Eave, Length::feet(8), "eave-edge"));
        site::Run second = run("E2", site::RunKind::Eave, Length::feet(8), "eave-edge");
        second.trims.push_back(second.trims.front());
        second.trims.back().trim = "eave-cover";
        chain.runs.push_back(second);
        chain.corners = {site::SquareOutside{}};
        chain.runs[0].end = chain.runs[1].start = site::EndKind::Mitre;
        pieces::Catalogue data = catalogue();
        data.trims["eave-cover"] = data.trims["eave-edge"];
        data.trims["eave-cover"].id = "eave-cover";
        const Order order = takeoff(jobOf({chain}), data);
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        QCOMPARE(countOf(order, "E1", "corner tab"), std::int64_t{1});
        // The cover begins at this corner: nobody counted it before.
        QCOMPARE(countOf(order, "E2", "corner tab"), std::int64_t{1});
    }
    void aCornerLeftToTheSiteIsCountedWithTheRunThatIsMitred()
    {
        site::Chain chain = alone(run("R1", site::RunKind::Rake, Length::feet(8), "rake-edge"));
        chain.runs.push_back(run("E1", site::RunKind::Eave, Length::feet(8), "eave-edge"));
        chain.corners = {site::SquareOutside{}};
        chain.runs[0].end = chain.runs[1].start = site::EndKind::Mitre;
        const Order order = takeoff(jobOf({chain}), catalogue());
        QVERIFY(codesOf(order).contains("pieces.end.cut_on_site"));
        QCOMPARE(countOf(order, "R1", "corner tab"), std::int64_t{0});
        QCOMPARE(countOf(order, "E1", "corner tab"), std::int64_t{1});
    }
    void movementJointsComeFromTheRules_data()
    {
        QTest::addColumn<QString>("metal");
        QTest::addColumn<QString>("gauge");
        QTest::addColumn<bool>("gravel");
        QTest::addColumn<int>("feet");
        QTest::addColumn<qint64>("joints");
        // UFGS 07600 3.1.10, counts by hand.
        QTest::newRow("copper 60") << "copper"
                                   << "16 oz" << false << 60 << qint64{1};
        QTest::newRow("copper 61") << "copper"
                                   << "16 oz" << false << 61 << qint64{2};
        QTest::newRow("copper 100") << "copper"
                                    << "16 oz" << false << 100 << qint64{2};
        QTest::newRow("copper 101") << "copper"
                                    << "16 oz" << false << 101 << qint64{3};
        QTest::newRow("aluminium 100") << "aluminium"
                                       << "0.032 in" << false << 100 << qint64{3};
        QTest::newRow("aluminium gravel stop 31") << "aluminium"
                                                  << "0.032 in" << true << 31 << qint64{3};
        QTest::newRow("galvanised has no such rule") << "galvanised-steel"
                                                     << "26 ga" << true << 101 << qint64{0};
    }
    void movementJointsComeFromTheRules()
    {
        QFETCH(QString, metal);
        QFETCH(QString, gauge);
        QFETCH(bool, gravel);
        QFETCH(int, feet);
        QFETCH(qint64, joints);
        pieces::Catalogue data = catalogue();
        data.ruleSets["joints"] = jointRules();
        site::Run cap =
            run("C1", gravel ? site::RunKind::GravelEdge : site::RunKind::Parapet, Length::feet(feet), "cap");
        cap.slope.reset();
        cap.trims[0].measures["wall_thickness"] = measured(Length::inches(8));
        site::Job job = jobOf({alone(cap)});
        job.ruleSets = {"joints"};
        job.material.metal = metal.toStdString();
        job.material.gauge = gauge.toStdString();
        job.limits.foldingLength = Length::feet(20);
        const Order order = takeoff(job, data);
        QVERIFY2(!order.pieces.empty(), qPrintable(told(order)));
        QCOMPARE(qint64{countOf(order, "C1", "movement joint")}, joints);
        QVERIFY2(!codesOf(order).join(" ").contains("joint_interval"), qPrintable(told(order)));
        // No piece may cross a joint: aluminium gravel stops are cut to 12 ft at most.
        const bool thermal = metal == "aluminium" && gravel;
        QCOMPARE(order.runs.front().pieceLimit, thermal ? Length::feet(12) : Length::feet(20));
    }
    void movementJointsComeFromTheMetal()
    {
        // UFGS 07600 3.1.10: copper every 40 ft, so 100 ft have 2 joints. No rule set is asked.
        pieces::Catalogue data = catalogue();
        lapwright::metal::Metal& copper = data.metals.at("copper");
        copper.movementJointSpacing = Length::feet(40);
        copper.expansionPerKelvin = 17.64e-6;
        copper.sources["movement_joint_spacing_mm"] = "where the spacing was read";
        site::Job job = jobOf({alone(run("E1", site::RunKind::Eave, Length::feet(100), "eave-edge"))});
        job.material = {"copper", "16 oz", ""};
        Order order = takeoff(job, data);
        QCOMPARE(countOf(order, "E1", "movement joint"), std::int64_t{2});
        const QString why =
            QString::fromStdString(pieces::writeDerivation(*pieces::explain(order, "E1.1"), {}));
        QVERIFY2(why.contains("where the spacing was read"), qPrintable(why));
        // 33 ft 4 in x 17.64e-6 x 100 = 0.7056 in, to the nearest sixteenth 11/16.
        QVERIFY2(why.contains("moves 11/16\""), qPrintable(why));
        // The shorter of the metal's interval and a rule's counts, and no piece is longer.
        copper.movementJointSpacing = Length::feet(8);
        data.ruleSets["joints"] = jointRules();
        job.ruleSets = {"joints"};
        order = takeoff(job, data);
        QCOMPARE(countOf(order, "E1", "movement joint"), std::int64_t{12});
        QCOMPARE(order.runs.front().pieceLimit, Length::feet(8));
    }
    void cleatsAreCounted()
    {
        // UFGS 07600 3.1.4: cleats at most 12 in apart: 10 ft have 10 spaces and 11 cleats in each row.
        pieces::Catalogue data = catalogue();
        trim::Installation& how = data.trims.at("eave-edge").installation;
        how.fastenerSpacing.reset();
        how.cleatSpacing = Length::inches(12);
        how.cleatRows = 2;
        const Order order =
            takeoff(jobOf({alone(run("E1", site::RunKind::Eave, Length::feet(10), "eave-edge"))}), data);
        QCOMPARE(countOf(order, "E1", "cleat"), std::int64_t{22});
        QCOMPARE(countOf(order, "E1", "fastener"), std::int64_t{0});
    }
};

QTEST_APPLESS_MAIN(AccessoriesTest)
#include "tst_accessories.moc"
