// Guards: when one length or one angle of a house that closes is falsified, closure names it, with its true
// value, among those that explain it; and what explains nothing is not named.
#include "site/closure.h"

#include "houses.h"

#include <QtTest>

#include <cstdlib>
#include <random>

using namespace lapwright;
using namespace lapwright::site;

namespace {

using Verdict = ClosureReport::Verdict;

int samplesWanted()
{
    return std::getenv("LAPWRIGHT_LONG") != nullptr ? 20'000 : 600;
}

Chain houseOf(std::mt19937& random, bool square)
{
    std::uniform_int_distribution<std::size_t> wings(1, 8), corners(4, 20);
    return square ? houses::rectilinear(random, wings(random)) : houses::general(random, corners(random));
}

struct Tally {
    int samples = 0;
    int first = 0;
    int alone = 0;
    int missed = 0;
    std::size_t most = 0;

    void count(const std::vector<Blame>& blames, std::size_t place)
    {
        ++samples;
        first += place == 0;
        alone += place == 0 && blames.size() == 1;
        missed += place == blames.size();
        most = std::max(most, blames.size());
    }
    void print(const char* what) const
    {
        qInfo("%s: %d falsified, named first %d, named alone %d, missed %d, longest list %zu", what, samples,
              first, alone, missed, most);
    }
};

std::size_t placeOfLength(const std::vector<Blame>& blames, std::size_t run, Length truth)
{
    for (std::size_t place = 0; place < blames.size(); ++place)
        if (blames[place].length && !blames[place].corner && blames[place].length->run == run &&
            magnitude(blames[place].length->wouldBe - truth) <= Length::micrometres(1))
            return place;
    return blames.size();
}

std::size_t placeOfCorner(const std::vector<Blame>& blames, std::size_t corner, Angle truth)
{
    for (std::size_t place = 0; place < blames.size(); ++place)
        if (blames[place].corner && !blames[place].length && blames[place].corner->corner == corner &&
            magnitude(blames[place].corner->wouldBe - truth) <= Angle::degrees(1e-6))
            return place;
    return blames.size();
}

Tally falsifyLengths(bool square)
{
    std::mt19937 random(square ? 101 : 102);
    Tally tally;
    for (int sample = 0; sample < samplesWanted(); ++sample) {
        Chain chain = houseOf(random, square);
        const ClosureReport before = closureReport(chain, Tolerance());
        std::uniform_int_distribution<std::size_t> anyRun(0, chain.runs.size() - 1);
        std::uniform_real_distribution<double> factor(1.1, 6.0);
        const std::size_t run = anyRun(random);
        Length& value = chain.runs[run].lengths[0].value;
        const Length truth = value;
        const Length error = scaled(before.tolerance, factor(random));
        value += sample % 2 == 0 && error + Length::inches(12) < value ? -error : error;
        // The tolerance grows with the perimeter, and the error is past it by more than that.
        const ClosureReport report = closureReport(chain, Tolerance());
        if (report.verdict != Verdict::LengthsOff)
            ++tally.missed;
        tally.count(report.blames, placeOfLength(report.blames, run, truth));
        for (const Blame& blame : report.blames)
            if (blame.residual > report.tolerance)
                ++tally.missed;
    }
    return tally;
}

Tally falsifyCorners(bool square)
{
    std::mt19937 random(square ? 201 : 202);
    Tally tally;
    for (int sample = 0; sample < samplesWanted(); ++sample) {
        Chain chain = houseOf(random, square);
        std::uniform_int_distribution<std::size_t> anyCorner(0, chain.corners.size() - 1);
        std::uniform_real_distribution<double> factor(1.1, 8.0);
        const std::size_t corner = anyCorner(random);
        const Angle truth = interiorAngles(chain).value()[corner];
        const double allowed = std::sqrt(static_cast<double>(chain.corners.size()));
        Angle error = Angle::degrees(allowed * factor(random));
        if (truth - error > Angle::degrees(2.0) && sample % 2 == 0)
            error = -error;
        if (truth + error > Angle::degrees(358.0))
            error = -error;
        chain.corners[corner] = InteriorAngle{truth + error, ""};
        const ClosureReport report = closureReport(chain, Tolerance());
        if (report.verdict != Verdict::AnglesOff)
            ++tally.missed;
        tally.count(report.blames, placeOfCorner(report.blames, corner, truth));
    }
    return tally;
}

} // namespace

