// Guards: the plan of a job is to scale, every run and corner is named off the lines, a chain that does not
// close shows its gap and the run that explains it, and what cannot be drawn is said.
#include "drawing/plan_picture.h"

#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

#include <cmath>
#include <numbers>
#include <random>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

site::Run run(const std::string& id, site::RunKind kind, Length length)
{
    site::Run made;
    made.id = id;
    made.kind = kind;
    made.lengths = {{length, ""}};
    made.slope = Slope::twelfths(6);
    return made;
}

/// An L-shaped house: five outside corners and one inside.
site::Chain houseEave()
{
    site::Chain chain;
    chain.id = "eave";
    chain.name = "House eave";
    chain.closed = true;
    const std::vector<std::int64_t> feet = {40, 18, 16, 10, 24, 28};
    for (std::size_t i = 0; i < feet.size(); ++i)
        chain.runs.push_back(run("E" + std::to_string(i + 1), site::RunKind::Eave, Length::feet(feet[i])));
    chain.corners = {site::SquareOutside{}, site::SquareOutside{}, site::SquareInside{},
                     site::SquareOutside{}, site::SquareOutside{}, site::SquareOutside{}};
    return chain;
}

site::Chain single(const std::string& id, const std::string& name, site::RunKind kind, Length length)
{
    site::Chain chain;
    chain.id = id;
    chain.name = name;
    chain.runs = {run(id, kind, length)};
    return chain;
}

site::Job house()
{
    site::Job job;
    job.name = "House on the invented lane";
    job.address = "12 Example Lane";
    job.chains = {houseEave()};
    site::Chain bay;
    bay.id = "bay";
    bay.name = "Bay eave";
    bay.runs = {run("B1", site::RunKind::Eave, Length::feet(4)),
                run("B2", site::RunKind::Eave, Length::feet(6)),
                run("B3", site::RunKind::Eave, Length::feet(4))};
    bay.corners = {site::InteriorAngle{Angle::degrees(135), "135"},
                   site::InteriorAngle{Angle::degrees(135), "135"}};
    job.chains.push_back(bay);
    job.chains.push_back(single("R1", "Main ridge", site::RunKind::Ridge, Length::feet(22)));
    job.chains.back().runs[0].otherSlope = Slope::twelfths(8);
    job.chains.push_back(single("V1", "Valley", site::RunKind::Valley, Length::feet(17)));
    job.chains.back().runs[0].otherSlope = Slope::twelfths(6);
    job.chains.push_back(single("C1", "Wall corner", site::RunKind::OutsideCorner, Length::feet(9)));
    return job;
}

bool has(const DisplayList& list, const std::string& text)
{
    return textsOf(list).find(text) != std::string::npos;
}

} // namespace

class TestPlanPicture : public QObject {
    Q_OBJECT

private slots:
    void aHouseThatCloses()
    {
        PlanPicture picture;
        picture.marks = {{"E1", "E1.1 to E1.4"}};
        const DisplayList list = planPicture(house(), picture);
        keepPicture(list, "plan-house");
        QCOMPARE(report(faultsOf(list)), QString());
        QCOMPARE(xmlError(toSvg(list)), QString());
        for (const char* text : {"E1  40' 0\"", "E6  28' 0\"", "B2  6' 0\"", "135\xC2\xB0", "E1.1 to E1.4",
                                 "6 in 12 and 8 in 12", "Not drawn: Wall corner", "Main ridge"})
            QVERIFY2(has(list, text), text);
        QVERIFY(!has(list, "does not close"));
        QVERIFY(!has(list, "No room"));
    }

    void runsAreToScale()
    {
        const DisplayList list = planPicture(house(), {});
        std::vector<double> drawn;
        for (const Shape& shape : list.shapes)
            if (const auto* path = std::get_if<Path>(&shape);
                path && path->role == Role::Run && !path->closed)
                drawn.push_back(norm(path->points[1] - path->points[0]));
        QVERIFY(drawn.size() >= 6);
        const double scale = drawn[0] / 40.0;
        const double feet[] = {40, 18, 16, 10, 24, 28};
        for (std::size_t i = 0; i < 6; ++i)
            QVERIFY(std::abs(drawn[i] - feet[i] * scale) < 1e-6);
        const double inverse = 304.8 / scale;
        QVERIFY(std::abs(inverse - std::round(inverse)) < 1e-6);
        QVERIFY(has(list, "scale 1:" + std::to_string(std::lround(inverse))));
    }

