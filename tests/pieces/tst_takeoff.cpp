// Guards: a measured job becomes an order — profiles shared, pieces split, marked, handed and ended, things
// counted that go along, and everything that cannot be made told with its place.
#include "taken_off.h"

#include "pieces/checker.h"
#include "pieces/summary.h"
#include "pieces/why.h"

#include <QtTest>

#include <algorithm>
#include <set>

using namespace invented;
using pieces::Hand;
using pieces::Order;
using pieces::Piece;
using pieces::PieceEnd;
using pieces::takeoff;

class TakeoffTest : public QObject {
    Q_OBJECT
private slots:
    void aGableHouseIsTakenOff()
    {
        const Order order = takeoff(gableHouse(), catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        // Eaves: one profile; rakes: one. 40 ft = 480 in by 120 in pieces with 2 in laps: 4 × 120 − 3 × 2 =
        // 474 do not reach, so five: 480 + 8 = 488 = 4 × 120 + 8, and 8 in is under 12, so the last two share
        // 128.
        QCOMPARE(order.profiles.size(), std::size_t{2});
        QCOMPARE(pieceOf(order, "E1.1").length, Length::feet(10));
        QCOMPARE(pieceOf(order, "E1.3").length, Length::feet(10));
        QCOMPARE(pieceOf(order, "E1.4").length, Length::inches(64));
        QCOMPARE(pieceOf(order, "E1.5").length, Length::inches(64));
        // 201 1/4 in rakes: 120 and 83 1/4.
        QCOMPARE(pieceOf(order, "R1.2").length, Length::inches(83) + Length::sixtyFourths(16));
        QCOMPARE(order.pieces.size(), std::size_t{5 + 5 + 4 * 2});
    }
    void aLapSetByHandCounts()
    {
        site::Job job = jobOf({alone(run("E1", site::RunKind::Eave, Length::feet(25), "eave-edge")),
                               alone(run("E2", site::RunKind::Eave, Length::feet(25), "eave-edge"))});
        job.chains[0].runs[0].trims[0].lap = Length::inches(5);
        const Order order = takeoff(job, catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        // 300 in by 120 in: with 5 in laps 120, 120 and 300 + 2 × 5 − 240 = 70; with the trim's own 2 in, 64.
        QCOMPARE(pieceOf(order, "E1.3").length, Length::inches(70));
        QCOMPARE(pieceOf(order, "E2.3").length, Length::inches(64));
        QVERIFY2(order.profiles.size() == 2, "the profile says how far its pieces lap");
        for (const site::PiecePolicy policy :
             {site::PiecePolicy::EqualLengths, site::PiecePolicy::StockLengths}) {
            job.policy = policy;
            const Order divided = takeoff(job, catalogue());
            QVERIFY2(!rules::anyBlocks(divided.findings), qPrintable(told(divided)));
        }
    }
    void bendsHaveTheRadiusOfTheSheetChosen()
    {
        // A metal folded over three times its own thickness, in two gauges.
        pieces::Catalogue data = catalogue();
        lapwright::metal::Metal& copper = data.metals.at("copper");
        copper.insideRadiusPerThickness = 3.0;
        copper.sheets.push_back({"32 oz", Length::micrometres(1'095), 9.76});
        const site::Run eave = run("E1", site::RunKind::Eave, Length::feet(8), "eave-edge");
        for (const lapwright::metal::Sheet& sheet : copper.sheets) {
            site::Job job = jobOf({alone(eave)});
            job.material = {"copper", sheet.gauge, ""};
            const Order order = takeoff(job, data);
            QVERIFY2(!order.profiles.empty(), qPrintable(told(order)));
            QCOMPARE(order.profiles.front().profile.bends.front().insideRadius, sheet.thickness * 3);
        }
        // A leg that 26 ga can be folded to and 1/4 in plate cannot.
        data.metals.at("galvanised-steel").sheets.push_back({"plate", Length::sixtyFourths(16), 49.8});
        site::Job job = jobOf({alone(eave)});
        job.chains[0].runs[0].trims[0].legs["face"] = Length::sixtyFourths(17);
        QVERIFY(!takeoff(job, data).pieces.empty());
        job.material.gauge = "plate";
        const Order thick = takeoff(job, data);
        QVERIFY2(codesOf(thick).contains("trim.leg.unfoldable"), qPrintable(told(thick)));
        QVERIFY(thick.pieces.empty());
    }
    void rakesAreLaidFromTheEavesAndHaveHands()
    {
        const Order order = takeoff(gableHouse(), catalogue());
        // R1 rises from its start, R2 to its start: the upper piece covers the lower.
        QCOMPARE(pieceOf(order, "R1.2").start.kind, PieceEnd::Kind::Lap);
        QCOMPARE(pieceOf(order, "R1.2").start.allowance, Length::inches(2));
        QCOMPARE(pieceOf(order, "R1.1").end.kind, PieceEnd::Kind::Square);
        QCOMPARE(pieceOf(order, "R2.2").end.kind, PieceEnd::Kind::Lap);
        QCOMPARE(pieceOf(order, "R2.1").start.kind, PieceEnd::Kind::Square);
        QCOMPARE(pieceOf(order, "R1.1").hand, Hand::Left);
        QCOMPARE(pieceOf(order, "R2.1").hand, Hand::Right);
        QCOMPARE(pieceOf(order, "E1.1").hand, Hand::None);
    }
    void outsideAndInsideMitresAreCutToTheirLongestPoint()
    {
        // Three eaves, square outside corner, then square inside corner. The face stands straight below the
        // apex; the apex is 3 in × cos θ out of the start, which is on the measured line.
        site::Chain chain = alone(run("E1", site::RunKind::Eave, Length::feet(8), "eave-edge"));
        chain.runs.push_back(run("E2", site::RunKind::Eave, Length::feet(8), "eave-edge"));
        chain.runs.push_back(run("E3", site::RunKind::Eave, Length::feet(8), "eave-edge"));
        chain.corners = {site::SquareOutside{}, site::SquareInside{}};
        chain.runs[0].end = chain.runs[1].start = site::EndKind::Mitre;
        chain.runs[1].end = chain.runs[2].start = site::EndKind::Mitre;
        const Order order = takeoff(jobOf({chain}), catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        const double apex = 3.0 * std::cos(std::atan(0.5));
        const auto inches = [](Length length) { return static_cast<double>(length.inNanometres()) / 25.4e6; };
        const Piece& first = pieceOf(order, "E1.1");
        QCOMPARE(first.end.kind, PieceEnd::Kind::Mitre);
        QCOMPARE(first.end.cut.size(), std::size_t{3});
        QVERIFY(std::abs(inches(first.end.cut[1]) - apex) < 1e-6);
        QVERIFY(std::abs(inches(first.blankLength) - (96.0 + apex)) < 1e-6);
        QCOMPARE(first.length, Length::feet(8));
        // At the inside corner nothing reaches beyond the measured end.
        const Piece& second = pieceOf(order, "E2.1");
        QCOMPARE(second.end.allowance, Length());
        QVERIFY(std::abs(inches(second.end.cut[1]) + apex) < 1e-6);
        QCOMPARE(countOf(order, "E1", "corner tab"), std::int64_t{1});
        QCOMPARE(countOf(order, "E2", "corner tab"), std::int64_t{1});
        QCOMPARE(countOf(order, "E3", "corner tab"), std::int64_t{0});
        // No laps in 8 ft: the bead at each mitre is counted where its tab is.
        QCOMPARE(countOf(order, "E1", "sealant"), std::int64_t{1});
        QCOMPARE(countOf(order, "E2", "sealant"), std::int64_t{1});
        QCOMPARE(countOf(order, "E3", "sealant"), std::int64_t{0});
    }
    void rakesMeetInAPlumbPlaneAtThePeak()
    {
        site::Job job = gableHouse();
        job.chains[0].runs[1].end = job.chains[0].runs[2].start = site::EndKind::Mitre;
        job.chains[0].runs[0].end = site::EndKind::Mitre;
        job.chains[0].runs[1].start = site::EndKind::Mitre;
        const Order order = takeoff(job, catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        // Deck level with the line, face 4 in below it: shorter by 4 in × tan θ = 2 in at the bottom edge.
        const PieceEnd& peak = pieceOf(order, "R1.2").end;
        QCOMPARE(peak.kind, PieceEnd::Kind::Mitre);
        QCOMPARE(peak.cut.size(), std::size_t{3});
        QVERIFY(lapwright::magnitude(peak.cut.back() + Length::inches(2)) <= Length::nanometres(2));
        QCOMPARE(peak.cut.front(), pieceOf(order, "R2.2").start.cut.front());
        // A rake to an eave is left to the site, and said so.
        QVERIFY(codesOf(order).contains("pieces.end.cut_on_site"));
    }
    void wrapTabsTurnUpsAndButtsChangeTheLength()
    {
        site::Run eave = run("E1", site::RunKind::Eave, Length::feet(8), "eave-edge");
        eave.start = site::EndKind::WrapTab;
        eave.end = site::EndKind::TurnUp;
        const Order order = takeoff(jobOf({alone(eave)}), catalogue());
        QCOMPARE(pieceOf(order, "E1.1").blankLength, Length::inches(96 + 1 + 3));
        QCOMPARE(order.runs.front().usableLength, Length::inches(100));
        eave.start = eave.end = site::EndKind::Closed;
        const Order closed = takeoff(jobOf({alone(eave)}), catalogue());
        QCOMPARE(pieceOf(closed, "E1.1").blankLength, Length::inches(96));
        QCOMPARE(countOf(closed, "E1", "end cap"), std::int64_t{2});
    }
    void stepFlashingGoesByCourses()
    {
        // Exposure 5 in and 2 in head lap make pieces of 7 in (basc.pnnl.gov and other pages on step
        // flashing); 10 ft of slope are 24 courses, and one for the starter course.
        site::Run wall = run("S1", site::RunKind::Sidewall, Length::feet(10), "step");
        wall.courseExposure = Length::inches(5);
        const Order order = takeoff(jobOf({alone(wall)}), catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        QCOMPARE(order.pieces.size(), std::size_t{1});
        QCOMPARE(order.pieces.front().length, Length::inches(7));
        QCOMPARE(order.pieces.front().count, std::int64_t{25});
        QVERIFY(pieces::explain(order, "S1.25").has_value());
        QVERIFY(!pieces::explain(order, "S1.26").has_value());
        QCOMPARE(pieces::marksByRun(order).at("S1"), std::string("S1.1 to S1.25"));
        wall.courseExposure.reset();
        const Order unknown = takeoff(jobOf({alone(wall)}), catalogue());
        QVERIFY(codesOf(unknown).contains("pieces.course.exposure"));
        QVERIFY(unknown.pieces.empty());
    }
    void aChimneyIsToldOnce()
    {
        // International Residential Code R903.2.2, quoted at inspectionnews.net: over 30 in wide parallel to
        // the ridge.
        pieces::Catalogue data = catalogue();
        rules::Clause clause;
        clause.number = "IRC R903.2.2";
        clause.statement = "{width} wide, {cricket_height} high";
        clause.applies = {{rules::Condition::Comparison::Greater, "width", {Length::inches(30)}}};
        clause.demands = {{rules::Condition::Comparison::Equal, "cricket", {true}}};
        data.ruleSets["crickets"].id = "crickets";
        data.ruleSets["crickets"].clauses = {clause};
        const auto codes = [&](std::optional<site::Obstacle> obstacle) {
            site::Chain chain = alone(run("S1", site::RunKind::Sidewall, Length::feet(4), "step"));
            chain.runs.push_back(run("S2", site::RunKind::Sidewall, Length::feet(4), "step"));
            chain.corners = {site::SquareOutside{}};
            for (site::Run& side : chain.runs)
                side.courseExposure = Length::inches(5);
            chain.obstacle = std::move(obstacle);
            site::Job job = jobOf({chain});
            job.ruleSets = {"crickets"};
            QStringList found;
            for (const rules::Finding& finding : takeoff(job, data).findings)
                if (finding.clause)
                    found << QString::fromStdString(finding.code + ": " +
                                                    lapwright::say(finding.statement, {}));
            return found;
        };
        QCOMPARE(codes(std::nullopt), QStringList());
        QCOMPARE(codes(site::Obstacle{measured(Length::inches(30)), false}), QStringList());
        // 6 in 12: half of 32 in by 1/2 is 8 in (arithmetic).
        QCOMPARE(codes(site::Obstacle{measured(Length::inches(32)), false}),
                 QStringList{"rules.crickets.IRC-R903.2.2.cricket: 2' 8\" wide, 8\" high"});
        QCOMPARE(codes(site::Obstacle{measured(Length::inches(32)), true}), QStringList());
        const QStringList unknown = codes(site::Obstacle{measured(Length::inches(32)), std::nullopt});
        QCOMPARE(unknown.size(), 1);
        QVERIFY2(unknown.front().startsWith("rules.crickets.IRC-R903.2.2.cricket.unchecked"),
                 qPrintable(unknown.front()));
    }
    void stockLengthsAreCutOnSite()
    {
        site::Job job = jobOf({alone(run("E1", site::RunKind::Eave, Length::inches(84), "eave-edge")),
                               alone(run("E2", site::RunKind::Eave, Length::inches(30), "eave-edge")),
                               alone(run("E3", site::RunKind::Eave, Length::inches(190), "eave-edge"))});
        job.policy = site::PiecePolicy::StockLengths;
        const Order order = takeoff(job, catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        // 190 in: 120 + 72 (2 in lap). 120 | 84 + 30 | 72: three stock lengths.
        QCOMPARE(order.pieces.size(), std::size_t{1});
        QCOMPARE(order.pieces.front().mark, std::string("stock.1"));
        QCOMPARE(order.pieces.front().count, std::int64_t{3});
        QCOMPARE(order.pieces.front().blankLength, Length::feet(10));
        QCOMPARE(order.siteCuts.size(), std::size_t{4});
        const auto cut = std::find_if(order.siteCuts.begin(), order.siteCuts.end(),
                                      [](const pieces::SiteCut& each) { return each.mark == "E2.1"; });
        QVERIFY(cut != order.siteCuts.end() && cut->left == Length::inches(6));
        QCOMPARE(pieces::marksByRun(order).at("E3"), std::string("E3.1 to E3.2"));
        QVERIFY(pieces::explain(order, "E3.2").has_value());
        QVERIFY(pieces::explain(order, "stock.3").has_value());
    }
    void sparesAreOfTheLongestLength()
    {
        site::Job job = gableHouse();
        job.spares = 2;
        const Order order = takeoff(job, catalogue());
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
        QCOMPARE(pieceOf(order, "spare.1").count, std::int64_t{2});
        QVERIFY(pieceOf(order, "spare.3").spare);
        QCOMPARE(pieceOf(order, "spare.1").length, Length::feet(10));
    }
    void marksStayUniqueWhateverRunsAreCalled()
    {
        site::Run two = run("S1", site::RunKind::Eave, Length::feet(30), "eave-edge");
        two.trims.push_back(two.trims.front());
        site::Job job =
            jobOf({alone(two), alone(run("S1b", site::RunKind::Eave, Length::feet(5), "eave-edge")),
                   alone(run("spare", site::RunKind::Eave, Length::feet(5), "eave-edge")),
                   alone(run("S1.1", site::RunKind::Eave, Length::feet(5), "eave-edge"))});
        job.spares = 1;
        const Order order = takeoff(job, catalogue());
        std::set<std::string> marks;
        for (const Piece& piece : order.pieces)
            QVERIFY2(marks.insert(piece.mark).second, piece.mark.c_str());
        QVERIFY(marks.count("S1a.1") && marks.count("S1-b.1") && marks.count("S1b.1") &&
                marks.count("spare-.1"));
        QVERIFY2(!rules::anyBlocks(order.findings), qPrintable(told(order)));
    }
    void whatCannotBeMadeIsToldWithItsPlace_data()
    {
        QTest::addColumn<QString>("code");
        for (const char* code :
             {"pieces.trim.unknown", "pieces.trim.unsuited", "pieces.metal.unknown", "pieces.gauge.unknown",
              "pieces.split.shortest", "pieces.rules.unknown", "pieces.split.lap"})
            QTest::newRow(code) << code;
    }
    void whatCannotBeMadeIsToldWithItsPlace()
    {
        QFETCH(QString, code);
        site::Run eave = run("E1", site::RunKind::Eave, Length::inches(130), "eave-edge");
        if (code == "pieces.trim.unknown")
            eave.trims[0].trim = "nowhere";
        if (code == "pieces.trim.unsuited")
            eave.trims[0].trim = "cap";
        site::Job job = jobOf({alone(eave)});
        if (code == "pieces.metal.unknown")
            job.material.metal = "tin";
        if (code == "pieces.gauge.unknown")
            job.material.metal = "copper";
        if (code == "pieces.split.shortest")
            job.limits.shortestPiece = Length::inches(100);
        if (code == "pieces.split.lap")
            job.limits.foldingLength = Length::inches(2);
        if (code == "pieces.rules.unknown")
            job.ruleSets = {"nowhere"};
        const Order order = takeoff(job, catalogue());
        const auto found =
            std::find_if(order.findings.begin(), order.findings.end(),
                         [&](const rules::Finding& finding) { return finding.code == code.toStdString(); });
        QVERIFY2(found != order.findings.end(), qPrintable(told(order)));
        QCOMPARE(found->weight, rules::Weight::Blocks);
        const std::string said = lapwright::say(found->statement, {});
        QVERIFY2(said.find('{') == std::string::npos, said.c_str());
        if (code == "pieces.gauge.unknown") {
            // 26 ga is another thickness in each metal that is sold so.
            QVERIFY2(said.find("Galvanised steel 0.0217\"") != std::string::npos, said.c_str());
            QVERIFY2(said.find("Stainless steel 0.0187\"") != std::string::npos, said.c_str());
        }
        if (code != "pieces.rules.unknown")
            QVERIFY(order.pieces.empty());
        if (code.startsWith("pieces.trim") || code.startsWith("pieces.split"))
            QVERIFY2(found->place.find("E1") != std::string::npos, found->place.c_str());
    }
    void aBillionPiecesByMultiplicationBlock_data()
    {
        QTest::addColumn<QString>("trim");
        QTest::addColumn<int>("runs");
        QTest::addColumn<int>("trims");
        QTest::addColumn<Length>("limit");
        QTest::addColumn<Length>("exposure");
        QTest::addColumn<int>("spares");
        const Length feet = Length::feet(10), millimetre = Length::micrometres(1'000);
        QTest::newRow("runs, trims, pieces of each")
            << "eave-edge" << 4'000 << 26 << millimetre * 13 << millimetre << 0;
        QTest::newRow("courses") << "step" << 1 << 1 << feet << Length::nanometres(100) << 0;
        QTest::newRow("runs and trims") << "eave-edge" << 50'000 << 26 << feet << millimetre << 0;
        QTest::newRow("spares of each profile")
            << "eave-edge" << 1'001 << 1 << feet << millimetre * 200 << 1'000;
    }
    void aBillionPiecesByMultiplicationBlock()
    {
        QFETCH(QString, trim);
        QFETCH(int, runs);
        QFETCH(int, trims);
        QFETCH(Length, limit);
        QFETCH(Length, exposure);
        QFETCH(int, spares);
        pieces::Catalogue data = catalogue();
        data.trims["eave-edge"].installation.lap = Length();
        std::vector<site::Chain> chains;
        for (int number = 0; number < runs; ++number) {
            const site::RunKind kind = trim == "step" ? site::RunKind::Sidewall : site::RunKind::Eave;
            site::Run one = run("E" + std::to_string(number), kind, Length::feet(400), trim.toStdString());
            one.courseExposure = exposure;
            one.slope = Slope::fromMillionths(4 * Slope::unit + number * 1'000, 12 * Slope::unit);
            one.trims.resize(static_cast<std::size_t>(trims), one.trims.front());
            chains.push_back(alone(std::move(one)));
        }
        site::Job job = jobOf(std::move(chains));
        job.limits.foldingLength = limit;
        job.limits.shortestPiece = Length();
        job.spares = spares;
        const Order order = takeoff(job, data);
        QCOMPARE(codesOf(order).count("pieces.order.count"), 1);
        QVERIFY(rules::anyBlocks(order.findings));
        QVERIFY2(order.pieces.size() <= static_cast<std::size_t>(pieces::mostPiecesOfOrder),
                 qPrintable(told(order)));
    }
    void aMissingMeasureIsAFindingOfTheTrim()
    {
        site::Run cap = run("C1", site::RunKind::Parapet, Length::feet(5), "cap");
        const Order order = takeoff(jobOf({alone(cap)}), catalogue());
        QVERIFY(order.pieces.empty());
        const bool named =
            std::any_of(order.findings.begin(), order.findings.end(), [](const rules::Finding& finding) {
                return finding.place.find("wall_thickness") != std::string::npos;
            });
        QVERIFY2(named && rules::anyBlocks(order.findings), qPrintable(told(order)));
    }
    void everyNumberSaysWhereItComesFrom()
    {
        const Order order = takeoff(gableHouse(), catalogue());
        const std::optional<lapwright::Derivation> why = pieces::explain(order, "E1.4");
        QVERIFY(why.has_value());
        const QString text = QString::fromStdString(pieces::writeDerivation(*why, {}));
        qInfo("%s", qPrintable(text));
        for (const char* part :
             {"piece 4 of 5", "5' 4\"", "40' 0\" to cover", "3 of 10' 0\", then 2 of 5' 4\"", "5 pieces",
              "longest piece", "girth", "deck", "fasteners", "kg"})
            QVERIFY2(text.contains(part), part);
        QVERIFY(!text.contains('{'));
        QVERIFY(!pieces::explain(order, "E1.6").has_value());
        QVERIFY(!pieces::explain(order, "E9.1").has_value());
    }
};

QTEST_APPLESS_MAIN(TakeoffTest)
#include "tst_takeoff.moc"
