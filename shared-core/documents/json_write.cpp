#include "documents/json_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace lapwright::documents {
namespace {

/// Longest value that stands on one line of the readable layout, indentation not counted.
constexpr std::size_t lineWidth = 160;

void appendInteger(std::int64_t value, std::string& text)
{
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    text.append(digits.data(), end);
}

/// `billionths` / 10^9 in decimals without trailing zeros.
void appendBillionths(std::int64_t billionths, std::string& text)
{
    constexpr std::int64_t whole = 1'000'000'000;
    if (billionths < 0)
        text += '-';
    const std::int64_t size = billionths < 0 ? -billionths : billionths;
    appendInteger(size / whole, text);
    std::array<char, 10> decimals{'.', '0', '0', '0', '0', '0', '0', '0', '0', '0'};
    std::int64_t rest = size % whole;
    std::size_t used = rest == 0 ? 0 : decimals.size();
    for (std::size_t place = decimals.size() - 1; place > 0; --place, rest /= 10) {
        decimals.at(place) = static_cast<char>('0' + rest % 10);
        if (used == place + 1 && decimals.at(place) == '0')
            --used;
    }
    text.append(decimals.data(), used);
}

void appendNumber(double value, std::string& text)
{
    constexpr double exactWhole = 9e15;
    if (std::trunc(value) == value && std::fabs(value) < exactWhole)
        return appendInteger(static_cast<std::int64_t>(value), text);
    constexpr double mostWithBillionths = 1e9;
    if (std::fabs(value) < mostWithBillionths) {
        const std::int64_t billionths = std::llround(value * 1e9);
        if (static_cast<double>(billionths) / 1e9 == value)
            return appendBillionths(billionths, text);
    }
    text += Json(value).dump();
}

/// Length of the UTF-8 sequence at `at`; 0 if there is none.
std::size_t sequenceLength(std::string_view value, std::size_t at)
{
    const auto byte = [&](std::size_t offset) {
        return at + offset < value.size() ? static_cast<unsigned char>(value[at + offset]) : 0U;
    };
    const auto follows = [&](std::size_t offset) { return (byte(offset) & 0xC0U) == 0x80U; };
    const unsigned first = byte(0);
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first < 0xE0)
        return follows(1) ? 2 : 0;
    if (first >= 0xE0 && first < 0xF0) {
        const bool shortest = first != 0xE0 || byte(1) >= 0xA0;
        const bool noSurrogate = first != 0xED || byte(1) < 0xA0;
        return follows(1) && follows(2) && shortest && noSurrogate ? 3 : 0;
    }
    if (first >= 0xF0 && first < 0xF5) {
        const bool shortest = first != 0xF0 || byte(1) >= 0x90;
        const bool inUnicode = first != 0xF4 || byte(1) < 0x90;
        return follows(1) && follows(2) && follows(3) && shortest && inUnicode ? 4 : 0;
    }
    return 0;
}

void appendEscaped(char letter, std::string& text)
{
    constexpr std::string_view hex = "0123456789abcdef";
    switch (letter) {
    case '"':
        text += "\\\"";
        return;
    case '\\':
        text += "\\\\";
        return;
    case '\n':
        text += "\\n";
        return;
    case '\t':
        text += "\\t";
        return;
    case '\r':
        text += "\\r";
        return;
    default:
        text += "\\u00";
        text += hex[static_cast<unsigned char>(letter) / 16U];
        text += hex[static_cast<unsigned char>(letter) % 16U];
    }
}

void appendScalar(const Json& value, std::string& text)
{
    switch (value.type()) {
    case Json::value_t::string:
        return writeJsonText(value.get_ref<const std::string&>(), text);
    case Json::value_t::boolean:
        text += value.get<bool>() ? "true" : "false";
        return;
    case Json::value_t::number_unsigned:
    case Json::value_t::number_integer:
        if (value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX)
            text += std::to_string(value.get<std::uint64_t>());
        else
            appendInteger(value.get<std::int64_t>(), text);
        return;
    case Json::value_t::number_float:
        return appendNumber(value.get<double>(), text);
    default:
        text += "null";
    }
}