    void aFalseLengthShowsItsGap()
    {
        site::Job job = house();
        job.chains[0].runs[3].lengths[0].value = Length::feet(13);
        const DisplayList list = planPicture(job, {});
        keepPicture(list, "plan-gap");
        QCOMPARE(report(faultsOf(list)), QString());
        QVERIFY(has(list, "does not close: 3' 0\""));
        QVERIFY(has(list, "would close at"));
        QVERIFY(has(list, "of the start"));
    }

    void manyChainsGetALongerSheet()
    {
        site::Job job = house();
        for (int i = 0; i < 60; ++i)
            job.chains.push_back(single("R" + std::to_string(i + 2), "Ridge " + std::to_string(i + 2),
                                        site::RunKind::Ridge, Length::feet(10 + i % 7)));
        const DisplayList list = planPicture(job, {});
        keepPicture(list, "plan-many");
        QVERIFY(list.height > Length::millimetres(210));
        QCOMPARE(report(faultsOf(list)), QString());
        QVERIFY(has(list, "E1  40' 0\""));
        QVERIFY(has(list, "R61  "));
    }

    void noMarkIsLostOnACrowdedPlan()
    {
        const site::Job job = house();
        PlanPicture picture;
        for (const site::Chain& chain : job.chains)
            for (const site::Run& each : chain.runs)
                picture.marks[each.id] =
                    each.id + "a.1 to " + each.id + "a.5, " + each.id + "b.1 to " + each.id + "b.5";
        const DisplayList list = planPicture(job, picture);
        keepPicture(list, "plan-crowded");
        const QString faults = report(faultsOf(list));
        QVERIFY2(faults.isEmpty(), qPrintable(faults));
        for (const auto& [run, marks] : picture.marks)
            QVERIFY2(has(list, marks), marks.c_str());
    }

    void aMissingLengthIsSaid()
    {
        site::Job job = house();
        job.chains[0].runs[2].lengths.clear();
        QVERIFY(has(planPicture(job, {}), "Not drawn: House eave"));
    }

    void randomHousesHaveNoFaults()
    {
        std::mt19937 random(77);
        int leftOut = 0;
        const int wanted = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 500 : 12;
        for (int n = 0; n < wanted; ++n) {
            site::Job job;
            job.name = "Random house";
            const std::size_t sides = 4 + random() % 9;
            // Corners of a star-shaped figure, walked counter-clockwise.
            std::vector<Point> corners;
            for (std::size_t i = 0; i < sides; ++i) {
                const double angle =
                    2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(sides);
                corners.push_back((3000.0 + static_cast<double>(random() % 9000)) * direction(angle));
            }
            site::Chain chain;
            chain.id = "C";
            chain.name = "Eave";
            chain.closed = true;
            for (std::size_t i = 0; i < sides; ++i) {
                const Point a = corners[i], b = corners[(i + 1) % sides], c = corners[(i + 2) % sides];
                chain.runs.push_back(run("E" + std::to_string(i + 1), site::RunKind::Eave,
                                         nearestFromMillimetres(norm(b - a))));
                const double turn = std::atan2(cross(b - a, c - b), dot(b - a, c - b));
                chain.corners.emplace_back(site::InteriorAngle{Angle::radians(std::numbers::pi - turn), ""});
            }
            job.chains = {chain};
            for (std::size_t i = 0; i < random() % 4; ++i)
                job.chains.push_back(
                    single("R" + std::to_string(i), "Ridge", site::RunKind::Ridge,
                           Length::millimetres(1000 + static_cast<std::int64_t>(random() % 9000))));
            const DisplayList list = planPicture(job, {});
            if (n < 4)
                keepPicture(list, QString("plan-random-%1").arg(n));
            const QString faults = report(faultsOf(list));
            QVERIFY2(faults.isEmpty(), qPrintable(faults));
            QVERIFY(!has(list, "does not close"));
            leftOut += has(list, "No room") ? 1 : 0;
        }
        qInfo("%d houses, %d with a label left out", wanted, leftOut);
        QCOMPARE(leftOut, 0);
    }
};

QTEST_APPLESS_MAIN(TestPlanPicture)
#include "tst_plan_picture.moc"
