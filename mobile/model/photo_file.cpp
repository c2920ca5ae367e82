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

QSize asKept(const QSize& size)
{
    if (std::max(size.width(), size.height()) <= longestPhotoSide)
        return size;
    return size.scaled(longestPhotoSide, longestPhotoSide, Qt::KeepAspectRatio).expandedTo(QSize(1, 1));
}

Result<QByteArray> asJpeg(const QImage& image, const std::string& place)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !onWhite(image).save(&buffer, "JPEG", jpegQuality))
        return Error{place, "a picture that cannot be kept", "JPEG support of this system"};
    return bytes;
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
    if (asKept(size) != size)
        reader.setScaledSize(asKept(size));
    const QImage image = reader.read();
    if (image.isNull())
        return none;
    return asJpeg(image, place);
}

Result<QByteArray> photoFrom(const QImage& seen)
{
    if (seen.isNull())
        return Error{"the camera", "no picture", "a camera that sees something"};
    return asJpeg(seen.size() == asKept(seen.size())
                      ? seen
                      : seen.scaled(asKept(seen.size()), Qt::IgnoreAspectRatio, Qt::SmoothTransformation),
                  "the camera");
}

} // namespace lapwright::field
