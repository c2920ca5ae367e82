// Guards: the picture of a profile is true to scale, shows every leg, angle, hem and the coloured face, and
// no label lies over a line, another label or outside the page, for made-up profiles of every shape.
#include "drawing/profile_picture.h"

#include "drawing/section.h"
#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

trim::Profile profileOf(const std::string& name, const std::vector<Length>& legs,
                        const std::vector<double>& turns, double firstDirection)
{
    trim::Profile profile;
    profile.trim = "free";
    profile.name = name;
    for (std::size_t i = 0; i < legs.size(); ++i)
        profile.legs.push_back({"leg " + std::to_string(i + 1), legs[i]});
    for (const double turn : turns)
        profile.bends.push_back({Angle::degrees(turn), Length::thousandths(20)});
    profile.firstDirection = Angle::degrees(firstDirection);
    return profile;
}

Length sixteenths(std::int64_t count)
{
    return Length::sixtyFourths(4 * count);
}

trim::Profile dripEdge(double slopeDegrees)
{
    trim::Profile profile = profileOf("Eave drip edge, " + write(Angle::degrees(slopeDegrees)) + " slope",
                                      {sixteenths(64), sixteenths(36), sixteenths(8)},
                                      {-(90.0 - slopeDegrees), 35.0}, -slopeDegrees);
    profile.endHem = trim::Hem{trim::HemKind::Closed, sixteenths(8), trim::Side::Right, Length()};
    return profile;
}

trim::Profile coping()
{
    trim::Profile profile =
        profileOf("Coping", {sixteenths(10), sixteenths(48), sixteenths(160), sixteenths(48), sixteenths(10)},
                  {35.0, -90.0, -90.0, 35.0}, 55.0);
    profile.startHem = trim::Hem{trim::HemKind::Closed, sixteenths(8), trim::Side::Right, Length()};
    profile.endHem = trim::Hem{trim::HemKind::Open, sixteenths(8), trim::Side::Right, sixteenths(1)};
    return profile;
}

trim::Profile valley()
{
    trim::Profile profile = profileOf("Open valley with centre rib",
                                      {sixteenths(176), sixteenths(16), sixteenths(16), sixteenths(176)},
                                      {60.0, -100.0, 60.0}, -20.0);
    profile.startHem = trim::Hem{trim::HemKind::Teardrop, sixteenths(10), trim::Side::Left, sixteenths(2)};
    profile.endHem = trim::Hem{trim::HemKind::Teardrop, sixteenths(10), trim::Side::Left, sixteenths(2)};
    return profile;
}

ProfilePicture pictureOf(Colour colour, const std::string& name)
{
    ProfilePicture picture;
    picture.thickness = Length::thousandths(18);
    picture.metal = "Galvanised steel, 26 ga";
    picture.colour = colour;
    picture.colourName = name;
    return picture;
}

constexpr Colour slateBlue{70, 92, 118};
constexpr Colour barnRed{134, 38, 34};
constexpr Colour bone{226, 218, 198};

double lengthOf(const Segment& segment)
{
    return norm(segment.to - segment.from);
}

Rectangle sheetOn(const DisplayList& list)
{
    for (const Shape& shape : list.shapes)
        if (const auto* path = std::get_if<Path>(&shape); path && path->role == Role::Sheet && path->closed)
            return bounds(path->points);
    return {};
}

/// The path of a random profile stays away from itself: a section that crosses itself cannot be folded.
bool crossesItself(const Section& section)
{
    for (std::size_t i = 0; i < section.legs.size(); ++i)
        for (std::size_t k = i + 2; k < section.legs.size(); ++k)
            if (intersect(section.legs[i].measured, section.legs[k].measured))
                return true;
    return false;
}

} // namespace

class TestProfilePicture : public QObject {
    Q_OBJECT

private slots:
    void knownShapesHaveNoFaults_data()
    {
        QTest::addColumn<int>("which");
        const char* names[] = {"drip-flat", "drip-6-in-12", "drip-18-in-12", "coping", "valley"};
        for (int i = 0; i < 5; ++i)
            QTest::newRow(names[i]) << i;
    }

