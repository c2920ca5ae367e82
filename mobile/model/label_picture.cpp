#include "model/label_picture.h"

#include <QImageReader>

#include <ZXing/ReadBarcode.h>

#include <algorithm>
#include <utility>

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
    const QImage photo = reader.read();
    if (photo.isNull())
        return Error{place, "no picture that can be read", "a photo of a label, as JPEG or PNG"};
    auto code = labelOn(photo);
    if (!code)
        return Error{place, "no code that can be read", "a photo with the whole QR code of a label, sharp"};
    return *std::move(code);
}

std::optional<QString> labelOn(const QImage& seen)
{
    const QImage grey = seen.convertToFormat(QImage::Format_Grayscale8);
    if (grey.isNull())
        return std::nullopt;
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    const ZXing::Result code =
        ZXing::ReadBarcode({grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                            static_cast<int>(grey.bytesPerLine())},
                           hints);
    if (!code.isValid())
        return std::nullopt;
    return QString::fromStdWString(code.text());
}

} // namespace lapwright::field
