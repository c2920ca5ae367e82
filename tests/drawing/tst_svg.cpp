// Guards: SVG that any reader opens, true to size, with hostile text made harmless; text is as wide as the
// font makes it; labels find their places by the rules.
#include "drawing/svg.h"

#include "drawing/marks.h"
#include "drawing/palette.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "overlaps.h"
#include "pictures.h"

#include <QtTest>

#include <algorithm>
#include <numbers>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

DisplayList pageWith(Shape shape)
{
    DisplayList list;
    list.width = Length::millimetres(120);
    list.height = Length::millimetres(80);
    list.title = "Title";
    list.description = "Description";
    list.shapes.push_back(std::move(shape));
    return list;
}

/// All character data of the elements called `name`, as an XML reader sees it.
QString readBack(const std::string& svg, const QString& name)
{
    QXmlStreamReader reader(QByteArray::fromStdString(svg));
    QString all;
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::StartElement && reader.name() == name)
            all += reader.readElementText();
    return all;
}

} // namespace

class TestSvg : public QObject {
    Q_OBJECT

private slots:
    void textIsEscaped()
    {
        const std::string hostile = "</text><script>&\"'<![CDATA[ 1' 6\" ]]>";
        DisplayList list = pageWith(words(Role::Label, hostile, {10, 10}, 3));
        list.title = hostile;
        list.description = hostile;
        const std::string svg = toSvg(list);
        QCOMPARE(xmlError(svg), QString());
        QVERIFY(svg.find("<script") == std::string::npos);
        for (const char* name : {"text", "title", "desc"})
            QCOMPARE(readBack(svg, name), QString::fromStdString(hostile));
    }

    void controlAndDirectionMarksAreSpaces()
    {
        // U+202E right-to-left override, U+2066 isolate, U+200F mark, U+0085 next line, U+FEFF.
        const std::string text = std::string("a\x01") + "b\xE2\x80\xAE" + "c\xE2\x81\xA6" + "d\xE2\x80\x8F" +
                                 "e\xC2\x85" + "f\xEF\xBB\xBF" + "g\n\t";
        QCOMPARE(QString::fromStdString(harmless(text)), QString("a b c d e f g  "));
        QCOMPARE(xmlError(toSvg(pageWith(words(Role::Label, text, {10, 10}, 3)))), QString());
    }

    void linesStayLines()
    {
        QCOMPARE(QString::fromStdString(harmlessLines("one\ntwo\xE2\x80\xAE\n\x07")),
                 QString("one\ntwo \n "));
        QCOMPARE(harmlessLines("9' 4 1/2\"\nplain"), std::string("9' 4 1/2\"\nplain"));
    }

    void brokenBytesBecomeReplacementCharacters()
    {
        // A stray continuation, an overlong slash, a surrogate, a cut sequence, beyond Unicode.
        for (const std::string bytes :
             {"\x80", "\xC0\xAF", "\xED\xA0\x80", "\xE2\x82", "\xF4\x90\x80\x80", "\xFF"}) {
            const std::string clean = harmless("x" + bytes + "y");
            QVERIFY(clean.find("\xEF\xBF\xBD") != std::string::npos);
            QVERIFY(clean.front() == 'x' && clean.back() == 'y');
            QCOMPARE(QString::fromStdString(clean).toStdString(), clean);
        }
        // Letters of other scripts stay as they are.
        const std::string good = "M\xC3\xBCller \xC3\x98 \xD0\x96 \xE6\x9D\xBF \xF0\x9F\x8F\xA0";
        QCOMPARE(harmless(good), good);
    }

    void sizeIsTrue()
    {
        const std::string svg = toSvg(pageWith(line(Role::Run, {10, 20}, {110, 20})));
        QVERIFY(svg.find("width=\"120mm\" height=\"80mm\" viewBox=\"0 0 120 80\"") != std::string::npos);
        QVERIFY(svg.find("d=\"M10,20L110,20\"") != std::string::npos);
    }

    void numbersAreRoundedToMicrometres()
    {
        const std::string svg = toSvg(pageWith(line(Role::Run, {1.0 / 3.0, -0.0004}, {2.5, 1e-9})));
        QVERIFY(svg.find("d=\"M0.333,0L2.5,0\"") != std::string::npos);
    }

    void arcsGoTheWayTheySay()
    {
        // A quarter from east counter-clockwise to the eye ends above the centre.
        const Arc arc{Role::AngleMark, {50, 40}, 10.0, 0.0, std::numbers::pi / 2.0, {}};
        QVERIFY(toSvg(pageWith(arc)).find("d=\"M60,40A10 10 0 0 0 50,30\"") != std::string::npos);
        const std::vector<Segment> chords = strokes(arc);
        QVERIFY(norm(chords.front().from - Point{60, 40}) < 1e-9);
        QVERIFY(norm(chords.back().to - Point{50, 30}) < 1e-9);
        for (const Segment& chord : chords)
            QVERIFY(10.0 - norm(between(chord.from, chord.to, 0.5) - Point{50, 40}) < 0.0501);
        const Arc large{Role::AngleMark, {50, 40}, 10.0, 0.0, -1.5 * std::numbers::pi, {}};
        QVERIFY(toSvg(pageWith(large)).find("A10 10 0 1 1 50,30") != std::string::npos);
    }

