#include "documents/schema.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::documents {
namespace {

/// Longest text a pattern is tried on: the regular expressions of the standard library recurse by character.
constexpr std::size_t longestMatched = 1'000;

unsigned typeOf(const Json& value)
{
    switch (value.type()) {
    case Json::value_t::null:
        return SchemaNode::Null;
    case Json::value_t::boolean:
        return SchemaNode::Boolean;
    case Json::value_t::number_integer:
    case Json::value_t::number_unsigned:
        return SchemaNode::Integer;
    case Json::value_t::number_float:
        return std::trunc(value.get<double>()) == value.get<double>() ? SchemaNode::Integer
                                                                      : SchemaNode::Number;
    case Json::value_t::string:
        return SchemaNode::Text;
    case Json::value_t::array:
        return SchemaNode::List;
    default:
        return SchemaNode::Object;
    }
}

std::string namesOf(unsigned types)
{
    constexpr std::array<std::pair<unsigned, std::string_view>, 6> names{{
        {SchemaNode::Null, "null"},
        {SchemaNode::Boolean, "true or false"},
        {SchemaNode::Integer, "a whole number"},
        {SchemaNode::Text, "a text"},
        {SchemaNode::List, "a list"},
        {SchemaNode::Object, "an object"},
    }};
    std::string list;
    for (const auto& [type, name] : names)
        if ((types & type) != 0)
            list.append(list.empty() ? "" : " or ")
                .append((types & SchemaNode::Number) != 0 && type == SchemaNode::Integer ? "a number" : name);
    return list;
}

/// What stands there, short enough for one line.
std::string shown(const Json& value)
{
    constexpr std::size_t most = 40;
    if (value.is_object() || value.is_array())
        return (value.is_object() ? "an object of " : "a list of ") + std::to_string(value.size());
    std::string text;
    if (value.is_string())
        writeJsonText(std::string_view(value.get_ref<const std::string&>()).substr(0, most), text);
    else
        writeJson(value, text);
    return text;
}

std::size_t characters(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char unit) {
        return (static_cast<unsigned char>(unit) & 0xC0U) != 0x80U;
    }));
}

std::string number(double value)
{
    std::string text;
    writeJson(Json(value), text);
    return text;
}

/// Where the check stands, from the root; written out only when something is wrong.
struct Place {
    const Place* outer = nullptr;
    const std::string* member = nullptr;
    std::size_t index = 0;

    [[nodiscard]] std::string pointer() const
    {
        if (outer == nullptr)
            return {};
        return outer->pointer() + "/" + (member != nullptr ? pointerStep(*member) : std::to_string(index));
    }
};

class Checker {
public:
    explicit Checker(std::size_t most) : most_(most) {}

    void check(const SchemaNode& node, const Json& value, const Place& place)
    {
        if (full())
            return;
        if (node.never)
            return report(place, node, value, "nothing here");
        if (node.reference != nullptr)
            return check(*node.reference, value, place); // draft 7: what stands beside $ref is ignored
        const unsigned type = typeOf(value);
        if (node.types != 0 && (node.types & type) == 0)
            return report(place, node, value, namesOf(node.types));
        if (!node.allowed.empty() &&
            std::find(node.allowed.begin(), node.allowed.end(), value) == node.allowed.end())
            return report(place, node, value, oneOf(node.allowed));
        if ((type & (SchemaNode::Integer | SchemaNode::Number)) != 0)
            checkNumber(node, value, place);
        else if (type == SchemaNode::Text)
            checkText(node, value, place);
        else if (type == SchemaNode::List)
            checkList(node, value, place);
        else if (type == SchemaNode::Object)
            checkObject(node, value, place);
        checkCombined(node, value, place);
    }

    [[nodiscard]] std::vector<Error> take() { return std::move(errors_); }

private:
    [[nodiscard]] bool full() const { return errors_.size() >= most_; }

    void report(const Place& place, const SchemaNode& node, const Json& value, std::string expected)
    {
        if (!node.description.empty())
            expected += " (" + node.description + ")";
        if (!full())
            errors_.push_back({place.pointer(), shown(value), std::move(expected)});
    }

    static std::string oneOf(const std::vector<Json>& allowed)
    {
        std::string list;
        for (const Json& value : allowed)
            list += (list.empty() ? "" : " or ") + shown(value);
        return list;
    }

