// Guards: a label is true to size; its code decodes from the page as a label printer with 203 dots to the
// inch prints it, in black and white; its quiet zone is white; its words stay off each other, off the code
// and on the label.
#include "print/label.h"

#include "drawing/text.h"
#include "paper_texts.h"
#include "pdf_tools.h"
#include "print/pdf.h"
#include "schedule/label_text.h"

#include <QtTest>

#include <ZXing/ReadBarcode.h>

using namespace lapwright;
using namespace lapwright::print;

namespace {

const std::string order = "5e6c2d10-7b3f-4a52-9c81-000000000001";

trim::Profile dripEdge()
{
    trim::Profile profile;
    profile.name = "Eave drip edge";
    profile.legs = {
        {"deck", Length::inches(5) / 2}, {"face", Length::inches(2)}, {"kick", Length::inches(1) / 2}};
    profile.bends = {{Angle::degrees(-63.43), Length::thousandths(28)},
                     {Angle::degrees(35), Length::thousandths(28)}};
    profile.endHem = trim::Hem{trim::HemKind::Closed, Length::inches(3) / 8, trim::Side::Right, Length()};
    return profile;
}

Label label(int number)
{
    Label one;
    one.mark = "S1a." + std::to_string(number);
    one.beside = std::to_string(number) + " of 12";
    one.where = "Eave S1, roof edge walked with the house on the left";
    one.lines = {"Eave drip edge, 10' 6\"", "girth 5 5/16\", 4 lb (1.7 kg)"};
    one.material = "Slate \xC2\xB7 24 ga galvanised steel";
    one.job = "Larkfield House";
    one.foot = "revision 2 \xC2\xB7 printed 2026-11-25 14:05 \xC2\xB7 label 1 of 12";
    one.twoPeople = number % 2 == 0;
    one.code = *schedule::labelText({order, 2, one.mark, "", 1});
    one.profile = dripEdge();
    one.thickness = Length::thousandths(28);
    return one;
}

std::vector<Label> labels(int count)
{
    std::vector<Label> all;
    for (int number = 1; number <= count; ++number)
        all.push_back(label(number));
    return all;
}

const std::vector<const LabelStock*>& stocks()
{
    static const std::vector<const LabelStock*> all = {&roll100By50(), &roll4By2(), &letterSheetOf10(),
                                                       &a4SheetOf14()};
    return all;
}

/// Where on the image a code stands, its quiet zone with it.
QRect pixelsOf(const PlacedCode& code, double perMillimetre)
{
    const double quiet = code.module * quietModules;
    return QRectF((code.corner.x - quiet) * perMillimetre, (code.corner.y - quiet) * perMillimetre,
                  (code.side() + 2.0 * quiet) * perMillimetre, (code.side() + 2.0 * quiet) * perMillimetre)
        .toAlignedRect();
}

std::string decoded(const QImage& image)
{
    const QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(grey.bytesPerLine()));
    const ZXing::Result result = ZXing::ReadBarcode(view);
    if (!result.isValid())
        return {};
    const std::wstring wide = result.text();
    return QString::fromStdWString(wide).toStdString();
}

} // namespace

