#include "shop_code.h"

#include "print/code.h"
#include "shop.h"
#include "storage/shop_key.h"
#include "text.h"

namespace lapwright::model {

namespace {

constexpr drawing::Colour black{0, 0, 0}, white{255, 255, 255};

drawing::Path rectangle(double left, double top, double width, double height, drawing::Colour colour)
{
    return {drawing::Role::Label,
            {{left, top}, {left + width, top}, {left + width, top + height}, {left, top + height}},
            true,
            std::nullopt,
            drawing::Fill{true, colour}};
}

/// One module is a millimetre; dark modules beside each other are one rectangle.
drawing::DisplayList drawn(const print::Code& code, const QString& title)
{
    constexpr auto quiet = static_cast<double>(print::quietModules);
    const double side = static_cast<double>(code.size) + 2.0 * quiet;
    // What is drawn with soft edges would show seams between the rows.
    constexpr double overRow = 0.02;
    drawing::DisplayList list;
    list.width = list.height = Length::millimetres(static_cast<std::int64_t>(side));
    list.title = title.toStdString();
    list.shapes.push_back(rectangle(0.0, 0.0, side, side, white));
    for (std::size_t row = 0; row < code.size; ++row)
        for (std::size_t column = 0; column < code.size;) {
            std::size_t end = column;
            while (end < code.size && code.at(end, row))
                ++end;
            if (end > column)
                list.shapes.push_back(rectangle(quiet + static_cast<double>(column),
                                                quiet + static_cast<double>(row),
                                                static_cast<double>(end - column), 1.0 + overRow, black));
            column = end + 1;
        }
    return list;
}

} // namespace

void ShopCode::reload()
{
    const storage::Database& database = shop().database();
    auto key = storage::shopPublicKey(database);
    if (!key)
        key = database.write([&] { return storage::shopKey(database).publicKey(); });
    const std::string code = documents::pairingCode(*key);
    if (shown(code) == code_)
        return;
    code_ = shown(code);
    picture_ = drawn(print::codeOf(code).value(), tr("This shop's code as a QR code"));
    emit codeChanged();
}

} // namespace lapwright::model
