#include "measure/writing.h"

#include "measure/rounding.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <numeric>

namespace lapwright {

namespace {

std::string decimal(double value, int decimals, bool trimZeros)
{
    std::array<char, 64> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.*f", decimals, value);
    std::string text = buffer.data();
    if (trimZeros && text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string inchesAndFraction(std::int64_t ticks, std::int64_t denominator)
{
    const std::int64_t whole = ticks / denominator, rest = ticks % denominator;
    if (rest == 0)
        return std::to_string(whole);
    const std::int64_t divisor = std::gcd(rest, denominator);
    const std::string fraction = std::to_string(rest / divisor) + "/" + std::to_string(denominator / divisor);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

/// Behind feet the inches are written even where they are none: 10' 0 5/16", which cannot be taken for 10
/// 5/16".
std::string behindFeet(const std::string& inches, bool noWholeInch)
{
    return noWholeInch && inches != "0" ? "0 " + inches : inches;
}

} // namespace

std::string writeKilograms(double kilograms)
{
    return decimal(kilograms, 1, false) + " kg";
}

std::string writeMass(double kilograms, const Style& style)
{
    return style.unit == LengthUnit::Millimetres ? writeKilograms(kilograms)
                                                 : decimal(kilograms / kilogramsPerPound, 0, false) + " lb";
}

std::string translated(const std::string& english, const Style& style)
{
    return style.translation == nullptr ? english : style.translation({english, {}}).text;
}

std::string counted(std::int64_t count, const std::string& what)
{
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

std::string counted(std::int64_t count, const std::string& what, const Style& style)
{
    return std::to_string(count) + " " + translated(what + (count == 1 ? "" : "s"), style);
}

std::string withSpaces(std::string_view name)
{
    std::string words(name);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

std::string write(Length value, const Style& style)
{
    if (style.unit == LengthUnit::Millimetres) {
        const Length step = Length::micrometres(100) * style.tenthsOfMillimetre;
        return decimal(inMillimetres(roundToNearest(value, step)), 1, true) + " mm";
    }
    const Length tick = Length::inches(1) / style.inchDenominator;
    const std::int64_t ticks = roundToNearest(magnitude(value), tick) / tick;
    const std::string sign = value < Length() && ticks != 0 ? "-" : "";
    const std::int64_t perFoot = std::int64_t{12} * style.inchDenominator;
    if (style.unit == LengthUnit::Inches || ticks < perFoot)
        return sign + inchesAndFraction(ticks, style.inchDenominator) + "\"";
    const std::int64_t over = ticks % perFoot;
    return sign + std::to_string(ticks / perFoot) + "' " +
           behindFeet(inchesAndFraction(over, style.inchDenominator), over < style.inchDenominator) + "\"";
}

namespace {

constexpr std::int64_t billion = 1'000'000'000;

/// whole.billionths without closing zeros.
std::string withBillionths(std::int64_t whole, std::int64_t billionths)
{
    std::string decimals = std::to_string(billion + billionths).substr(1);
    decimals.erase(decimals.find_last_not_of('0') + 1);
    return std::to_string(whole) + (decimals.empty() ? "" : "." + decimals);
}

/// Inches below one foot or all of them, as a fraction where that is exact. Precondition: value >= 0.
std::string exactInches(Length value)
{
    constexpr Length inch = Length::inches(1), tick = Length::sixtyFourths(1);
    if (value % tick == Length())
        return inchesAndFraction(value / tick, 64);
    // The fewest decimals whose reading rounds back to this nanometre.
    const std::int64_t over = (value % inch).inNanometres(), size = inch.inNanometres();
    for (std::int64_t step = billion / 10; step > 1; step /= 10) {
        const std::int64_t billionths = (over * (billion / step) + size / 2) / size * step;
        if (billionths < billion && (billionths * size + billion / 2) / billion == over)
            return withBillionths(value / inch, billionths);
    }
    return withBillionths(value / inch, (over * billion + size / 2) / size);
}

} // namespace

std::string writeExact(Length value, LengthUnit unit)
{
    const std::string sign = value < Length() ? "-" : "";
    const Length size = magnitude(value);
    if (unit == LengthUnit::Millimetres) {
        constexpr std::int64_t millimetre = 1'000'000;
        const std::int64_t nanometres = size.inNanometres();
        return sign + withBillionths(nanometres / millimetre, nanometres % millimetre * 1'000) + " mm";
    }
    constexpr Length foot = Length::feet(1);
    if (unit == LengthUnit::Inches || size < foot)
        return sign + exactInches(size) + "\"";
    // A decimal fraction of an inch has its own 0 before the point.
    const Length over = size % foot;
    const bool isFraction = over < Length::inches(1) && over % Length::sixtyFourths(1) == Length();
    return sign + std::to_string(size / foot) + "' " + behindFeet(exactInches(over), isFraction) + "\"";
}

std::string writeThickness(Length value, const Style& style)
{
    if (style.unit == LengthUnit::Millimetres)
        return decimal(inMillimetres(value), 2, false) + " mm";
    return decimal(inInches(value), 4, false) + "\"";
}

std::string write(Angle value)
{
    return decimal(value.inDegrees(), 2, true) + "°";
}

std::string write(Slope value)
{
    return decimal(value.ratio() * 12.0, 2, true) + " in 12";
}

namespace {

struct Writer {
    const Style& style;
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Length value) const { return write(value, style); }
    std::string operator()(Angle value) const { return write(value); }
    std::string operator()(Slope value) const { return write(value); }
    std::string operator()(std::int64_t value) const { return std::to_string(value); }
    std::string operator()(double value) const { return decimal(value, 4, true); }
    std::string operator()(Mass value) const { return writeMass(value.inKilograms(), style); }
};

} // namespace

std::string say(const Phrase& english, const Style& style)
{
    const Phrase phrase = style.translation == nullptr ? english : style.translation(english);
    std::string out;
    std::size_t at = 0;
    while (at < phrase.text.size()) {
        const std::size_t open = phrase.text.find('{', at);
        const std::size_t close = open == std::string::npos ? open : phrase.text.find('}', open);
        if (close == std::string::npos)
            break;
        out.append(phrase.text, at, open - at);
        const std::string name = phrase.text.substr(open + 1, close - open - 1);
        bool known = false;
        for (const auto& [key, value] : phrase.values) {
            if (key != name)
                continue;
            out += std::visit(Writer{style}, value);
            known = true;
            break;
        }
        if (!known)
            out.append(phrase.text, open, close - open + 1);
        at = close + 1;
    }
    return out.append(phrase.text, at, std::string::npos);
}

} // namespace lapwright
