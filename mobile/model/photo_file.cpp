#include "model/photo_file.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

#include <algorithm>

namespace lapwright::field {

namespace {

constexpr int jpegQuality = 85;
/// More pixels than any camera of a tablet takes.
constexpr qint64 mostPixels = 200'000'000;

/// What is see-through stands on white: a JPEG knows no transparency.
QImage onWhite(const QImage& image)
{
    if (!image.hasAlphaChannel())
        return image.convertToFormat(QImage::Format_RGB32);
    QImage ground(image.size(), QImage::Format_RGB32);
    ground.fill(Qt::white);
    QPainter(&ground).drawImage(0, 0, image);
    return ground;
}

} // namespace

Result<QByteArray> photoFrom(const QString& path)
{
    const std::string place = path.toStdString();
    const Error none{place, "no picture that can be read", "a photo, as JPEG or PNG"};
    QImageReader reader(path);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid())
        return none;
    if (qint64{size.width()} * size.height() > mostPixels)
        return Error{place,
                     "a picture of " + std::to_string(size.width()) + " by " + std::to_string(size.height()) +
                         " pixels",
                     "a photo of at most 200 million pixels"};
    if (std::max(size.width(), size.height()) > longestPhotoSide)
        reader.setScaledSize(
            size.scaled(longestPhotoSide, longestPhotoSide, Qt::KeepAspectRatio).expandedTo(QSize(1, 1)));
    const QImage image = reader.read();
    if (image.isNull())
        return none;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !onWhite(image).save(&buffer, "JPEG", jpegQuality))
        return Error{place, "a picture that cannot be kept", "JPEG support of this system"};
    return bytes;
}

} // namespace lapwright::field
