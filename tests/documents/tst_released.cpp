// Guards: what a released version wrote is read by every later one as it was meant: each document kept in
// released/VERSION is read, a signature on it still holds, an order's hash is still the one its next revision
// names, and what is not known is kept.
#include "document_texts.h"
#include "documents/cut.h"
#include "documents/envelope.h"
#include "documents/job.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/order.h"
#include "documents/profile.h"
#include "documents/rates.h"
#include "documents/rules.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "documents/signature.h"
#include "documents/trim.h"
#include "unknown_members.h"

#include <QtTest>

#include <map>
#include <set>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

/// A text read and written again; its errors in words where it is refused.
using RoundTrip = std::string (*)(std::string_view);

template <auto read, auto write>
std::string through(std::string_view text)
{
    const auto document = read(text);
    return document.ok() ? write(*document, Layout::Canonical) : document.errors().front().sentence();
}

const std::map<std::string_view, RoundTrip>& kindsRead()
{
    static const std::map<std::string_view, RoundTrip> all{
        {kinds::job.format, through<readJob, writeJob>},
        {kinds::order.format, through<readOrder, writeOrder>},
        {kinds::profile.format, through<readProfile, writeProfile>},
        {kinds::trim.format, through<readTrim, writeTrim>},
        {kinds::metal.format, through<readMetal, writeMetal>},
        {kinds::machine.format, through<readMachine, writeMachine>},
        {kinds::rules.format, through<readRules, writeRules>},
        {kinds::stock.format, through<readStock, writeStock>},
        {kinds::floor.format, through<readFloor, writeFloor>},
        {kinds::schedule.format, through<readSchedule, writeSchedule>},
        {kinds::rates.format, through<readRates, writeRates>},
        {kinds::load.format, through<readLoad, writeLoad>},
        {kinds::receipt.format, through<readReceipt, writeReceipt>},
        {kinds::cutProblem.format, through<readCutProblem, writeCutProblem>},
        {kinds::cutPlan.format, through<readCutPlan, writeCutPlan>}};
    return all;
}

std::vector<texts::Text> ofVersion(const QString& version)
{
    std::vector<texts::Text> all;
    const QDir folder(QString::fromStdString(sourceDirectory() + "/tests/documents/released/") + version);
    for (const QString& name : folder.entryList({"*.json"}, QDir::Files, QDir::Name))
        all.push_back({(version + "/" + name).toStdString(), texts::read(folder.filePath(name))});
    return all;
}

QStringList versions()
{
    return QDir(QString::fromStdString(sourceDirectory() + "/tests/documents/released"))
        .entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name);
}

} // namespace

class ReleasedTest : public QObject {
    Q_OBJECT
private slots:
    void everyDocumentOfEveryVersionIsReadAndKeepsWhatItSays()
    {
        std::set<std::string> kinds;
        for (const QString& version : versions())
            for (const texts::Text& document : ofVersion(version)) {
                const auto format = formatOf(document.text);
                QVERIFY2(format.ok(), document.file.c_str());
                kinds.insert(*format);
                const std::string written = kindsRead().at(*format)(document.text);
                QVERIFY2(Json::accept(written), (document.file + ": " + written).c_str());
                Json original = Json::parse(document.text);
                original.erase("signature"); // is of that one text
                original.erase("program");
                QVERIFY2(unknown::contains(Json::parse(written), original), document.file.c_str());
            }
        QCOMPARE(kinds.size(), kindsRead().size());
    }
    void signaturesStillHold()
    {
        std::size_t found = 0;
        for (const QString& version : versions())
            for (const texts::Text& document : ofVersion(version)) {
                const auto signature = checkSignature(document.text);
                QVERIFY2(signature.ok(), document.file.c_str());
                if (!signature->key)
                    continue;
                QVERIFY2(signature->holds, document.file.c_str());
                ++found;
            }
        QVERIFY2(found >= 3, "an order, a receipt and a load list at least");
    }
    void hashesStillNameTheRevisionBefore()
    {
        const auto first =
            readOrder(texts::read(QString::fromStdString(texts::released() + "/alder.order.json")));
        const auto second =
            readOrder(texts::read(QString::fromStdString(texts::released() + "/alder-again.order.json")));
        QVERIFY(first.ok() && second.ok());
        QCOMPARE(second->value.revision, std::int64_t{2});
        QCOMPARE(second->value.previousHash, revisionHash(*first));
    }
};

QTEST_APPLESS_MAIN(ReleasedTest)
#include "tst_released.moc"
