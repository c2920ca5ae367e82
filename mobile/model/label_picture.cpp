#include "model/label_picture.h"

#include <QImageReader>

#include <ZXing/ReadBarcode.h>

#include <algorithm>

namespace lapwright::field {

namespace {

/// A label photographed whole still has several pixels to each module of its code at this size.
constexpr int longestSide = 3000;

} // namespace

Result<QString> labelOn(const QString& path)
{
    const std::string place = path.toStdString();
    QImageReader reader(path);
    reader.setDecideFormatFromContent(true);
    const QSize size = reader.size();
    if (std::max(size.width(), size.height()) > longestSide)
        reader.setScaledSize(size.scaled(longestSide, longestSide, Qt::KeepAspectRatio));
    const QImage grey = reader.read().convertToFormat(QImage::Format_Grayscale8);
    if (grey.isNull())
        return Error{place, "no picture that can be read", "a photo of a label, as JPEG or PNG"};
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    const ZXing::Result code =
        ZXing::ReadBarcode({grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                            static_cast<int>(grey.bytesPerLine())},
                           hints);
    if (!code.isValid())
        return Error{place, "no code that can be read", "a photo with the whole QR code of a label, sharp"};
    return QString::fromStdWString(code.text());
}

} // namespace lapwright::field
