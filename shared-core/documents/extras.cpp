#include "documents/extras.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace lapwright::documents {
namespace {

std::string keyOfNamed(const std::string& name)
{
    return "=" + name;
}

std::string keyOf(const Json& entry, std::size_t index)
{
    constexpr std::array<std::string_view, 3> names{"id", "mark", "key"};
    if (entry.is_object())
        for (std::string_view name : names)
            if (const auto found = entry.find(name); found != entry.end() && found->is_string())
                return keyOfNamed(found->get_ref<const std::string&>());
    return std::to_string(index);
}

Extras differing(const Json& read, const Json& written);

void addInside(Extras& extras, const std::string& key, const Json& read, const Json& written)
{
    if (!read.is_structured())
        return;
    Extras inner = differing(read, written);
    if (!inner.empty())
        extras.inside.emplace(key, std::move(inner));
}

Extras differing(const Json& read, const Json& written)
{
    Extras extras;
    if (read.is_object() && written.is_object()) {
        for (const auto& [name, value] : read.get_ref<const Json::object_t&>()) {
            const auto known = written.find(name);
            if (known == written.end())
                extras.members.emplace(name, value);
            else
                addInside(extras, name, value, *known);
        }
    } else if (read.is_array() && written.is_array()) {
        for (std::size_t index = 0; index < read.size() && index < written.size(); ++index)
            if (read[index].is_structured())
                addInside(extras, keyOf(read[index], index), read[index], written[index]);
    }
    return extras;
}

void putBack(const Extras& extras, Json& written)
{
    if (written.is_object()) {
        for (const auto& [name, value] : extras.members)
            written.emplace(name, value);
        for (const auto& [name, inner] : extras.inside)
            if (const auto found = written.find(name); found != written.end())
                putBack(inner, *found);
    } else if (written.is_array() && !extras.inside.empty()) {
        for (std::size_t index = 0; index < written.size(); ++index)
            if (const auto found = extras.inside.find(keyOf(written[index], index));
                found != extras.inside.end())
                putBack(found->second, written[index]);
    }
}

} // namespace

Extras Extras::ofEntry(const std::string& list, const std::string& name) const
{
    const auto entries = inside.find(list);
    if (entries == inside.end())
        return {};
    const auto entry = entries->second.inside.find(keyOfNamed(name));
    return entry == entries->second.inside.end() ? Extras() : entry->second;
}

void Extras::putEntry(const std::string& list, const std::string& name, Extras extras)
{
    if (extras.empty())
        inside[list].inside.erase(keyOfNamed(name));
    else
        inside[list].inside[keyOfNamed(name)] = std::move(extras);
    if (inside[list].empty())
        inside.erase(list);
}

Extras extrasOf(const Json& read, const Members& written)
{
    // A signature is for the document as it came, and for none that is written anew.
    constexpr std::array<std::string_view, 4> everywhere{"format", "version", "program", "signature"};
    Extras extras;
    std::string text;
    for (const auto& [name, value] : read.get_ref<const Json::object_t&>()) {
        if (std::find(everywhere.begin(), everywhere.end(), name) != everywhere.end())
            continue;
        const auto known = written.find(name);
        if (known == written.end()) {
            extras.members.emplace(name, value);
            continue;
        }
        // Mostly the document says what this program would say, and a look at the text is enough.
        text.clear();
        writeJson(value, text);
        if (text != known->second)
            addInside(extras, name, value, Json::parse(known->second));
    }
    return extras;
}

std::string withExtras(std::string_view written, const Extras& extras)
{
    Json value = Json::parse(written);
    putBack(extras, value);
    std::string text;
    writeJson(value, text);
    return text;
}

} // namespace lapwright::documents
