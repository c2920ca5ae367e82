#pragma once

#include "measure/result.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

/// Time as a shop reads it off its own wall clock: dates, times of day, whole seconds. There is no time zone
/// here and every day has 24 hours. Daylight saving is left out: in the night the clock is changed, work that
/// goes on through the change is an hour off.
namespace lapwright::schedule {

/// A signed number of whole seconds.
class Duration {
public:
    constexpr Duration() = default;
    [[nodiscard]] static constexpr Duration seconds(std::int64_t count) { return Duration(count); }
    [[nodiscard]] static constexpr Duration minutes(std::int64_t count) { return Duration(count * 60); }
    [[nodiscard]] static constexpr Duration hours(std::int64_t count) { return Duration(count * 3'600); }
    [[nodiscard]] static constexpr Duration days(std::int64_t count) { return Duration(count * 86'400); }

    [[nodiscard]] constexpr std::int64_t inSeconds() const { return seconds_; }

    constexpr auto operator<=>(const Duration&) const = default;

    constexpr Duration& operator+=(Duration other)
    {
        seconds_ += other.seconds_;
        return *this;
    }
    constexpr Duration& operator-=(Duration other)
    {
        seconds_ -= other.seconds_;
        return *this;
    }
    friend constexpr Duration operator+(Duration left, Duration right) { return left += right; }
    friend constexpr Duration operator-(Duration left, Duration right) { return left -= right; }
    friend constexpr Duration operator*(Duration value, std::int64_t factor)
    {
        return Duration(value.seconds_ * factor);
    }

private:
    explicit constexpr Duration(std::int64_t seconds) : seconds_(seconds) {}
    std::int64_t seconds_ = 0;
};

/// Seconds of `count` units of `milliseconds` each, up to the next whole one: the named border at which piece
/// times become clock times.
[[nodiscard]] constexpr Duration roundUpToSeconds(std::int64_t count, std::int64_t milliseconds)
{
    return Duration::seconds((count * milliseconds + 999) / 1'000);
}

/// A reading of the shop's wall clock: seconds since the midnight that began 1 January 1970.
class Moment {
public:
    constexpr Moment() = default;
    [[nodiscard]] static constexpr Moment sinceEpoch(Duration elapsed) { return Moment(elapsed); }
    [[nodiscard]] constexpr Duration sinceEpoch() const { return elapsed_; }

    constexpr auto operator<=>(const Moment&) const = default;

    friend constexpr Moment operator+(Moment moment, Duration later)
    {
        return Moment(moment.elapsed_ + later);
    }
    friend constexpr Moment operator-(Moment moment, Duration earlier)
    {
        return Moment(moment.elapsed_ - earlier);
    }
    friend constexpr Duration operator-(Moment later, Moment earlier)
    {
        return later.elapsed_ - earlier.elapsed_;
    }

private:
    explicit constexpr Moment(Duration elapsed) : elapsed_(elapsed) {}
    Duration elapsed_;
};

/// A day of the Gregorian calendar; years 1 to 9999.
struct Date {
    int year = 1970;
    int month = 1;
    int day = 1;

    friend auto operator<=>(const Date&, const Date&) = default;
};

enum class Weekday { Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday };

/// Days from 1 January 1970, by counting from a year that begins in March (H. Hinnant, "chrono-Compatible
/// Low-Level Date Algorithms", 2013). Precondition: a date there is.
[[nodiscard]] std::int64_t daysSinceEpoch(Date date);
[[nodiscard]] Date dateAfterEpoch(std::int64_t days);
[[nodiscard]] Weekday weekdayOf(Date date);

[[nodiscard]] Moment momentOf(Date date, Duration sinceMidnight);
[[nodiscard]] Date dateOf(Moment moment);
[[nodiscard]] Duration timeOfDay(Moment moment);

/// "2026-12-01". Error: anything else, or a day there is not.
[[nodiscard]] Result<Date> readDate(std::string_view text);
/// "07:30" or "07:30:15", up to "24:00".
[[nodiscard]] Result<Duration> readTimeOfDay(std::string_view text);
/// "2026-12-01T07:30", seconds allowed.
[[nodiscard]] Result<Moment> readMoment(std::string_view text);

/// As the functions above read them; seconds only where there are any.
[[nodiscard]] std::string write(Date date);
[[nodiscard]] std::string writeTimeOfDay(Duration sinceMidnight);
[[nodiscard]] std::string write(Moment moment);

/// For people, to whom seconds say nothing on a clock.
[[nodiscard]] Moment nearestMinute(Moment moment);

/// For people: "Tue 1 Dec 07:30" to the nearest minute, "Tuesday 1 December 2026", "3 h 20 min", "45 s".
[[nodiscard]] std::string inWords(Moment moment);
[[nodiscard]] std::string inWords(Date date);
[[nodiscard]] std::string inWords(Duration duration);

} // namespace lapwright::schedule
