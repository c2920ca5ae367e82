// Guards: the sweep finds that a chain crosses itself exactly when testing every pair of runs does.
#include "site/crossing.h"

#include "houses.h"
#include "site/closure.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::site;

namespace {

using Points = std::vector<PlanVector>;

PlanVector at(std::int64_t east, std::int64_t north)
{
    return {Length::millimetres(east), Length::millimetres(north)};
}

std::int64_t side(const PlanVector& from, const PlanVector& to, const PlanVector& point)
{
    const auto mm = [](Length length) { return length / Length::millimetres(1); };
    const std::int64_t cross = (mm(to.east) - mm(from.east)) * (mm(point.north) - mm(from.north)) -
                               (mm(to.north) - mm(from.north)) * (mm(point.east) - mm(from.east));
    return cross > 0 ? 1 : cross < 0 ? -1 : 0;
}

bool within(const PlanVector& from, const PlanVector& to, const PlanVector& point)
{
    return std::min(from.east, to.east) <= point.east && point.east <= std::max(from.east, to.east) &&
           std::min(from.north, to.north) <= point.north && point.north <= std::max(from.north, to.north);
}

/// Exact in whole millimetres.
bool meet(const PlanVector& a, const PlanVector& b, const PlanVector& c, const PlanVector& d)
{
    const std::int64_t one = side(a, b, c), two = side(a, b, d), three = side(c, d, a), four = side(c, d, b);
    if (one != two && three != four)
        return true;
    return (one == 0 && within(a, b, c)) || (two == 0 && within(a, b, d)) ||
           (three == 0 && within(c, d, a)) || (four == 0 && within(c, d, b));
}

/// The second run goes back over the first.
bool doublesBack(const PlanVector& a, const PlanVector& b, const PlanVector& c)
{
    return side(a, b, c) == 0 && (within(a, b, c) || within(b, c, a));
}

bool bruteForce(const Points& points, bool closed)
{
    const std::size_t runs = points.size() - 1;
    for (std::size_t run = 0; run + 1 < runs; ++run)
        if (doublesBack(points[run], points[run + 1], points[run + 2]))
            return true;
    if (closed && doublesBack(points[runs - 1], points[0], points[1]))
        return true;
    for (std::size_t one = 0; one < runs; ++one)
        for (std::size_t other = one + 2; other < runs; ++other) {
            if (closed && one == 0 && other + 1 == runs)
                continue;
            if (meet(points[one], points[one + 1], points[other], points[other + 1]))
                return true;
        }
    return false;
}

} // namespace

