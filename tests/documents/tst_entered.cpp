// Guards: a text as entered that says something else than the value beside it is found, whatever way it was
// written; one that says the same never is.
#include "document_texts.h"
#include "documents/entered.h"
#include "documents/job.h"
#include "measure/writing.h"

#include <QtTest>

using namespace lapwright;

namespace {

std::size_t findings(Length value, const char* entered)
{
    site::Run run;
    run.id = "E1";
    run.lengths = {{value, entered}};
    site::Chain chain;
    chain.runs = {run};
    site::Job job;
    job.chains = {chain};
    return documents::enteredThatDiffer(job).size();
}

} // namespace

class EnteredTest : public QObject {
    Q_OBJECT
private slots:
    void textsThatSayTheSame()
    {
        const Length value = Length::inches(150) + Length::sixtyFourths(24);
        for (const char* text :
             {"", "12' 6 3/8\"", "12 6 3/8", "150.375\"", "150 3/8", "3819.525 mm", "3819.5", "3819.525"})
            QVERIFY2(findings(value, text) == 0, text);
        QCOMPARE(findings(Length::feet(12), "12"), std::size_t{0});
        QCOMPARE(findings(Length::inches(12), "12"), std::size_t{0});
        QCOMPARE(findings(Length::millimetres(12), "12"), std::size_t{0});
    }
    void textsThatSayAnother()
    {
        const Length value = Length::inches(150) + Length::sixtyFourths(24);
        for (const char* text : {"12' 7 3/8\"", "3919.525 mm", "about twelve", "12", "\xff"})
            QVERIFY2(findings(value, text) == 1, text);
    }
    void theFindingQuotesBoth()
    {
        site::Job job;
        job.chains = {site::Chain{}};
        job.chains[0].id = "house";
        job.chains[0].corners = {site::InteriorAngle{Angle::degrees(90), "95"}};
        const auto found = documents::enteredThatDiffer(job);
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(found[0].place, std::string("chain house, corner 1"));
        QCOMPARE(say(found[0].statement, Style{}),
                 std::string("95 was entered, and the value beside it is 90°: one of the two was changed"));
    }
    void aSoundJobHasNone()
    {
        const auto job = documents::readJob(texts::ofCase("cottage.job.json"));
        QVERIFY(job.ok());
        QVERIFY(documents::enteredThatDiffer(job->value).empty());
    }
};

QTEST_APPLESS_MAIN(EnteredTest)
#include "tst_entered.moc"