class ClosureBlameTest : public QObject {
    Q_OBJECT
private slots:
    void oneLengthOfASquareHouse()
    {
        const Tally tally = falsifyLengths(true);
        tally.print("one length, square corners");
        QCOMPARE(tally.missed, 0);
    }
    void oneLengthOfAnyHouse()
    {
        const Tally tally = falsifyLengths(false);
        tally.print("one length, any corners");
        QCOMPARE(tally.missed, 0);
        // No runs are parallel but by chance.
        QVERIFY(tally.first * 10 > tally.samples * 9);
    }
    void oneCornerOfASquareHouse()
    {
        const Tally tally = falsifyCorners(true);
        tally.print("one corner, square corners");
        QCOMPARE(tally.missed, 0);
        QVERIFY(tally.first * 10 > tally.samples * 9);
    }
    void oneCornerOfAnyHouse()
    {
        const Tally tally = falsifyCorners(false);
        tally.print("one corner, any corners");
        QCOMPARE(tally.missed, 0);
        QVERIFY(tally.first * 10 > tally.samples * 9);
    }
    void aCornerOfTheWrongKind()
    {
        std::mt19937 random(301);
        Tally tally;
        for (int sample = 0; sample < samplesWanted(); ++sample) {
            Chain chain = houses::rectilinear(random, 2 + static_cast<std::size_t>(sample) % 7);
            std::uniform_int_distribution<std::size_t> anyCorner(0, chain.corners.size() - 1);
            const std::size_t corner = anyCorner(random);
            const Angle truth = interiorAngles(chain).value()[corner];
            if (truth < halfTurn)
                chain.corners[corner] = SquareInside{};
            else
                chain.corners[corner] = SquareOutside{};
            const ClosureReport report = closureReport(chain, Tolerance());
            tally.count(report.blames, placeOfCorner(report.blames, corner, truth));
        }
        tally.print("outside and inside exchanged at one corner");
        QCOMPARE(tally.missed, 0);
        QVERIFY(tally.first * 10 > tally.samples * 9);
    }
    void aCornerAndALengthTogether()
    {
        std::mt19937 random(401);
        int samples = 0, listed = 0, single = 0;
        for (int sample = 0; sample < samplesWanted() / 2; ++sample) {
            Chain chain = houses::rectilinear(random, 1 + static_cast<std::size_t>(sample) % 3);
            std::uniform_int_distribution<std::size_t> any(0, chain.runs.size() - 1);
            const std::size_t run = any(random), corner = any(random);
            const Length truth = chain.runs[run].lengths[0].value;
            const Angle angle = interiorAngles(chain).value()[corner];
            chain.runs[run].lengths[0].value += Length::feet(2);
            chain.corners[corner] = InteriorAngle{angle + Angle::degrees(12.0), ""};
            const ClosureReport report = closureReport(chain, Tolerance());
            ++samples;
            single += !report.blames.empty() && !(report.blames[0].corner && report.blames[0].length);
            for (const Blame& blame : report.blames)
                if (blame.length && blame.corner && blame.length->run == run &&
                    blame.corner->corner == corner &&
                    magnitude(blame.length->wouldBe - truth) <= Length::micrometres(1))
                    ++listed;
        }
        qInfo("a corner and a length: %d falsified, the pair listed %d, a single one found instead %d",
              samples, listed, single);
        QVERIFY((listed + single) * 10 > samples * 8);
    }
};

QTEST_APPLESS_MAIN(ClosureBlameTest)
#include "tst_closure_blame.moc"
