// Guards: mitred ends of the blank meet in one plane on site, long point and short point where they belong.
#include "trim/end_cut.h"

#include "random_profile.h"
#include "trim/girth.h"

#include <QtTest>

#include <cmath>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

bool near(Length actual, double millimetres)
{
    return std::abs(inMillimetres(actual) - millimetres) < 1e-4;
}

/// 6 in 12 eave: deck flange 50 mm, plumb face 40 mm, kick 10 mm at 35°, closed hem 8 mm underneath.
Profile drip()
{
    Profile profile;
    const Angle slope = Angle::radians(std::atan(0.5));
    profile.legs = {{"deck", Length::millimetres(50)},
                    {"face", Length::millimetres(40)},
                    {"kick", Length::millimetres(10)}};
    profile.bends = {{slope - quarterTurn, Length::micrometres(600)},
                     {Angle::degrees(35.0), Length::micrometres(600)}};
    profile.endHem = Hem{HemKind::Closed, Length::millimetres(8), Side::Right, Length()};
    profile.firstDirection = -slope;
    profile.startX = nearestFromMillimetres(-50.0 * std::cos(slope.inRadians()));
    return profile;
}

} // namespace

class EndCutTest : public QObject {
    Q_OBJECT
private slots:
    void squareCornersAddWhatStandsOut()
    {
        const double kick = 10.0 * std::sin(35.0 * M_PI / 180.0);
        const double hem = kick - 8.0 * std::sin(35.0 * M_PI / 180.0);
        const double deck = -50.0 * 2.0 / std::sqrt(5.0);
        const EndCut outside = *mitreCut(drip(), quarterTurn);
        // Start edge, deck-face bend, face-kick bend, hem edge, free edge of the hem.
        QCOMPARE(outside.reach.size(), std::size_t{5});
        QVERIFY(near(outside.reach[0], deck));
        QVERIFY(near(outside.reach[1], 0.0));
        QVERIFY(near(outside.reach[2], 0.0));
        QVERIFY(near(outside.reach[3], kick));
        QVERIFY(near(outside.reach[4], hem));
        QVERIFY(outside.longPoint() == outside.reach[3] && outside.shortPoint() == outside.reach[0]);
        const EndCut inside = *mitreCut(drip(), -quarterTurn);
        for (std::size_t i = 0; i < 5; ++i)
            QVERIFY(inside.reach[i] == -outside.reach[i]);
        QVERIFY(inside.longPoint() == -outside.shortPoint());
    }

    void bothRunsOfACornerMeetOnItsMitre()
    {
        // In plan the first run ends in the corner heading east, the second leaves it turned by the corner's
        // turn; outside is to the right. Lines x outside each of them meet at the far end of the reach of
        // both.
        std::mt19937 random(23);
        int corners = 0;
        for (int round = 0; round < 200; ++round) {
            const Profile profile = random_profile::profile(random);
            const double turn = random_profile::between(random, -150.0, 150.0) * M_PI / 180.0;
            const EndCut cut = *mitreCut(profile, Angle::radians(turn));
            const std::size_t hem = profile.startHem ? 1 : 0;
            const double out = inMillimetres(profile.startX);
            const double reach = inMillimetres(cut.reach[hem]);
            const double firstEast = reach, firstNorth = -out;
            const double secondEast = -reach * std::cos(turn) + out * std::sin(turn);
            const double secondNorth = -reach * std::sin(turn) - out * std::cos(turn);
            QVERIFY(std::abs(firstEast - secondEast) < 1e-3 && std::abs(firstNorth - secondNorth) < 1e-3);
            ++corners;
        }
        QCOMPARE(corners, 200);
    }

    void oneReachForEachLineOfTheFlat()
    {
        std::mt19937 random(29);
        int profiles = 0;
        for (int round = 0; round < 300; ++round) {
            const Profile profile = random_profile::profile(random);
            const auto flat = flatPattern(profile, metal::Metal(), {"", Length::micrometres(600), 0.0});
            if (!flat)
                continue;
            const Angle turn = Angle::degrees(random_profile::between(random, -160.0, 160.0));
            const EndCut cut = *mitreCut(profile, turn), opposite = *mitreCut(profile, -turn);
            const EndCut none = *mitreCut(profile, Angle());
            QCOMPARE(cut.reach.size(), flat->lines.size() + 2);
            for (std::size_t i = 0; i < cut.reach.size(); ++i)
                QVERIFY(cut.reach[i] == -opposite.reach[i]);
            for (const Length straight : none.reach)
                QVERIFY(straight == Length());
            ++profiles;
        }
        QVERIFY(profiles > 150);
    }

    void refusedTurnsAndKindsOfRun()
    {
        QVERIFY(!mitreCut(drip(), Angle::degrees(171.0)).ok());
        QVERIFY(!mitreCut(drip(), Angle::radians(std::nan(""))).ok());
        Profile broken = drip();
        broken.bends.clear();
        QVERIFY(!mitreCut(broken, quarterTurn).ok());
        QVERIFY(mitresAtCorners(site::RunKind::Eave));
        QVERIFY(!mitresAtCorners(site::RunKind::OutsideCorner));
        QVERIFY(!mitresAtCorners(site::RunKind::Rake));
    }
};

QTEST_APPLESS_MAIN(EndCutTest)
#include "tst_end_cut.moc"