    void sameListSameBytes()
    {
        DisplayList list =
            pageWith(box(Role::Waste, {10, 10, 50, 50}, Stroke{}, Fill{true, {}, Hatch::Crossed}));
        list.shapes.emplace_back(
            Circle{Role::Remnant, {60, 40}, 5, Stroke{}, Fill{false, {}, Hatch::Dotted}});
        QCOMPARE(toSvg(list), toSvg(list));
        QCOMPARE(xmlError(toSvg(list)), QString());
        QVERIFY(toSvg(list).find("url(#crossed-") != std::string::npos);
    }

    void widthsAreTheFonts()
    {
        // hmtx of DejaVu Sans 2.37, 2048 units to the em: "0" 1303, "W" 2025, "i" 569; bold "0" 1425.
        QCOMPARE(widthInEm("0"), 1303.0 / 2048.0);
        QCOMPARE(widthInEm("Wi"), (2025.0 + 569.0) / 2048.0);
        QCOMPARE(widthInEm("0", true), 1425.0 / 2048.0);
        QCOMPARE(textWidth("0", 4.0), 4.0 * 1303.0 / 2048.0);
        QCOMPARE(widthInEm(""), 0.0);
        // A letter with an accent has the advance of the letter: "ñ" 1298, "Á" 1401; "×" 1716.
        QCOMPARE(widthInEm("\xC3\xB1\xC3\x81"), (1298.0 + 1401.0) / 2048.0);
        QCOMPARE(widthInEm("\xC3\x97"), 1716.0 / 2048.0);
    }

    void noLineEndsInsideALength()
    {
        for (const std::string length : {"9' 4\"", "6' 2 1/4\"", "10 15/16\""})
            for (double width = 4.0; width < 40.0; width += 0.5) {
                const auto lines = wrapped("E2.3: 1 of " + length + " and 2 more", 3.0, width);
                QVERIFY2(std::any_of(
                             lines.begin(), lines.end(),
                             [&](const std::string& line) { return line.find(length) != std::string::npos; }),
                         length.c_str());
            }
        QCOMPARE(wrapped("a 2 3", 3.0, 2.0).size(), std::size_t{3});
    }
    void wrappingLosesNoWord()
    {
        const std::string text = "one two three four five sixseveneightnineten eleven";
        std::string joined;
        for (const std::string& row : wrapped(text, 3.0, 18.0)) {
            joined += (joined.empty() ? "" : " ") + row;
            QVERIFY(textWidth(row, 3.0) <= 18.0 || row.find(' ') == std::string::npos);
        }
        QCOMPARE(joined, text);
        QVERIFY(textWidth(shortened(text, 3.0, 30.0), 3.0) <= 30.0);
        QCOMPARE(shortened("short", 3.0, 30.0), std::string("short"));
    }

    void turnedTextCoversATurnedBox()
    {
        Text text = words(Role::Label, "turned", {50, 40}, 3.0);
        text.rotation = std::numbers::pi / 2.0; // reads upwards
        const Rectangle reach = boxOf(text).bounds();
        QVERIFY(reach.bottom < 40.001 && reach.top < 40.0 - textWidth("turned", 3.0) + 0.001);
        QVERIFY(std::abs(reach.right - 50.0 - descentInEm * 3.0) < 1e-9);
        const Box box = boxOf(words(Role::Label, "level", {10, 10}, 3.0, Anchor::Middle));
        const Text again = textIn(box, Role::Label, "level", 3.0);
        QVERIFY(norm(again.at - Point{10, 10}) < 1e-9);
    }

    void labelsKeepOffEachOtherUntilThePageIsFull()
    {
        Placement placement({0, 0, 60, 40});
        std::vector<Shape> shapes{line(Role::Run, {0, 20}, {60, 20})};
        placement.block(shapes);
        LabelWish wish;
        wish.text = "label";
        wish.target = {30, 20};
        wish.directions = {{0, -1}};
        int placed = 0;
        while (placement.place(wish, shapes))
            ++placed;
        QVERIFY(placed >= 4 && placed < 60);
        DisplayList list = pageWith(shapes.front());
        list.shapes = shapes;
        for (const std::string& fault : faultsOf(list))
            QFAIL(fault.c_str());
    }

    void theFirstDirectionWins()
    {
        Placement placement({0, 0, 100, 100});
        std::vector<Shape> shapes;
        LabelWish wish;
        wish.text = "x";
        wish.target = {50, 50};
        wish.directions = {{1, 0}, {-1, 0}};
        QVERIFY(placement.place(wish, shapes));
        QVERIFY(boxOf(std::get<Text>(shapes.front())).centre.x > 50.0);
        QVERIFY(placement.place(wish, shapes));
        QVERIFY(boxOf(std::get<Text>(shapes.back())).centre.x < 50.0);
    }

    void scalesAreUsualOnes()
    {
        QCOMPARE(scaleName(usualScale(100, 50, {0, 0, 100, 100})), std::string("1:1"));
        QCOMPARE(scaleName(usualScale(3000, 1000, {0, 0, 250, 150})), std::string("1:12"));
        QCOMPARE(scaleName(0.4), std::string("1:2.5"));
        QCOMPARE(scaleName(2.0), std::string("2:1"));
        QVERIFY(std::is_sorted(usualScales().rbegin(), usualScales().rend()));
    }

    void dotsStandOutOnAnyColour()
    {
        QCOMPARE(contrasting({255, 255, 255}), contrasting({226, 218, 198}));
        QCOMPARE(contrasting({0, 0, 0}), (Colour{255, 255, 255}));
        QCOMPARE(contrasting({70, 92, 118}), (Colour{255, 255, 255}));
    }
};

QTEST_APPLESS_MAIN(TestSvg)
#include "tst_svg.moc"
