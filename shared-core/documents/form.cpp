#include "documents/form.h"

#include "documents/form_text.h"
#include "documents/schema.h"
#include "schedule/hours.h"

#include <algorithm>
#include <array>
#include <initializer_list>

namespace lapwright::documents {

namespace {

using Kind = FormField::Kind;

/// A part of a schema, with what it or what it refers to says of itself.
struct Known {
    const SchemaNode* node = nullptr;
    std::string help;
};

Known known(const SchemaNode& from)
{
    Known found{&from, from.description};
    while (found.node->reference != nullptr) {
        found.node = found.node->reference;
        if (found.help.empty())
            found.help = found.node->description;
    }
    return found;
}

const SchemaNode* memberOf(const SchemaNode& node, const std::string& name)
{
    const auto at = std::find_if(node.members.begin(), node.members.end(),
                                 [&](const auto& member) { return member.first == name; });
    return at == node.members.end() ? nullptr : at->second;
}

bool isRequired(const SchemaNode& node, const std::string& name)
{
    return std::find(node.required.begin(), node.required.end(), name) != node.required.end();
}

/// What makes a document what it is and nobody fills in.
bool isFixed(const SchemaNode& node, const std::string& name)
{
    return node.allowed.size() == 1 || name == "version" || name == "program";
}

bool endsWith(const std::string& text, std::string_view end)
{
    return text.size() > end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

bool isNumber(unsigned types)
{
    return (types & (SchemaNode::Number | SchemaNode::Integer)) != 0 && (types & SchemaNode::Text) == 0;
}

/// Nothing for a part, and for what may be of several types while it does not stand there.
std::optional<Kind> kindOf(const SchemaNode& node, const std::string& name, const OrderedJson* value)
{
    if (!node.allowed.empty())
        return Kind::Choice;
    if (node.items != nullptr) {
        const bool ofParts = value != nullptr && value->is_array() && !value->empty()
                                 ? value->front().is_object()
                                 : known(*node.items).node->types == SchemaNode::Object;
        return ofParts ? std::nullopt : std::optional(Kind::List);
    }
    if (node.types == SchemaNode::Boolean || (value != nullptr && value->is_boolean()))
        return Kind::YesNo;
    if (isNumber(node.types)) {
        if ((node.types & SchemaNode::Number) == 0)
            return Kind::Whole;
        const bool negative = !node.above && node.minimum.value_or(-1.0) < 0.0;
        return endsWith(name, "_mm") && !negative ? Kind::Length : Kind::Number;
    }
    if (value != nullptr && value->is_number())
        return Kind::Number;
    const bool text = node.types == SchemaNode::Text || (value != nullptr && value->is_string());
    return text ? std::optional(Kind::Text) : std::nullopt;
}

/// A list of numbers or of points. Where the schema leaves it open, what stands there decides.
bool isOfNumbers(const SchemaNode& item, const OrderedJson* list)
{
    if (isNumber(item.types) || item.items != nullptr)
        return true;
    return list != nullptr && list->is_array() && !list->empty() && list->front().is_number();
}

/// What a person calls one part of a list by.
std::string nameOf(const OrderedJson& item)
{
    for (const char* member : {"label", "name", "number", "id", "metal", "fact", "measure", "date"})
        if (const auto found = item.find(member); found != item.end() && found->is_string())
            return found->get<std::string>();
    return {};
}

/// Days of the week as they follow one another, before everything else.
std::size_t dayOf(const std::string& member)
{
    const auto& days = schedule::weekdayNames();
    return static_cast<std::size_t>(std::find(days.begin(), days.end(), member) - days.begin());
}

/// What the schema knows: as it stands in the object, then what may stand there too.
std::vector<std::string> inOrder(const SchemaNode& node, const OrderedJson& object)
{
    std::vector<std::string> names;
    for (const auto& [name, value] : object.items())
        if (memberOf(node, name) != nullptr)
            names.push_back(name);
    for (const auto& [name, member] : node.members)
        if (object.find(name) == object.end())
            names.push_back(name);
    std::stable_sort(names.begin(), names.end(), [](const std::string& one, const std::string& other) {
        return dayOf(one) < dayOf(other);
    });
    return names;
}

class FormWriter {
public:
    std::vector<FormField> fields;

    void addMembers(const SchemaNode& node, const OrderedJson& object, const std::string& place,
                    std::size_t depth)
    {
        for (const std::string& name : inOrder(node, object)) {
            const auto value = object.find(name);
            addMember(node, name, *memberOf(node, name), value == object.end() ? nullptr : &*value, place,
                      depth);
        }
    }

private:
    void addMember(const SchemaNode& owner, const std::string& name, const SchemaNode& schema,
                   const OrderedJson* value, const std::string& place, std::size_t depth)
    {
        const Known member = known(schema);
        if (isFixed(*member.node, name))
            return;
        FormField field;
        field.pointer = place + '/' + pointerStep(name);
        field.name = name;
        field.help = member.help;
        field.depth = depth;
        field.given = value != nullptr;
        field.required = isRequired(owner, name);
        if (const auto kind = kindOf(*member.node, name, value)) {
            field.kind = *kind;
            addValue(std::move(field), *member.node, value);
        } else if (member.node->items != nullptr) {
            addItems(std::move(field), *known(*member.node->items).node, value);
        } else if (!member.node->members.empty()) {
            field.kind = Kind::Part;
            fields.push_back(field);
            if (value != nullptr && value->is_object())
                addMembers(*member.node, *value, field.pointer, depth + 1);
        } else if (value != nullptr && value->is_object()) {
            field.kind = Kind::Part;
            addUnknown(field, *value);
        }
    }

    void addValue(FormField field, const SchemaNode& node, const OrderedJson* value)
    {
        for (const Json& choice : node.allowed)
            field.choices.push_back(choice.is_string() ? choice.get<std::string>() : choice.dump());
        field.ofNumbers = node.items != nullptr && isOfNumbers(*known(*node.items).node, value);
        if (value != nullptr) {
            field.text = textOf(*value);
            if (field.kind == Kind::Length && value->is_number())
                field.length = lengthIn(value->get<double>());
        }
        fields.push_back(std::move(field));
    }

    /// A part of which the schema says nothing but that it may stand there: a slope.
    void addUnknown(const FormField& heading, const OrderedJson& object)
    {
        fields.push_back(heading);
        for (const auto& [name, value] : object.items()) {
            if (value.is_structured())
                continue;
            FormField field = heading;
            field.kind = value.is_number() ? Kind::Number : value.is_boolean() ? Kind::YesNo : Kind::Text;
            field.pointer = heading.pointer + '/' + pointerStep(name);
            field.name = name;
            field.help.clear();
            field.depth = heading.depth + 1;
            field.required = true;
            field.text = textOf(value);
            fields.push_back(std::move(field));
        }
    }

    void addItems(FormField field, const SchemaNode& item, const OrderedJson* value)
    {
        field.kind = Kind::Items;
        fields.push_back(field);
        if (value == nullptr || !value->is_array())
            return;
        for (std::size_t at = 0; at < value->size(); ++at) {
            FormField heading = field;
            heading.kind = Kind::Item;
            heading.pointer = field.pointer + '/' + std::to_string(at);
            heading.help.clear();
            heading.depth = field.depth + 1;
            const std::string name = nameOf((*value)[at]);
            heading.text = std::to_string(at + 1) + (name.empty() ? "" : "  " + name);
            fields.push_back(heading);
            if ((*value)[at].is_object())
                addMembers(item, (*value)[at], heading.pointer, heading.depth + 1);
        }
    }
};

/// The least there has to be of it, to be filled in.
OrderedJson emptyOf(const SchemaNode& schema)
{
    const SchemaNode& node = *known(schema).node;
    if (!node.allowed.empty())
        return OrderedJson::parse(node.allowed.front().dump());
    if (!node.members.empty()) {
        OrderedJson object = OrderedJson::object();
        for (const std::string& name : node.required)
            if (const SchemaNode* member = memberOf(node, name))
                object[name] = emptyOf(*member);
        return object;
    }
    if (node.items != nullptr) {
        OrderedJson list = OrderedJson::array();
        for (std::size_t count = 0; count < node.leastItems.value_or(0); ++count)
            list.push_back(emptyOf(*node.items));
        return list;
    }
    if (node.types == SchemaNode::Boolean)
        return false;
    if (isNumber(node.types))
        return static_cast<std::int64_t>(std::max(0.0, node.minimum.value_or(0.0)));
    return "";
}

/// The same again under names that no other of the list has.
OrderedJson anotherOf(const OrderedJson& list, const SchemaNode& item)
{
    OrderedJson copy = list.back();
    for (const char* member : {"id", "name"}) {
        const SchemaNode* schema = memberOf(item, member);
        if (schema == nullptr || !copy.contains(member) || !copy[member].is_string())
            continue;
        const std::string first = copy[member].get<std::string>();
        const char* between = known(*schema).node->pattern ? "_" : " ";
        const auto taken = [&](const OrderedJson& other) { return other.value(member, "") == copy[member]; };
        for (int number = 2; std::any_of(list.begin(), list.end(), taken); ++number)
            copy[member] = first + between + std::to_string(number);
    }
    return copy;
}

/// The part of the schema that a JSON pointer leads to; nullptr where it leads nowhere.
const SchemaNode* nodeAt(const SchemaNode& root, const std::string& pointer)
{
    const SchemaNode* at = known(root).node;
    OrderedJson::json_pointer rest(pointer);
    std::vector<std::string> steps;
    for (; !rest.empty(); rest.pop_back())
        steps.push_back(rest.back());
    for (auto step = steps.rbegin(); step != steps.rend() && at != nullptr; ++step) {
        at = at->items != nullptr ? at->items : memberOf(*at, *step);
        at = at == nullptr ? nullptr : known(*at).node;
    }
    return at;
}

} // namespace

Result<std::vector<FormField>> formOf(std::string_view schemaFile, std::string_view document)
{
    const Result<Schema>& schema = Schema::embedded(schemaFile);
    if (!schema.ok())
        return schema.errors();
    const auto read = parseOrdered(document);
    if (!read.ok())
        return read.errors();
    FormWriter writer;
    writer.addMembers(*known(schema->root()).node, *read, "", 0);
    return std::move(writer.fields);
}

Result<std::string> withMore(std::string_view schemaFile, std::string_view document, const FormField& heading)
{
    const Result<Schema>& schema = Schema::embedded(schemaFile);
    if (!schema.ok())
        return schema.errors();
    auto read = parseOrdered(document);
    if (!read.ok())
        return read.errors();
    const SchemaNode* node = nodeAt(schema->root(), heading.pointer);
    if (node == nullptr)
        return Error{heading.pointer, "nothing", "a place that the schema knows"};
    OrderedJson& place = (*read)[OrderedJson::json_pointer(heading.pointer)];
    if (heading.kind == Kind::Part)
        place = emptyOf(*node);
    else if (place.is_array() && !place.empty())
        place.push_back(anotherOf(place, *known(*node->items).node));
    else
        place = OrderedJson::array({emptyOf(*node->items)});
    return textOfDocument(*read);
}

} // namespace lapwright::documents