class LabelsTest : public QObject {
    Q_OBJECT
private slots:
    void everyLabelHasItsPlace()
    {
        for (const LabelStock* stock : stocks()) {
            const auto pages = labelPages(labels(23), *stock);
            const std::size_t perPage = static_cast<std::size_t>(stock->columns * stock->rows);
            QCOMPARE(pages.size(), (23 + perPage - 1) / perPage);
            std::size_t codes = 0;
            for (const Page& page : pages) {
                QCOMPARE(page.list.width, stock->pageWidth);
                QCOMPARE(page.list.height, stock->pageHeight);
                codes += page.codes.size();
            }
            QCOMPARE(codes, std::size_t{23});
            const std::string texts = textsOf(pages);
            for (int number = 1; number <= 23; ++number)
                QCOMPARE(countOf(texts, "S1a." + std::to_string(number)), 1);
            QCOMPARE(countOf(texts, "TWO PEOPLE"), 11);
            QVERIFY2(faultsOf(pages).isEmpty(),
                     qPrintable(QString::fromStdString(stock->name) + faultsOf(pages)));
        }
    }
    void theGridFillsTheSheet()
    {
        for (const LabelStock* stock : stocks()) {
            const Length right = stock->left + stock->acrossStep * (stock->columns - 1) + stock->width;
            const Length bottom = stock->top + stock->downStep * (stock->rows - 1) + stock->height;
            QVERIFY(right <= stock->pageWidth && bottom <= stock->pageHeight);
            // The same is left on the other side, to what a sheet may lie askew.
            QVERIFY(magnitude(stock->pageWidth - right - stock->left) <= Length::millimetres(1));
            QVERIFY(magnitude(stock->pageHeight - bottom - stock->top) <= Length::millimetres(1));
        }
    }
    void theQuietZoneIsWhite()
    {
        for (const LabelStock* stock : stocks())
            for (const Page& page : labelPages(labels(20), *stock))
                for (const PlacedCode& code : page.codes) {
                    QVERIFY(code.module >= 0.375 - 1e-6);
                    const double quiet = code.module * quietModules;
                    const drawing::Rectangle zone =
                        drawing::Rectangle{code.corner.x, code.corner.y, code.corner.x + code.side(),
                                           code.corner.y + code.side()}
                            .grown(quiet - 1e-6);
                    const drawing::Box box{zone.centre(), zone.width() / 2.0, zone.height() / 2.0, 0.0};
                    QVERIFY(zone.left >= 0.0 && zone.top >= 0.0);
                    for (const drawing::Shape& shape : page.list.shapes) {
                        if (const auto* text = std::get_if<drawing::Text>(&shape))
                            QVERIFY2(!drawing::overlap(drawing::boxOf(*text), box), text->text.c_str());
                        for (const drawing::Segment& line : drawing::strokes(shape))
                            QVERIFY(!drawing::overlap(line, box));
                    }
                }
    }
    void everyCodeIsReadFromThePrintedPage()
    {
        for (const LabelStock* stock : stocks()) {
            const auto all = labels(stock->rows > 1 ? stock->rows * stock->columns + 1 : 3);
            const auto pages = labelPages(all, *stock);
            const PdfFile file(pdfOf(pages, {"Labels", "2026-11-25T14:05:00Z"}));
            QVERIFY2(file.problems().isEmpty(), qPrintable(file.problems()));
            QVERIFY(std::abs(file.widthInPoints() - inInches(stock->pageWidth) * 72.0) < 0.02);
            QVERIFY(std::abs(file.heightInPoints() - inInches(stock->pageHeight) * 72.0) < 0.02);
            for (const char* ink : {"-mono", "-gray"}) {
                std::size_t next = 0;
                for (std::size_t number = 0; number < pages.size(); ++number) {
                    const QImage image = file.image(static_cast<int>(number) + 1, 203, ink);
                    QVERIFY(!image.isNull());
                    for (const PlacedCode& code : pages[number].codes)
                        QCOMPARE(QString::fromStdString(decoded(image.copy(pixelsOf(code, 203.0 / 25.4)))),
                                 QString::fromStdString(all[next++].code));
                }
                QCOMPARE(next, all.size());
            }
        }
    }
    void longNamesAndCodesFit()
    {
        Label one = label(1);
        one.mark = std::string(100, 'W') + ".123";
        one.where = one.job = one.material = one.foot = std::string(200, 'M');
        one.lines = {std::string(300, 'x'), "second", std::string(40, 'y') + " z"};
        one.code = *schedule::labelText({order, 1, one.mark, "", 1});
        Label endless = label(2);
        endless.code = std::string(5000, 'A');
        for (const LabelStock* stock : stocks()) {
            const auto pages = labelPages({one, endless, label(3)}, *stock);
            QVERIFY2(faultsOf(pages).isEmpty(),
                     qPrintable(QString::fromStdString(stock->name) + faultsOf(pages)));
            QCOMPARE(QString::fromStdString(textsOf(pages)).count("too much for a code"), 1);
        }
    }
};

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    LabelsTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_labels.moc"
