#include "schedule/label_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <vector>

namespace lapwright::schedule {

namespace {

/// Every character of a label, in the order of its value. All of them are in the alphanumeric set of QR codes
/// (ISO/IEC 18004).
constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-./:$";
constexpr int modulus = 41;
static_assert(alphabet.size() == modulus);
constexpr int primitiveRoot = 6;

/// Digits to the base of 32 without the letters that are taken for figures.
constexpr std::string_view orderDigits = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t orderLength = 26;
constexpr std::string_view hexDigits = "0123456789abcdef";
constexpr std::array<std::size_t, 4> hyphens = {8, 13, 18, 23};
constexpr std::size_t uuidLength = 36;

constexpr std::string_view opening = "L1";
constexpr std::size_t longestName = 400;
constexpr std::size_t longestText = 4000;

/// What has to stand behind `text` so that the weighted values add up. Precondition: all of the alphabet.
char checkCharacter(std::string_view text)
{
    int sum = 0;
    int weight = primitiveRoot;
    for (std::size_t at = text.size(); at-- > 0; weight = weight * primitiveRoot % modulus)
        sum = (sum + weight * static_cast<int>(alphabet.find(text[at]))) % modulus;
    return alphabet[static_cast<std::size_t>((modulus - sum) % modulus)];
}

/// The number with digits `from` written to another base, most significant digit first; bits are taken and
/// given in groups, so that leading bits of the first group are 0.
std::vector<std::size_t> regrouped(const std::vector<std::size_t>& from, int bitsFrom, int bitsTo)
{
    std::vector<std::size_t> to;
    std::size_t held = 0;
    int bits = 0;
    for (auto digit = from.rbegin(); digit != from.rend(); ++digit) {
        held |= *digit << static_cast<unsigned>(bits);
        bits += bitsFrom;
        for (; bits >= bitsTo; bits -= bitsTo) {
            to.push_back(held & ((std::size_t(1) << static_cast<unsigned>(bitsTo)) - 1));
            held >>= static_cast<unsigned>(bitsTo);
        }
    }
    to.push_back(held);
    std::reverse(to.begin(), to.end());
    return to;
}

std::optional<std::string> orderFromUuid(const std::string& uuid)
{
    if (uuid.size() != uuidLength)
        return std::nullopt;
    std::vector<std::size_t> digits;
    for (std::size_t at = 0; at < uuidLength; ++at) {
        const bool hyphen = std::find(hyphens.begin(), hyphens.end(), at) != hyphens.end();
        const std::size_t value = hexDigits.find(uuid[at]);
        if (hyphen ? uuid[at] != '-' : value == std::string_view::npos)
            return std::nullopt;
        if (!hyphen)
            digits.push_back(value);
    }
    std::string order;
    for (const std::size_t digit : regrouped(digits, 4, 5))
        order.push_back(orderDigits[digit]);
    return order;
}

std::optional<std::string> uuidFromOrder(std::string_view order)
{
    if (order.size() != orderLength)
        return std::nullopt;
    std::vector<std::size_t> digits;
    for (const char character : order) {
        digits.push_back(orderDigits.find(character));
        if (digits.back() == std::string_view::npos)
            return std::nullopt;
    }
    std::vector<std::size_t> hex = regrouped(digits, 5, 4);
    // 26 digits hold 130 bits: the two above the UUID's 128 are nothing but 0, and so is what is left over.
    while (hex.size() > 32) {
        if (hex.front() != 0)
            return std::nullopt;
        hex.erase(hex.begin());
    }
    std::string uuid;
    for (const std::size_t digit : hex) {
        if (std::find(hyphens.begin(), hyphens.end(), uuid.size()) != hyphens.end())
            uuid.push_back('-');
        uuid.push_back(hexDigits[digit]);
    }
    return uuid;
}

std::string escaped(const std::string& name)
{
    constexpr std::string_view capitalHex = "0123456789ABCDEF";
    std::string text;
    for (const char character : name) {
        const auto byte = static_cast<unsigned char>(character);
        if (character >= 'a' && character <= 'z') {
            text.push_back('$');
            text.push_back(static_cast<char>(character - 'a' + 'A'));
        } else if ((character >= 'A' && character <= 'Z') || (character >= '0' && character <= '9') ||
                   character == '.' || character == '-') {
            text.push_back(character);
        } else {
            text.push_back('/');
            text.push_back(capitalHex[byte >> 4U]);
            text.push_back(capitalHex[byte & 0xFU]);
        }
    }
    return text;
}

std::optional<std::string> unescaped(std::string_view text)
{
    std::string name;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '$' && at + 1 < text.size()) {
            name.push_back(static_cast<char>(text[++at] - 'A' + 'a'));
        } else if (text[at] == '/' && at + 2 < text.size()) {
            unsigned byte = 0;
            const char* first = text.data() + at + 1;
            const auto read = std::from_chars(first, first + 2, byte, 16);
            if (read.ec != std::errc() || read.ptr != first + 2)
                return std::nullopt;
            name.push_back(static_cast<char>(static_cast<unsigned char>(byte)));
            at += 2;
        } else {
            name.push_back(text[at]);
        }
    }
    return name;
}

