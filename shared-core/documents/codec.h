#pragma once

#include "documents/envelope.h"
#include "measure/angle.h"
#include "measure/length.h"
#include "measure/result.h"
#include "measure/slope.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

/// How values become JSON and back. Each type is described once, by a function `describe(fields, value)` that
/// names its members; a ReadFields takes them from JSON, a WriteFields puts them into it.
namespace lapwright::documents {

using Errors = std::vector<Error>;

template <class Described, class T>
concept Like = std::is_same_v<std::remove_const_t<Described>, T>;

/// The words files use for the values of an enumeration.
template <class Enum>
struct Words;

/// Specialised, with `get` and `put`, for a type that is not an object in files.
template <class T>
struct Custom;

class ReadFields;
class WriteFields;

template <class T>
concept Enumerated = std::is_enum_v<T>;

void mismatch(const Json& json, std::string expected, Errors& errors);

void get(const Json& json, std::string& value, Errors& errors);
void get(const Json& json, bool& value, Errors& errors);
void get(const Json& json, std::int64_t& value, Errors& errors);
void get(const Json& json, std::size_t& value, Errors& errors);
void get(const Json& json, double& value, Errors& errors);
/// A number of millimetres, at most `largestMillimetres` either way, to the nearest nanometre.
void get(const Json& json, Length& value, Errors& errors);
/// A number of degrees.
void get(const Json& json, Angle& value, Errors& errors);
/// {"rise": 6, "run": 12}, each to the nearest millionth.
void get(const Json& json, Slope& value, Errors& errors);

[[nodiscard]] Json put(const std::string& value);
[[nodiscard]] Json put(bool value);
[[nodiscard]] Json put(std::int64_t value);
[[nodiscard]] Json put(std::size_t value);
[[nodiscard]] Json put(double value);
[[nodiscard]] Json put(Length value);
/// Degrees to the nearest billionth, so that a file read and written again stays the same byte for byte.
[[nodiscard]] Json put(Angle value);
[[nodiscard]] Json put(Slope value);

template <Enumerated E>
void get(const Json& json, E& value, Errors& errors);
template <class T>
void get(const Json& json, std::optional<T>& value, Errors& errors);
template <class T>
void get(const Json& json, std::vector<T>& list, Errors& errors);
template <class T>
void get(const Json& json, std::map<std::string, T>& named, Errors& errors);
template <class T>
requires std::is_class_v<T>
void get(const Json& json, T& value, Errors& errors);

template <Enumerated E>
[[nodiscard]] Json put(E value);
template <class T>
[[nodiscard]] Json put(const std::vector<T>& list);
template <class T>
[[nodiscard]] Json put(const std::map<std::string, T>& named);
template <class T>
requires std::is_class_v<T>
[[nodiscard]] Json put(const T& value);

/// The errors from `first` on seen from one step further out.
void liftErrors(Errors& errors, std::size_t first, std::string_view step);

class ReadFields {
public:
    ReadFields(const Json& object, Errors& errors) : object_(object), errors_(errors) {}

    template <class F>
    void operator()(const char* name, F& field)
    {
        if (const Json* member = find(name))
            read(name, *member, field);
        else
            errors_.push_back({"", std::string("no member \"") + name + "\"", "one"});
    }
    template <class F>
    void operator()(const char* name, std::optional<F>& field)
    {
        if (const Json* member = find(name))
            read(name, *member, field);
        else
            field.reset();
    }
    /// A member that is left out where it has its usual value.
    template <class F>
    void operator()(const char* name, F& field, const F& usual)
    {
        if (const Json* member = find(name))
            read(name, *member, field);
        else
            field = usual;
    }
    /// A member that may be left out and is always written.
    template <class F>
    void orEmpty(const char* name, F& field)
    {
        if (const Json* member = find(name))
            read(name, *member, field);
        else
            field = F();
    }
    /// For types whose members depend on one another: the object itself, and a way to say what is wrong in
    /// it.
    [[nodiscard]] const Json& object() const { return object_; }
    [[nodiscard]] Errors& errors() { return errors_; }

private:
    [[nodiscard]] const Json* find(const char* name) const;

