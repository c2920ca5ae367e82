// Guards: a plan that is cut part by part takes as much metal, and gives as many blanks and remnants, as the
// plan says of itself.
#include "acts/cut_part.h"
#include "cutting/solve.h"

#include <QtTest>

#include <cmath>

using namespace lapwright;
using namespace lapwright::cutting;

class CutPartTest : public QObject {
    Q_OBJECT
private slots:
    void partsComeToTheWhole_data()
    {
        QTest::addColumn<bool>("coil");
        QTest::newRow("coil") << true;
        QTest::newRow("sheets") << false;
    }
    void partsComeToTheWhole()
    {
        QFETCH(bool, coil);
        ShopRules rules;
        rules.kerf = Length::millimetres(3);
        rules.leastRemnantWidth = rules.leastRemnantLength = Length::millimetres(200);
        ProblemBuilder builder;
        builder.rules(rules);
        for (int kind = 1; kind <= 6; ++kind)
            builder.blank({"order/E" + std::to_string(kind), Length::millimetres(90 + 37 * kind),
                           Length::millimetres(700 + 311 * kind), 3 * kind, false, 0, 0});
        builder.stock({"metal", coil ? StockKind::Coil : StockKind::Sheet, Length::millimetres(1'219),
                       Length::millimetres(coil ? 90'000 : 3'048), std::nullopt, std::nullopt,
                       coil ? std::optional(Length::millimetres(3'048)) : std::nullopt});
        const auto problem = builder.build();
        QVERIFY(problem.ok());
        Settings settings;
        settings.workLimit = 200;
        const documents::CutPlan plan{documents::writtenDown(*problem), solve(*problem, settings)};
        QVERIFY(plan.plan.patterns.size() > 1);
        double stock = 0.0, blanks = 0.0, remnants = 0.0;
        std::int64_t pieces = 0;
        for (std::size_t pattern = 0; pattern < plan.plan.patterns.size(); ++pattern) {
            const acts::Portion portion = acts::portionOf(plan, {{pattern}, std::nullopt});
            stock += portion.stockArea;
            blanks += portion.blankArea;
            remnants += portion.remnantArea;
            for (const storage::PlannedPiece& piece : portion.cut)
                pieces += piece.count;
        }
        const Waste& waste = plan.plan.waste;
        QVERIFY(std::abs(stock - waste.stock) < 1e-9);
        QVERIFY(std::abs(blanks - waste.blanks) < 1e-9);
        QVERIFY(std::abs(remnants - waste.remnants) < 1e-9);
        QCOMPARE(pieces, 3 * (1 + 2 + 3 + 4 + 5 + 6));
    }
};

QTEST_APPLESS_MAIN(CutPartTest)
#include "tst_cut_part.moc"
