// Guards: the first contact of a turning section, solved in closed form, is where sampling it finely finds
// it: with a barrier of the machine, and between two parts of the sheet of some thickness.
#include "fold/contact.h"

#include <QtTest>

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>

#include <numbers>
#include <random>

using namespace lapwright;
using fold::Vector;

namespace {

using BoostPoint = boost::geometry::model::d2::point_xy<double>;
using BoostLine = boost::geometry::model::linestring<BoostPoint>;

constexpr double degree = std::numbers::pi / 180.0;

std::vector<Vector> turnedBy(std::vector<Vector> points, Vector pole, double radians)
{
    for (Vector& point : points)
        point = pole + turned(point - pole, radians);
    return points;
}

BoostLine boostLine(const std::vector<Vector>& points, std::size_t first)
{
    BoostLine line;
    for (std::size_t i = first; i < points.size(); ++i)
        line.emplace_back(points[i].x, points[i].y);
    return line;
}

/// A path of a few parts outwards from (±0.4, 0).
std::vector<Vector> randomPath(std::mt19937& random, double side)
{
    std::uniform_real_distribution<double> length(8.0, 60.0), turn(-2.0, 2.0);
    std::vector<Vector> points{{side * 0.4, 0.0}};
    double heading = 0.0;
    const int parts = 1 + static_cast<int>(random() % 4);
    for (int part = 0; part < parts; ++part) {
        const double reach = length(random);
        points.push_back(points.back() + reach * Vector{side * std::cos(heading), std::sin(heading)});
        heading += turn(random);
    }
    return points;
}

/// Distance between the parts, without the two that adjoin the bend.
double apart(const std::vector<Vector>& turning, const std::vector<Vector>& standing)
{
    const BoostLine moving = boostLine(turning, 0), fixed = boostLine(standing, 0);
    double least = 1e9;
    if (turning.size() > 2)
        least = std::min(least, boost::geometry::distance(boostLine(turning, 1), fixed));
    if (standing.size() > 2)
        least = std::min(least, boost::geometry::distance(moving, boostLine(standing, 1)));
    return least;
}

} // namespace

class FoldContactTest : public QObject {
    Q_OBJECT
private slots:
    void aFlapMeetsTheTipOfAStandingLip()
    {
        // A lip 10 mm high, 30 mm behind: a flat flap comes down on its tip, not on a corner.
        const std::vector<Vector> flap{{0.4, 0.0}, {60.0, 0.0}};
        const std::vector<Vector> lip{{-0.4, 0.0}, {-30.0, 0.0}, {-30.0, 10.0}};
        const double gap = 0.5;
        const auto met = fold::sheetContact(flap, lip, {0.0, 0.0}, 175.0 * degree, gap);
        const double tip = std::atan2(10.0, -30.0), early = std::asin(gap / std::hypot(10.0, 30.0));
        QVERIFY(met.has_value());
        QVERIFY(std::abs(*met - (tip - early)) < 1e-9);
        QVERIFY(!fold::sheetContact(flap, lip, {0.0, 0.0}, 150.0 * degree, gap));
    }

    void sheetAgainstSheetIsWhereSamplingFindsIt()
    {
        std::mt19937 random(11);
        int met = 0, missed = 0;
        for (int i = 0; i < 150; ++i) {
            const std::vector<Vector> turning = randomPath(random, 1.0), standing = randomPath(random, -1.0);
            const double gap = 0.3 + 0.1 * static_cast<double>(random() % 20);
            const double radians = (random() % 2 == 0 ? 1.0 : -1.0) * 160.0 * degree;
            if (apart(turning, standing) < gap)
                continue;
            const auto exact = fold::sheetContact(turning, standing, {0.0, 0.2}, radians, gap);
            std::optional<double> sampled;
            const int steps = 800;
            for (int step = 0; step <= steps && !sampled; ++step) {
                const double turn = radians * step / steps;
                if (apart(turnedBy(turning, {0.0, 0.2}, turn), standing) < gap)
                    sampled = std::abs(turn);
            }
            if (sampled) {
                ++met;
                QVERIFY2(exact && *exact <= *sampled + 1e-9, qPrintable(QString::number(i)));
                const auto before =
                    turnedBy(turning, {0.0, 0.2}, (radians < 0.0 ? -1.0 : 1.0) * (*exact - 1e-5));
                QVERIFY2(apart(before, standing) > gap - 1e-6, qPrintable(QString::number(i)));
            } else {
                ++missed;
                // Sampling may miss a touch by less than it resolves; what it found free is nearly so.
                if (exact)
                    QVERIFY(apart(turnedBy(turning, {0.0, 0.2}, (radians < 0.0 ? -1.0 : 1.0) * *exact),
                                  standing) < gap + 1e-6);
            }
        }
        QVERIFY2(met > 20 && missed > 20, qPrintable(QString("%1 %2").arg(met).arg(missed)));
    }

    void aBarrierIsMetWhereSamplingFindsIt()
    {
        std::mt19937 random(12);
        const auto at = [](double x, double y) {
            return fold::Point{Length::micrometres(static_cast<std::int64_t>(1000.0 * x)),
                               Length::micrometres(static_cast<std::int64_t>(1000.0 * y))};
        };
        const fold::Barrier clamp = fold::keepOut(
            {at(0, 0), at(-12, 8), at(-60, 60), at(-90, 60), at(-90, 30), at(-22, 6), at(-22, 0)}, 0.8, 0.05);
        std::vector<Vector> corners;
        for (const fold::Edge& edge : clamp.edges)
            corners.push_back(edge.a);
        corners.push_back(corners.front());
        const BoostLine rim = boostLine(corners, 0);
        int met = 0, missed = 0;
        for (int i = 0; i < 150; ++i) {
            const std::vector<Vector> turning = randomPath(random, 1.0);
            const double radians = (30.0 + static_cast<double>(random() % 120)) * degree;
            if (turning.size() < 3 || fold::standsIn(turning, 1, fold::boundsOf(turning, 1), clamp))
                continue;
            const auto exact = fold::TurningBarrier(clamp, {0.0, 0.2}, 1.0).contact(turning, 1, radians);
            std::optional<double> sampled;
            const int steps = 800;
            for (int step = 0; step <= steps && !sampled; ++step)
                if (boost::geometry::intersects(
                        boostLine(turnedBy(turning, {0.0, 0.2}, radians * step / steps), 1), rim))
                    sampled = radians * step / steps;
            sampled ? ++met : ++missed;
            if (sampled)
                QVERIFY2(exact && *exact <= *sampled + 1e-9 && *exact > *sampled - radians / steps - 1e-9,
                         qPrintable(QString::number(i)));
        }
        QVERIFY2(met > 20 && missed > 20, qPrintable(QString("%1 %2").arg(met).arg(missed)));
    }
};

QTEST_APPLESS_MAIN(FoldContactTest)
#include "tst_fold_contact.moc"
