// Guards: cut ticket, quality sheet, confirmation and piece labels of the demo's houses say everything once,
// keep their words apart and on the page in Letter and A4, and stay readable without colour: every ink stands
// out from the paper in grey, and what is blank, remnant and waste differs by its hatch.
#include "cutting/solve.h"
#include "documents/cut.h"
#include "documents/rates.h"
#include "documents/shipped_orders.h"
#include "drawing/palette.h"
#include "paper_texts.h"
#include "pdf_tools.h"
#include "pieces/summary.h"
#include "print/confirmation.h"
#include "print/cut_ticket.h"
#include "print/layout.h"
#include "print/order_words.h"
#include "print/pdf.h"
#include "print/piece_labels.h"
#include "print/quality_sheet.h"
#include "print/refused_fold.h"
#include "schedule/stock_book.h"
#include "source_directory.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::print;

namespace {

const std::vector<Paper> papers = {a4Paper, letterPaper};

Printing printing(const Paper& paper)
{
    return {"Invented Folding Shop", "2026-11-25 14:05", paper};
}

pieces::Order demoOrder(const char* house)
{
    const std::string text =
        texts::read(QString::fromStdString(sourceDirectory() + "/demo/%1.job.json").arg(house));
    return texts::orderOf(documents::readJob(text)->value, texts::shippedCatalogue()).value;
}

/// A small problem with strips of several blanks, a remnant to keep, and more blanks than the stock has.
struct Cut {
    cutting::Problem problem;
    cutting::Plan plan;
    CutTicket ticket;
};

Cut cut()
{
    documents::Json json = documents::Json::parse(texts::ofCase("two-girths.cut-problem.json"));
    json["stocks"][0]["count"] = 2;
    json["blanks"][0]["count"] = 60;
    json["rules"]["least_remnant_width_mm"] = 100;
    json["rules"]["least_remnant_length_mm"] = 100;
    const auto problem = *documents::admit(documents::readCutProblem(json.dump())->value).problem;
    cutting::Settings settings;
    settings.workLimit = 500;
    Cut cut{problem, cutting::solve(problem, settings), {}};
    cut.ticket.number = 7;
    cut.ticket.material = {"galvanised-steel", "24 ga", "Slate"};
    for (const cutting::Blank& blank : problem.blanks())
        cut.ticket.names.push_back("A " + blank.key);
    cut.ticket.orders = {{"A", "Alder Lane 12", 2, "2026-12-10", 60}, {"B", "Birch House", 1, "", 3}};
    cut.ticket.summary = "2 of sheet S-48, proven least, 4.1 % waste";
    return cut;
}

} // namespace

