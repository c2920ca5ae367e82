#pragma once

#include "documents/envelope.h"
#include "measure/angle.h"
#include "measure/length.h"
#include "measure/mass.h"
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
/// names its members; a ReadFields takes them from JSON, a WriteFields writes them as canonical text.
namespace lapwright::documents {

using Errors = std::vector<Error>;

class FormulaReader;
class FormulaBook;

/// One document on its way in: what is wrong with it, and the formulas its derivations refer to, if it has
/// such.
struct Reading {
    Errors errors;
    FormulaReader* formulas = nullptr;
};

/// One document on its way out: its canonical text so far, and where its derivations' formulas are collected.
struct Writing {
    std::string text;
    FormulaBook* formulas = nullptr;
    std::string spare; ///< of WriteFields, so that not every object needs memory of its own
};

template <class Described, class T>
concept Like = std::is_same_v<std::remove_const_t<Described>, T>;

/// The words files use for the values of an enumeration.
template <class Enum>
struct Words;

/// Specialised, with `get` and `put` like those below, for a type that is not an object in files.
template <class T>
struct Custom;

class ReadFields;
class WriteFields;

template <class T>
concept Enumerated = std::is_enum_v<T>;

void mismatch(const Json& json, std::string expected, Reading& reading);

void get(const Json& json, std::string& value, Reading& reading);
void get(const Json& json, bool& value, Reading& reading);
void get(const Json& json, std::int64_t& value, Reading& reading);
void get(const Json& json, std::size_t& value, Reading& reading);
void get(const Json& json, double& value, Reading& reading);
/// A number of millimetres, at most `largestMillimetres` either way, to the nearest nanometre.
void get(const Json& json, Length& value, Reading& reading);
/// A number of degrees.
void get(const Json& json, Angle& value, Reading& reading);
/// {"rise": 6, "run": 12}, each to the nearest millionth.
void get(const Json& json, Slope& value, Reading& reading);
/// A number of kilograms.
void get(const Json& json, Mass& value, Reading& reading);

void put(const std::string& value, Writing& out);
void put(bool value, Writing& out);
void put(std::int64_t value, Writing& out);
void put(std::size_t value, Writing& out);
void put(double value, Writing& out);
void put(Length value, Writing& out);
/// Degrees to the nearest billionth, so that a file read and written again stays the same byte for byte.
void put(Angle value, Writing& out);
void put(Slope value, Writing& out);
void put(Mass value, Writing& out);

template <Enumerated E>
void get(const Json& json, E& value, Reading& reading);
template <class T>
void get(const Json& json, std::optional<T>& value, Reading& reading);
template <class T>
void get(const Json& json, std::vector<T>& list, Reading& reading);
template <class T>
void get(const Json& json, std::map<std::string, T>& named, Reading& reading);
template <class T>
requires std::is_class_v<T>
void get(const Json& json, T& value, Reading& reading);

template <Enumerated E>
void put(E value, Writing& out);
template <class T>
void put(const std::vector<T>& list, Writing& out);
template <class T>
void put(const std::map<std::string, T>& named, Writing& out);
template <class T>
requires std::is_class_v<T>
void put(const T& value, Writing& out);

/// The errors from `first` on seen from one step further out.
void liftErrors(Errors& errors, std::size_t first, std::string_view step);

class ReadFields {
public:
    ReadFields(const Json& object, Reading& reading) : object_(object), reading_(reading) {}

    template <class F>
    void operator()(const char* name, F& field)
    {
        if (const Json* member = find(name))
            read(name, *member, field);
        else
            errors().push_back({"", std::string("no member \"") + name + "\"", "one"});
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
    [[nodiscard]] Reading& reading() { return reading_; }
    [[nodiscard]] Errors& errors() { return reading_.errors; }

private:
    [[nodiscard]] const Json* find(const char* name) const;

    template <class F>
    void read(const char* name, const Json& member, F& field)
    {
        const std::size_t before = errors().size();
        get(member, field, reading_);
        if (errors().size() != before)
            liftErrors(errors(), before, name);
    }

    const Json& object_;
    Reading& reading_;
};

/// Members are written as they are described and put in the order of their names at the end.
class WriteFields {
public:
    explicit WriteFields(Writing& out) : out_(out), begin_(out.text.size())
    {
        written_.reserve(usualMembers);
    }

    template <class F>
    void operator()(const char* name, const F& field)
    {
        written_.push_back({name, out_.text.size()});
        put(field, out_);
    }
    template <class F>
    void operator()(const char* name, const std::optional<F>& field)
    {
        if (field)
            (*this)(name, *field);
    }
    template <class F>
    void operator()(const char* name, const F& field, const F& usual)
    {
        if (!(field == usual))
            (*this)(name, field);
    }
    template <class F>
    void orEmpty(const char* name, const F& field)
    {
        (*this)(name, field);
    }
    [[nodiscard]] Writing& writing() { return out_; }

