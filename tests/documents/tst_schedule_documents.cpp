// Guards: a floor comes out of its file as a person wrote it, hours, exceptions and measured rates; a
// schedule comes back the same from its file; what cannot be is refused with its place.
#include "document_texts.h"
#include "documents/schedule.h"
#include "schedule/random_floors.h"
#include "schedule/solve.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

Json floorJson()
{
    return Json::parse(texts::ofCase("tinbridge.floor.json"));
}

Json scheduleJson()
{
    return Json::parse(texts::ofCase("two-houses.schedule.json"));
}

template <class Document>
std::string firstError(const Result<Document>& document)
{
    return document.ok() ? "no error" : document.errors().front().sentence();
}

} // namespace

class ScheduleDocumentsTest : public QObject {
    Q_OBJECT
private slots:
    void aFloorAsWritten()
    {
        const auto document = readFloor(floorJson().dump());
        QVERIFY2(document.ok(), firstError(document).c_str());
        const schedule::Floor& floor = document->value;
        QCOMPARE(floor.hours.week[4].size(), std::size_t{1});
        QVERIFY(floor.hours.week[6].empty());
        QCOMPARE(floor.hours.on({2026, 12, 25}).size(), std::size_t{0});
        QVERIFY(floor.hours.on({2026, 12, 5}).front().from == schedule::Duration::hours(8));
        // A measured rate wins over the floor's, that over the usual one.
        const schedule::Rates slitter = schedule::ratesOf(floor, floor.machines[0]);
        QVERIFY(slitter.slit == schedule::Duration::seconds(9));
        QVERIFY(slitter.crosscut == schedule::Duration::seconds(10));
        QVERIFY(slitter.sheet == schedule::usualRates().sheet);
        QVERIFY(floor.machines[2].hours.has_value() && !floor.machines[0].hours.has_value());
        QVERIFY(floor.truckLeaves == schedule::Duration::minutes(390));
        QVERIFY(floor.setups.coilChange == schedule::Duration::minutes(20));
        QVERIFY(floor.setups.slitterSetup == schedule::SetupTimes().slitterSetup);
        QVERIFY(readFloor(writeFloor(*document))->value == floor);
    }
    void floorsThatCannotBe()
    {
        Json twice = floorJson();
        twice["machines"][1]["id"] = "slitter";
        QCOMPARE(firstError(readFloor(twice.dump())),
                 std::string("/machines/1/id: found slitter again, expected each only once"));
        Json night = floorJson();
        night["hours"]["monday"][1] = "22:00-06:00";
        QVERIFY(firstError(readFloor(night.dump())).find("/hours/monday/1") != std::string::npos);
        Json late = floorJson();
        late["hours"]["monday"][1] = "22:00-25:00";
        QVERIFY(firstError(readFloor(late.dump())).find("/hours/monday/1") != std::string::npos);
        Json day = floorJson();
        day["hours"]["exceptions"][0]["date"] = "2026-02-30";
        QVERIFY(firstError(readFloor(day.dump())).find("2026-02-30") != std::string::npos);
        Json idle = floorJson();
        idle["hours"] = Json::object();
        QVERIFY(firstError(readFloor(idle.dump())).find("a week without hours") != std::string::npos);
    }
    void aScheduleComesBack()
    {
        std::mt19937 random(3);
        for (int trial = 0; trial < 20; ++trial) {
            schedule::RandomFloor wanted;
            wanted.folders = 2;
            const schedule::Problem problem = schedule::randomProblem(random, wanted).build().value();
            const schedule::ScheduleRecord record = schedule::recordOf(problem, schedule::solve(problem, {}));
            QCOMPARE(record.tasks.size(), problem.tasks().size());
            const std::string text = writeSchedule({record, {}});
            const auto again = readSchedule(text);
            QVERIFY2(again.ok(), firstError(again).c_str());
            QVERIFY(again->value == record);
            QCOMPARE(writeSchedule(*again), text);
        }
    }
    void schedulesThatCannotBe()
    {
        QVERIFY2(readSchedule(scheduleJson().dump()).ok(),
                 firstError(readSchedule(scheduleJson().dump())).c_str());
        Json nowhere = scheduleJson();
        nowhere["tasks"][0]["machine"] = "saw";
        QCOMPARE(firstError(readSchedule(nowhere.dump())),
                 std::string("/tasks/0/machine: found saw, expected one of the machines of the document"));
        Json backwards = scheduleJson();
        backwards["tasks"][1]["end"] = "2026-11-30T07:26";
        QVERIFY(firstError(readSchedule(backwards.dump())).find("/tasks/1") == 0);
        Json endless = scheduleJson();
        endless["machines"][0]["worked"][0]["to"] = "9999-12-31T00:00";
        QVERIFY(firstError(readSchedule(endless.dump())).find("/machines/0/worked") == 0);
    }
};

QTEST_APPLESS_MAIN(ScheduleDocumentsTest)
#include "tst_schedule_documents.moc"