    template <class F>
    void read(const char* name, const Json& member, F& field)
    {
        const std::size_t before = errors_.size();
        get(member, field, errors_);
        if (errors_.size() != before)
            liftErrors(errors_, before, name);
    }

    const Json& object_;
    Errors& errors_;
};

class WriteFields {
public:
    template <class F>
    void operator()(const char* name, const F& field)
    {
        object_.emplace(name, put(field));
    }
    template <class F>
    void operator()(const char* name, const std::optional<F>& field)
    {
        if (field)
            object_.emplace(name, put(*field));
    }
    template <class F>
    void operator()(const char* name, const F& field, const F& usual)
    {
        if (!(field == usual))
            object_.emplace(name, put(field));
    }
    template <class F>
    void orEmpty(const char* name, const F& field)
    {
        object_.emplace(name, put(field));
    }
    /// A member whose JSON is made already.
    void ready(const char* name, Json value) { object_.emplace(name, std::move(value)); }
    [[nodiscard]] Json take() { return Json(std::move(object_)); }

private:
    Json::object_t object_;
};

template <Enumerated E>
void get(const Json& json, E& value, Errors& errors)
{
    std::string expected;
    for (const auto& [known, word] : Words<E>::all) {
        if (json.is_string() && json.get_ref<const std::string&>() == word) {
            value = known;
            return;
        }
        expected.append(expected.empty() ? "" : " or ").append(word);
    }
    mismatch(json, std::move(expected), errors);
}

template <class T>
void get(const Json& json, std::optional<T>& value, Errors& errors)
{
    get(json, value.emplace(), errors);
}

template <class T>
void get(const Json& json, std::vector<T>& list, Errors& errors)
{
    if (!json.is_array())
        return mismatch(json, "a list", errors);
    list.clear();
    list.reserve(json.size());
    for (std::size_t index = 0; index < json.size(); ++index) {
        const std::size_t before = errors.size();
        get(json[index], list.emplace_back(), errors);
        if (errors.size() != before)
            liftErrors(errors, before, std::to_string(index));
    }
}

template <class T>
void get(const Json& json, std::map<std::string, T>& named, Errors& errors)
{
    if (!json.is_object())
        return mismatch(json, "an object", errors);
    named.clear();
    for (const auto& [name, member] : json.get_ref<const Json::object_t&>()) {
        const std::size_t before = errors.size();
        get(member, named[name], errors);
        if (errors.size() != before)
            liftErrors(errors, before, name);
    }
}

template <class T>
requires std::is_class_v<T>
void get(const Json& json, T& value, Errors& errors)
{
    if constexpr (requires { Custom<T>::get(json, value, errors); }) {
        Custom<T>::get(json, value, errors);
    } else {
        if (!json.is_object())
            return mismatch(json, "an object", errors);
        ReadFields fields(json, errors);
        describe(fields, value);
    }
}

template <Enumerated E>
Json put(E value)
{
    for (const auto& [known, word] : Words<E>::all)
        if (known == value)
            return std::string(word);
    return nullptr;
}

template <class T>
Json put(const std::vector<T>& list)
{
    Json::array_t array;
    array.reserve(list.size());
    for (const T& value : list)
        array.push_back(put(value));
    return array;
}

template <class T>
Json put(const std::map<std::string, T>& named)
{
    Json::object_t object;
    for (const auto& [name, value] : named)
        object.emplace(name, put(value));
    return object;
}

template <class T>
requires std::is_class_v<T> Json put(const T& value)
{
    if constexpr (requires { Custom<T>::put(value); }) {
        return Custom<T>::put(value);
    } else {
        WriteFields fields;
        describe(fields, value);
        return fields.take();
    }
}

/// Reads a document whose members `describe` names. `check` adds what no schema can say.
template <class T, class Check>
[[nodiscard]] Result<Document<T>> readDocument(std::string_view text, const Kind& kind, const Check& check)
{
    const Result<Json> members = openDocument(text, kind);
    if (!members)
        return members.errors();
    Document<T> document;
    Errors errors;
    get(*members, document.value, errors);
    if (errors.empty())
        check(document.value, errors);
    if (!errors.empty())
        return errors;
    document.extras = extrasOf(*members, put(document.value));
    for (const char* own : {"format", "version", "program"})
        document.extras.members.erase(own);
    return document;
}

} // namespace lapwright::documents
