#include "documents/describe_told.h"

namespace lapwright::documents {
namespace {

template <class T>
bool take(ReadFields& fields, const char* name, Phrase::Value& value)
{
    std::optional<T> read;
    fields(name, read);
    if (read)
        value = *read;
    return read.has_value();
}

} // namespace

void describe(ReadFields& fields, NamedValue& value)
{
    fields("name", value.first);
    if (!take<Length>(fields, "mm", value.second) && !take<Angle>(fields, "degrees", value.second) &&
        !take<Slope>(fields, "slope", value.second) && !take<std::int64_t>(fields, "count", value.second) &&
        !take<double>(fields, "number", value.second) && !take<Mass>(fields, "kilograms", value.second))
        take<std::string>(fields, "text", value.second);
}

void describe(WriteFields& fields, const NamedValue& value)
{
    constexpr std::array<const char*, 7> types{"text",  "mm",     "degrees",  "slope",
                                               "count", "number", "kilograms"};
    static_assert(types.size() == std::variant_size_v<Phrase::Value>);
    fields("name", value.first);
    const char* type = types.at(value.second.index());
    std::visit([&](const auto& held) { fields(type, held); }, value.second);
}

} // namespace lapwright::documents
