// Guards: what is wrong with a job as measured is told before anyone leaves, with the right weight and place.
#include "site/checks.h"

#include "houses.h"
#include "measure/writing.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Run good(RunKind kind)
{
    Run run = houses::eave("E1", Length::feet(20));
    run.kind = kind;
    run.otherSlope = Slope::twelfths(6);
    return run;
}

const rules::Finding* find(const rules::Findings& findings, const std::string& code)
{
    for (const rules::Finding& finding : findings)
        if (finding.code == code)
            return &finding;
    return nullptr;
}

bool blocks(const rules::Findings& findings, const std::string& code)
{
    const rules::Finding* finding = find(findings, code);
    return finding != nullptr && finding->weight == rules::Weight::Blocks;
}
bool warns(const rules::Findings& findings, const std::string& code)
{
    const rules::Finding* finding = find(findings, code);
    return finding != nullptr && finding->weight == rules::Weight::Warns;
}

int count(const rules::Findings& findings, const std::string& code)
{
    int found = 0;
    for (const rules::Finding& finding : findings)
        found += finding.code == code ? 1 : 0;
    return found;
}

rules::Findings check(const Run& run)
{
    return checkRun(run, Tolerance(), "chain House, run E1");
}

Run withLength(Length length)
{
    Run run = good(RunKind::Eave);
    run.lengths[0].value = length;
    return run;
}

Job jobOf(Chain chain)
{
    Job job;
    job.chains = {std::move(chain)};
    return job;
}

Chain house()
{
    std::mt19937 random(4);
    return houses::rectilinear(random, 3);
}

} // namespace