    void knownShapesHaveNoFaults()
    {
        QFETCH(int, which);
        const trim::Profile profile = which == 0   ? dripEdge(0.0)
                                      : which == 1 ? dripEdge(26.565)
                                      : which == 2 ? dripEdge(56.31)
                                      : which == 3 ? coping()
                                                   : valley();
        for (const bool fold : {true, false}) {
            ProfilePicture picture = pictureOf(which == 3   ? barnRed
                                               : which == 4 ? bone
                                                            : slateBlue,
                                               "Slate blue");
            picture.angles = fold ? AngleShown::Fold : AngleShown::Included;
            picture.girth = sixteenths(130);
            const DisplayList list = profilePicture(profile, picture);
            keepPicture(list,
                        QString("profile-%1-%2").arg(QTest::currentDataTag(), fold ? "fold" : "included"));
            QCOMPARE(report(faultsOf(list)), QString());
            QCOMPARE(xmlError(toSvg(list)), QString());
            const std::string texts = textsOf(list);
            for (const trim::Leg& leg : profile.legs)
                QVERIFY2(texts.find(write(leg.length, picture.style)) != std::string::npos, leg.name.c_str());
            for (const trim::Bend& bend : profile.bends) {
                const Angle shown = fold ? magnitude(bend.turn) : halfTurn - magnitude(bend.turn);
                QVERIFY(texts.find(write(shown)) != std::string::npos);
            }
            QVERIFY(texts.find("colour\ncolour") == std::string::npos &&
                    texts.find("colour: Slate blue") != std::string::npos);
            QVERIFY(texts.find("No room") == std::string::npos);
        }
    }

    void withoutItsFrameTheSectionIsLarger()
    {
        for (const trim::Profile& profile : {dripEdge(0.0), dripEdge(26.565), coping(), valley()}) {
            ProfilePicture picture = pictureOf(slateBlue, "Slate blue");
            picture.width = Length::millimetres(110);
            picture.height = Length::millimetres(80);
            const Rectangle framed = sheetOn(profilePicture(profile, picture));
            picture.framed = false;
            const DisplayList list = profilePicture(profile, picture);
            keepPicture(list, "bare-" + QString::fromStdString(profile.name));
            QCOMPARE(report(faultsOf(list)), QString());
            const Rectangle bare = sheetOn(list);
            QVERIFY(std::max(bare.width() / framed.width(), bare.height() / framed.height()) > 1.2);
            const std::string texts = textsOf(list);
            for (const trim::Leg& leg : profile.legs)
                QVERIFY2(texts.find(write(leg.length, picture.style)) != std::string::npos, leg.name.c_str());
            for (const char* framing : {"Slate blue", "scale", "Outside lengths", "No room"})
                QVERIFY2(texts.find(framing) == std::string::npos, framing);
        }
    }

    void legsAreTrueToScale()
    {
        trim::Profile profile =
            profileOf("Channel", {Length::millimetres(40), Length::millimetres(100), Length::millimetres(25)},
                      {-90.0, 90.0}, 0.0);
        SectionStyle style;
        style.thickness = 0.5;
        const Section section = drawSection(profile, style);
        QVERIFY(section.trueToScale);
        QCOMPARE(lengthOf(section.legs[0].measured), 40.0);
        QCOMPARE(lengthOf(section.legs[1].measured), 100.0);
        QCOMPARE(lengthOf(section.legs[2].measured), 25.0);

        // Extreme points of a channel's outline: its outside height is the base leg.
        trim::Profile channel =
            profileOf("U", {Length::millimetres(30), Length::millimetres(100), Length::millimetres(30)},
                      {90.0, 90.0}, -90.0);
        const Rectangle reach = bounds(drawSection(channel, style).sheet);
        QVERIFY(std::abs(reach.width() - 100.0) < 1e-9);
        QVERIFY(std::abs(reach.height() - 30.0) < 1e-9);
    }

