// Guards: a profile typed leg by leg becomes what was typed, or says which leg or turn is wrong.
#include "trim/free_profile.h"

#include "measure/writing.h"
#include "trim/girth.h"

#include <QtTest>

#include <cmath>

using namespace lapwright;
using namespace lapwright::trim;

namespace {

const metal::Sheet sheet{"24 ga", Length::thousandths(24), 0.0};

FreeProfile channel()
{
    FreeProfile typed;
    typed.name = "Channel";
    typed.legs = {{"", Length::inches(1)}, {"base", Length::inches(2)}, {"", Length::inches(1)}};
    typed.turns = {quarterTurn, quarterTurn};
    return typed;
}

bool onlyFinding(const Resolution& result, const std::string& code, const std::string& place)
{
    return !result.profile && result.findings.size() == 1 && result.findings[0].code == code &&
           result.findings[0].place == place && result.findings[0].weight == rules::Weight::Blocks &&
           say(result.findings[0].statement, {}).find('{') == std::string::npos;
}

} // namespace

class FreeProfileTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsTypedComesOut()
    {
        FreeProfile typed = channel();
        typed.endHem = HemTemplate{HemKind::Open, Length::thousandths(400), Side::Right, std::nullopt};
        const Resolution result = resolveFree(typed, metal::Metal(), sheet);
        QVERIFY(result.profile && result.findings.empty());
        QCOMPARE(result.profile->trim, std::string("free"));
        QCOMPARE(result.profile->legs[0].name, std::string("leg 1"));
        QVERIFY(result.profile->legs[1] == (Leg{"base", Length::inches(2)}));
        QVERIFY(result.profile->bends[0] == (Bend{quarterTurn, Length::thousandths(24)}));
        QVERIFY(result.profile->endHem->insideRadius == Length::thousandths(24));
        QCOMPARE(result.legDerivations.size(), std::size_t{3});
        QCOMPARE(result.bendDerivations.size(), std::size_t{2});
        QVERIFY(flatPattern(*result.profile, metal::Metal(), sheet).ok());
    }

    void wrongCountsAreRefused()
    {
        QVERIFY(onlyFinding(resolveFree({}, metal::Metal(), sheet), "trim.free.legs", "legs"));
        FreeProfile typed = channel();
        typed.turns.pop_back();
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.free.legs", "turns"));
        typed = {};
        for (int leg = 0; leg < 41; ++leg)
            typed.legs.push_back({"", Length::inches(1)});
        typed.turns.assign(40, Angle::degrees(10.0));
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.free.legs", "legs"));
        typed.legs.pop_back();
        typed.turns.assign(39, Angle::degrees(5.0));
        QVERIFY(resolveFree(typed, metal::Metal(), sheet).profile.has_value());
    }

    void wrongLegsAreRefused()
    {
        FreeProfile typed = channel();
        typed.legs[1].length = Length();
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.leg.short", "base"));
        typed.legs[1].length = Length::thousandths(71); // 2 T + R = 0.072 in
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.leg.short", "base"));
        // Long enough for a folder, yet its two bends of outside setback 0.048 in take up all of it.
        typed.legs[1].length = Length::thousandths(95);
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.leg.unfoldable", "base"));
        typed.legs[1].length = Length::millimetres(200'000);
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.leg.unfoldable", "base"));
    }

    void wrongTurnsAreRefused()
    {
        FreeProfile typed = channel();
        for (const Angle turn : {halfTurn, -halfTurn, Angle::degrees(200.0), Angle::radians(std::nan(""))}) {
            typed.turns[1] = turn;
            QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.angle.range",
                                "bend after base"));
        }
        typed.turns[1] = Angle::degrees(0.5);
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.bend.flat", "bend after base"));
    }

    void crossingItselfIsRefused()
    {
        FreeProfile typed = channel();
        typed.legs.push_back({"lid", Length::inches(3)});
        typed.legs[0].length = Length::inches(2);
        typed.turns.push_back(quarterTurn);
        QVERIFY(onlyFinding(resolveFree(typed, metal::Metal(), sheet), "trim.section.crossing", "lid"));
    }
};

QTEST_APPLESS_MAIN(FreeProfileTest)
#include "tst_free_profile.moc"