class SiteChecksTest : public QObject {
    Q_OBJECT
private slots:
    void goodRunsPass()
    {
        for (const RunKind kind :
             {RunKind::Eave, RunKind::Rake, RunKind::Ridge, RunKind::Hip, RunKind::Valley, RunKind::Sidewall,
              RunKind::WallBase, RunKind::OutsideCorner, RunKind::InsideCorner, RunKind::OpeningHead})
            QVERIFY(check(good(kind)).empty());
        Job job = jobOf(house());
        const rules::Findings findings = checkJob(job);
        QCOMPARE(findings.size(), std::size_t{1});
        QVERIFY(findings[0].code == "site.closure.closes");
    }
    void lengthsThatCannotBe()
    {
        QVERIFY(blocks(check(withLength(Length())), "site.run.length.not-positive"));
        QVERIFY(blocks(check(withLength(-Length::feet(3))), "site.run.length.not-positive"));
        const rules::Findings absurd = check(withLength(Length::feet(900)));
        QVERIFY(blocks(absurd, "site.run.length.absurd"));
        // 900 ft may have been 900 in.
        const std::string remedy = say(find(absurd, "site.run.length.absurd")->remedy, Style());
        QVERIFY2(remedy.find("in inches is 75' 0\"") != std::string::npos, remedy.c_str());
        QVERIFY(warns(check(withLength(Length::feet(320))), "site.run.length.long"));
        QVERIFY(warns(check(withLength(Length::millimetres(20))), "site.run.length.short"));
        QVERIFY(check(withLength(Length::feet(299))).empty());
        Run none = good(RunKind::Eave);
        none.lengths.clear();
        QVERIFY(blocks(check(none), "site.run.length.missing"));
        Run other = good(RunKind::Eave);
        other.counts = 3;
        QVERIFY(blocks(check(other), "site.run.length.counts"));
    }
    void nothingIsToldTwice()
    {
        // The same slip in repeated measures, and in the length a drawing gives beside them.
        Run rake = good(RunKind::Rake);
        rake.lengths = {{Length::feet(900), ""}, {Length::feet(900), ""}};
        rake.slope = Slope::twelfths(9);
        rake.levelRun = Measured{Length::feet(720), ""}; // 900 ft along the slope
        QCOMPARE(count(check(rake), "site.run.length.absurd"), 1);
        rake.lengths.push_back({Length::feet(901), ""});
        QCOMPARE(count(check(rake), "site.run.length.absurd"), 2);
        rake.lengths.clear();
        QCOMPARE(count(check(rake), "site.run.length.absurd"), 1);
        // A slope that the closed chain cannot do without.
        Chain chain = house();
        chain.runs[1].kind = RunKind::Rake;
        chain.runs[1].slope.reset();
        const rules::Findings findings = checkChain(chain, Tolerance());
        QCOMPARE(count(findings, "site.chain.slope-for-plan"), 1);
        QCOMPARE(count(findings, "site.run.slope.missing"), 0);
    }
    void repeatsThatSpread()
    {
        Run run = good(RunKind::Eave);
        run.lengths.push_back({Length::feet(20) + Length::sixtyFourths(32), ""});
        QVERIFY(check(run).empty());
        run.lengths.push_back({Length::feet(20) - Length::sixtyFourths(1), ""});
        QVERIFY(warns(check(run), "site.run.repeats"));
    }
    void slopesThatAreMissing()
    {
        for (const RunKind kind : {RunKind::Ridge, RunKind::Hip, RunKind::Valley, RunKind::SlopeChange}) {
            Run run = good(kind);
            run.slope.reset();
            QVERIFY(blocks(check(run), "site.run.slope.missing"));
            run = good(kind);
            run.otherSlope.reset();
            QVERIFY(blocks(check(run), "site.run.other-slope.missing"));
        }
        Run eave = good(RunKind::Eave);
        eave.slope.reset();
        QVERIFY(warns(check(eave), "site.run.slope.missing"));
        Run rake = good(RunKind::Rake);
        rake.slope.reset();
        QVERIFY(warns(check(rake), "site.run.slope.missing"));
        rake.lengths.clear();
        rake.levelRun = Measured{Length::feet(10), ""};
        QVERIFY(blocks(check(rake), "site.run.slope.missing"));
        Run wall = good(RunKind::WallBase);
        wall.slope.reset();
        QVERIFY(check(wall).empty());
        Run hip = good(RunKind::Hip);
        hip.otherSlope = Slope();
        QVERIFY(blocks(check(hip), "site.run.slope.level"));
    }
    void planCornersOnTheWrongSide()
    {
        Run valley = good(RunKind::Valley);
        valley.planCorner = quarterTurn;
        QVERIFY(blocks(check(valley), "site.run.plan-corner"));
        QVERIFY(say(find(check(valley), "site.run.plan-corner")->remedy, Style()).find("270°") !=
                std::string::npos);
        valley.planCorner = Angle::degrees(240.0);
        QVERIFY(check(valley).empty());
        Run corner = good(RunKind::OutsideCorner);
        corner.planCorner = Angle::degrees(225.0);
        QVERIFY(blocks(check(corner), "site.run.plan-corner"));
        corner.planCorner = halfTurn;
        QVERIFY(blocks(check(corner), "site.run.plan-corner"));
    }
    void measuredBesideDerived()
    {
        Run rake = good(RunKind::Rake);
        rake.slope = Slope::twelfths(9);
        rake.levelRun = Measured{Length::feet(16), ""}; // 20 ft along the slope
        QVERIFY(find(check(rake), "site.run.length.derived")->weight == rules::Weight::Informs);
        rake.lengths[0].value += Length::inches(2);
        QVERIFY(warns(check(rake), "site.run.length.derived"));
        QCOMPARE(say(find(check(rake), "site.run.length.derived")->statement, Style()),
                 std::string("measured 20' 2\"; the level run and slope say 20' 0\": 2\" apart"));
        rake.levelRun->value = Length();
        QVERIFY(blocks(check(rake), "site.run.level-run.not-positive"));
        Run eave = good(RunKind::Eave);
        eave.levelRun = Measured{Length::feet(16), ""};
        QVERIFY(warns(check(eave), "site.run.level-run.kind"));
    }
    void endsThatNeedACorner()
    {
        Chain chain = house();
        for (Run& run : chain.runs)
            run.start = run.end = EndKind::Mitre;
        QVERIFY(checkChain(chain, Tolerance()).empty());
        chain.closed = false;
        chain.corners.pop_back();
        const rules::Findings findings = checkChain(chain, Tolerance());
        QCOMPARE(findings.size(), std::size_t{2});
        QVERIFY(blocks(findings, "site.end.mitre-without-corner"));
        QVERIFY(findings[0].place == "chain House, run E1");
        chain = house();
        for (Run& run : chain.runs)
            run.trims.emplace_back();
        chain.runs[1].end = EndKind::Mitre;
        const rules::Findings lone = checkChain(chain, Tolerance());
        QVERIFY(warns(lone, "site.end.mitre-alone"));
        QVERIFY(lone[0].place == "chain House, corner E2 to E3");
    }
    void chainsThatDoNotFit()
    {
        Chain chain = house();
        chain.corners.pop_back();
        QVERIFY(blocks(checkChain(chain, Tolerance()), "site.chain.corners"));
        QVERIFY(blocks(checkChain(Chain(), Tolerance()), "site.chain.empty"));
        chain = house();
        chain.runs.resize(2);
        chain.corners.resize(2);
        QVERIFY(blocks(checkChain(chain, Tolerance()), "site.chain.too-few"));
        chain = house();
        chain.firstBearing = Angle::radians(std::nan(""));
        QVERIFY(blocks(checkChain(chain, Tolerance()), "site.chain.bearing"));
        chain = house();
        chain.runs[1].kind = RunKind::Rake;
        chain.runs[1].slope.reset();
        QVERIFY(blocks(checkChain(chain, Tolerance()), "site.chain.slope-for-plan"));
    }
    void idsMustDiffer()
    {
        Job job = jobOf(house());
        job.chains.push_back(house());
        rules::Findings findings = checkJob(job);
        QVERIFY(blocks(findings, "site.job.id-twice"));
        job = jobOf(house());
        job.chains[0].runs[2].id.clear();
        QVERIFY(blocks(checkJob(job), "site.job.id-missing"));
        QVERIFY(warns(checkJob(Job()), "site.job.empty"));
    }
    void closureIsPartOfTheJob()
    {
        Job job = jobOf(house());
        job.chains[0].runs[0].lengths[0].value += Length::feet(2);
        QVERIFY(warns(checkJob(job), "site.closure.length"));
    }
};

QTEST_APPLESS_MAIN(SiteChecksTest)
#include "tst_site_checks.moc"
