// Guards: every kind of document, with unknown members put into every object of it, comes back the same from
// reading, writing and reading again, and writes the same bytes the second time.
#include "document_texts.h"
#include "documents/cut.h"
#include "documents/job.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/profile.h"
#include "documents/rules.h"
#include "documents/shop.h"
#include "documents/trim.h"

#include <QtTest>

using namespace lapwright::documents;

namespace {

/// Objects whose member names are the document's own words are left alone.
bool isFreeForm(const std::string& name)
{
    return name == "measures" || name == "legs_mm" || name == "sources";
}

std::size_t addUnknown(Json& value, int& serial)
{
    std::size_t added = 0;
    if (value.is_object()) {
        for (auto& [name, inner] : value.items())
            if (!(isFreeForm(name) && inner.is_object()))
                added += addUnknown(inner, serial);
        value["unheard of " + std::to_string(serial)] = {{"serial", serial}, {"words", "kept é"}};
        ++serial;
        return added + 1;
    }
    if (value.is_array())
        for (Json& inner : value)
            added += addUnknown(inner, serial);
    return added;
}

using RoundTrip = std::string (*)(const std::string&);

template <auto read, auto write>
std::string through(const std::string& text)
{
    const auto document = read(text);
    return document.ok() ? write(*document, Layout::Readable) : document.errors().front().sentence();
}

/// Every member of `wanted` is in `found` with the same value; members found besides are defaults written
/// out.
bool contains(const Json& found, const Json& wanted)
{
    if (wanted.is_object())
        return found.is_object() &&
               std::all_of(wanted.items().begin(), wanted.items().end(), [&](const auto& item) {
                   return found.contains(item.key()) && contains(found[item.key()], item.value());
               });
    if (wanted.is_array() && found.is_array() && found.size() == wanted.size()) {
        for (std::size_t index = 0; index < wanted.size(); ++index)
            if (!contains(found[index], wanted[index]))
                return false;
        return true;
    }
    if (wanted.is_number_float() || found.is_number_float())
        return std::abs(found.get<double>() - wanted.get<double>()) <= 1e-9 * std::abs(wanted.get<double>());
    return found == wanted;
}

void check(const texts::Text& source, RoundTrip roundTrip)
{
    Json original = Json::parse(source.text);
    int serial = 0;
    QVERIFY(addUnknown(original, serial) > 1);
    const std::string once = roundTrip(original.dump());
    QVERIFY2(Json::accept(once), (source.file + ": " + once).c_str());
    QVERIFY2(contains(Json::parse(once), original), (source.file + "\n" + once).c_str());
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
            {"first.load.json", through<readLoad, writeLoad>},
            {"first.receipt.json", through<readReceipt, writeReceipt>},
            {"two-girths.cut-problem.json", through<readCutProblem, writeCutProblem>}};
        for (const auto& [file, roundTrip] : files)
            check({file, texts::ofCase(file)}, roundTrip);
    }
};

QTEST_APPLESS_MAIN(RoundTripsTest)
#include "tst_round_trips.moc"