    void aDimensionLineOfAHundredMillimetresIsAHundredMillimetres()
    {
        const trim::Profile profile =
            profileOf("Flat bar", {Length::millimetres(100), Length::millimetres(20)}, {-90.0}, 0.0);
        ProfilePicture picture = pictureOf(slateBlue, "");
        picture.scale = 1.0;
        picture.style.unit = LengthUnit::Millimetres;
        const DisplayList list = profilePicture(profile, picture);
        QCOMPARE(report(faultsOf(list)), QString());
        int found = 0;
        for (const Shape& shape : list.shapes)
            if (const auto* path = std::get_if<Path>(&shape); path && path->role == Role::Dimension)
                if (std::abs(norm(path->points[1] - path->points[0]) - 100.0) < 1e-6)
                    ++found;
        QCOMPARE(found, 1);
        QVERIFY(toSvg(list).find("width=\"150mm\"") != std::string::npos);
        QVERIFY(toSvg(list).find("viewBox=\"0 0 150 115\"") != std::string::npos);
    }

    void theBandLiesOnTheColouredSide()
    {
        trim::Profile profile = profileOf("Plate", {Length::millimetres(100)}, {}, 0.0);
        SectionStyle style;
        style.thickness = 0.5;
        profile.colourFace = trim::Side::Left; // path to the right, y up: left is above
        QVERIFY(bounds(drawSection(profile, style).colour).bottom > 0.0);
        QVERIFY(bounds(drawSection(profile, style).colour).top >=
                bounds(drawSection(profile, style).sheet).bottom);
        profile.colourFace = trim::Side::Right;
        QVERIFY(bounds(drawSection(profile, style).colour).bottom <=
                bounds(drawSection(profile, style).sheet).top);
    }

    void randomProfilesHaveNoFaults()
    {
        std::mt19937 random(20240611);
        const auto pick = [&](int least, int most) {
            return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
        };
        int drawn = 0, crossing = 0, leftOut = 0;
        const int wanted = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 2000 : 20;
        while (drawn < wanted) {
            std::vector<Length> legs;
            std::vector<double> turns;
            const int count = pick(1, 7);
            for (int i = 0; i < count; ++i) {
                legs.push_back(sixteenths(pick(6, pick(12, 200))));
                if (i > 0)
                    turns.push_back(pick(0, 1) == 0 ? pick(5, 135) : -pick(5, 135));
            }
            trim::Profile profile = profileOf("Random " + std::to_string(drawn), legs, turns, pick(0, 359));
            profile.colourFace = pick(0, 1) == 0 ? trim::Side::Left : trim::Side::Right;
            const auto hem = [&]() -> std::optional<trim::Hem> {
                if (pick(0, 1) == 0)
                    return std::nullopt;
                const trim::HemKind kinds[] = {trim::HemKind::Closed, trim::HemKind::Open,
                                               trim::HemKind::Teardrop};
                const int kind = pick(0, 2);
                return trim::Hem{kinds[kind], sixteenths(pick(5, 12)),
                                 pick(0, 1) == 0 ? trim::Side::Left : trim::Side::Right,
                                 kind == 0 ? Length() : sixteenths(1)};
            };
            profile.startHem = hem();
            profile.endHem = hem();
            SectionStyle style;
            style.thickness = 0.5;
            if (crossesItself(drawSection(profile, style))) {
                ++crossing;
                continue;
            }
            ProfilePicture picture = pictureOf(slateBlue, "Slate blue");
            picture.angles = pick(0, 1) == 0 ? AngleShown::Fold : AngleShown::Included;
            const DisplayList list = profilePicture(profile, picture);
            if (drawn < 12)
                keepPicture(list, QString("random-%1").arg(drawn));
            const QString faults = report(faultsOf(list));
            if (!faults.isEmpty())
                keepPicture(list, "random-fault");
            QVERIFY2(faults.isEmpty(), qPrintable(QString::number(drawn) + ": " + faults));
            leftOut += textsOf(list).find("No room") != std::string::npos ? 1 : 0;
            picture.framed = false;
            QCOMPARE(report(faultsOf(profilePicture(profile, picture))), QString());
            ++drawn;
        }
        qInfo("%d profiles drawn, %d that cross themselves passed over, %d with a label left out", drawn,
              crossing, leftOut);
        QCOMPARE(leftOut, 0);
    }
};

QTEST_APPLESS_MAIN(TestProfilePicture)
#include "tst_profile_picture.moc"
