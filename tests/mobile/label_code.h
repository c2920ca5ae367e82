#pragma once

#include <QImage>
#include <QString>

#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

#include <string>

namespace lapwright::field {

/// The QR code of a text as a printer makes it, `margin` modules of quiet zone round it.
inline QImage codeOf(const std::string& text, int margin, int side, QRgb dark = 0xff000000u,
                     QRgb light = 0xffffffffu)
{
    const ZXing::BitMatrix modules = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                                         .setMargin(margin)
                                         .encode(QString::fromStdString(text).toStdWString(), side, side);
    QImage code(modules.width(), modules.height(), QImage::Format_RGB32);
    for (int y = 0; y < modules.height(); ++y)
        for (int x = 0; x < modules.width(); ++x)
            code.setPixel(x, y, modules.get(x, y) ? dark : light);
    return code;
}

} // namespace lapwright::field