    void checkNumber(const SchemaNode& node, const Json& value, const Place& place)
    {
        const double size = value.get<double>();
        if (node.minimum && size < *node.minimum)
            report(place, node, value, "at least " + number(*node.minimum));
        if (node.maximum && size > *node.maximum)
            report(place, node, value, "at most " + number(*node.maximum));
        if (node.above && size <= *node.above)
            report(place, node, value, "more than " + number(*node.above));
        if (node.below && size >= *node.below)
            report(place, node, value, "less than " + number(*node.below));
        if (node.multipleOf && std::remainder(size, *node.multipleOf) != 0.0)
            report(place, node, value, "a multiple of " + number(*node.multipleOf));
    }

    void checkText(const SchemaNode& node, const Json& value, const Place& place)
    {
        const std::string& text = value.get_ref<const std::string&>();
        const bool counted = node.leastLength || node.mostLength;
        const std::size_t length = counted ? characters(text) : 0;
        if (node.leastLength && length < *node.leastLength)
            report(place, node, value,
                   *node.leastLength == 1
                       ? "a text that is not empty"
                       : "a text of at least " + std::to_string(*node.leastLength) + " characters");
        if (node.mostLength && length > *node.mostLength)
            return report(place, node, value,
                          "a text of at most " + std::to_string(*node.mostLength) + " characters");
        if (node.pattern && (text.size() > longestMatched || !std::regex_search(text, *node.pattern)))
            report(place, node, value, "a text like " + node.patternText);
    }

    void checkList(const SchemaNode& node, const Json& value, const Place& place)
    {
        if (node.leastItems && value.size() < *node.leastItems)
            report(place, node, value, "a list of at least " + std::to_string(*node.leastItems));
        if (node.mostItems && value.size() > *node.mostItems)
            return report(place, node, value, "a list of at most " + std::to_string(*node.mostItems));
        if (node.uniqueItems) {
            std::vector<Json> sorted(value.begin(), value.end());
            std::sort(sorted.begin(), sorted.end());
            if (std::adjacent_find(sorted.begin(), sorted.end()) != sorted.end())
                report(place, node, value, "each entry once");
        }
        if (node.items != nullptr)
            for (std::size_t index = 0; index < value.size() && !full(); ++index)
                check(*node.items, value[index], Place{&place, nullptr, index});
    }

    void checkObject(const SchemaNode& node, const Json& value, const Place& place)
    {
        const auto& object = value.get_ref<const Json::object_t&>();
        if (node.leastMembers && object.size() < *node.leastMembers)
            report(place, node, value, "at least " + std::to_string(*node.leastMembers) + " members");
        if (node.mostMembers && object.size() > *node.mostMembers)
            return report(place, node, value, "at most " + std::to_string(*node.mostMembers) + " members");
        for (const std::string& name : node.required)
            if (object.find(name) == object.end() && !full())
                errors_.push_back({place.pointer(), "no member \"" + name + "\"", "member \"" + name + "\""});
        auto known = node.members.begin();
        for (const auto& [name, member] : object) {
            const Place inside{&place, &name, 0};
            if (node.memberNames != nullptr)
                check(*node.memberNames, Json(name), inside);
            while (known != node.members.end() && known->first < name)
                ++known;
            if (known != node.members.end() && known->first == name)
                check(*known->second, member, inside);
            else if (node.otherMembers != nullptr)
                check(*node.otherMembers, member, inside);
        }
    }

    static bool fits(const SchemaNode& node, const Json& value)
    {
        Checker trial(1);
        trial.check(node, value, Place{});
        return trial.errors_.empty();
    }

    void checkCombined(const SchemaNode& node, const Json& value, const Place& place)
    {
        for (const SchemaNode* part : node.allOf)
            check(*part, value, place);
        const auto fitting = [&value](const SchemaNode* part) { return fits(*part, value); };
        if (!node.anyOf.empty() && std::none_of(node.anyOf.begin(), node.anyOf.end(), fitting))
            report(place, node, value, "one of the forms the schema lists");
        if (!node.oneOf.empty() && std::count_if(node.oneOf.begin(), node.oneOf.end(), fitting) != 1)
            report(place, node, value, "exactly one of the forms the schema lists");
        if (node.refused != nullptr && fits(*node.refused, value))
            report(place, node, value, "another form");
        if (node.condition != nullptr) {
            const SchemaNode* branch = fits(*node.condition, value) ? node.then : node.otherwise;
            if (branch != nullptr)
                check(*branch, value, place);
        }
    }

    std::size_t most_;
    std::vector<Error> errors_;
};

} // namespace

std::vector<Error> Schema::check(const Json& value, std::size_t most) const
{
    Checker checker(most);
    checker.check(*root_, value, Place{});
    return checker.take();
}

} // namespace lapwright::documents
