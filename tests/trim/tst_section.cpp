// Guards: the folded section agrees with the flat it is folded from, hands and directions can be exchanged
// without changing the piece, and a profile that runs into itself is found.
#include "trim/section.h"

#include "random_profile.h"
#include "trim/girth.h"

#include <QtTest>

#include <cmath>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

constexpr Length thickness = Length::micrometres(600);

double apart(SectionPoint a, SectionPoint b)
{
    return std::hypot(inMillimetres(a.x - b.x), inMillimetres(a.y - b.y));
}

metal::Metal metalBentAboutItsMiddle()
{
    metal::Metal metal;
    metal.k = 0.5;
    return metal;
}

Length girthOf(const Profile& profile)
{
    metal::Metal metal;
    return flatPattern(profile, metal, {"", thickness, 0.0})->girth;
}

Profile boxOf(const std::vector<double>& inches, double turn)
{
    Profile profile;
    for (const double length : inches) {
        if (!profile.legs.empty())
            profile.bends.push_back({Angle::degrees(turn), thickness});
        profile.legs.push_back({"leg " + std::to_string(profile.legs.size() + 1), nearestFromInches(length)});
    }
    return profile;
}

/// Points every half thickness along the middle plane, all pairs: the smallest distance between points that
/// are over half a turn's length apart along it.
double smallestGap(const Section& section)
{
    const double step = inMillimetres(thickness) / 2.0;
    std::vector<std::pair<double, std::pair<double, double>>> samples;
    double reached = 0.0;
    for (std::size_t i = 0; i + 1 < section.middle.size(); ++i) {
        const double length = apart(section.middle[i], section.middle[i + 1]);
        const int parts = std::max(1, static_cast<int>(std::ceil(length / step)));
        for (int part = 0; part < parts; ++part) {
            const double share = static_cast<double>(part) / parts;
            const auto mix = [share](Length a, Length b) {
                return inMillimetres(a) + share * (inMillimetres(b) - inMillimetres(a));
            };
            samples.push_back({reached + share * length,
                               {mix(section.middle[i].x, section.middle[i + 1].x),
                                mix(section.middle[i].y, section.middle[i + 1].y)}});
        }
        reached += length;
    }
    double smallest = 1e9;
    const double local = M_PI / 2.0 * inMillimetres(thickness) * 1.02;
    for (std::size_t i = 0; i < samples.size(); ++i)
        for (std::size_t j = i + 1; j < samples.size(); ++j)
            if (samples[j].first - samples[i].first > local)
                smallest =
                    std::min(smallest, std::hypot(samples[i].second.first - samples[j].second.first,
                                                  samples[i].second.second - samples[j].second.second));
    return smallest;
}

} // namespace

class SectionTest : public QObject {
    Q_OBJECT
private slots:
    void anAngleLiesWhereItsMouldLineSays()
    {
        Profile profile = boxOf({2.0, 1.0}, 90.0);
        profile.startX = Length::inches(5);
        const Section section = *sectionOf(profile, thickness);
        QCOMPARE(section.mouldLine.size(), std::size_t{3});
        QVERIFY(section.mouldLine[0] == (SectionPoint{Length::inches(5), Length()}));
        QVERIFY(apart(section.mouldLine[1], {Length::inches(7), Length()}) < 1e-5);
        QVERIFY(apart(section.mouldLine[2], {Length::inches(7), Length::inches(1)}) < 1e-5);
        // Turned left, so the outside is the right face and the sheet lies to the left of the mould line.
        QVERIFY(section.rightFace.front() == section.mouldLine[0]);
        QVERIFY(section.leftFace.front() == (SectionPoint{Length::inches(5), thickness}));
        QVERIFY(!section.startHemEdge && !section.endHemEdge);
    }

    void outsideLengthsAreKeptThroughBendsBothWays()
    {
        std::mt19937 random(7);
        int legs = 0;
        for (int round = 0; round < 300; ++round) {
            const Profile profile = random_profile::profile(random);
            const auto section = sectionOf(profile, thickness);
            if (!section)
                continue;
            for (const SectionFlat& flat : section->flats) {
                if (flat.kind != SectionFlat::Kind::Leg)
                    continue;
                const SectionPoint from = section->mouldLine[flat.leg], to = section->mouldLine[flat.leg + 1];
                const double along = inMillimetres(to.x - from.x) * std::cos(flat.direction.inRadians()) +
                                     inMillimetres(to.y - from.y) * std::sin(flat.direction.inRadians());
                QVERIFY(std::abs(along - inMillimetres(profile.legs[flat.leg].length)) < 1e-4);
                ++legs;
            }
        }
        qInfo("%d legs", legs);
        QVERIFY(legs > 500);
    }

    void foldedSectionIsAsLongAsTheFlat()
    {
        // Metal bent about its middle plane (K = 0.5) keeps the length of that plane.
        std::mt19937 random(11);
        int profiles = 0;
        for (int round = 0; round < 200; ++round) {
            const Profile profile = random_profile::profile(random);
            const auto section = sectionOf(profile, thickness, Angle::degrees(0.5));
            const auto flat = flatPattern(profile, metalBentAboutItsMiddle(), {"", thickness, 0.0});
            QCOMPARE(section.ok(), flat.ok());
            if (!section)
                continue;
            double length = 0.0;
            for (std::size_t i = 0; i + 1 < section->middle.size(); ++i)
                length += apart(section->middle[i], section->middle[i + 1]);
            QVERIFY(std::abs(length - inMillimetres(flat->girth)) < 0.001);
            ++profiles;
        }
        qInfo("%d profiles", profiles);
        QVERIFY(profiles > 100);
    }