class TicketsTest : public QObject {
    Q_OBJECT
private slots:
    void cutTicketsSayEverything()
    {
        const Cut one = cut();
        QVERIFY(!one.plan.notCut.empty() && !one.plan.patterns.empty());
        for (const Paper& paper : papers) {
            const auto pages = layOut(cutTicket(one.problem, one.plan, one.ticket, printing(paper)), paper);
            const std::string texts = textsOf(pages);
            QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
            QCOMPARE(countOf(texts, "Cut ticket 7"), static_cast<int>(pages.size()));
            QCOMPARE(countOf(texts, one.ticket.summary), 1);
            QCOMPARE(countOf(texts, "Birch House"), 1);
            const QString all = QString::fromStdString(texts);
            QVERIFY(all.contains("The stock does not suffice for: "));
            QVERIFY(all.contains("proven least"));
            QVERIFY(all.contains("wear gloves"));
            for (std::size_t pattern = 1; pattern <= one.plan.patterns.size(); ++pattern)
                QVERIFY(all.contains(QString("Cut map %1 of %2").arg(pattern).arg(one.plan.patterns.size())));
            for (const cutting::NewRemnant& remnant : one.plan.remnants)
                QVERIFY(countOf(texts, cutting::keysInWords(remnant)) >= 1);
            std::size_t strips = 0;
            for (const cutting::Pattern& pattern : one.plan.patterns)
                strips += pattern.strips.size();
            // The map's number of a strip, and its row.
            int rows = 0;
            for (int number = 1; number < 20; ++number)
                rows += countOf(texts, std::to_string(number));
            QVERIFY(rows >= static_cast<int>(2 * strips));
        }
    }
    void remnantsHaveLabels()
    {
        Cut one = cut();
        one.plan.remnants = {
            {"R31", 0, std::nullopt, Length(), Length(), Length::inches(20), Length::feet(8), 2}};
        const auto labels = remnantLabels(keptRemnants(one.plan, one.ticket.material), printing(a4Paper), {});
        QCOMPARE(labels.size(), std::size_t{2});
        // What they bear is what the stock knows them by.
        schedule::ShopStock stock;
        (void)schedule::consume(stock, {one.ticket.material, one.problem.stocks(), one.plan});
        QCOMPARE(labels.front().mark, std::string("R31.1"));
        for (std::size_t at = 0; at < labels.size(); ++at)
            QCOMPARE(labels[at].mark, stock.items[at].stock.key);
        QVERIFY(labels.back().foot.find("label 2 of 2") != std::string::npos);
        QVERIFY2(faultsOf(labelPages(labels, a4SheetOf14())).isEmpty(), "");
    }
    void papersOfAHouse()
    {
        for (const char* house : {"larkfield", "hollin", "depot"}) {
            const pieces::Order order = demoOrder(house);
            const auto rates = documents::readRates(texts::ofCase("shop.rates.json"));
            const auto cost = schedule::costOf(order, rates->value);
            QVERIFY(cost.ok());
            for (const Paper& paper : papers) {
                const auto confirmed = layOut(confirmation(order, *cost, printing(paper), {}), paper);
                QVERIFY2(faultsOf(confirmed).isEmpty(), qPrintable(faultsOf(confirmed)));
                const std::string texts = textsOf(confirmed);
                QCOMPARE(countOf(texts, schedule::writeMoney(cost->cents, "")), 1);
                QVERIFY(countOf(texts, std::to_string(pieces::totalsOf(order).pieces)) >= 1);
                for (const schedule::CostLine& line : cost->lines)
                    QVERIFY(countOf(texts, schedule::writeMoney(line.cents, "")) >= 1);
                // The sum stands on the page of its lines.
                for (const Page& page : confirmed) {
                    const std::string one = drawing::textsOf(page.list);
                    QCOMPARE(countOf(one, "together") > countOf(one, "goes along"),
                             countOf(one, "labour") > 0);
                }
                const auto measured = layOut(qualitySheet(order, {}, {}, printing(paper), {}), paper);
                QVERIFY2(faultsOf(measured).isEmpty(), qPrintable(faultsOf(measured)));
                QCOMPARE(QString::fromStdString(textsOf(measured)).count("colour, coating"),
                         static_cast<int>(order.profiles.size()));
            }
        }
    }
    void theQualitySheetShowsTheAnglesThatAreAskedFor()
    {
        using drawing::AngleShown;
        const pieces::Order order = demoOrder("larkfield");
        const trim::Profile& shape = order.profiles.front().profile;
        QVERIFY(!shape.bends.empty());
        const Angle turn = magnitude(shape.bends.front().turn);
        const auto texts = [&](AngleShown angles) {
            return textsOf(layOut(qualitySheet(order, {}, {}, printing(a4Paper), {}, angles), a4Paper));
        };
        const std::string fold = texts(AngleShown::Fold), included = texts(AngleShown::Included);
        QVERIFY(countOf(fold, write(turn)) > countOf(included, write(turn)));
        QVERIFY(countOf(included, write(halfTurn - turn)) > countOf(fold, write(halfTurn - turn)));
        QVERIFY(included.find("between the legs") != std::string::npos);
    }
    void theQualitySheetKeepsMeasuresWhole()
    {
        pieces::Order order = demoOrder("larkfield");
        pieces::OrderedProfile& profile = order.profiles.front();
        profile.girth = Length::inches(12) + Length::sixtyFourths(60);
        profile.material.metal = "aluminium-3105";
        profile.material.gauge = "0.032 in";
        profile.thickness = Length::thousandths(32);
        for (const Paper& paper : papers) {
            const auto pages = layOut(qualitySheet(order, {}, {}, printing(paper), {}), paper);
            const std::string texts = textsOf(pages);
            QVERIFY2(countOf(texts, "1' 0 15/16\"") >= 1, texts.c_str());
            QVERIFY2(texts.find(" \xC2\xB7 " + writeThickness(profile.thickness, {}) + "\n") !=
                         std::string::npos,
                     texts.c_str());
            QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
        }
    }
    void everyMarkHasALabel()
    {
        const pieces::Order order = demoOrder("larkfield");
        for (const LabelStock* stock : {&roll100By50(), &roll4By2(), &letterSheetOf10(), &a4SheetOf14()}) {
            const auto pages = labelPages(pieceLabels(order, printing(a4Paper), {}), *stock);
            const std::string texts = textsOf(pages);
            for (const pieces::Piece& piece : order.pieces)
                QVERIFY2(countOf(texts, piece.mark) >= 1, piece.mark.c_str());
            QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
            // What it is stands on every label, however much its place takes.
            QCOMPARE(QString::fromStdString(texts).count("girth"), static_cast<int>(order.pieces.size()));
            QCOMPARE(countOf(texts, "Eave drip edge"),
                     static_cast<int>(
                         std::count_if(order.pieces.begin(), order.pieces.end(), [&](const auto& piece) {
                             return order.profiles[piece.profile].profile.name == "Eave drip edge";
                         })));
        }
    }
    void aRefusalSaysWhy()
    {
        const pieces::Order order = demoOrder("depot");
        drawing::DisplayList section;
        section.width = section.height = Length::millimetres(60);
        const Sheet sheet =
            refusedFold(order, 0, {"machine X cannot fold this: too long"}, section, printing(a4Paper));
        const std::string texts = textsOf(layOut(sheet, a4Paper));
        QCOMPARE(countOf(texts, "machine X cannot fold this: too long"), 1);
        QVERIFY(texts.find(order.pieces.front().mark) != std::string::npos);
    }
    void everyInkIsReadInGrey()
    {
        using drawing::Role;
        const auto luminance = [](drawing::Colour colour) {
            const auto linear = [](double channel) {
                const double share = channel / 255.0;
                return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
            };
            return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
        };
        // WCAG 2.1, 1.4.3 for text: 4.5 to 1; on the ground of a band as well, which is Role::Machine's.
        const double ground = luminance(drawing::paperInk(Role::Machine).fill) + 0.05;
        for (const Role role : {Role::Title, Role::Label, Role::Note, Role::Caution, Role::Dimension,
                                Role::AngleMark, Role::Gauge, Role::Movement, Role::Leader})
            QVERIFY((role == Role::Title ? ground : 1.05) /
                        (luminance(drawing::paperInk(role).line) + 0.05) >=
                    4.5);
    }
    void blankRemnantAndWasteDifferWithoutColour()
    {
        const Cut one = cut();
        const auto pages = layOut(cutTicket(one.problem, one.plan, one.ticket, printing(a4Paper)), a4Paper);
        const PdfFile file(pdfOf(pages, {"Cut ticket", "2026-11-25T14:05:00Z"}));
        QVERIFY2(file.problems().isEmpty(), qPrintable(file.problems()));
        // The samples of the key below a map are 7 mm wide and 3 mm high.
        int keys = 0;
        for (std::size_t number = 0; number < pages.size(); ++number) {
            const QImage image = file.image(static_cast<int>(number) + 1, 203, "-mono")
                                     .convertToFormat(QImage::Format_Grayscale8);
            std::map<drawing::Role, double> dark;
            for (const drawing::Shape& shape : pages[number].list.shapes) {
                const auto* path = std::get_if<drawing::Path>(&shape);
                if (!path || !path->fill || path->points.size() != 4)
                    continue;
                const drawing::Rectangle box = drawing::bounds(path->points);
                if (std::abs(box.width() - 7.0) > 0.01 || std::abs(box.height() - 3.0) > 0.01)
                    continue;
                int black = 0, all = 0;
                const drawing::Rectangle inside = box.grown(-0.4);
                for (int y = qRound(inside.top * 203 / 25.4); y < qRound(inside.bottom * 203 / 25.4); ++y)
                    for (int x = qRound(inside.left * 203 / 25.4); x < qRound(inside.right * 203 / 25.4);
                         ++x, ++all)
                        black += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
                dark[path->role] = static_cast<double>(black) / all;
            }
            if (dark.empty())
                continue;
            ++keys;
            const double blank = dark[drawing::Role::Blank], remnant = dark[drawing::Role::Remnant],
                         waste = dark[drawing::Role::Waste];
            QVERIFY2(remnant > blank + 0.03 && waste > remnant + 0.03,
                     qPrintable(QString("%1 %2 %3").arg(blank).arg(remnant).arg(waste)));
        }
        QVERIFY(keys > 0);
    }
};

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    TicketsTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_tickets.moc"
