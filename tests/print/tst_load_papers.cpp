// Guards: load list and delivery check name every mark of the load once with its count, every bundle's weight
// and what takes two people, and add up right; as PDF they have the size asked for, the words can be read out
// of them, their fonts are inside, and the same load printed at the same time gives the same bytes.
#include "print/load_papers.h"

#include "paper_texts.h"
#include "pdf_tools.h"
#include "print/layout.h"
#include "print/pdf.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::print;

namespace {

schedule::Load bigLoad()
{
    schedule::Load load{"7f0a1b2c-0000-4000-8000-000000000001", "truck 1", "2026-11-25T13:50:00Z", {}};
    int mark = 0;
    for (int number = 1; number <= 14; ++number) {
        schedule::Bundle bundle{"B" + std::to_string(number),
                                number < 9 ? "order-a" : "order-b",
                                number < 9 ? "Alder Lane 12" : "Birch House",
                                {"galvanised-steel", "24 ga", number % 2 == 0 ? "Slate" : "Bone"},
                                {},
                                10.0 + number,
                                number % 5 == 0};
        for (int piece = 0; piece < number; ++piece, ++mark)
            bundle.pieces.push_back({"M" + std::to_string(mark), 1 + mark % 4, piece % 3 == 0 ? "" : "E1",
                                     "P1", Length::inches(20 + mark)});
        load.bundles.push_back(bundle);
    }
    return load;
}

const LoadedOrders orders = {{"order-a", {2, {}}}, {"order-b", {1, {}}}};

Printing printing(Paper paper)
{
    return {"Invented Folding Shop", "2026-11-25 14:05", paper};
}

std::vector<Sheet> sheets(Paper paper)
{
    return {loadList(bigLoad(), orders, printing(paper), {}),
            checkSheet(bigLoad(), orders, printing(paper), {})};
}

} // namespace

class LoadPapersTest : public QObject {
    Q_OBJECT
private slots:
    void everyMarkOnce()
    {
        for (const Paper paper : {a4Paper, letterPaper})
            for (const Sheet& sheet : sheets(paper)) {
                const auto pages = layOut(sheet, paper);
                const QStringList words =
                    QString::fromStdString(textsOf(pages)).split(QRegularExpression("[\\s,\\x{a0}]+"));
                for (int mark = 0; mark < 105; ++mark)
                    QCOMPARE(words.count(QString("M%1").arg(mark)), 1);
                for (int bundle = 1; bundle <= 14; ++bundle)
                    QVERIFY(QString::fromStdString(textsOf(pages)).count(QString("B%1").arg(bundle)) > 0);
                QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
            }
    }
    void addsUp()
    {
        const std::string texts = textsOf(layOut(sheets(a4Paper).front(), a4Paper));
        // 105 marks; marks 0 to 103 are 26 rounds of 1 + 2 + 3 + 4, mark 104 is one more.
        QCOMPARE(countOf(texts, "261"), 1);
        // 14 × 10 + (1 + … + 14) kg = 245 kg; 245 / 0.45359237 = 540.1 lb.
        QCOMPARE(countOf(texts, "540 lb (245.0 kg)"), 1);
        QCOMPARE(countOf(texts, "14, 2 for two people"), 1);
        QCOMPARE(countOf(texts, "10' 4\""), 2); // the longest, 124 in, and its bundle's
        QVERIFY(texts.find("Alder Lane 12 revision 2, Birch House revision 1") != std::string::npos);
        // Bundles 5 and 10.
        QCOMPARE(countOf(texts, "TWO PEOPLE"), 2);
        QVERIFY(texts.find("M1\xC2\xA0\xC3\x97\xC2\xA0"
                           "2") != std::string::npos);
    }
    void asPdf()
    {
        for (const Paper paper : {a4Paper, letterPaper})
            for (const Sheet& sheet : sheets(paper)) {
                const auto pages = layOut(sheet, paper);
                const PdfHead head{sheet.title, "2026-11-25T14:05:00Z"};
                const std::string bytes = pdfOf(pages, head);
                QVERIFY(bytes == pdfOf(pages, head));
                const PdfFile file(bytes);
                QVERIFY2(file.problems().isEmpty(), qPrintable(file.problems()));
                QCOMPARE(file.title(), QString::fromStdString(sheet.title));
                QCOMPARE(file.pageCount(), static_cast<int>(pages.size()));
                QVERIFY(std::abs(file.widthInPoints() - inInches(paper.width) * 72.0) < 0.02);
                QVERIFY(std::abs(file.heightInPoints() - inInches(paper.height) * 72.0) < 0.02);
                const QStringList texts = file.texts();
                for (int mark = 0; mark < 105; ++mark)
                    QCOMPARE(file.wordCount(QString("M%1").arg(mark)), 1);
                for (int number = 1; number <= file.pageCount(); ++number) {
                    const QString& page = texts[number - 1];
                    QVERIFY2(page.contains(QString("page %1 of %2").arg(number).arg(file.pageCount())),
                             qPrintable(page));
                    QVERIFY(page.contains("printed 2026-11-25 14:05"));
                    QVERIFY(page.contains("Alder Lane 12 revision 2, Birch House revision 1"));
                }
            }
    }
    void anEmptyLoad()
    {
        const schedule::Load load{"7f0a1b2c-0000-4000-8000-000000000001", "", "2026-11-25T13:50:00Z", {}};
        const auto pages = layOut(loadList(load, {}, printing(a4Paper), {}), a4Paper);
        QCOMPARE(pages.size(), std::size_t{1});
        QCOMPARE(countOf(textsOf(pages), "no truck named"), 1);
    }
};

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    LoadPapersTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_load_papers.moc"