class CrossingTest : public QObject {
    Q_OBJECT
private slots:
    void asEveryPairOnAGrid()
    {
        // A coarse grid makes touching, overlapping and shared corners common.
        std::mt19937 random(5);
        std::uniform_int_distribution<int> corners(3, 9), extent(3, 40);
        int crossing = 0, clean = 0;
        for (int sample = 0; sample < 20'000; ++sample) {
            std::uniform_int_distribution<std::int64_t> place(0, extent(random));
            const bool closed = sample % 2 == 0;
            Points points;
            const int count = corners(random);
            while (points.size() < static_cast<std::size_t>(count)) {
                const PlanVector point = at(place(random), place(random));
                if (points.empty() || !(point == points.back()))
                    points.push_back(point);
            }
            if (closed && points.front() == points.back())
                continue;
            if (closed)
                points.push_back(points.front());
            const bool expected = bruteForce(points, closed);
            const auto found = findSelfCrossing(points, closed);
            QCOMPARE(found.has_value(), expected);
            if (found && found->second - found->first > 1 && found->second - found->first + 2 < points.size())
                QVERIFY(meet(points[found->first], points[found->first + 1], points[found->second],
                             points[found->second + 1]));
            (expected ? crossing : clean) += 1;
        }
        qInfo("%d chains that cross, %d that do not", crossing, clean);
        QVERIFY(crossing > 2'000 && clean > 2'000);
    }
    void longChainsThatAlmostCross()
    {
        // A comb of 500 teeth, then the same with one tooth through its neighbour.
        Points points{at(0, 0)};
        for (std::int64_t tooth = 0; tooth < 500; ++tooth) {
            points.push_back(at(2 * tooth, 1'000));
            points.push_back(at(2 * tooth + 1, 1'000));
            points.push_back(at(2 * tooth + 1, 1));
            points.push_back(at(2 * tooth + 2, 1));
        }
        QVERIFY(!findSelfCrossing(points, false));
        points[4 * 250 + 2] = at(2 * 250 + 5, 999);
        QVERIFY(findSelfCrossing(points, false));
        QVERIFY(bruteForce(points, false));
    }
    void runsWithoutExtentDoNotCount()
    {
        const Points points{at(0, 0), at(5, 0), at(5, 0), at(5, 5), at(0, 5), at(0, 5), at(0, 0)};
        QVERIFY(!findSelfCrossing(points, true));
        QVERIFY(!findSelfCrossing({at(1, 1), at(1, 1), at(1, 1)}, false));
        QVERIFY(!findSelfCrossing({}, false));
    }
    void randomHousesDoNotCross()
    {
        std::mt19937 random(17);
        for (int sample = 0; sample < 300; ++sample) {
            const Chain chain =
                sample % 2 == 0 ? houses::rectilinear(random, 9) : houses::general(random, 14);
            QVERIFY(!closureReport(chain, Tolerance()).crossing);
        }
    }
    void closesYetIsNoHouse()
    {
        // Jerry Mahun, jerrymahun.com, Traverse Computations, solution of adjustment problem 2
        // (99-soln-ss-trav-adj-2): closes to 0.157 ft, 1/15 200, and crosses itself.
        const std::vector<double> lengths{639.15, 523.69, 409.54, 815.93},
            azimuths{226.90638889, 0.0, 235.04138889, 79.58388889},
            adjustedLengths{639.150, 523.715, 409.544, 815.901};
        Chain chain;
        chain.id = "problem";
        chain.closed = true;
        chain.firstBearing = Angle::degrees(azimuths[0]);
        for (std::size_t leg = 0; leg < 4; ++leg) {
            chain.runs.push_back(
                houses::eave("L" + std::to_string(leg + 1), nearestFromInches(lengths[leg] * 12.0)));
            const double turn = std::remainder(azimuths[(leg + 1) % 4] - azimuths[leg], 360.0);
            chain.corners.emplace_back(InteriorAngle{Angle::degrees(180.0 - turn), ""});
        }
        const ClosureReport report = closureReport(chain, Tolerance());
        // From unrounded legs 0.1577.
        QVERIFY(std::abs(inFeet(report.linearMisclosure) - 0.157) < 0.001);
        QVERIFY(std::abs(static_cast<double>(report.oneIn.value()) - 15'200.0) < 60.0);
        const std::vector<PlanVector> adjusted = compassRule(*report.plan, report.misclosure);
        for (std::size_t leg = 0; leg < 4; ++leg)
            QVERIFY(std::abs(inFeet(magnitude(adjusted[leg + 1] - adjusted[leg])) - adjustedLengths[leg]) <
                    0.0011);
        // Its angles are those of no simple figure: a whole turn off.
        QVERIFY(report.verdict == ClosureReport::Verdict::AnglesOff);
        QVERIFY(std::abs(std::abs(report.angularMisclosure.inDegrees()) - 360.0) < 1e-6);
        QVERIFY(report.crossing == (SelfCrossing{1, 3}) || report.crossing == (SelfCrossing{0, 2}));
        QVERIFY(rules::anyBlocks(report.findings));
    }
    void aHouseThatClosesAndCrosses()
    {
        // Square corners that add up, sides that come back, and one wing laid through another.
        std::vector<houses::Point> corners{{0, 0},   {30, 0},  {30, 20}, {10, 20},
                                           {10, -5}, {20, -5}, {20, 30}, {0, 30}};
        for (houses::Point& corner : corners) {
            corner.east *= Length::feet(1).inNanometres();
            corner.north *= Length::feet(1).inNanometres();
        }
        const Chain chain = houses::around(corners);
        const ClosureReport report = closureReport(chain, Tolerance());
        QVERIFY(report.linearMisclosure == Length());
        QVERIFY(report.crossing.has_value());
        QVERIFY(rules::anyBlocks(report.findings));
    }
};

QTEST_APPLESS_MAIN(CrossingTest)
#include "tst_crossing.moc"
