// Guards: a sheet on pages loses nothing: every row of a long table stands once, under the table's titles, no
// band without its rows and no row alone; every page says which it is of how many and what it belongs to; no
// text lies on another, on a line or off the page, whatever the words are.
#include "print/layout.h"

#include "drawing/marks.h"

#include "paper_texts.h"

#include <QtTest>

#include <random>

using namespace lapwright;
using namespace lapwright::print;

namespace {

/// Groups of rows with random words; the first cell of each row is unique ("r17").
Table randomTable(std::mt19937& random, int groups, int mostRows, bool titled)
{
    Table table;
    table.columns = {
        {"row", 20.0}, {"count", 14.0, Align::Right}, {"a few words", 0.0, Align::Left, 2.0}, {"note"}};
    table.leastRowHeight = random() % 2 == 0 ? 6.0 : 9.0;
    int number = 0;
    const auto words = [&] {
        std::string text;
        for (auto count = random() % 14; count > 0; --count)
            text += std::string(1 + random() % 9, static_cast<char>('a' + random() % 26)) + " ";
        return text;
    };
    for (int group = 0; group < groups; ++group) {
        table.groups.push_back({titled ? "band" + std::to_string(group) : "", titled ? "note" : "", {}});
        for (auto rows = 1 + random() % static_cast<unsigned>(mostRows); rows > 0; --rows)
            table.groups.back().rows.push_back(
                {{{"r" + std::to_string(number++), Tone::Strong, Cell::Kind::Tick},
                  {std::to_string(random() % 1000)},
                  {words()},
                  {random() % 9 == 0 ? words() : "", Tone::Plain, Cell::Kind::Frame}}});
    }
    return table;
}

std::size_t rowsOf(const Table& table)
{
    std::size_t rows = 0;
    for (const Group& group : table.groups)
        rows += group.rows.size();
    return rows;
}

Sheet sheetWith(Table table)
{
    Sheet sheet;
    sheet.title = "Load list";
    sheet.subject = "Alder Lane 12";
    Printing printing;
    printing.at = "2026-11-25 14:05";
    printing.shop = "Invented shop";
    sheet.foot = footOf("Alder Lane 12", 2, printing);
    sheet.add(Heading{"What is on it"});
    sheet.add(std::move(table));
    return sheet;
}

/// Texts of one page in the order they were drawn.
std::vector<std::string> lines(const Page& page)
{
    std::vector<std::string> all;
    for (const drawing::Shape& shape : page.list.shapes)
        if (const auto* text = std::get_if<drawing::Text>(&shape))
            all.push_back(text->text);
    return all;
}

bool isRow(const std::string& text)
{
    return text.size() > 1 && text[0] == 'r' && text.find_first_not_of("0123456789", 1) == std::string::npos;
}

} // namespace

