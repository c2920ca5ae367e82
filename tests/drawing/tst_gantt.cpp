// Guards: a day of a schedule shows every task of it by name and time, no text lies over another or over a
// line however crowded the day is, and what is late or pinned can be told without colour.
#include "drawing/gantt.h"
#include "overlaps.h"
#include "pictures.h"
#include "schedule/solve.h"

#include <QtTest>

#include <random>
#include <set>

using namespace lapwright;
using namespace lapwright::drawing;
using namespace lapwright::schedule;

namespace {

/// A slitter and two folders, 07:00-12:00 and 12:30-15:30; lots of invented houses, some due too soon.
ProblemBuilder week(std::uint32_t seed, std::size_t lots, std::uint32_t hoursToDue = 60)
{
    std::mt19937 random(seed);
    Hours hours;
    for (std::size_t day = 0; day < 5; ++day)
        hours.week[day] = {{Duration::hours(7), Duration::hours(12)},
                           {Duration::minutes(750), Duration::minutes(930)}};
    const Moment begin = momentOf({2026, 11, 30}, Duration::minutes(440));
    ProblemBuilder builder(begin);
    builder.machine({"slitter", "Slitter", Stage::Cut, hours, {}, {}});
    builder.machine({"folder-1", "Long folder", Stage::Fold, hours, {}, {}});
    builder.machine(
        {"folder-2", "Folder with a beam that turns both ways and a long name", Stage::Fold, hours, {}, {}});
    builder.transferPieces(6);
    for (std::size_t lot = 0; lot < lots; ++lot) {
        const std::string number = std::to_string(lot + 1);
        const std::size_t delivery = builder.delivery(
            {number, "House " + number,
             begin + Duration::hours(static_cast<std::int64_t>(3 + random() % hoursToDue)), 1});
        const auto sheets = static_cast<std::int64_t>(1 + random() % 6);
        const std::string colour = random() % 2 == 0 ? "Slate" : "Bone";
        const std::size_t cut =
            builder.task({"cut " + number,
                          colour + " 24 ga, map " + number,
                          Stage::Cut,
                          sheets,
                          {{0,
                            150'000,
                            {"rack " + colour, "strips " + std::to_string(random() % 3) + " mm"},
                            Duration::minutes(3),
                            Duration::minutes(10)}},
                          {},
                          {}});
        const Way fold{1,
                       static_cast<std::int64_t>(30'000 + random() % 60'000),
                       {"", "program " + std::to_string(random() % 5)},
                       {},
                       Duration::minutes(2)};
        Way other = fold;
        other.machine = 2;
        const std::size_t folds = builder.task({"lot " + number,
                                                "Larkfield House " + number + ", P1 Eave drip edge",
                                                Stage::Fold,
                                                sheets * 4,
                                                {fold, other},
                                                delivery,
                                                {}});
        builder.supply({cut, folds, sheets * 4});
    }
    return builder;
}

ScheduleRecord recordFor(const ProblemBuilder& builder)
{
    const Problem problem = builder.build().value();
    Settings settings;
    settings.workLimit = 100;
    return recordOf(problem, solve(problem, settings));
}

std::size_t count(const DisplayList& page, Role role)
{
    std::size_t found = 0;
    for (const Shape& shape : page.shapes)
        found += std::holds_alternative<Path>(shape) && std::get<Path>(shape).role == role ? 1 : 0;
    return found;
}

} // namespace

