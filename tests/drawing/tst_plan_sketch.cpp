#include "drawing/plan_sketch.h"
#include "drawing/text.h"
#include "measure/rounding.h"
#include "site/editing.h"

#include <QtTest>

#include <algorithm>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

site::Job houseOf(std::initializer_list<Length> lengths)
{
    site::Job job;
    const std::size_t chain = site::addChain(job, "Eave line");
    for (const Length length : lengths) {
        site::Run run;
        run.lengths = {{length, ""}};
        site::addRun(job, chain, run, site::SquareOutside{});
    }
    return job;
}

PlanSketch sketchOf(const site::Job& job, std::optional<std::size_t> chosen = std::nullopt)
{
    SketchWish wish;
    wish.chosen = chosen;
    return planSketch(job.chains[0], site::closureReport(job.chains[0], job.tolerance), wish);
}

bool says(const PlanSketch& sketch, const std::string& words)
{
    return std::any_of(sketch.list.shapes.begin(), sketch.list.shapes.end(), [&words](const Shape& shape) {
        const auto* text = std::get_if<Text>(&shape);
        return text != nullptr && text->text == words;
    });
}

} // namespace

/// Guards: the plan as it grows on the screen: to scale, inside its page, with its lengths, and a finger on a
/// run finds that run.
class PlanSketches : public QObject {
    Q_OBJECT

private slots:
    void isToScaleAndInsideThePage();
    void aSmallPageStillShowsTheChain();
    void aFingerFindsItsRun();
    void whatIsMissingEndsTheDrawing();
    void theGapIsMarked();
    void uprightRunsStand();
};

void PlanSketches::isToScaleAndInsideThePage()
{
    const site::Job job = houseOf({Length::feet(40), Length::feet(20), Length::feet(40)});
    const PlanSketch sketch = sketchOf(job);
    QCOMPARE(sketch.runs.size(), std::size_t{3});
    const auto length = [&](std::size_t run) {
        return norm(sketch.runs[run].line.to - sketch.runs[run].line.from);
    };
    QVERIFY(std::abs(length(0) - 2.0 * length(1)) < 1e-6);
    const Rectangle page{0.0, 0.0, inMillimetres(sketch.list.width), inMillimetres(sketch.list.height)};
    for (const Shape& shape : sketch.list.shapes)
        if (const auto* text = std::get_if<Text>(&shape))
            QVERIFY(page.contains(boxOf(*text).bounds()));
    QVERIFY(says(sketch, "40' 0\""));
    QVERIFY(says(sketch, "20' 0\""));
}

/// Seen: on a page of 30 mm the room for labels left nothing for the chain, which was a dot.
void PlanSketches::aSmallPageStillShowsTheChain()
{
    const site::Job job = houseOf({Length::feet(40), Length::feet(20), Length::feet(40)});
    SketchWish wish;
    wish.height = Length::millimetres(30);
    const PlanSketch sketch =
        planSketch(job.chains[0], site::closureReport(job.chains[0], job.tolerance), wish);
    QVERIFY(norm(sketch.runs[1].line.to - sketch.runs[1].line.from) > 12.0);
}

void PlanSketches::aFingerFindsItsRun()
{
    const PlanSketch sketch = sketchOf(houseOf({Length::feet(40), Length::feet(20), Length::feet(40)}));
    for (const SketchedRun& run : sketch.runs)
        QCOMPARE(runAt(sketch, between(run.line.from, run.line.to, 0.5) + Point{1.0, 1.0}, 5.0).value(),
                 run.run);
    QVERIFY(!runAt(sketch, {0.0, 0.0}, 5.0));
}

void PlanSketches::whatIsMissingEndsTheDrawing()
{
    site::Job job = houseOf({Length::feet(40), Length::feet(20), Length::feet(40)});
    job.chains[0].runs[1].lengths.clear();
    QCOMPARE(sketchOf(job).runs.size(), std::size_t{1});
    job.chains[0].runs[0].lengths.clear();
    QVERIFY(sketchOf(job).runs.empty());
}

void PlanSketches::theGapIsMarked()
{
    site::Job job = houseOf({Length::feet(40), Length::feet(20), Length::feet(43), Length::feet(20)});
    site::closeChain(job, 0, site::SquareOutside{});
    const PlanSketch sketch = sketchOf(job);
    const bool marked =
        std::any_of(sketch.list.shapes.begin(), sketch.list.shapes.end(), [](const Shape& shape) {
            const auto* circle = std::get_if<Circle>(&shape);
            return circle != nullptr && circle->role == Role::Misclosure;
        });
    QVERIFY(marked);
}

void PlanSketches::uprightRunsStand()
{
    site::Job job = houseOf({Length::feet(9)});
    job.chains[0].runs[0].kind = site::RunKind::OutsideCorner;
    const PlanSketch sketch = sketchOf(job, 0);
    QCOMPARE(sketch.runs.size(), std::size_t{1});
    QVERIFY(std::abs(sketch.runs[0].line.from.x - sketch.runs[0].line.to.x) < 1e-9);
}

QTEST_APPLESS_MAIN(PlanSketches)
#include "tst_plan_sketch.moc"
