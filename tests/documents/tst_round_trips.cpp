// Guards: every kind of document, with unknown members put into every object of it, comes back the same from
// reading, writing and reading again, and writes the same bytes the second time.
#include "document_texts.h"
#include "documents/cut.h"
#include "documents/job.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/profile.h"
#include "documents/rates.h"
#include "documents/rules.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "documents/trim.h"
#include "unknown_members.h"

#include <QtTest>

using namespace lapwright::documents;

namespace {

using RoundTrip = std::string (*)(const std::string&);

template <auto read, auto write>
std::string through(const std::string& text)
{
    const auto document = read(text);
    return document.ok() ? write(*document, Layout::Readable) : document.errors().front().sentence();
}

void check(const texts::Text& source, RoundTrip roundTrip)
{
    Json original = Json::parse(source.text);
    int serial = 0;
    QVERIFY(unknown::add(original, serial) > 1);
    const std::string once = roundTrip(original.dump());
    QVERIFY2(Json::accept(once), (source.file + ": " + once).c_str());
    QVERIFY2(unknown::contains(Json::parse(once), original), (source.file + "\n" + once).c_str());
    QVERIFY2(roundTrip(once) == once, source.file.c_str());
    QVERIFY(once.rfind("{\n  \"format\": \"lapwright/", 0) == 0);
}

} // namespace

class RoundTripsTest : public QObject {
    Q_OBJECT
private slots:
    void shippedData()
    {
        const std::vector<std::pair<const char*, RoundTrip>> folders{
            {"metal-library", through<readMetal, writeMetal>},
            {"trim-library", through<readTrim, writeTrim>},
            {"machines", through<readMachine, writeMachine>},
            {"rule-sets", through<readRules, writeRules>}};
        for (const auto& [folder, roundTrip] : folders)
            for (const texts::Text& source : texts::ofFolder(folder))
                check(source, roundTrip);
    }
    void cases()
    {
        const std::vector<std::pair<const char*, RoundTrip>> files{
            {"cottage.job.json", through<readJob, writeJob>},
            {"gutter-hook.profile.json", through<readProfile, writeProfile>},
            {"shelves.stock.json", through<readStock, writeStock>},
            {"tinbridge.floor.json", through<readFloor, writeFloor>},
            {"two-houses.schedule.json", through<readSchedule, writeSchedule>},
            {"first.load.json", through<readLoad, writeLoad>},
            {"first.receipt.json", through<readReceipt, writeReceipt>},
            {"shop.rates.json", through<readRates, writeRates>},
            {"two-girths.cut-problem.json", through<readCutProblem, writeCutProblem>}};
        for (const auto& [file, roundTrip] : files)
            check({file, texts::ofCase(file)}, roundTrip);
        const char* plan = "two-girths.cut-plan.json";
        check({plan, texts::read(QString::fromStdString(texts::released() + "/" + plan))},
              through<readCutPlan, writeCutPlan>);
    }
};

QTEST_APPLESS_MAIN(RoundTripsTest)
#include "tst_round_trips.moc"
