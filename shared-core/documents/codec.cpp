#include "documents/codec.h"

#include "measure/rounding.h"

#include <cmath>

namespace lapwright::documents {
namespace {

/// Nearest millionth; nothing beyond what a Slope holds.
std::optional<std::int64_t> millionths(const Json& json)
{
    constexpr double most = 1e9;
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= most))
        return std::nullopt;
    return std::llround(json.get<double>() * static_cast<double>(Slope::unit));
}

Json fromMillionths(std::int64_t value)
{
    if (value % Slope::unit == 0)
        return value / Slope::unit;
    return static_cast<double>(value) / static_cast<double>(Slope::unit);
}

/// A whole number written with or without a point.
std::optional<std::int64_t> wholeNumber(const Json& json)
{
    constexpr double most = 9e15;
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= most) ||
        std::trunc(json.get<double>()) != json.get<double>())
        return std::nullopt;
    return json.is_number_float() ? static_cast<std::int64_t>(json.get<double>()) : json.get<std::int64_t>();
}

} // namespace

void mismatch(const Json& json, std::string expected, Errors& errors)
{
    std::string found;
    if (json.is_structured())
        found = json.is_object() ? "an object" : "a list";
    else
        writeJson(json, Layout::Canonical, 0, found);
    constexpr std::size_t most = 60;
    errors.push_back({"", found.substr(0, most), std::move(expected)});
}

void liftErrors(Errors& errors, std::size_t first, std::string_view step)
{
    for (std::size_t index = first; index < errors.size(); ++index)
        errors[index].place = "/" + pointerStep(step) + errors[index].place;
}

const Json* ReadFields::find(const char* name) const
{
    const auto found = object_.find(name);
    return found == object_.end() ? nullptr : &*found;
}

void get(const Json& json, std::string& value, Errors& errors)
{
    if (!json.is_string())
        return mismatch(json, "a text", errors);
    value = json.get_ref<const std::string&>();
}

void get(const Json& json, bool& value, Errors& errors)
{
    if (!json.is_boolean())
        return mismatch(json, "true or false", errors);
    value = json.get<bool>();
}

void get(const Json& json, std::int64_t& value, Errors& errors)
{
    const std::optional<std::int64_t> whole = wholeNumber(json);
    if (!whole)
        return mismatch(json, "a whole number", errors);
    value = *whole;
}

void get(const Json& json, std::size_t& value, Errors& errors)
{
    const std::optional<std::int64_t> whole = wholeNumber(json);
    if (!whole || *whole < 0)
        return mismatch(json, "a whole number from 0", errors);
    value = static_cast<std::size_t>(*whole);
}

void get(const Json& json, double& value, Errors& errors)
{
    if (!json.is_number())
        return mismatch(json, "a number", errors);
    value = json.get<double>();
}

void get(const Json& json, Length& value, Errors& errors)
{
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= largestMillimetres))
        return mismatch(json, "a number of millimetres", errors);
    value = nearestFromMillimetres(json.get<double>());
}

void get(const Json& json, Angle& value, Errors& errors)
{
    constexpr double most = 36'000.0;
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= most))
        return mismatch(json, "a number of degrees", errors);
    value = Angle::degrees(json.get<double>());
}

void get(const Json& json, Slope& value, Errors& errors)
{
    if (json.is_object() && json.contains("rise") && json.contains("run")) {
        const auto rise = millionths(json["rise"]), run = millionths(json["run"]);
        const auto slope = rise && run ? Slope::fromMillionths(*rise, *run) : std::nullopt;
        if (slope) {
            value = *slope;
            return;
        }
    }
    mismatch(json, "a slope like {\"rise\": 6, \"run\": 12}, level or rising, not vertical", errors);
}

Json put(const std::string& value)
{
    return value;
}

Json put(bool value)
{
    return value;
}

Json put(std::int64_t value)
{
    return value;
}

Json put(std::size_t value)
{
    return value;
}

Json put(double value)
{
    return value;
}

Json put(Length value)
{
    constexpr std::int64_t millimetre = 1'000'000;
    if (value.inNanometres() % millimetre == 0)
        return value.inNanometres() / millimetre;
    return inMillimetres(value);
}

Json put(Angle value)
{
    constexpr double billion = 1e9;
    return std::round(value.inDegrees() * billion) / billion + 0.0; // + 0.0: no negative zero
}

Json put(Slope value)
{
    return Json::object_t{{"rise", fromMillionths(value.riseMillionths())},
                          {"run", fromMillionths(value.runMillionths())}};
}

} // namespace lapwright::documents
