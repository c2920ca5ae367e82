// Guards: dates, weekdays and times of day are those of the calendar on the wall; what is not a date is
// refused; work laid over the hours of a week begins and ends when somebody is there.
#include "schedule/calendar.h"

#include <QtTest>

using namespace lapwright::schedule;

namespace {

Moment at(const char* text)
{
    return readMoment(text).value();
}

/// Monday to Friday 07:00-12:00 and 12:30-15:30, closed on Tuesday 1 December 2026.
Hours weekOfAShop()
{
    Hours hours;
    for (std::size_t day = 0; day < 5; ++day)
        hours.week[day] = {{Duration::hours(7), Duration::hours(12)},
                           {Duration::minutes(750), Duration::minutes(930)}};
    hours.exceptions = {{{2026, 12, 1}, {}, "stocktaking"}};
    return hours;
}

} // namespace

class CivilTest : public QObject {
    Q_OBJECT
private slots:
    void everyDayOfEightCenturiesFollowsTheOneBefore()
    {
        // The rules of the Gregorian calendar, day by day, against the arithmetic.
        Date date{1600, 1, 1};
        const int lengths[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        std::int64_t expected = daysSinceEpoch(date);
        auto weekday = static_cast<int>(weekdayOf(date));
        while (date.year < 2400) {
            QCOMPARE(daysSinceEpoch(date), expected);
            QVERIFY(dateAfterEpoch(expected) == date);
            QCOMPARE(static_cast<int>(weekdayOf(date)), weekday);
            const bool leap = date.year % 4 == 0 && (date.year % 100 != 0 || date.year % 400 == 0);
            const int last = lengths[date.month - 1] + (date.month == 2 && leap ? 1 : 0);
            if (++date.day > last) {
                date.day = 1;
                if (++date.month > 12) {
                    date.month = 1;
                    ++date.year;
                }
            }
            ++expected;
            weekday = (weekday + 1) % 7;
        }
    }
    void knownDays()
    {
        QCOMPARE(daysSinceEpoch({1970, 1, 1}), std::int64_t{0});
        // POSIX.1-2017, base definitions 4.16: 1 January 1970 is day 0; 2000-03-01 is day 11017 (arithmetic).
        QCOMPARE(daysSinceEpoch({2000, 3, 1}), std::int64_t{11'017});
        QVERIFY(weekdayOf({2000, 1, 1}) == Weekday::Saturday);
        QCOMPARE(inWords(at("2026-12-01T07:30")), std::string("Tue 1 Dec 07:30"));
        QCOMPARE(inWords(Date{2026, 12, 1}), std::string("Tuesday 1 December 2026"));
    }
    void textsComeBack()
    {
        for (const char* text :
             {"2026-12-01T07:30", "2000-02-29T00:00:59", "0001-01-01T00:00", "9999-12-31T23:59"})
            QCOMPARE(write(at(text)), std::string(text));
        QCOMPARE(writeTimeOfDay(readTimeOfDay("24:00").value()), std::string("24:00"));
    }
    void whatIsNoTimeIsRefused()
    {
        for (const char* text : {"", "2026-13-01", "2026-02-29", "1900-02-29", "2026-1-01", "2026-12-00",
                                 "2026-12-32", "20261201xx", "2026-12-0a", "+026-12-01"})
            QVERIFY2(!readDate(text).ok(), text);
        for (const char* text : {"7:00", "07:60", "24:01", "25:00", "07-00", "07:00:60", "07:00:0", "ab:cd"})
            QVERIFY2(!readTimeOfDay(text).ok(), text);
        for (const char* text : {"2026-12-01", "2026-12-01 07:00", "2026-12-01T", "2026-12-01T7:00"})
            QVERIFY2(!readMoment(text).ok(), text);
        QCOMPARE(readDate("2026-02-30").errors().front().sentence(),
                 std::string("found \"2026-02-30\", expected a day that the month has"));
    }
    void durationsInWords()
    {
        QCOMPARE(inWords(Duration::seconds(45)), std::string("45 s"));
        QCOMPARE(inWords(Duration::seconds(90)), std::string("2 min"));
        QCOMPARE(inWords(Duration::minutes(200)), std::string("3 h 20 min"));
        QCOMPARE(inWords(Duration::seconds(3'599)), std::string("1 h"));
        QCOMPARE(roundUpToSeconds(3, 1'001), Duration::seconds(4));
        QCOMPARE(roundUpToSeconds(0, 1'001), Duration());
    }
    void workGoesOnAfterTheNightAndTheClosedDay()
    {
        // Monday 30 November, 14:30: one hour is left that day, Tuesday is closed.
        const auto calendar =
            calendarOf(weekOfAShop(), at("2026-11-30T14:30"), at("2026-11-30T14:30"), Duration::hours(20));
        QVERIFY(calendar.ok());
        QCOMPARE(write(calendar->beginsAt(Duration())), std::string("2026-11-30T14:30"));
        QCOMPARE(write(calendar->endsAt(Duration::hours(1))), std::string("2026-11-30T15:30"));
        QCOMPARE(write(calendar->beginsAt(Duration::hours(1))), std::string("2026-12-02T07:00"));
        QCOMPARE(write(calendar->endsAt(Duration::hours(7))), std::string("2026-12-02T13:30"));
        QCOMPARE(calendar->workedBy(at("2026-12-02T12:15")), Duration::hours(6));
        QVERIFY(!calendar->isOpen(at("2026-12-01T09:00")));
        QVERIFY(calendar->isOpen(at("2026-12-02T07:00")) && !calendar->isOpen(at("2026-12-02T12:00")));
    }
    void shiftsThatTouchAreOne()
    {
        const Moment begin = at("2026-11-30T00:00");
        const Calendar calendar(
            {{begin, begin + Duration::hours(1)}, {begin + Duration::hours(1), begin + Duration::hours(2)}});
        QCOMPARE(calendar.worked().size(), std::size_t{1});
        QCOMPARE(calendar.total(), Duration::hours(2));
    }
    void hoursThatCannotBeAreNamed()
    {
        Hours hours = weekOfAShop();
        QVERIFY(faultsOf(hours).empty());
        hours.week[0] = {{Duration::hours(8), Duration::hours(8)}};
        hours.week[1] = {{Duration::hours(9), Duration::hours(12)},
                         {Duration::hours(11), Duration::hours(13)}};
        hours.exceptions.push_back(hours.exceptions.front());
        const auto faults = faultsOf(hours);
        QCOMPARE(faults.size(), std::size_t{3});
        QCOMPARE(faults[0].place, std::string("monday/0"));
        QCOMPARE(faults[1].place, std::string("tuesday/1"));
        QCOMPARE(faults[2].found, std::string("2026-12-01 again"));
        QCOMPARE(faultsOf(Hours()).size(), std::size_t{1});
        QVERIFY(!calendarOf(weekOfAShop(), at("2026-11-30T00:00"), at("2026-11-30T00:00"),
                            Duration::days(100'000))
                     .ok());
    }
};

QTEST_APPLESS_MAIN(CivilTest)
#include "tst_civil.moc"