class GanttTest : public QObject {
    Q_OBJECT
private slots:
    void noTextLiesOverAnything()
    {
        for (const std::size_t lots : {1U, 7U, 25U, 80U}) {
            const ScheduleRecord record = recordFor(week(static_cast<std::uint32_t>(lots), lots));
            for (const Date& day : daysOf(record)) {
                const DisplayList page = gantt(record, {day});
                const QString name = QString("gantt-%1-%2").arg(lots).arg(QString::fromStdString(write(day)));
                keepPicture(page, name);
                QVERIFY2(report(faultsOf(page)).isEmpty(), qPrintable(name + ": " + report(faultsOf(page))));
                QCOMPARE(xmlError(toSvg(page)), QString());
            }
        }
    }
    void everyTaskIsOnADay()
    {
        const ScheduleRecord record = recordFor(week(4, 30));
        std::string all;
        for (const Date& day : daysOf(record))
            all += gantt(record, {day}).description;
        for (const RecordedTask& task : record.tasks)
            QVERIFY2(all.find(task.name) != std::string::npos, task.name.c_str());
    }
    void lateAndPinnedAreShapes()
    {
        ProblemBuilder builder = week(2, 40, 4);
        builder.pin({23, 1, momentOf({2026, 11, 30}, Duration::hours(14)), {}});
        const ScheduleRecord record = recordFor(builder);
        QVERIFY(record.score.lateDeliveries > 1);
        std::size_t late = 0, flags = 0, pins = 0;
        std::string text;
        for (const RecordedTask& task : record.tasks)
            late += task.late.empty() ? 0 : 1;
        for (const Date& day : daysOf(record)) {
            const DisplayList page = gantt(record, {day});
            flags += count(page, Role::Caution) - 1; // the legend's
            for (const Shape& shape : page.shapes)
                pins += std::holds_alternative<Circle>(shape) ? 1 : 0;
            --pins; // the legend's
            text += textsOf(page);
        }
        QCOMPARE(flags, late);
        QCOMPARE(pins, std::size_t{1});
        QVERIFY(text.find("LATE") != std::string::npos && text.find("because") != std::string::npos);
    }
    void whatIsMadeIsAShapeAndNoLongerLate()
    {
        const ScheduleRecord record = recordFor(week(2, 40, 4));
        QVERIFY(record.score.lateDeliveries > 1);
        GanttPicture picture;
        std::size_t made = 0, ticks = 0, flags = 0;
        for (const RecordedTask& task : record.tasks)
            picture.progress[task.key] = made++ % 3 == 0
                                             ? GanttProgress{"not to be made any more", false, true}
                                             : GanttProgress{"made", true, true};
        made = record.tasks.size() - (record.tasks.size() + 2) / 3;
        std::string text;
        for (const Date& day : daysOf(record)) {
            picture.day = day;
            const DisplayList page = gantt(record, picture);
            keepPicture(page, "gantt-made-" + QString::fromStdString(write(day)));
            QVERIFY2(report(faultsOf(page)).isEmpty(), qPrintable(report(faultsOf(page))));
            flags += count(page, Role::Caution) - 1; // the legend's
            ticks += count(page, Role::Label) - 1;
            QCOMPARE(count(page, Role::Blank), std::size_t{2}); // the legend's
            text += textsOf(page);
        }
        QCOMPARE(ticks, made);
        QCOMPARE(flags, std::size_t{0});
        QVERIFY(text.find("LATE") == std::string::npos && text.find(", made") != std::string::npos);
        // What is only begun stays a task, with its words.
        for (auto& [task, progress] : picture.progress)
            progress = {"3 of 8 made", false, false};
        QVERIFY(textsOf(gantt(record, picture)).find("3 of 8 made") != std::string::npos);
        QVERIFY(count(gantt(record, picture), Role::Blank) > 2);
    }
    void whatLiesUnderAPointIsTheTaskDrawnThere()
    {
        const ScheduleRecord schedule = recordFor(week(3, 12));
        GanttPicture picture;
        picture.day = daysOf(schedule).front();
        const DisplayList page = gantt(schedule, picture);
        std::set<std::size_t> found;
        for (const Shape& shape : page.shapes) {
            const auto* path = std::get_if<Path>(&shape);
            if (path == nullptr || path->role != Role::Blank || path->points.size() != 4)
                continue;
            const Point middle = 0.5 * (path->points[0] + path->points[2]);
            const auto spot = ganttSpot(schedule, picture, middle);
            if (!spot || !spot->task)
                continue; // the sample in the legend
            const RecordedTask& task = schedule.tasks[*spot->task];
            QCOMPARE(task.machine, schedule.machines[spot->machine].id);
            QVERIFY(task.start <= spot->moment && spot->moment <= task.end);
            found.insert(*spot->task);
        }
        std::set<std::size_t> drawn;
        const Moment midnight = momentOf(picture.day, Duration());
        for (std::size_t task = 0; task < schedule.tasks.size(); ++task)
            if (schedule.tasks[task].start < midnight + Duration::days(1) &&
                schedule.tasks[task].end > midnight)
                drawn.insert(task);
        QVERIFY(!drawn.empty());
        QCOMPARE(found, drawn);
        QVERIFY(!ganttSpot(schedule, picture, {1.0, 1.0}));
    }

    void aDayWithoutWorkIsNoDay()
    {
        for (const Date& day : daysOf(recordFor(week(3, 40))))
            QVERIFY(weekdayOf(day) != Weekday::Saturday && weekdayOf(day) != Weekday::Sunday);
        QVERIFY(gantt(ScheduleRecord(), {{2026, 11, 30}}).description == "Nothing is scheduled.");
    }
};

QTEST_APPLESS_MAIN(GanttTest)
#include "tst_gantt.moc"
