#pragma once

#include "documents/codec.h"
#include "schedule/calendar.h"
#include "schedule/problem.h"

/// How dates, moments and hours stand in documents.
namespace lapwright::documents {

/// Takes a text that `read` understands.
template <class T, class Read>
void getText(const Json& json, T& value, Reading& reading, Read read)
{
    if (!json.is_string())
        return mismatch(json, "a text", reading);
    const auto result = read(json.get_ref<const std::string&>());
    if (result.ok())
        value = *result;
    else
        reading.errors.push_back(result.errors().front());
}

/// "2026-12-01T07:30".
template <>
struct Custom<schedule::Moment> {
    static void get(const Json& json, schedule::Moment& moment, Reading& reading)
    {
        getText(json, moment, reading, schedule::readMoment);
    }
    static void put(schedule::Moment moment, Writing& out) { documents::put(schedule::write(moment), out); }
};

/// "2026-12-01".
template <>
struct Custom<schedule::Date> {
    static void get(const Json& json, schedule::Date& date, Reading& reading)
    {
        getText(json, date, reading, schedule::readDate);
    }
    static void put(schedule::Date date, Writing& out) { documents::put(schedule::write(date), out); }
};

/// Whole seconds.
template <>
struct Custom<schedule::Duration> {
    static void get(const Json& json, schedule::Duration& duration, Reading& reading)
    {
        std::int64_t seconds = 0;
        documents::get(json, seconds, reading);
        duration = schedule::Duration::seconds(seconds);
    }
    static void put(schedule::Duration duration, Writing& out) { documents::put(duration.inSeconds(), out); }
};

/// "07:00-12:00".
template <>
struct Custom<schedule::Shift> {
    static void get(const Json& json, schedule::Shift& shift, Reading& reading);
    static void put(const schedule::Shift& shift, Writing& out);
};

/// {"from": moment, "to": moment}.
template <class V, Like<schedule::Interval> T>
void describe(V& fields, T& interval)
{
    fields("from", interval.from);
    fields("to", interval.to);
}

/// A time of day as a member: "07:00".
void timeOfDay(ReadFields& fields, const char* name, schedule::Duration& value, schedule::Duration usual);
void timeOfDay(WriteFields& fields, const char* name, schedule::Duration value, schedule::Duration usual);

template <>
struct Words<schedule::Stage> {
    using K = schedule::Stage;
    static constexpr std::array<std::pair<K, std::string_view>, 2> all{{{K::Cut, "cut"}, {K::Fold, "fold"}}};
};

template <class V, Like<schedule::DayException> T>
void describe(V& fields, T& exception)
{
    fields("date", exception.date);
    fields("shifts", exception.shifts);
    fields("reason", exception.reason, std::string());
}

template <class V, Like<schedule::Hours> T>
void describe(V& fields, T& hours)
{
    for (std::size_t day = 0; day < hours.week.size(); ++day)
        fields(schedule::weekdayNames()[day], hours.week[day], {});
    fields("exceptions", hours.exceptions, {});
}

} // namespace lapwright::documents
