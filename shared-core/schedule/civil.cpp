#include "schedule/civil.h"

#include <array>
#include <charconv>
#include <optional>

namespace lapwright::schedule {

namespace {

constexpr std::int64_t secondsInDay = 86'400;
constexpr std::array<std::string_view, 7> weekdays = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                      "Friday", "Saturday", "Sunday"};
constexpr std::array<std::string_view, 12> months = {"January",   "February", "March",    "April",
                                                     "May",       "June",     "July",     "August",
                                                     "September", "October",  "November", "December"};

std::int64_t floorDivide(std::int64_t value, std::int64_t by)
{
    return value / by - (value % by < 0 ? 1 : 0);
}

std::string twoDigits(std::int64_t value)
{
    return (value < 10 ? "0" : "") + std::to_string(value);
}

/// The digits of `text` and nothing else, as many as asked for.
std::optional<int> number(std::string_view text, std::size_t digits)
{
    int value = 0;
    if (text.size() != digits || text.find_first_not_of("0123456789") != std::string_view::npos)
        return std::nullopt;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

Error notAs(std::string_view text, const char* expected)
{
    return {"", "\"" + std::string(text) + "\"", expected};
}

std::string shortName(std::string_view name)
{
    return std::string(name.substr(0, 3));
}

} // namespace

std::int64_t daysSinceEpoch(Date date)
{
    const std::int64_t year = date.month > 2 ? date.year : date.year - 1;
    const std::int64_t era = floorDivide(year, 400);
    const std::int64_t yearOfEra = year - era * 400;
    const std::int64_t monthFromMarch = (date.month + 9) % 12;
    const std::int64_t dayOfYear = (153 * monthFromMarch + 2) / 5 + date.day - 1;
    const std::int64_t dayOfEra = yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear;
    return era * 146'097 + dayOfEra - 719'468;
}

Date dateAfterEpoch(std::int64_t days)
{
    const std::int64_t shifted = days + 719'468;
    const std::int64_t era = floorDivide(shifted, 146'097);
    const std::int64_t dayOfEra = shifted - era * 146'097;
    const std::int64_t yearOfEra =
        (dayOfEra - dayOfEra / 1'460 + dayOfEra / 36'524 - dayOfEra / 146'096) / 365;
    const std::int64_t dayOfYear = dayOfEra - (365 * yearOfEra + yearOfEra / 4 - yearOfEra / 100);
    const std::int64_t monthFromMarch = (5 * dayOfYear + 2) / 153;
    const std::int64_t month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
    const std::int64_t year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
    return {static_cast<int>(year), static_cast<int>(month),
            static_cast<int>(dayOfYear - (153 * monthFromMarch + 2) / 5 + 1)};
}

Weekday weekdayOf(Date date)
{
    // 1 January 1970 was a Thursday.
    const std::int64_t sinceMonday = daysSinceEpoch(date) + 3;
    return static_cast<Weekday>(sinceMonday - floorDivide(sinceMonday, 7) * 7);
}

Moment momentOf(Date date, Duration sinceMidnight)
{
    return Moment::sinceEpoch(Duration::days(daysSinceEpoch(date)) + sinceMidnight);
}

Date dateOf(Moment moment)
{
    return dateAfterEpoch(floorDivide(moment.sinceEpoch().inSeconds(), secondsInDay));
}

Duration timeOfDay(Moment moment)
{
    return moment - momentOf(dateOf(moment), Duration());
}

Result<Date> readDate(std::string_view text)
{
    constexpr const char* expected = "a date like 2026-12-01";
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return notAs(text, expected);
    const auto year = number(text.substr(0, 4), 4);
    const auto month = number(text.substr(5, 2), 2);
    const auto day = number(text.substr(8, 2), 2);
    if (!year || !month || !day || *year < 1 || *month < 1 || *month > 12 || *day < 1)
        return notAs(text, expected);
    const Date date{*year, *month, *day};
    if (dateAfterEpoch(daysSinceEpoch(date)) != date)
        return notAs(text, "a day that the month has");
    return date;
}

Result<Duration> readTimeOfDay(std::string_view text)
{
    constexpr const char* expected = "a time of day like 07:30, up to 24:00";
    const bool withSeconds = text.size() == 8;
    if ((text.size() != 5 && !withSeconds) || text[2] != ':' || (withSeconds && text[5] != ':'))
        return notAs(text, expected);
    const auto hour = number(text.substr(0, 2), 2);
    const auto minute = number(text.substr(3, 2), 2);
    const auto second = withSeconds ? number(text.substr(6, 2), 2) : std::optional<int>(0);
    if (!hour || !minute || !second || *minute > 59 || *second > 59)
        return notAs(text, expected);
    const Duration time = Duration::hours(*hour) + Duration::minutes(*minute) + Duration::seconds(*second);
    if (time > Duration::days(1))
        return notAs(text, expected);
    return time;
}

Result<Moment> readMoment(std::string_view text)
{
    constexpr const char* expected = "a date and time like 2026-12-01T07:30";
    if (text.size() < 12 || text[10] != 'T')
        return notAs(text, expected);
    const auto date = readDate(text.substr(0, 10));
    const auto time = readTimeOfDay(text.substr(11));
    if (!date.ok() || !time.ok())
        return notAs(text, expected);
    return momentOf(*date, *time);
}

std::string write(Date date)
{
    const std::string year = std::to_string(date.year);
    return std::string(year.size() < 4 ? 4 - year.size() : 0, '0') + year + "-" + twoDigits(date.month) +
           "-" + twoDigits(date.day);
}

std::string writeTimeOfDay(Duration sinceMidnight)
{
    const std::int64_t seconds = sinceMidnight.inSeconds();
    return twoDigits(seconds / 3'600) + ":" + twoDigits(seconds / 60 % 60) +
           (seconds % 60 == 0 ? "" : ":" + twoDigits(seconds % 60));
}

std::string write(Moment moment)
{
    return write(dateOf(moment)) + "T" + writeTimeOfDay(timeOfDay(moment));
}

Moment nearestMinute(Moment moment)
{
    const std::int64_t seconds = moment.sinceEpoch().inSeconds();
    return Moment::sinceEpoch(Duration::minutes(floorDivide(seconds + 30, 60)));
}

std::string inWords(Moment exact)
{
    const Moment moment = nearestMinute(exact);
    const Date date = dateOf(moment);
    return shortName(weekdays[static_cast<std::size_t>(weekdayOf(date))]) + " " + std::to_string(date.day) +
           " " + shortName(months[static_cast<std::size_t>(date.month - 1)]) + " " +
           writeTimeOfDay(timeOfDay(moment));
}

std::string inWords(Date date)
{
    return std::string(weekdays[static_cast<std::size_t>(weekdayOf(date))]) + " " + std::to_string(date.day) +
           " " + std::string(months[static_cast<std::size_t>(date.month - 1)]) + " " +
           std::to_string(date.year);
}

std::string inWords(Duration duration)
{
    if (duration < Duration())
        return "-" + inWords(Duration() - duration);
    const std::int64_t seconds = duration.inSeconds();
    if (seconds < 60)
        return std::to_string(seconds) + " s";
    const std::int64_t minutes = (seconds + 30) / 60;
    if (minutes < 60)
        return std::to_string(minutes) + " min";
    return std::to_string(minutes / 60) + " h" +
           (minutes % 60 == 0 ? "" : " " + std::to_string(minutes % 60) + " min");
}

} // namespace lapwright::schedule