    /// Makes one object of what was written since the beginning.
    void close();
    /// What was written since the beginning, member by member. The texts die with the Writing.
    [[nodiscard]] Members members() const;

private:
    static constexpr std::size_t usualMembers = 12;
    struct Written {
        const char* name;
        std::size_t begin;
    };

    Writing& out_;
    std::size_t begin_;
    std::vector<Written> written_;
};

template <Enumerated E>
void get(const Json& json, E& value, Reading& reading)
{
    std::string expected;
    for (const auto& [known, word] : Words<E>::all) {
        if (json.is_string() && json.get_ref<const std::string&>() == word) {
            value = known;
            return;
        }
        expected.append(expected.empty() ? "" : " or ").append(word);
    }
    mismatch(json, std::move(expected), reading);
}

template <class T>
void get(const Json& json, std::optional<T>& value, Reading& reading)
{
    get(json, value.emplace(), reading);
}

template <class T>
void get(const Json& json, std::vector<T>& list, Reading& reading)
{
    if (!json.is_array())
        return mismatch(json, "a list", reading);
    list.clear();
    list.reserve(json.size());
    for (std::size_t index = 0; index < json.size(); ++index) {
        const std::size_t before = reading.errors.size();
        get(json[index], list.emplace_back(), reading);
        if (reading.errors.size() != before)
            liftErrors(reading.errors, before, std::to_string(index));
    }
}

template <class T>
void get(const Json& json, std::map<std::string, T>& named, Reading& reading)
{
    if (!json.is_object())
        return mismatch(json, "an object", reading);
    named.clear();
    for (const auto& [name, member] : json.get_ref<const Json::object_t&>()) {
        const std::size_t before = reading.errors.size();
        get(member, named[name], reading);
        if (reading.errors.size() != before)
            liftErrors(reading.errors, before, name);
    }
}

template <class T>
requires std::is_class_v<T>
void get(const Json& json, T& value, Reading& reading)
{
    if constexpr (requires { Custom<T>::get(json, value, reading); }) {
        Custom<T>::get(json, value, reading);
    } else {
        if (!json.is_object())
            return mismatch(json, "an object", reading);
        ReadFields fields(json, reading);
        describe(fields, value);
    }
}

/// The word files use for the value; empty if it has none.
template <Enumerated E>
[[nodiscard]] std::string_view wordFor(E value)
{
    for (const auto& [known, word] : Words<E>::all)
        if (known == value)
            return word;
    return {};
}

template <Enumerated E>
void put(E value, Writing& out)
{
    if (const std::string_view word = wordFor(value); !word.empty())
        writeJsonText(word, out.text);
    else
        out.text += "null";
}

template <class T>
void put(const std::vector<T>& list, Writing& out)
{
    out.text += '[';
    bool first = true;
    for (const T& value : list) {
        if (!first)
            out.text += ',';
        first = false;
        put(value, out);
    }
    out.text += ']';
}

template <class T>
void put(const std::map<std::string, T>& named, Writing& out)
{
    out.text += '{';
    bool first = true;
    for (const auto& [name, value] : named) {
        if (!first)
            out.text += ',';
        first = false;
        writeJsonText(name, out.text);
        out.text += ':';
        put(value, out);
    }
    out.text += '}';
}

template <class T>
requires std::is_class_v<T>
void put(const T& value, Writing& out)
{
    if constexpr (requires { Custom<T>::put(value, out); }) {
        Custom<T>::put(value, out);
    } else {
        WriteFields fields(out);
        describe(fields, value);
        fields.close();
    }
}

/// Takes a value out of a document's members, with what else they say. `check` adds what no schema can say.
template <class T, class Check>
[[nodiscard]] Result<Document<T>> takeDocument(const Json& members, const Check& check, Reading reading = {},
                                               Writing again = {})
{
    Document<T> document;
    get(members, document.value, reading);
    if (reading.errors.empty())
        check(document.value, reading.errors);
    if (!reading.errors.empty())
        return std::move(reading.errors);
    WriteFields fields(again);
    describe(fields, document.value);
    document.extras = extrasOf(members, fields.members());
    return document;
}

/// Reads a document whose members `describe` names.
template <class T, class Check>
[[nodiscard]] Result<Document<T>> readDocument(std::string_view text, const Kind& kind, const Check& check)
{
    const Result<Json> members = openDocument(text, kind);
    if (!members)
        return members.errors();
    return takeDocument<T>(*members, check);
}

/// The whole text of a document whose members `describe` names.
template <class T>
[[nodiscard]] std::string writeDocument(const Kind& kind, const Document<T>& document, Layout layout)
{
    Writing out;
    WriteFields fields(out);
    describe(fields, document.value);
    return closeDocument(kind, fields.members(), document.extras, layout);
}

} // namespace lapwright::documents
