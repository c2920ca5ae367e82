// Guards: a cut map shows every blank of its pattern to scale, in its place, with its name or listed below;
// strips carry number, width and knife setting; remnants and waste are told apart; and nothing is written
// over a line.
#include "drawing/cut_map.h"

#include "cutting/solve.h"
#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

cutting::ShopRules shopRules(cutting::CutOrder order)
{
    cutting::ShopRules rules;
    rules.order = order;
    rules.edgeTrim = {Length::sixtyFourths(16), Length::sixtyFourths(16), Length::sixtyFourths(32), Length()};
    rules.leastRemnantWidth = Length::inches(6);
    rules.leastRemnantLength = Length::inches(24);
    return rules;
}

cutting::Problem problemOf(std::mt19937& random, cutting::CutOrder order, cutting::StockKind kind, int kinds)
{
    const auto pick = [&](int least, int most) {
        return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
    };
    cutting::ProblemBuilder builder;
    builder.rules(shopRules(order));
    cutting::Stock stock;
    stock.key = kind == cutting::StockKind::Coil ? "coil 12" : "4 x 10 sheet";
    stock.kind = kind;
    stock.width = Length::inches(48);
    stock.length = kind == cutting::StockKind::Coil ? Length::feet(400) : Length::feet(10);
    if (kind == cutting::StockKind::Coil) {
        stock.count = 1;
        stock.longestCrosscut = Length::feet(24);
    }
    builder.stock(stock);
    for (int i = 0; i < kinds; ++i) {
        cutting::Blank blank;
        blank.key = "E" + std::to_string(i + 1) + "." + std::to_string(pick(1, 9));
        blank.girth = Length::sixtyFourths(64 * 2 + 4 * pick(0, 16 * 14));
        blank.length = Length::sixtyFourths(64 * 12 + 4 * pick(0, 16 * 100));
        blank.count = pick(1, 3);
        builder.blank(blank);
    }
    Result<cutting::Problem> built = builder.build();
    if (!built)
        qFatal("%s", built.errors().front().sentence().c_str());
    return built.value();
}

/// Blanks drawn, without the sample at the foot (which is the last).
std::vector<Rectangle> blanksOf(const DisplayList& list)
{
    std::vector<Rectangle> found;
    for (const Shape& shape : list.shapes)
        if (const auto* path = std::get_if<Path>(&shape); path && path->role == Role::Blank)
            found.push_back(bounds(path->points));
    found.pop_back();
    return found;
}

void checkMap(const cutting::Problem& problem, const cutting::Plan& plan, std::size_t pattern,
              const QString& name, bool framed = true)
{
    CutMapPicture picture;
    picture.material = "Galvanised steel, 26 ga, slate blue";
    picture.framed = framed;
    if (framed) {
        checkMap(problem, plan, pattern, name + "-bare", false);
    } else {
        picture.width = Length::millimetres(150);
        picture.height = Length::millimetres(66);
    }
    const DisplayList list = cutMap(problem, plan, pattern, picture);
    keepPicture(list, name);
    const QString faults = report(faultsOf(list, {Role::Waste}));
    QVERIFY2(faults.isEmpty(), qPrintable(name + ": " + faults));
    QCOMPARE(xmlError(toSvg(list)), QString());
    QCOMPARE(textsOf(list).find("Cut map") != std::string::npos, framed);
    const std::vector<Rectangle> drawn = blanksOf(list);
    std::size_t wanted = 0;
    double area = 0.0;
    for (const cutting::Strip& strip : plan.patterns[pattern].strips)
        for (const cutting::Crosscut& cut : strip.crosscuts) {
            const cutting::Blank& blank = problem.blanks()[cut.blank];
            wanted += static_cast<std::size_t>(cut.count);
            area += static_cast<double>(cut.count) * inMillimetres(blank.girth) * inMillimetres(blank.length);
            QVERIFY(textsOf(list).find(blank.key) != std::string::npos);
            // What is narrower than its strip is cut once more: its girth stands with it.
            if (cutting::lyingIn(plan.patterns[pattern].order, blank, cut.turned).across < strip.width)
                QVERIFY(textsOf(list).find(write(blank.girth, picture.style)) != std::string::npos);
        }
    QCOMPARE(drawn.size(), wanted);
    double drawnArea = 0.0;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        drawnArea += drawn[i].width() * drawn[i].height();
        for (std::size_t k = 0; k < i; ++k)
            QVERIFY(std::min(drawn[i].right, drawn[k].right) - std::max(drawn[i].left, drawn[k].left) <
                        1e-6 ||
                    std::min(drawn[i].bottom, drawn[k].bottom) - std::max(drawn[i].top, drawn[k].top) < 1e-6);
    }
    // The stock's outline gives the two scales.
    for (const Shape& shape : list.shapes)
        if (const auto* path = std::get_if<Path>(&shape); path && path->role == Role::Stock) {
            const Rectangle sheet = bounds(path->points);
            const double scale = sheet.width() * sheet.height() /
                                 (inMillimetres(plan.patterns[pattern].length) *
                                  inMillimetres(problem.stocks()[plan.patterns[pattern].stock].width));
            QVERIFY(std::abs(drawnArea - area * scale) < 1e-6 * area * scale);
            for (const Rectangle& blank : drawn)
                QVERIFY(sheet.grown(1e-6).contains(blank));
        }
}

} // namespace

class TestCutMap : public QObject {
    Q_OBJECT

private slots:
    void mapsOfSolvedPlans_data()
    {
        QTest::addColumn<int>("order");
        QTest::addColumn<int>("kind");
        QTest::addColumn<int>("kinds");
        QTest::newRow("sheets-strips-few") << 0 << 0 << 6;
        QTest::newRow("sheets-strips-many") << 0 << 0 << 30;
        QTest::newRow("sheets-lengths") << 1 << 0 << 12;
        QTest::newRow("coil") << 0 << 1 << 16;
    }

    void mapsOfSolvedPlans()
    {
        QFETCH(int, order);
        QFETCH(int, kind);
        QFETCH(int, kinds);
        std::mt19937 random(static_cast<unsigned>(100 * order + 10 * kind + kinds));
        const cutting::Problem problem =
            problemOf(random, order == 0 ? cutting::CutOrder::StripsFirst : cutting::CutOrder::LengthsFirst,
                      kind == 0 ? cutting::StockKind::Sheet : cutting::StockKind::Coil, kinds);
        cutting::Settings settings;
        settings.workLimit = 200;
        const cutting::Plan plan = cutting::solve(problem, settings);
        QVERIFY(!plan.patterns.empty());
        for (std::size_t i = 0; i < plan.patterns.size(); ++i)
            checkMap(problem, plan, i, QString("cut-%1-%2").arg(QTest::currentDataTag()).arg(i));
        qInfo("%zu patterns drawn", plan.patterns.size());
    }
};

QTEST_APPLESS_MAIN(TestCutMap)
#include "tst_cut_map.moc"