class SheetLayoutTest : public QObject {
    Q_OBJECT
private slots:
    void longTablesLoseNothing()
    {
        std::mt19937 random(5);
        int pagesSeen = 0;
        for (int trial = 0; trial < 24; ++trial) {
            const Table table = randomTable(random, 1 + trial % 7, 1 + trial * 3, trial % 3 != 0);
            const std::size_t rows = rowsOf(table);
            const auto pages = layOut(sheetWith(table), trial % 2 == 0 ? letterPaper : a4Paper);
            pagesSeen += static_cast<int>(pages.size());
            const std::string texts = textsOf(pages);
            for (std::size_t row = 0; row < rows; ++row)
                QCOMPARE(countOf(texts, "r" + std::to_string(row)), 1);
            // The titles stand on every page of the table.
            QCOMPARE(countOf(texts, "a few words"), static_cast<int>(pages.size()));
            const QString faults = faultsOf(pages);
            QVERIFY2(faults.isEmpty(), qPrintable(faults));
        }
        QVERIFY(pagesSeen > 40);
    }
    void aTableBesideAPictureStaysOnThePage()
    {
        std::mt19937 random(7);
        for (const int rows : {4, 12, 80}) {
            Table table = randomTable(random, 1, 1, false);
            table.groups.front().rows.clear();
            for (int row = 0; row < rows; ++row)
                table.groups.front().rows.push_back({{{"r" + std::to_string(row)}, {"1"}, {"word"}, {""}}});
            drawing::DisplayList picture;
            picture.width = Length::millimetres(60);
            picture.height = Length::millimetres(45);
            picture.shapes.emplace_back(drawing::words(drawing::Role::Label, "picture", {5.0, 20.0}, 3.0));
            Sheet sheet = sheetWith(randomTable(random, 1, 3, false));
            sheet.add(Beside{{picture}, table});
            const auto pages = layOut(sheet, letterPaper);
            QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
            QCOMPARE(countOf(textsOf(pages), "picture"), 1);
            QVERIFY(countOf(textsOf(pages), "r" + std::to_string(rows - 1)) >= 1);
        }
    }
    void noRowStandsAlone()
    {
        std::mt19937 random(6);
        for (int trial = 0; trial < 24; ++trial) {
            const Table table = randomTable(random, 1 + trial % 5, 60, true);
            std::vector<std::size_t> sizes;
            for (const Group& group : table.groups)
                sizes.push_back(group.rows.size());
            for (const Page& page : layOut(sheetWith(table), a4Paper)) {
                std::size_t group = 0, rows = 0;
                bool inBand = false;
                const auto endOfBand = [&] {
                    if (inBand)
                        QVERIFY2(rows >= std::min<std::size_t>(2, sizes[group]),
                                 qPrintable(QString("band %1 with %2 rows").arg(group).arg(rows)));
                };
                for (const std::string& text : lines(page)) {
                    if (text.rfind("band", 0) == 0) {
                        endOfBand();
                        group = std::stoul(text.substr(4));
                        rows = 0;
                        inBand = true;
                    } else if (isRow(text)) {
                        QVERIFY2(inBand, "a row without its band");
                        ++rows;
                    }
                }
                endOfBand();
            }
        }
    }
    void everyPageSaysWhatItIs()
    {
        std::mt19937 random(8);
        const auto pages = layOut(sheetWith(randomTable(random, 9, 40, true)), letterPaper);
        QVERIFY(pages.size() > 3);
        for (std::size_t number = 0; number < pages.size(); ++number) {
            const std::string texts = drawing::textsOf(pages[number].list);
            QCOMPARE(
                countOf(texts, "page " + std::to_string(number + 1) + " of " + std::to_string(pages.size())),
                1);
            QCOMPARE(countOf(texts, "Load list"), 1);
            QCOMPARE(countOf(texts, "Alder Lane 12"), 1);
            QCOMPARE(countOf(texts,
                             "revision 2 \xC2\xB7 printed 2026-11-25 14:05 \xC2\xB7 Alder Lane 12 \xC2\xB7 "
                             "Invented shop"),
                     1);
            QCOMPARE(pages[number].list.width, letterPaper.width);
            QCOMPARE(pages[number].list.height, letterPaper.height);
        }
    }
    void anEmptySheetIsOnePage()
    {
        Sheet sheet;
        sheet.title = "Load list";
        QCOMPARE(layOut(sheet, a4Paper).size(), std::size_t{1});
        QVERIFY(countOf(textsOf(layOut(sheet, a4Paper)), "page 1 of 1") == 1);
        QCOMPARE(layOut(sheetWith({{{"a"}}, {}, 6.0}), a4Paper).size(), std::size_t{1});
    }
    void aRowHigherThanAPageGoesOn()
    {
        Table table;
        table.columns = {{"mark", 20.0}, {"words", 42.0}, {"rest"}};
        std::string words;
        for (int i = 0; i < 400; ++i)
            words += "w" + std::to_string(i) + "xxxxxxxxxxxx ";
        table.groups = {{"band0", "", {{{{"r0"}, {words}, {""}}}, {{{"r1"}, {"short"}, {""}}}}}};
        const auto pages = layOut(sheetWith(table), letterPaper);
        QVERIFY(pages.size() > 2);
        const std::string texts = textsOf(pages);
        for (int i = 0; i < 400; ++i)
            QCOMPARE(countOf(texts, "w" + std::to_string(i) + "xxxxxxxxxxxx"), 1);
        QCOMPARE(countOf(texts, "r1"), 1);
        QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
    }
    void hostileWordsStayInPlace()
    {
        std::string endless(5000, 'W'), signs;
        for (int i = 0; i < 300; ++i)
            signs += "\xE2\x80\xAE\x01\xFF\xC3\xBC\xE6\xBC\xA2 ";
        for (const std::string& bad : {endless, signs, std::string(900, ' '), std::string("\n\t\r")}) {
            Table table;
            table.columns = {{bad, 20.0}, {"mark"}};
            table.groups = {
                {bad, "note", {{{{bad}, {bad}}}, {{{bad, Tone::Strong, Cell::Kind::Tick}, {"r1"}}}}}};
            Sheet sheet = sheetWith(table);
            sheet.title = sheet.subject = sheet.foot = bad;
            sheet.add(Facts{{{bad, bad}, {"a", bad}, {bad, "b"}}});
            sheet.add(Paragraph{bad, Tone::Caution});
            sheet.add(Signatures{{bad, "date"}});
            const auto pages = layOut(sheet, a4Paper);
            const QString faults = faultsOf(pages);
            QVERIFY2(faults.isEmpty(), qPrintable(faults.left(500)));
            QCOMPARE(countOf(textsOf(pages), "r1"), 1);
        }
    }
    void aPictureIsNeverCut()
    {
        Sheet sheet;
        sheet.title = "Maps";
        for (const std::int64_t height : {100, 120, 60, 400, 20}) {
            Picture picture;
            picture.list.width = Length::millimetres(250);
            picture.list.height = Length::millimetres(height);
            picture.list.shapes = {
                drawing::words(drawing::Role::Label, "top", {0.0, 3.0}, 3.0),
                drawing::words(drawing::Role::Label, "foot", {0.0, static_cast<double>(height) - 1.0}, 3.0)};
            sheet.add(Heading{"Map"});
            sheet.add(picture);
        }
        const auto pages = layOut(sheet, a4Paper);
        for (const Page& page : pages) {
            const std::string texts = drawing::textsOf(page.list);
            QCOMPARE(countOf(texts, "top"), countOf(texts, "foot"));
            QCOMPARE(countOf(texts, "top"), countOf(texts, "Map"));
        }
        QVERIFY2(faultsOf(pages).isEmpty(), qPrintable(faultsOf(pages)));
    }
};

QTEST_APPLESS_MAIN(SheetLayoutTest)
#include "tst_sheet_layout.moc"
