#include "print/pdf.h"

#include "measure/rounding.h"
#include "print/paint_page.h"
#include "print/pdf_finish.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace lapwright::print {

namespace {

/// Fine enough that nothing on the page moves by more than a hundredth of a millimetre.
constexpr int dotsPerInch = 1200;

} // namespace

std::string pdfOf(const std::vector<Page>& pages, const PdfHead& head)
{
    const drawing::DisplayList& first = pages.front().list;
    const QSizeF size(inMillimetres(first.width), inMillimetres(first.height));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dotsPerInch);
    writer.setCreator(QStringLiteral("Lapwright"));
    writer.setTitle(QString::fromStdString(head.title));
    writer.setPageSize(QPageSize(size, QPageSize::Millimeter, QString(), QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF());
    const double dots = dotsPerInch / 25.4;
    QPainter painter(&writer);
    for (std::size_t page = 0; page < pages.size(); ++page) {
        if (page > 0)
            writer.newPage();
        paint(painter, pages[page], QRectF(QPointF(), size * dots));
    }
    painter.end();
    return finishedPdf(bytes.toStdString(), first.width, first.height, head.madeAt);
}

} // namespace lapwright::print
