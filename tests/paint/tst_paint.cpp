// Guards: the painter means what the SVG means: same shapes, same places, all text, nothing off the page; on
// paper the text can be read back and the page is true to size; every ground keeps its lines in sight.
#include "drawing/palette.h"
#include "paint/painter.h"

#include "drawing/plan_picture.h"
#include "drawing/svg.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QProcess>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QtTest>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace lapwright;
using namespace lapwright::drawing;

namespace {

DisplayList page()
{
    DisplayList list;
    list.width = Length::millimetres(120);
    list.height = Length::millimetres(80);
    list.title = "Title";
    return list;
}

/// One of every shape, stroke and fill but hatches and dots, which Qt's SVG reader does not know.
DisplayList everything()
{
    DisplayList list = page();
    list.shapes = {
        Path{Role::Sheet, {{10, 10}, {50, 12}, {40, 35}}, true, Stroke{0.5, Dash::Solid, {}}, Fill{}},
        Path{Role::Dimension, {{10, 60}, {50, 60}}, false, Stroke{0.4, Dash::Dashed, {}}, {}},
        Path{Role::Run, {{10, 74}, {50, 74}}, false, Stroke{0.6, Dash::DashDot, {}}, {}},
        Circle{Role::Corner,
               {70, 20},
               8,
               Stroke{0.5, Dash::Solid, Colour{200, 0, 0}},
               Fill{true, Colour{0, 120, 0}, Hatch::None}},
        Arc{Role::AngleMark, {95, 20}, 10, 0.3, 2.0, Stroke{0.5, Dash::Solid, {}}},
        Arc{Role::AngleMark, {95, 45}, 10, 0.3, -4.0, Stroke{0.5, Dash::Solid, {}}},
        Text{Role::Label, "12' 6-3/8\"", {60, 45}, 4.0, Anchor::Middle, false, 0.0},
        Text{Role::Title, "Eave <E1>", {110, 60}, 5.0, Anchor::End, true, 0.0},
        Text{Role::Note, "turned", {60, 75}, 4.0, Anchor::Start, false, std::numbers::pi / 2.0},
    };
    return list;
}

QImage painted(const DisplayList& list, int perMillimetre, paint::Ground ground = paint::Ground::Paper)
{
    QImage image(120 * perMillimetre, 80 * perMillimetre, QImage::Format_ARGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paint::paint(painter, list, QRectF(QPointF(), image.size()), ground);
    return image;
}

QImage fromSvg(const DisplayList& list, int perMillimetre)
{
    QImage image(120 * perMillimetre, 80 * perMillimetre, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QSvgRenderer renderer(QByteArray::fromStdString(toSvg(list)));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, QRectF(QPointF(), image.size()));
    return image;
}

/// Dark pixels of `one` with no pixel at least half as dark within `reach` in `other`.
int strays(const QImage& one, const QImage& other, int reach)
{
    const auto darkness = [](const QImage& image, int x, int y) {
        return image.valid(x, y) ? 255 - qGray(image.pixel(x, y)) : 0;
    };
    int count = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            const int dark = darkness(one, x, y);
            if (dark < 100)
                continue;
            int nearest = 0;
            for (int down = -reach; down <= reach; ++down)
                for (int across = -reach; across <= reach; ++across)
                    nearest = std::max(nearest, darkness(other, x + across, y + down));
            if (2 * nearest < dark)
                ++count;
        }
    }
    return count;
}

int inkIn(const QImage& image, const QRect& area)
{
    int count = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x)
            count += image.valid(x, y) && qGray(image.pixel(x, y)) < 200 ? 1 : 0;
    return count;
}

} // namespace

class TestPaint : public QObject {
    Q_OBJECT

private slots:
    void theSameAsTheSvg()
    {
        const QImage ours = painted(everything(), 8), svg = fromSvg(everything(), 8);
        // Two pixels at 8 to the millimetre: a quarter of a millimetre, for how the two set dashes and
        // hinting.
        QCOMPARE(strays(ours, svg, 2), 0);
        QCOMPARE(strays(svg, ours, 2), 0);
    }

    void everyTextFillsItsBox()
    {
        const DisplayList list = everything();
        const QImage image = painted(list, 8);
        for (const Shape& shape : list.shapes) {
            if (const auto* text = std::get_if<Text>(&shape)) {
                const Rectangle box = boxOf(*text).bounds();
                const QRectF inPixels(8 * box.left, 8 * box.top, 8 * box.width(), 8 * box.height());
                QVERIFY2(inkIn(image, inPixels.toRect()) > 40, text->text.c_str());
            }
        }
    }