/// Puts white space into canonical text.
class Layouter {
public:
    Layouter(std::string_view canonical, std::string& text) : in_(canonical), text_(text) {}

    void value(std::size_t indent)
    {
        const char first = in_[at_];
        if ((first != '{' && first != '[') || fitsOnLine())
            return copyInline();
        take();
        bool another = in_[at_] != '}' && in_[at_] != ']';
        while (another) {
            newLine(indent + 2);
            if (first == '{') {
                copyText();
                take();
                text_ += ' ';
            }
            value(indent + 2);
            another = in_[at_] == ',';
            if (another)
                take();
        }
        newLine(indent);
        take();
    }

private:
    void take() { text_ += in_[at_++]; }

    void newLine(std::size_t indent)
    {
        text_ += '\n';
        text_.append(indent, ' ');
    }

    /// Behind the text that begins at `at`.
    [[nodiscard]] std::size_t endOfText(std::size_t at) const
    {
        for (++at; in_[at] != '"'; ++at)
            if (in_[at] == '\\')
                ++at;
        return at + 1;
    }
    void copyText()
    {
        const std::size_t end = endOfText(at_);
        text_.append(in_.substr(at_, end - at_));
        at_ = end;
    }

    /// Calls `separator(place)` behind each comma and colon of the value that begins at `at`; stops behind
    /// the value, or where `separator` says no. Returns where it stopped.
    template <class Separator>
    [[nodiscard]] std::size_t walk(std::size_t at, const Separator& separator) const
    {
        for (std::size_t depth = 0; at < in_.size();) {
            const char letter = in_[at];
            if (letter == '"') {
                at = endOfText(at);
            } else {
                const bool closes = letter == '}' || letter == ']';
                if (depth == 0 && (closes || letter == ','))
                    break;
                ++at;
                if (letter == '{' || letter == '[')
                    ++depth;
                else if (closes)
                    --depth;
                else if ((letter == ',' || letter == ':') && !separator(at))
                    break;
            }
            if (depth == 0 && at < in_.size() && (in_[at] == ',' || in_[at] == '}' || in_[at] == ']'))
                break;
        }
        return at;
    }

    [[nodiscard]] bool fitsOnLine() const
    {
        std::size_t gaps = 0;
        const std::size_t end = walk(at_, [&](std::size_t at) { return at - at_ + ++gaps <= lineWidth; });
        return end - at_ + gaps <= lineWidth;
    }
    void copyInline()
    {
        std::size_t copied = at_;
        at_ = walk(at_, [&](std::size_t at) {
            text_.append(in_.substr(copied, at - copied)).append(" ");
            copied = at;
            return true;
        });
        text_.append(in_.substr(copied, at_ - copied));
    }

    std::string_view in_;
    std::size_t at_ = 0;
    std::string& text_;
};

} // namespace

void writeJsonText(std::string_view value, std::string& text)
{
    text += '"';
    std::size_t plain = 0;
    for (std::size_t at = 0; at < value.size();) {
        const std::size_t length = sequenceLength(value, at);
        const char letter = value[at];
        const bool escape =
            length == 1 && (static_cast<unsigned char>(letter) < 0x20 || letter == '"' || letter == '\\');
        if (length != 0 && !escape) {
            at += length;
            continue;
        }
        text.append(value.substr(plain, at - plain));
        if (escape)
            appendEscaped(letter, text);
        else
            text += "\xEF\xBF\xBD";
        plain = ++at;
    }
    text.append(value.substr(plain));
    text += '"';
}

void writeJson(const Json& value, std::string& text)
{
    if (!value.is_structured())
        return appendScalar(value, text);
    const bool object = value.is_object();
    text += object ? '{' : '[';
    bool first = true;
    for (auto item = value.begin(); item != value.end(); ++item) {
        if (!first)
            text += ',';
        first = false;
        if (object) {
            writeJsonText(item.key(), text);
            text += ':';
        }
        writeJson(*item, text);
    }
    text += object ? '}' : ']';
}

void layOut(std::string_view canonical, std::size_t indent, std::string& text)
{
    Layouter(canonical, text).value(indent);
}

} // namespace lapwright::documents
