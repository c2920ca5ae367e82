// Guards: every shipped trim, at every common slope, in either way of writing angles, makes a picture whose
// labels keep off the lines and name every leg, bend and hem.
#include "drawing/profile_picture.h"

#include "measure/slope.h"
#include "overlaps.h"
#include "pictures.h"
#include "trim/trim_library.h"

#include <QtTest>

#include <cmath>
#include <numbers>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

/// What a run at this slope with square corners supplies; measures without a default a quarter up their
/// range.
trim::Site siteOf(const trim::Template& trim, Slope slope)
{
    using trim::AngleMeasure;
    const bool hip = trim.suits.front() == site::RunKind::Hip;
    const bool inside = trim.suits.front() == site::RunKind::InsideCorner;
    const bool change = trim.suits.front() == site::RunKind::SlopeChange;
    const Angle other = change ? Slope::twelfths(slope.ratio() < 0.5 ? 12 : 3).angle() : slope.angle();
    const double flat = std::cos(slope.angle().inRadians());
    // Two equal planes over a square corner: cos(crease) = cos² θ.
    const Angle crease = Angle::radians(std::acos(flat * flat));
    trim::Site made;
    made.angles[AngleMeasure::Slope] = slope.angle();
    made.angles[AngleMeasure::OtherSlope] = other;
    made.angles[AngleMeasure::CreaseTurn] = hip ? -crease : crease;
    made.angles[AngleMeasure::WallTurn] = inside ? -quarterTurn : quarterTurn;
    for (const trim::MeasureDeclaration& measure : trim.measures)
        if (!measure.byDefault)
            made.measures[measure.name] = measure.least + (measure.most - measure.least) / 4;
    return made;
}

/// What is wrong with the picture of a profile; empty if nothing.
std::string faultsOfPicture(const trim::Profile& profile, const ProfilePicture& picture,
                            const DisplayList& list)
{
    std::string wrong;
    for (const std::string& fault : faultsOf(list))
        wrong += fault + "; ";
    const std::string texts = "\n" + textsOf(list);
    const auto need = [&](const std::string& text) {
        if (texts.find(text) == std::string::npos)
            wrong += "no " + text + "; ";
    };
    for (const trim::Leg& leg : profile.legs)
        need("\n" + write(leg.length, picture.style) + "\n");
    for (const trim::Bend& bend : profile.bends) {
        const Angle fold = magnitude(bend.turn);
        need("\n" + write(picture.angles == AngleShown::Fold ? fold : halfTurn - fold) + "\n");
    }
    for (const auto& hem : {profile.startHem, profile.endHem})
        if (hem)
            need("\n" + write(hem->flat, picture.style) + " ");
    need("\ncolour\n");
    if (texts.find("No room") != std::string::npos)
        wrong += "a label left out; ";
    return wrong + xmlError(toSvg(list)).toStdString();
}

} // namespace

class TestLibraryPictures : public QObject {
    Q_OBJECT

private slots:
    void everyTrimAtEverySlope()
    {
        int drawn = 0, outOfLimits = 0;
        std::string wrong;
        const std::vector<std::int64_t> slopes = qEnvironmentVariableIsSet("LAPWRIGHT_LONG")
                                                     ? std::vector<std::int64_t>{1, 2, 4, 6, 9, 12, 18, 24}
                                                     : std::vector<std::int64_t>{2, 6, 18};
        for (const auto& [id, trim] : trim_library::trims()) {
            int ofTrim = 0;
            for (const std::int64_t rise : slopes) {
                const trim::Resolution made = trim::resolve(trim, siteOf(trim, Slope::twelfths(rise)));
                if (!made.profile) {
                    ++outOfLimits;
                    continue;
                }
                for (const AngleShown angles : {AngleShown::Fold, AngleShown::Included}) {
                    if (slopes.size() < 4 && (rise == 6) == (angles == AngleShown::Fold))
                        continue;
                    ProfilePicture picture;
                    picture.thickness = Length::thousandths(18);
                    picture.metal = "Galvanised steel, 26 ga";
                    picture.colour = {70, 92, 118};
                    picture.colourName = "Slate blue";
                    picture.angles = angles;
                    const DisplayList list = profilePicture(*made.profile, picture);
                    const bool fold = angles == AngleShown::Fold;
                    keepPicture(
                        list, QString("trim-%1-%2-%3").arg(id.c_str()).arg(rise).arg(fold ? "fold" : "incl"));
                    const std::string faults = faultsOfPicture(*made.profile, picture, list);
                    if (!faults.empty())
                        wrong += id + " at " + std::to_string(rise) + " in 12: " + faults + "\n";
                    ++drawn;
                    ++ofTrim;
                }
            }
            QVERIFY2(ofTrim > 0, id.c_str());
        }
        qInfo("%d pictures, %d slopes outside a trim's limits", drawn, outOfLimits);
        QVERIFY2(wrong.empty(), wrong.c_str());
    }
};

QTEST_APPLESS_MAIN(TestLibraryPictures)
#include "tst_library_pictures.moc"