std::optional<std::int64_t> number(std::string_view text)
{
    std::int64_t value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || read.ec != std::errc() || read.ptr != text.data() + text.size())
        return std::nullopt;
    return value;
}

std::vector<std::string_view> fieldsOf(std::string_view text)
{
    std::vector<std::string_view> fields;
    for (std::size_t from = 0;;) {
        const std::size_t to = text.find(':', from);
        fields.push_back(text.substr(from, to == std::string_view::npos ? to : to - from));
        if (to == std::string_view::npos)
            return fields;
        from = to + 1;
    }
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blank = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blank);
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(blank) - first + 1);
}

/// What labelText may have written with these fields; whether it would have is for it to say.
std::optional<LabelText> labelOf(const std::vector<std::string_view>& fields)
{
    if (fields.size() != 7 || !fields[6].empty() || fields[0] != opening)
        return std::nullopt;
    const auto order = uuidFromOrder(fields[1]);
    const auto revision = number(fields[2]), count = number(fields[5]);
    const auto mark = unescaped(fields[3]), bundle = unescaped(fields[4]);
    if (!order || !revision || !mark || !bundle || !count)
        return std::nullopt;
    return LabelText{*order, *revision, *mark, *bundle, *count};
}

} // namespace

Result<std::string> labelText(const LabelText& label)
{
    const auto order = orderFromUuid(label.order);
    if (!order)
        return Error{"order", label.order, "a UUID in lower case"};
    if (label.revision < 1)
        return Error{"revision", std::to_string(label.revision), "1 or more"};
    if (label.count < 1)
        return Error{"count", std::to_string(label.count), "1 or more"};
    if (label.mark.empty() && label.bundle.empty())
        return Error{"mark", "neither a mark nor a bundle", "one of them"};
    if (std::max(label.mark.size(), label.bundle.size()) > longestName)
        return Error{label.mark.size() > longestName ? "mark" : "bundle", "more than 400 bytes",
                     "a short name"};
    const std::string text = std::string(opening) + ":" + *order + ":" + std::to_string(label.revision) +
                             ":" + escaped(label.mark) + ":" + escaped(label.bundle) + ":" +
                             std::to_string(label.count) + ":";
    return text + checkCharacter(text);
}

Result<LabelText> readLabelText(std::string_view text)
{
    const std::string_view read = trimmed(text);
    if (read.empty() || read.size() > longestText ||
        read.find_first_not_of(alphabet) != std::string_view::npos)
        return Error{"label", "a code that is not one of ours", "the code of a piece's or bundle's label"};
    if (checkCharacter(read.substr(0, read.size() - 1)) != read.back())
        return Error{"label", "a code that was not read right", "to scan it again, or to type the mark"};
    // The check character may be a colon itself.
    const auto label = labelOf(fieldsOf(read.substr(0, read.size() - 1)));
    if (label) {
        const auto again = labelText(*label);
        if (again.ok() && *again == read)
            return *label;
    }
    return Error{"label", "a code that is not one of ours", "the code of a piece's or bundle's label"};
}

} // namespace lapwright::schedule
