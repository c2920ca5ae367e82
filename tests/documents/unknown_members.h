#pragma once

#include "documents/json_text.h"

#include <cmath>
#include <string>

/// Members no program knows, put into every object of a document, and whether they are still there.
namespace unknown {

using lapwright::documents::Json;

/// Objects whose member names are the document's own words are left alone.
inline bool isFreeForm(const std::string& name)
{
    return name == "measures" || name == "legs_mm" || name == "sources";
}

/// Returns how many were put in.
inline std::size_t add(Json& value, int& serial)
{
    std::size_t added = 0;
    if (value.is_object()) {
        for (auto& [name, inner] : value.items())
            if (!(isFreeForm(name) && inner.is_object()))
                added += add(inner, serial);
        value["unheard of " + std::to_string(serial)] = {{"serial", serial}, {"words", "kept é"}};
        ++serial;
        return added + 1;
    }
    if (value.is_array())
        for (Json& inner : value)
            added += add(inner, serial);
    return added;
}

/// Every member of `wanted` is in `found` with the same value; members found besides are defaults written
/// out.
inline bool contains(const Json& found, const Json& wanted)
{
    if (wanted.is_object()) {
        if (!found.is_object())
            return false;
        for (const auto& [name, value] : wanted.items())
            if (!found.contains(name) || !contains(found[name], value))
                return false;
        return true;
    }
    if (wanted.is_array() && found.is_array() && found.size() == wanted.size()) {
        for (std::size_t index = 0; index < wanted.size(); ++index)
            if (!contains(found[index], wanted[index]))
                return false;
        return true;
    }
    if (wanted.is_number_float() || found.is_number_float())
        return std::abs(found.get<double>() - wanted.get<double>()) <= 1e-9 * std::abs(wanted.get<double>());
    return found == wanted;
}

} // namespace unknown