    void aHatchStaysInItsOutline_data()
    {
        QTest::addColumn<int>("hatch");
        QTest::newRow("rising") << static_cast<int>(Hatch::Rising);
        QTest::newRow("crossed") << static_cast<int>(Hatch::Crossed);
        QTest::newRow("dotted") << static_cast<int>(Hatch::Dotted);
    }

    void aHatchStaysInItsOutline()
    {
        QFETCH(int, hatch);
        DisplayList list = page();
        list.shapes = {Path{Role::Waste,
                            {{20, 20}, {60, 20}, {60, 50}, {20, 50}},
                            true,
                            {},
                            Fill{true, {}, static_cast<Hatch>(hatch)}}};
        const QImage image = painted(list, 8);
        const QRect inside(160, 160, 320, 240);
        const int within = inkIn(image, inside.adjusted(-1, -1, 1, 1));
        const double share = within / (320.0 * 240.0);
        QVERIFY2(share > 0.03 && share < 0.35, qPrintable(QString::number(share)));
        QCOMPARE(inkIn(image, image.rect()), within);
    }

    void aDottedLineIsDots()
    {
        DisplayList list = page();
        list.shapes = {Path{Role::Run, {{10, 40}, {50, 40}}, false, Stroke{0.4, Dash::Dotted, {}}, {}}};
        const QImage image = painted(list, 8);
        int dots = 0;
        for (int x = 1; x < image.width(); ++x)
            dots += qGray(image.pixel(x, 320)) < 128 && qGray(image.pixel(x - 1, 320)) >= 128 ? 1 : 0;
        // One every 2 mm (five widths), both ends included.
        QVERIFY2(dots == 20 || dots == 21, qPrintable(QString::number(dots)));
    }

    void nothingLeavesThePage()
    {
        DisplayList list = page();
        list.shapes = {Path{Role::Run, {{-50, 40}, {500, 40}}, false, Stroke{5, Dash::Solid, {}}, {}}};
        QImage image(400, 400, QImage::Format_ARGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paint::paint(painter, list, QRectF(100, 100, 240, 240));
        painter.end();
        // The page is 3:2, so it lies in the middle of the square: 240 by 160.
        const QRect pageArea(100, 140, 240, 160);
        QVERIFY(inkIn(image, pageArea) > 0);
        QCOMPARE(inkIn(image, image.rect()), inkIn(image, pageArea));
    }

    void aPageOfNoExtentPaintsNothing()
    {
        QVERIFY(paint::placed(DisplayList(), QRectF(0, 0, 10, 10)).isIdentity());
        QVERIFY(paint::placed(page(), QRectF()).isIdentity());
    }

    void onPaperTextIsTextAndSizeIsTrue()
    {
        const QTemporaryDir folder;
        const QString file = folder.filePath("page.pdf");
        {
            QPdfWriter writer(file);
            writer.setPageSize(QPageSize(QSizeF(120, 80), QPageSize::Millimeter));
            writer.setPageMargins(QMarginsF());
            QPainter painter(&writer);
            paint::paint(painter, everything(), QRectF(0, 0, writer.width(), writer.height()));
        }
        QProcess reader;
        reader.start("pdftotext", {"-bbox", file, "-"});
        QVERIFY2(reader.waitForFinished() && reader.exitCode() == 0, "needs pdftotext of poppler-utils");
        const QString found = QString::fromUtf8(reader.readAllStandardOutput());
        for (const char* word : {">12&apos;<", ">6-3/8&quot;<", ">&lt;E1&gt;<", ">turned<"})
            QVERIFY2(found.contains(word), qPrintable(word + found));
        // 120 mm are 340.16 points.
        QVERIFY2(found.contains("page width=\"340."), qPrintable(found.left(400)));
    }

    void everyLineStandsOutOnItsGround()
    {
        for (const auto& [ground, least] : {std::pair{paint::Ground::Paper, 4.5},
                                            {paint::Ground::Dark, 7.0},
                                            {paint::Ground::HighContrast, 7.0}}) {
            for (int role = 0; role <= static_cast<int>(Role::Waste); ++role) {
                const double contrast = drawing::contrastOf(
                    paint::inkOn(ground, static_cast<Role>(role)).line, paint::pageColour(ground));
                QVERIFY2(contrast >= least,
                         qPrintable(QStringLiteral("role %1: %2").arg(role).arg(contrast)));
            }
        }
    }

    void contrastIsThatOfTheStandard()
    {
        // WCAG 2.1, "contrast ratio": 21 for black on white, 1 for a colour on itself.
        QCOMPARE(drawing::contrastOf({0, 0, 0}, {255, 255, 255}), 21.0);
        QCOMPARE(drawing::contrastOf({90, 20, 30}, {90, 20, 30}), 1.0);
    }
};

QTEST_MAIN(TestPaint)
#include "tst_paint.moc"
