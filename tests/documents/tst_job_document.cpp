// Guards: a job and an order go into a document and come back the same, unknown members included; what a
// document must not say is named with its place.
#include "documents/identity.h"
#include "documents/job.h"
#include "documents/order.h"
#include "source_directory.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

std::string caseText(const char* file)
{
    QFile input(QString::fromStdString(sourceDirectory() + "/tests/documents/cases/") + file);
    return input.open(QIODevice::ReadOnly) ? input.readAll().toStdString() : std::string();
}

const std::string jobText = caseText("cottage.job.json");

std::string replaced(std::string text, const std::string& what, const std::string& with)
{
    const std::size_t at = text.find(what);
    return at == std::string::npos ? std::string() : text.replace(at, what.size(), with);
}

std::string firstError(const std::string& text)
{
    const auto job = readJob(text);
    return job ? "no error" : job.errors().front().sentence();
}

} // namespace

class JobDocumentTest : public QObject {
    Q_OBJECT
private slots:
    void valuesAreExact()
    {
        const auto job = readJob(jobText);
        QVERIFY2(job.ok(), firstError(jobText).c_str());
        const site::Chain& chain = job->value.chains.front();
        QVERIFY(chain.runs[0].lengths[0].value == Length::feet(12) + Length::sixtyFourths(6 * 64 + 24));
        QCOMPARE(chain.runs[0].lengths[0].entered, std::string("12' 6 3/8\""));
        QVERIFY(*chain.runs[0].slope == Slope::twelfths(6));
        QVERIFY(chain.runs[0].end == site::EndKind::Mitre);
        QVERIFY(chain.runs[0].trims[0].legs.at("deck") == Length::inches(3));
        QCOMPARE(chain.runs[2].counts, std::size_t{1});
        QVERIFY(std::holds_alternative<site::SquareInside>(chain.corners[0]));
        QVERIFY(std::get<site::TapedTriangle>(chain.corners[2]).inside);
        QVERIFY(job->value.limits == site::PieceLimits());
    }
    void writtenAndReadAgainIsTheSame_data()
    {
        QTest::addColumn<bool>("readable");
        QTest::newRow("canonical") << false;
        QTest::newRow("readable") << true;
    }
    void writtenAndReadAgainIsTheSame()
    {
        QFETCH(bool, readable);
        const Layout layout = readable ? Layout::Readable : Layout::Canonical;
        const auto job = readJob(jobText);
        QVERIFY(job.ok());
        const std::string text = writeJob(*job, layout);
        const auto again = readJob(text);
        QVERIFY2(again.ok(), text.c_str());
        QVERIFY(*again == *job);
        QCOMPARE(writeJob(*again, layout), text);
        QVERIFY(Json::parse(text) == Json::parse(jobText));
    }
    void extrasStayWithTheirRun()
    {
        auto job = readJob(jobText);
        QVERIFY(job.ok());
        auto& runs = job->value.chains.front().runs;
        std::swap(runs[0], runs[2]);
        const Json written = Json::parse(writeJob(*job));
        QCOMPARE(written["chains"][0]["runs"][2]["slope"]["how"].get<std::string>(), std::string("level"));
        QVERIFY(!written["chains"][0]["runs"][0].contains("slope"));
        QCOMPARE(written["painted"]["by"].get<std::string>(), std::string("hand"));
    }
    void errorsNamePlaceAndExpected()
    {
        const std::string text = jobText;
        QCOMPARE(firstError(replaced(text, "\"eave\"", "\"eaves\"")).substr(0, 57),
                 std::string("/chains/0/runs/0/kind: found \"eaves\", expected \"eave\" or "));
        QCOMPARE(
            firstError(replaced(text, "3819.525", "\"12' 6\"")),
            std::string("/chains/0/runs/0/lengths/0/mm: found \"12' 6\", expected a number (millimetres)"));
        QCOMPARE(firstError(replaced(text, "3819.525", "-1")),
                 std::string("/chains/0/runs/0/lengths/0/mm: found -1, expected at least 0 (millimetres)"));
        auto job = readJob(text);
        QVERIFY(job.ok());
        for (const char* day : {"2026-02-30", "2026-13-45"}) {
            job->value.wantedBy = day;
            QCOMPARE(firstError(writeJob(*job)), std::string("/wanted_by: found \"") + day +
                                                     "\", expected a day there is, like 2026-05-31");
        }
        QCOMPARE(
            firstError(replaced(text, "\"id\": \"R1\"", "\"id\": \"E1\"")),
            std::string(
                "/chains/0/runs/1/id: found \"E1\" again, expected an id of its own for each run of the job"));
        QCOMPARE(
            firstError(replaced(text, "\"closed\": true", "\"closed\": false")),
            std::string("/chains/0/corners: found 3 corners, expected 2 between 3 runs of an open chain"));
        QCOMPARE(firstError(replaced(text, "\"counts\": 1", "\"counts\": 2")).substr(0, 31),
                 std::string("/chains/0/runs/2/counts: found "));
        QCOMPARE(
            firstError(replaced(text, "\"kind\": \"square_inside\"", "\"kind\": \"angle\"")),
            std::string("/chains/0/corners/0: found no member \"degrees\", expected member \"degrees\""));
        QCOMPARE(firstError(replaced(text, "\"rise\": 6", "\"rise\": 600000")).substr(0, 30),
                 std::string("/chains/0/runs/0/slope: found "));
    }
    void newerVersionSaysWhichProgramReadsIt()
    {
        const std::string newer = replaced(replaced(jobText, "\"version\": 1", "\"version\": 2"),
                                           "\"program\": \"0.1.0\"", "\"program\": \"0.9.0\"");
        QCOMPARE(firstError(newer),
                 std::string("/version: found version 2, expected version 1 or older; this "
                             "document is read by Lapwright 0.9.0 or later"));
        QCOMPARE(firstError(replaced(jobText, "lapwright/job", "lapwright/order")),
                 std::string("/format: found \"lapwright/order\", expected \"lapwright/job\""));
    }
    void revisionsCountUpAndCarryTheHash()
    {
        OrderDocument order;
        order.value.id = "4f1c0b52-8d5e-4f7a-9a43-2f6f0c1d7e22";
        order.value.job = readJob(jobText)->value;
        const OrderDocument next = nextRevision(order);
        QCOMPARE(next.value.revision, std::int64_t{2});
        QCOMPARE(next.value.previousHash, revisionHash(order));
        QVERIFY(revisionHash(next) != revisionHash(order));
        const auto again = readOrder(writeOrder(next));
        QVERIFY2(again.ok(), again.ok() ? "" : again.errors().front().sentence().c_str());
        QVERIFY(*again == next);
        QCOMPARE(revisionHash(*again), revisionHash(next));
    }
    // FIPS 180-4 test vector "abc": csrc.nist.gov, SHA256 example.
    void sha256OfAbc()
    {
        QCOMPARE(sha256("abc"),
                 std::string("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
    }
};

QTEST_APPLESS_MAIN(JobDocumentTest)
#include "tst_job_document.moc"
