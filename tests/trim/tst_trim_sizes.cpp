// Guards: sizes of the shipped trims that a code or manual sets are the ones its text gives: the least length
// of a leg, laps, fixings.
#include "trim_library.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

const Template& trimOf(const std::string& id)
{
    static const std::map<std::string, Template> trims = trim_library::trims();
    return trims.at(id);
}

Length inches(double value)
{
    return nearestFromInches(value);
}

struct LegLimit {
    const char* trim;
    const char* leg;
    Length least;
};

} // namespace

class TrimSizesTest : public QObject {
    Q_OBJECT
private slots:
    void leastLegs()
    {
        // International Residential Code: R905.2.8.5 (inspect2code.com) 2 in up the deck; R905.2.8.3
        // (online.flipbuilder.com/mewf/mima, page 462) 4 in high and wide; R905.4.6 (98905.com/119564) valley
        // 8 in each way, rib 3/4 in high (R905.2.8.2 without a rib: lined 24 in wide), here with sides at 30°
        // from upright: 3/4 / cos 30° = 0.866 in, to a tenth of a millimetre. International Building Code
        // 1507.2.8.3 (Professional Roofing, June 2019): face 1-1/2 in. UFGS 07600
        // (ufgscriteriadocreport.tpub.com): 3.1.11 4 in under the roofing; 3.1.12 2 in into masonry, turned
        // up 1/4 in; 3.1.15 hooked 3/4 in. New Zealand code of practice, cover C1 (metalroofing.org.nz):
        // ridge 130 mm, barge 50 mm.
        const std::vector<LegLimit> limits{
            {"eave-drip-edge", "deck", inches(2)},
            {"eave-drip-edge-square-cut", "deck", inches(2)},
            {"rake-drip-edge", "deck", inches(2)},
            {"gutter-apron", "deck", inches(2)},
            {"eave-drip-edge", "face", inches(1.5)},
            {"eave-drip-edge-square-cut", "face", inches(1.5)},
            {"rake-drip-edge", "face", inches(1.5)},
            {"step-flashing", "wall", inches(4)},
            {"step-flashing", "roof", inches(4)},
            {"sidewall-flashing", "wall", inches(4)},
            {"sidewall-flashing", "roof", inches(4)},
            {"open-valley-with-centre-rib", "first_wing", inches(8)},
            {"open-valley-with-centre-rib", "second_wing", inches(8)},
            {"open-valley-with-centre-rib", "rib_up", Length::millimetres(22)},
            {"open-valley-with-centre-rib", "rib_down", Length::millimetres(22)},
            {"open-valley", "first_wing", inches(12)},
            {"open-valley", "second_wing", inches(12)},
            {"slope-change", "upper", inches(4)},
            {"counterflashing", "joint", inches(2)},
            {"counterflashing", "turn_up", inches(0.25)},
            {"gravel-edge", "kick", inches(0.75)},
            {"ridge-cap", "first_wing", Length::millimetres(130)},
            {"ridge-cap", "second_wing", Length::millimetres(130)},
            {"rake-trim", "top", inches(2)}};
        std::size_t ruled = 0;
        for (const auto& [id, trim] : trim_library::trims())
            for (const LegTemplate& leg : trim.legs)
                ruled += leg.rule.empty() ? 0 : 1;
        QCOMPARE(ruled, limits.size());
        for (const LegLimit& limit : limits) {
            const std::vector<LegTemplate>& legs = trimOf(limit.trim).legs;
            const auto leg = std::find_if(legs.begin(), legs.end(), [&limit](const LegTemplate& each) {
                return each.name == limit.leg;
            });
            QVERIFY(leg != legs.end() && !leg->rule.empty());
            QVERIFY2(leg->least == limit.least, (std::string(limit.trim) + " " + limit.leg).c_str());
        }
    }
    void measuresWithAText()
    {
        // Copper in Architecture Design Handbook, gravel stops: 3/4 in high. SMACNA, quoted in Snips 85054:
        // counterflashing covers 4 in. ZVSHK, quoted at baumetall.de: outer leg of a coping 50 mm on low
        // buildings. International Residential Code R905.4.6: rib 3/4 in, wings 8 in; R905.2.8.2: an open
        // valley is lined 24 in wide, the default.
        const auto least = [](const char* id, const char* name) {
            for (const MeasureDeclaration& measure : trimOf(id).measures)
                if (measure.name == name)
                    return measure.least;
            return Length();
        };
        QVERIFY(least("gravel-edge", "dam_height") == inches(0.75));
        QVERIFY(least("counterflashing", "cover") == inches(4));
        QVERIFY(least("coping", "face_height") == Length::millimetres(50));
        QVERIFY(least("coping", "roof_face_height") == Length::millimetres(50));
        QVERIFY(least("open-valley-with-centre-rib", "rib_height") == inches(0.75));
        QVERIFY(least("open-valley-with-centre-rib", "wing") == inches(8));
        QVERIFY(least("eave-drip-edge", "face_height") == inches(1.5));
        QVERIFY(trimOf("open-valley-with-centre-rib").measures[1].byDefault == inches(12));
    }
    void laps()
    {
        // IRC R905.2.8.5 2 in; CDA valleys 8 in, gravel stops and rake strips 3 in; UFGS 07600 3.1.6
        // unsoldered laps and 3.1.11 base flashing 3 in; SMACNA joints 4 in; New Zealand code of practice 100
        // mm sealed, here 4 in. Fascia cover and coping: common practice, no source.
        const std::map<std::string, double> laps{{"eave-drip-edge", 2},
                                                 {"eave-drip-edge-square-cut", 2},
                                                 {"rake-drip-edge", 2},
                                                 {"gutter-apron", 2},
                                                 {"open-valley-with-centre-rib", 8},
                                                 {"open-valley", 8},
                                                 {"gravel-edge", 3},
                                                 {"rake-trim", 3},
                                                 {"counterflashing", 3},
                                                 {"headwall-apron", 4},
                                                 {"sidewall-flashing", 4},
                                                 {"ridge-cap", 4},
                                                 {"hip-cap", 4},
                                                 {"slope-change", 4},
                                                 {"head-z", 3},
                                                 {"wall-base", 3},
                                                 {"sill-flashing", 3},
                                                 {"outside-corner", 3},
                                                 {"inside-corner", 3},
                                                 {"jamb-trim", 3},
                                                 {"step-flashing", 2},
                                                 {"fascia-cover", 1},
                                                 {"coping", 1}};
        const std::map<std::string, Template> trims = trim_library::trims();
        QCOMPARE(laps.size(), trims.size());
        for (const auto& [id, trim] : trims)
            QVERIFY2(trim.installation.lap == inches(laps.at(id)), id.c_str());
        // The 100 mm are for sealed laps.
        for (const char* id : {"ridge-cap", "hip-cap", "slope-change"})
            QVERIFY2(trimOf(id).installation.sealedLaps, id);
    }
    void fixings()
    {
        // IRC R905.2.8.5: drip edges fastened at 12 in at most. UFGS 07600 3.1.15: gravel stops at 3 in in
        // two rows; 3.1.4: cleats at 12 in at most, here along both edges.
        for (const char* id :
             {"eave-drip-edge", "eave-drip-edge-square-cut", "rake-drip-edge", "gutter-apron"})
            QVERIFY2(trimOf(id).installation.fastenerSpacing == inches(12), id);
        const Installation& gravel = trimOf("gravel-edge").installation;
        QVERIFY(gravel.fastenerSpacing == inches(3) && gravel.fastenerRows == 2);
        for (const char* id : {"coping", "open-valley-with-centre-rib", "open-valley"}) {
            const Installation& how = trimOf(id).installation;
            QVERIFY2(how.cleatSpacing == inches(12) && how.cleatRows == 2 && !how.fastenerSpacing, id);
        }
    }
};

QTEST_APPLESS_MAIN(TrimSizesTest)
#include "tst_trim_sizes.moc"
