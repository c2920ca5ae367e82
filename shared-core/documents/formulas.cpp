#include "documents/formulas.h"

#include <type_traits>
#include <variant>

namespace lapwright::documents {

template <>
struct Words<Formula::Type> {
    using K = Formula::Type;
    static constexpr std::array<std::pair<K, std::string_view>, 7> all{{{K::Text, "text"},
                                                                        {K::Length, "mm"},
                                                                        {K::Angle, "degrees"},
                                                                        {K::Slope, "slope"},
                                                                        {K::Count, "count"},
                                                                        {K::Number, "number"},
                                                                        {K::Mass, "kilograms"}}};
    static_assert(all.size() == std::variant_size_v<Phrase::Value>);
};

template <class V, Like<Formula::Name> T>
void describe(V& fields, T& value)
{
    fields("name", value.name);
    fields("type", value.type);
}

template <class V, Like<Formula> T>
void describe(V& fields, T& formula)
{
    fields("text", formula.text);
    fields("source", formula.source, std::string());
    fields("values", formula.values, {});
}

namespace {

/// A value of the type that stands at this place in Phrase::Value, to be read.
Phrase::Value emptyValue(Formula::Type type)
{
    switch (type) {
    case Formula::Type::Text:
        return std::string();
    case Formula::Type::Length:
        return Length();
    case Formula::Type::Angle:
        return Angle();
    case Formula::Type::Slope:
        return Slope();
    case Formula::Type::Count:
        return std::int64_t{0};
    case Formula::Type::Number:
        return 0.0;
    case Formula::Type::Mass:
        return Mass();
    }
    return std::string();
}

/// All that tells one formula from another.
void writeKey(std::string_view text, std::string_view source, std::string& key)
{
    key.assign(text);
    key.append(1, '\0').append(source).append(1, '\0');
}

void addToKey(std::string_view name, Formula::Type type, std::string& key)
{
    key.append(name).append(1, '\0').append(1, static_cast<char>('0' + static_cast<int>(type)));
}

const Json* memberOf(const Json& object, const char* name)
{
    const auto found = object.find(name);
    return found == object.end() ? nullptr : &*found;
}

} // namespace

FormulaReader::FormulaReader(const Json& members, Errors& errors, std::size_t mostWords)
    : mostWords_(mostWords)
{
    Reading reading;
    ReadFields fields(members, reading);
    fields(formulasMember, formulas_, {});
    errors = std::move(reading.errors);
}

void FormulaReader::derivation(const Json& json, Derivation& derivation, Reading& reading)
{
    const std::size_t before = reading.errors.size();
    std::size_t place = 0;
    ReadFields fields(json, reading);
    fields("formula", place);
    if (reading.errors.size() != before)
        return;
    if (place >= formulas_.size()) {
        reading.errors.push_back(
            {"/formula", std::to_string(place),
             "the position of a formula, counted from 0; there are " + std::to_string(formulas_.size())});
        return;
    }
    const Formula& formula = formulas_[place];
    words_ += formula.text.size() + formula.source.size();
    for (const Formula::Name& value : formula.values)
        words_ += value.name.size();
    if (words_ > mostWords_) {
        reading.errors.push_back(
            {"", "derivations of more than " + std::to_string(mostWords_) + " characters", "fewer"});
        return;
    }
    derivation.statement.text = formula.text;
    derivation.source = formula.source;
    const Json* given = memberOf(json, "values");
    values(given == nullptr ? Json::array() : *given, formula, derivation.statement, reading);
    fields("because", derivation.because, {});
}

void FormulaReader::values(const Json& json, const Formula& formula, Phrase& statement,
                           Reading& reading) const
{
    if (!json.is_array() || json.size() != formula.values.size()) {
        reading.errors.push_back({"/values",
                                  json.is_array() ? std::to_string(json.size()) + " values" : "no list",
                                  std::to_string(formula.values.size()) + ", as its formula says"});
        return;
    }
    statement.values.reserve(json.size());
    for (std::size_t index = 0; index < json.size(); ++index) {
        const Formula::Name& name = formula.values[index];
        auto& [known, value] = statement.values.emplace_back(name.name, emptyValue(name.type));
        const std::size_t before = reading.errors.size();
        std::visit([&](auto& held) { get(json[index], held, reading); }, value);
        if (reading.errors.size() == before)
            continue;
        liftErrors(reading.errors, before, std::to_string(index));
        liftErrors(reading.errors, before, "values");
    }
}

FormulaBook::FormulaBook(Json known)
{
    Reading reading;
    documents::get(known, formulas_, reading);
    if (!reading.errors.empty()) {
        formulas_.clear();
        return;
    }
    known_ = std::move(known);
    for (std::size_t place = 0; place < formulas_.size(); ++place) {
        writeKey(formulas_[place].text, formulas_[place].source, key_);
        for (const Formula::Name& value : formulas_[place].values)
            addToKey(value.name, value.type, key_);
        places_.emplace(key_, place);
    }
}

std::size_t FormulaBook::placeOf(const Derivation& derivation)
{
    writeKey(derivation.statement.text, derivation.source, key_);
    for (const auto& [name, value] : derivation.statement.values)
        addToKey(name, static_cast<Formula::Type>(value.index()), key_);
    const auto found = places_.find(key_);
    if (found != places_.end())
        return found->second;
    Formula formula{derivation.statement.text, derivation.source, {}};
    for (const auto& [name, value] : derivation.statement.values)
        formula.values.push_back({name, static_cast<Formula::Type>(value.index())});
    formulas_.push_back(std::move(formula));
    return places_.emplace(key_, formulas_.size() - 1).first->second;
}

void FormulaBook::put(const Derivation& derivation, Writing& out)
{
    out.text += '{';
    if (!derivation.because.empty()) {
        out.text += "\"because\":";
        documents::put(derivation.because, out);
        out.text += ',';
    }
    out.text += "\"formula\":";
    documents::put(placeOf(derivation), out);
    if (!derivation.statement.values.empty()) {
        out.text += ",\"values\":[";
        bool first = true;
        for (const auto& named : derivation.statement.values) {
            if (!first)
                out.text += ',';
            first = false;
            std::visit([&out](const auto& value) { documents::put(value, out); }, named.second);
        }
        out.text += ']';
    }
    out.text += '}';
}

std::string FormulaBook::written() const
{
    Writing out;
    out.text += '[';
    for (std::size_t place = 0; place < formulas_.size(); ++place) {
        if (place > 0)
            out.text += ',';
        if (place < known_.size())
            writeJson(known_[place], out.text);
        else
            documents::put(formulas_[place], out);
    }
    out.text += ']';
    return std::move(out.text);
}

void Custom<Derivation>::get(const Json& json, Derivation& derivation, Reading& reading)
{
    reading.formulas->derivation(json, derivation, reading);
}

void Custom<Derivation>::put(const Derivation& derivation, Writing& out)
{
    out.formulas->put(derivation, out);
}

} // namespace lapwright::documents
