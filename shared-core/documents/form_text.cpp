#include "documents/form_text.h"

#include "documents/form.h"
#include "measure/rounding.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace lapwright::documents {

namespace {

using Kind = FormField::Kind;

/// A form keeps the order of members by looking each name up among those before it. Nobody fills in a form of
/// so many; the largest rule set that is shipped has not a tenth of them.
constexpr std::size_t mostValues = 10'000;

std::string trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\n");
    if (first == std::string_view::npos)
        return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t\n") - first + 1));
}

/// What stands between the marks; blanks around it and empty entries fall away.
std::vector<std::string> split(std::string_view text, char mark)
{
    std::vector<std::string> parts;
    while (!text.empty()) {
        const auto end = text.find(mark);
        if (std::string part = trimmed(text.substr(0, end)); !part.empty())
            parts.push_back(std::move(part));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    }
    return parts;
}

/// A number as JSON writes it, and nothing else.
Result<OrderedJson> numberOf(const std::string& text, bool whole)
{
    const auto read = parseJson(text);
    if (!read.ok() || !read->is_number() || (whole && !read->is_number_integer()))
        return Error{"", "\"" + text + "\"", whole ? "a whole number like 12" : "a number like 12.5"};
    return OrderedJson::parse(text);
}

Result<OrderedJson> numbersOf(std::string_view text)
{
    OrderedJson list = OrderedJson::array();
    for (const std::string& entry : split(text, ',')) {
        auto number = numberOf(entry, false);
        if (!number.ok())
            return number.errors();
        list.push_back(*std::move(number));
    }
    return list;
}

Result<OrderedJson> listOf(std::string_view text, bool ofNumbers)
{
    OrderedJson list = OrderedJson::array();
    if (!ofNumbers) {
        for (std::string& entry : split(text, ','))
            list.push_back(std::move(entry));
        return list;
    }
    if (text.find(';') == std::string_view::npos)
        return numbersOf(text);
    for (const std::string& point : split(text, ';')) {
        auto numbers = numbersOf(point);
        if (!numbers.ok())
            return numbers.errors();
        list.push_back(*std::move(numbers));
    }
    return list;
}

Result<OrderedJson> valueOf(const FormField& field, const std::string& entered)
{
    switch (field.kind) {
    case Kind::Number:
    case Kind::Whole:
        return numberOf(entered, field.kind == Kind::Whole);
    case Kind::YesNo:
        return OrderedJson(entered == "true");
    case Kind::List:
        return listOf(entered, field.ofNumbers);
    case Kind::Text:
    case Kind::Choice:
        return OrderedJson(entered);
    case Kind::Length:
    case Kind::Part:
    case Kind::Items:
    case Kind::Item:
        break;
    }
    return Error{field.pointer, "\"" + entered + "\"", "a length, or nothing for a heading"};
}

/// The parent of the place stands in the document: fields of parts that do not are not in a form.
Result<std::string> with(std::string_view document, const FormField& field, OrderedJson value)
{
    auto read = parseOrdered(document);
    if (!read.ok())
        return read.errors();
    (*read)[OrderedJson::json_pointer(field.pointer)] = std::move(value);
    return textOfDocument(*read);
}

std::string joined(const OrderedJson& list, const char* mark)
{
    std::string text;
    for (const OrderedJson& entry : list)
        text += (text.empty() ? "" : mark) + textOf(entry);
    return text;
}

} // namespace

Result<OrderedJson> parseOrdered(std::string_view document)
{
    Limits limits;
    limits.values = mostValues;
    const auto checked = parseJson(document, limits);
    if (!checked.ok())
        return checked.errors();
    if (!checked->is_object())
        return Error{"", "no object", "a document, { … }"};
    return OrderedJson::parse(document);
}

std::string textOfDocument(const OrderedJson& document)
{
    std::string text;
    layOut(document.dump(), 0, text);
    return text + "\n";
}

std::string textOf(const OrderedJson& value)
{
    if (value.is_string())
        return value.get<std::string>();
    if (value.is_array())
        return joined(value, !value.empty() && value.front().is_array() ? "; " : ", ");
    return value.is_object() || value.is_null() ? std::string() : value.dump();
}

std::optional<Length> lengthIn(double millimetres)
{
    if (std::abs(millimetres) > largestMillimetres)
        return std::nullopt;
    return nearestFromMillimetres(millimetres);
}

Result<std::string> filledIn(std::string_view document, const FormField& field, std::string_view entered)
{
    const std::string text = field.kind == Kind::Text ? std::string(entered) : trimmed(entered);
    if (text.empty() && !field.required)
        return without(document, field);
    if (text.empty() && field.kind == Kind::Length)
        return Error{field.pointer, "nothing", "a length"};
    auto value = valueOf(field, text);
    if (!value.ok())
        return value.errors();
    return with(document, field, *std::move(value));
}

Result<std::string> filledIn(std::string_view document, const FormField& field, Length entered)
{
    const double millimetres = inMillimetres(entered);
    const auto whole = static_cast<std::int64_t>(millimetres);
    return with(document, field,
                static_cast<double>(whole) == millimetres ? OrderedJson(whole) : OrderedJson(millimetres));
}

Result<std::string> without(std::string_view document, const FormField& heading)
{
    auto read = parseOrdered(document);
    if (!read.ok())
        return read.errors();
    const OrderedJson::json_pointer place(heading.pointer);
    if (!read->contains(place))
        return textOfDocument(*read);
    OrderedJson& owner = (*read)[place.parent_pointer()];
    if (owner.is_array())
        owner.erase(static_cast<std::size_t>(std::stoul(place.back())));
    else
        owner.erase(place.back());
    return textOfDocument(*read);
}

} // namespace lapwright::documents
