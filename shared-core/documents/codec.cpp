#include "documents/codec.h"

#include "measure/rounding.h"

#include <algorithm>
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

void putMillionths(std::int64_t value, Writing& out)
{
    if (value % Slope::unit == 0)
        put(value / Slope::unit, out);
    else
        put(static_cast<double>(value) / static_cast<double>(Slope::unit), out);
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

void mismatch(const Json& json, std::string expected, Reading& reading)
{
    std::string found;
    if (json.is_structured())
        found = json.is_object() ? "an object" : "a list";
    else
        writeJson(json, found);
    constexpr std::size_t most = 60;
    reading.errors.push_back({"", found.substr(0, most), std::move(expected)});
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

void get(const Json& json, std::string& value, Reading& reading)
{
    if (!json.is_string())
        return mismatch(json, "a text", reading);
    value = json.get_ref<const std::string&>();
}

void get(const Json& json, bool& value, Reading& reading)
{
    if (!json.is_boolean())
        return mismatch(json, "true or false", reading);
    value = json.get<bool>();
}

void get(const Json& json, std::int64_t& value, Reading& reading)
{
    const std::optional<std::int64_t> whole = wholeNumber(json);
    if (!whole)
        return mismatch(json, "a whole number", reading);
    value = *whole;
}

void get(const Json& json, std::size_t& value, Reading& reading)
{
    const std::optional<std::int64_t> whole = wholeNumber(json);
    if (!whole || *whole < 0)
        return mismatch(json, "a whole number from 0", reading);
    value = static_cast<std::size_t>(*whole);
}

void get(const Json& json, double& value, Reading& reading)
{
    if (!json.is_number())
        return mismatch(json, "a number", reading);
    value = json.get<double>();
}

void get(const Json& json, Length& value, Reading& reading)
{
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= largestMillimetres))
        return mismatch(json, "a number of millimetres", reading);
    value = nearestFromMillimetres(json.get<double>());
}

void get(const Json& json, Angle& value, Reading& reading)
{
    constexpr double most = 36'000.0;
    if (!json.is_number() || !(std::fabs(json.get<double>()) <= most))
        return mismatch(json, "a number of degrees", reading);
    value = Angle::degrees(json.get<double>());
}

void get(const Json& json, Slope& value, Reading& reading)
{
    if (json.is_object() && json.contains("rise") && json.contains("run")) {
        const auto rise = millionths(json["rise"]), run = millionths(json["run"]);
        const auto slope = rise && run ? Slope::fromMillionths(*rise, *run) : std::nullopt;
        if (slope) {
            value = *slope;
            return;
        }
    }
    mismatch(json, "a slope like {\"rise\": 6, \"run\": 12}, level or rising, not vertical", reading);
}

void get(const Json& json, Mass& value, Reading& reading)
{
    if (!json.is_number())
        return mismatch(json, "a number of kilograms", reading);
    value = Mass::kilograms(json.get<double>());
}

void put(const std::string& value, Writing& out)
{
    writeJsonText(value, out.text);
}

void put(bool value, Writing& out)
{
    out.text += value ? "true" : "false";
}

void put(std::int64_t value, Writing& out)
{
    writeJson(value, out.text);
}

void put(std::size_t value, Writing& out)
{
    writeJson(value, out.text);
}

void put(double value, Writing& out)
{
    writeJson(value, out.text);
}

void put(Length value, Writing& out)
{
    constexpr std::int64_t millimetre = 1'000'000;
    if (value.inNanometres() % millimetre == 0)
        put(value.inNanometres() / millimetre, out);
    else
        put(inMillimetres(value), out);
}

void put(Angle value, Writing& out)
{
    constexpr double billion = 1e9;
    put(std::round(value.inDegrees() * billion) / billion + 0.0, out); // + 0.0: no negative zero
}

void put(Slope value, Writing& out)
{
    out.text += "{\"rise\":";
    putMillionths(value.riseMillionths(), out);
    out.text += ",\"run\":";
    putMillionths(value.runMillionths(), out);
    out.text += '}';
}

void put(Mass value, Writing& out)
{
    put(value.inKilograms(), out);
}

void WriteFields::close()
{
    struct Member {
        std::string_view name;
        std::string_view text;
    };
    std::string& text = out_.text;
    out_.spare.assign(text, begin_);
    const std::string_view spare = out_.spare;
    std::vector<Member> members;
    members.reserve(written_.size());
    for (std::size_t index = 0; index < written_.size(); ++index) {
        const std::size_t from = written_[index].begin - begin_;
        const std::size_t to =
            index + 1 < written_.size() ? written_[index + 1].begin - begin_ : spare.size();
        members.push_back({written_[index].name, spare.substr(from, to - from)});
    }
    std::sort(members.begin(), members.end(),
              [](const Member& left, const Member& right) { return left.name < right.name; });
    text.resize(begin_);
    text += '{';
    for (const Member& member : members) {
        if (text.size() > begin_ + 1)
            text += ',';
        text.append("\"").append(member.name).append("\":").append(member.text);
    }
    text += '}';
}

Members WriteFields::members() const
{
    const std::string_view text = out_.text;
    Members members;
    for (std::size_t index = 0; index < written_.size(); ++index) {
        const std::size_t from = written_[index].begin;
        const std::size_t to = index + 1 < written_.size() ? written_[index + 1].begin : text.size();
        members.emplace(written_[index].name, text.substr(from, to - from));
    }
    return members;
}

} // namespace lapwright::documents
