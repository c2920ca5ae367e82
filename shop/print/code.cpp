#include "print/code.h"

#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

#include <stdexcept>

namespace lapwright::print {

namespace {

/// On ZXing's scale from 0 to 8.
constexpr int mediumCorrection = 3;

} // namespace

std::optional<Code> codeOf(const std::string& text)
{
    if (text.empty())
        return std::nullopt;
    try {
        const ZXing::BitMatrix matrix = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode)
                                            .setMargin(0)
                                            .setEccLevel(mediumCorrection)
                                            .encode(text, 0, 0);
        Code code;
        code.size = static_cast<std::size_t>(matrix.width());
        code.dark.reserve(code.size * code.size);
        for (int row = 0; row < matrix.height(); ++row)
            for (int column = 0; column < matrix.width(); ++column)
                code.dark.push_back(matrix.get(column, row));
        return code;
    } catch (const std::invalid_argument&) {
        return std::nullopt; // how ZXing says that no code holds so much
    }
}

} // namespace lapwright::print