    void flatLinesIncreaseAndGirthHasBounds()
    {
        std::mt19937 random(13);
        int profiles = 0;
        const metal::Metal metal;
        for (int round = 0; round < 500; ++round) {
            const Profile profile = random_profile::profile(random);
            const auto flat = flatPattern(profile, metal, {"", thickness, 0.0});
            if (!flat)
                continue;
            Length most, last;
            for (const Leg& leg : profile.legs)
                most += leg.length;
            for (const std::optional<Hem>& hem : {profile.startHem, profile.endHem})
                if (hem) // an open hem's arc is longer than what its flat's outside length allows for it
                    most += hem->flat + scaled(hem->insideRadius, M_PI - 2.0);
            QVERIFY(flat->girth > Length() && flat->girth <= most);
            for (const BendLine& line : flat->lines) {
                QVERIFY(line.position > last);
                last = line.position;
            }
            QVERIFY(last < flat->girth);
            ++profiles;
        }
        qInfo("%d profiles", profiles);
        QVERIFY(profiles > 250);
    }

    void handAndDirectionLeaveThePieceAlone()
    {
        std::mt19937 random(17);
        int profiles = 0;
        for (int round = 0; round < 300; ++round) {
            const Profile profile = random_profile::profile(random);
            if (!sectionOf(profile, thickness))
                continue;
            const Profile mirror = mirrored(profile), back = reversed(profile);
            QVERIFY(girthOf(mirror) == girthOf(profile));
            QVERIFY(girthOf(back) == girthOf(profile));
            const auto same = [](const Profile& a, const Profile& b) {
                return a.legs == b.legs && a.bends == b.bends && a.startHem == b.startHem &&
                       a.endHem == b.endHem && a.colourFace == b.colourFace &&
                       magnitude(a.firstDirection - b.firstDirection) < Angle::radians(1e-12) &&
                       apart({a.startX, a.startY}, {b.startX, b.startY}) < 1e-4;
            };
            QVERIFY(same(mirrored(mirror), profile));
            QVERIFY(same(reversed(back), profile));
            QVERIFY(!same(mirror, profile));
            const std::vector<SectionPoint> there = idealMouldLine(profile), again = idealMouldLine(back);
            for (std::size_t i = 0; i < there.size(); ++i)
                QVERIFY(apart(there[i], again[there.size() - 1 - i]) < 1e-4);
            QVERIFY(findCrossing(mirror, thickness)->has_value() ==
                    findCrossing(profile, thickness)->has_value());
            ++profiles;
        }
        qInfo("%d profiles", profiles);
        QVERIFY(profiles > 150);
    }

    void aBoxMayCloseButNotCross()
    {
        QVERIFY(!findCrossing(boxOf({2.0, 1.0, 1.5, 0.5}, 90.0), thickness)->has_value());
        const auto crossing = *findCrossing(boxOf({2.0, 1.0, 1.5, 1.5}, 90.0), thickness);
        QVERIFY(crossing.has_value());
        QCOMPARE(crossing->first, std::string("leg 1"));
        QCOMPARE(crossing->second, std::string("leg 4"));
        // Leg 4 may come down to the upper face of leg 1, not into it: T = 0.0236 in.
        QVERIFY(!findCrossing(boxOf({2.0, 1.0, 1.5, 0.96}, 90.0), thickness)->has_value());
        QVERIFY(findCrossing(boxOf({2.0, 1.0, 1.5, 0.99}, 90.0), thickness)->has_value());
    }

    void aHemMayLieOnItsLegButNotThroughTheNext()
    {
        Profile profile = boxOf({2.0, 0.5}, 90.0);
        profile.endHem = Hem{HemKind::Closed, nearestFromInches(0.4), Side::Left, Length()};
        QVERIFY(!findCrossing(profile, thickness)->has_value());
        profile.endHem->flat = nearestFromInches(0.8);
        const auto crossing = *findCrossing(profile, thickness);
        QVERIFY(crossing.has_value());
        QCOMPARE(crossing->second, std::string("end hem"));
        profile.endHem->side = Side::Right;
        QVERIFY(!findCrossing(profile, thickness)->has_value());
    }

    void crossingsAgreeWithBruteForce()
    {
        std::mt19937 random(19);
        int crossing = 0, clear = 0;
        for (int round = 0; round < 50; ++round) {
            Profile profile = random_profile::profile(random);
            for (Leg& leg : profile.legs)
                leg.length = leg.length / 2 + Length::millimetres(6);
            const auto found = findCrossing(profile, thickness);
            if (!found)
                continue;
            const double gap = smallestGap(*sectionOf(profile, thickness)) / inMillimetres(thickness);
            // Between these the two samplings may differ.
            if (gap < 0.6) {
                QVERIFY(found->has_value());
                ++crossing;
            } else if (gap > 1.2) {
                QVERIFY(!found->has_value());
                ++clear;
            }
        }
        qInfo("%d crossing, %d clear", crossing, clear);
        QVERIFY(crossing > 5 && clear > 8);
    }

    void includedAngleOfABend()
    {
        QVERIFY(magnitude(includedAngle({Angle::degrees(-63.0), Length()}) - Angle::degrees(117.0)) <
                Angle::degrees(1e-9));
    }
};

QTEST_APPLESS_MAIN(SectionTest)
#include "tst_section.moc"
