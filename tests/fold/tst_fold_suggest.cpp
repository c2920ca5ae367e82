// Guards: what a refusal says would help has been planned: done as it says, the profile can be folded.
#include "fold_cases.h"

#include <QtTest>

using namespace foldcases;
using fold::FoldPlan;
using fold::Obstacle;
using fold::Refusal;
using trim::HemKind;
using trim::Side;

namespace {

const Refusal& refusalIn(const Result<fold::Outcome>& outcome)
{
    if (!outcome.ok() || !std::holds_alternative<Refusal>(*outcome))
        throw std::runtime_error(tell(outcome));
    return std::get<Refusal>(*outcome);
}

std::string suggestionsOf(const Refusal& refusal)
{
    std::string all;
    for (const Phrase& suggestion : refusal.suggestions)
        all += say(suggestion, {LengthUnit::Millimetres, 16, 1}) + "\n";
    return all;
}

bool says(const Refusal& refusal, const char* words)
{
    return suggestionsOf(refusal).find(words) != std::string::npos;
}

} // namespace

class FoldSuggestTest : public QObject {
    Q_OBJECT
private slots:
    void aClosedBoxIsSplit()
    {
        const trim::Profile box = profile({{20, 90}, {80, 90}, {60, 90}, {80, 90}, {20, 0}});
        const auto outcome = plan(box, machine("long-folder-up"));
        const Refusal& refusal = refusalIn(outcome);
        QVERIFY2(says(refusal, "Split in leg 3 into two pieces that lap by 25.4 mm"),
                 suggestionsOf(refusal).c_str());
        const trim::Profile half = profile({{20, 90}, {80, 90}, {30 + 12.7, 0}});
        QVERIFY(std::holds_alternative<FoldPlan>(*plan(half, machine("long-folder-up"))));
    }

    void moreBendsThanCanBeOrderedAreSplit()
    {
        std::mt19937 random(4);
        for (const int bends : {17, 24, 40, 60}) {
            const auto outcome = plan(ribbed(random, bends), machine("long-folder-up"));
            QCOMPARE(refusalIn(outcome).obstacle, Obstacle::TooManyBends);
            // None of more than 12 bends, and as even as can be.
            const int pieces = (bends + 11) / 12;
            const std::string wanted = "Split into " + std::to_string(pieces) + " pieces, in leg " +
                                       std::to_string((bends + pieces - 1) / pieces + 1);
            QVERIFY2(says(refusalIn(outcome), wanted.c_str()), suggestionsOf(refusalIn(outcome)).c_str());
        }
        // Sixty square turns to one side wind up whatever way they are cut.
        const std::vector<Part> coil(61, Part{40, 90});
        QVERIFY(refusalIn(plan(profile(coil), machine("box-and-pan-4"))).obstacle == Obstacle::TooManyBends);
    }

    void hemsThatAMachineCannotPress()
    {
        const trim::Hem open{HemKind::Open, millimetres(12.7), Side::Left, millimetres(1.5)};
        const auto hand = plan(profile({{60, 90}, {80, 0}}, {}, open), machine("hand-brake-8"));
        QVERIFY2(says(refusalIn(hand), "With closed hems it can be folded here."),
                 suggestionsOf(refusalIn(hand)).c_str());
        const trim::Hem wide{HemKind::Open, millimetres(12.7), Side::Left, millimetres(4)};
        const auto gap = plan(profile({{60, 90}, {80, 0}}, {}, wide), machine("long-folder-up"));
        QVERIFY2(says(refusalIn(gap), "With open hems, 1.1 mm inside"),
                 suggestionsOf(refusalIn(gap)).c_str());
        const auto pan =
            plan(profile({{60, 90}, {80, 0}}, {}, closedHem(Side::Left)), machine("box-and-pan-4"));
        QVERIFY2(says(refusalIn(pan), "Without its hems"), suggestionsOf(refusalIn(pan)).c_str());
    }

    void tooLongOrTooThick()
    {
        const trim::Profile angle = profile({{50, 90}, {50, 0}});
        const auto longer = plan(angle, machine("long-folder-up"), {}, Length::feet(25));
        QCOMPARE(refusalIn(longer).obstacle, Obstacle::BendingLength);
        QVERIFY2(says(refusalIn(longer), "In 3 pieces or more"), suggestionsOf(refusalIn(longer)).c_str());
        metal::Metal metal = steel();
        metal.sheets.push_back({"16 ga", Length::micrometres(1'600), 12.6});
        const auto flat = trim::flatPattern(angle, metal, metal.sheets[1]);
        const auto thick = fold::planFold(angle, *flat, metal, metal.sheets[1], machine("hand-brake-8"),
                                          Length::feet(4), {});
        QCOMPARE(refusalIn(thick).obstacle, Obstacle::Capacity);
        QVERIFY2(says(refusalIn(thick), "In 26 ga it can be folded here."),
                 suggestionsOf(refusalIn(thick)).c_str());
    }

    void anotherMachine()
    {
        const trim::Profile hemmed = profile({{60, 90}, {80, 0}}, {}, closedHem(Side::Left));
        const metal::Metal metal = steel();
        const auto flat = trim::flatPattern(hemmed, metal, metal.sheets[0]);
        const auto choice =
            fold::chooseMachine(hemmed, *flat, metal, metal.sheets[0],
                                {machine("box-and-pan-4"), machine("long-folder-up")}, Length::feet(4), {});
        QCOMPARE(choice->front().machine, std::size_t(1));
        const auto& refusal = std::get<Refusal>(choice->back().outcome);
        QVERIFY2(says(refusal, "Long folder, up only, 10 ft 6 in can fold it."),
                 suggestionsOf(refusal).c_str());
    }

    void nothingIsSuggestedThatDoesNotHelp()
    {
        // Too thick in every gauge there is.
        metal::Metal metal = steel();
        metal.sheets = {{"plate", Length::millimetres(6), 47.0}};
        trim::Profile angle = profile({{50, 90}, {50, 0}});
        angle.bends[0].insideRadius = Length::millimetres(6);
        const auto flat = trim::flatPattern(angle, metal, metal.sheets[0]);
        const auto outcome = fold::planFold(angle, *flat, metal, metal.sheets[0], machine("long-folder-up"),
                                            Length::feet(4), {});
        QVERIFY(refusalIn(outcome).suggestions.empty());
    }
};

QTEST_APPLESS_MAIN(FoldSuggestTest)
#include "tst_fold_suggest.moc"
