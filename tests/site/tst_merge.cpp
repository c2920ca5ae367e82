// Guards: what two tablets measured at one house becomes one job that loses no run; what may be one edge
// measured twice is told and never dropped.
#include "site/checks.h"
#include "site/editing.h"
#include "site/houses.h"
#include "site/merge.h"

#include <QtTest>

#include <random>
#include <set>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Chain eaves(const std::string& id, const std::vector<std::pair<std::string, Length>>& runs)
{
    Chain chain{id, id, false, {}, {}, Angle(), std::nullopt};
    for (const auto& [name, length] : runs)
        chain.runs.push_back(houses::eave(name, length));
    chain.corners.assign(runs.size() - 1, SquareOutside{});
    return chain;
}

Job jobOf(std::vector<Chain> chains)
{
    Job job;
    job.id = "0b54c3f4";
    job.chains = std::move(chains);
    return job;
}

std::size_t told(const MergedJob& merged, const std::string& code)
{
    return static_cast<std::size_t>(
        std::count_if(merged.findings.begin(), merged.findings.end(),
                      [&](const rules::Finding& finding) { return finding.code == "site.merge." + code; }));
}

std::size_t runsOf(const Job& job)
{
    std::size_t runs = 0;
    for (const Chain& chain : job.chains)
        runs += chain.runs.size();
    return runs;
}

} // namespace

class MergeTest : public QObject {
    Q_OBJECT
private slots:
    void aChainInBothIsKeptOnce()
    {
        const Job job = jobOf({eaves("front", {{"E1", Length::feet(20)}, {"E2", Length::feet(12)}})});
        const MergedJob merged = mergeJobs(job, job);
        QVERIFY(merged.job == job);
        QCOMPARE(merged.findings.size(), 1U);
        QCOMPARE(told(merged, "same"), 1U);
    }
    void aNameUsedTwiceGivesWayToAFreeOne()
    {
        const Job first = jobOf({eaves("chain-1", {{"E1", Length::feet(20)}})});
        const Job second = jobOf({eaves("chain-1", {{"E1", Length::feet(9)}, {"E2", Length::feet(12)}})});
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(merged.job.chains.size(), 2U);
        QCOMPARE(merged.job.chains[1].id, std::string("chain-2"));
        QCOMPARE(merged.job.chains[1].runs[0].id, std::string("E3"));
        QCOMPARE(merged.job.chains[1].runs[1].id, std::string("E2"));
        QCOMPARE(told(merged, "renamed"), 2U); // the chain, and a run of it
        QCOMPARE(told(merged, "alike"), 0U);
    }
    void whatIsSaidOfAChainIsNotSaidOfAnother()
    {
        Job first = jobOf({eaves("chain-1", {{"E1", Length::feet(20)}})});
        Job second = jobOf({eaves("chain-2", {{"E2", Length::feet(9)}})});
        first.chains[0].name = second.chains[0].name = "Eave line";
        first.acknowledgements = {{"site.closure.length", "chain Eave line", "the tape was wet"}};
        second.acknowledgements = {{"site.run.spread", "chain Eave line, run E2", "crooked"}};
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(merged.job.chains[1].name, std::string("Eave line 2"));
        QCOMPARE(merged.job.acknowledgements.size(), 2U);
        QCOMPARE(merged.job.acknowledgements[0].place, chainPlace(merged.job.chains[0]));
        QCOMPARE(merged.job.acknowledgements[1].place, runPlace(merged.job.chains[1], 0));
    }
    /// Seen: its place was read after its id was another, and its reason answered the first job's chain.
    void whatIsSaidOfAChainWithoutANameGoesAlong()
    {
        Job first = jobOf({eaves("chain-1", {{"E1", Length::feet(20)}})});
        Job second = jobOf({eaves("chain-1", {{"E2", Length::feet(9)}})});
        first.chains[0].name.clear();
        second.chains[0].name.clear();
        second.acknowledgements = {{"site.closure.length", chainPlace(second.chains[0]), "the tape was wet"},
                                   {"site.run.spread", runPlace(second.chains[0], 0), "crooked"}};
        second.photos = {{"hash", runPlace(second.chains[0], 0), "site.run.spread"}};
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(told(merged, "renamed"), 1U);
        QCOMPARE(merged.job.acknowledgements.size(), 2U);
        QCOMPARE(merged.job.acknowledgements[0].place, chainPlace(merged.job.chains[1]));
        QCOMPARE(merged.job.acknowledgements[1].place, runPlace(merged.job.chains[1], 0));
        QCOMPARE(merged.job.photos.at(0).place, runPlace(merged.job.chains[1], 0));
        QVERIFY(chainPlace(merged.job.chains[0]) != chainPlace(merged.job.chains[1]));
    }
    /// Seen: of two chains of one name in the second job all was said of the one that came first.
    void ofTwoChainsOfOneNameEachKeepsWhatIsSaidOfIt()
    {
        const Job first = jobOf({eaves("Eave line", {{"E1", Length::feet(20)}})});
        Job second = jobOf({eaves("chain-2", {{"E2", Length::feet(9)}, {"E3", Length::feet(8)}}),
                            eaves("chain-3", {{"E4", Length::feet(7)}, {"E5", Length::feet(6)}})});
        second.chains[0].name = second.chains[1].name = "Eave line";
        for (const Chain& chain : second.chains) {
            second.acknowledgements.push_back({"a", runPlace(chain, 1), "seen"});
            second.acknowledgements.push_back({"b", cornerPlace(chain, 0), "seen too"});
        }
        const Job merged = mergeJobs(first, second).job;
        QCOMPARE(merged.acknowledgements.size(), 4U);
        for (std::size_t chain : {1U, 2U}) {
            QCOMPARE(merged.acknowledgements[2 * chain - 2].place, runPlace(merged.chains[chain], 1));
            QCOMPARE(merged.acknowledgements[2 * chain - 1].place, cornerPlace(merged.chains[chain], 0));
        }
    }
    void oneEdgeMeasuredTwiceIsToldAndKept()
    {
        const Job first = jobOf({eaves("front", {{"E1", Length::feet(20)}})});
        const Job second = jobOf({eaves("street", {{"E7", Length::feet(20) + Length::sixtyFourths(12)}})});
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(runsOf(merged.job), 2U);
        QCOMPARE(told(merged, "alike"), 1U);
        QCOMPARE(merged.findings.front().place, std::string("run E7"));
    }
    void whatTheJobsDisagreeOnIsTold()
    {
        Job first = jobOf({eaves("front", {{"E1", Length::feet(20)}})});
        Job second = jobOf({eaves("back", {{"E2", Length::feet(30)}})});
        first.material = {"steel", "26", "slate"};
        second.material = {"steel", "24", "slate"};
        second.spares = 2;
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(told(merged, "differs"), 2U);
        QVERIFY(merged.job.material == first.material);
        QCOMPARE(merged.job.spares, 0);
    }
    void aReasonGivenComesAlongWithItsRun()
    {
        const Job first = jobOf({eaves("front", {{"E1", Length::feet(20)}})});
        Job second = jobOf({eaves("back", {{"E1", Length::feet(30)}, {"E2", Length::feet(31)}})});
        second.acknowledgements = {{"a", runPlace(second.chains[0], 0), "seen"},
                                   {"b", runPlace(second.chains[0], 1), "seen too"}};
        const MergedJob merged = mergeJobs(first, second);
        QCOMPARE(merged.job.acknowledgements.size(), 1U);
        QCOMPARE(merged.job.acknowledgements.front().code, std::string("b"));
        QCOMPARE(told(merged, "reason"), 1U);
    }
    void noRunIsLostAndNoNameIsUsedTwice()
    {
        std::mt19937 random(20261126);
        const auto any = [&random] {
            std::vector<Chain> chains;
            int name = 0;
            for (unsigned chain = 0; chain < 1 + random() % 4; ++chain) {
                std::vector<std::pair<std::string, Length>> runs;
                for (unsigned run = 0; run < 1 + random() % 5; ++run)
                    runs.emplace_back("E" + std::to_string(name += 1 + static_cast<int>(random() % 3)),
                                      Length::feet(1 + static_cast<std::int64_t>(random() % 40)));
                chains.push_back(eaves("chain-" + std::to_string(chain + 1), runs));
            }
            return jobOf(std::move(chains));
        };
        for (int round = 0; round < 500; ++round) {
            const Job first = any(), second = any();
            const MergedJob merged = mergeJobs(first, second);
            std::set<std::string> runs, chains;
            for (const Chain& chain : merged.job.chains) {
                chains.insert(chain.id);
                for (const Run& run : chain.runs)
                    runs.insert(run.id);
            }
            QCOMPARE(runs.size(), runsOf(merged.job));
            QCOMPARE(chains.size(), merged.job.chains.size());
            std::size_t same = 0;
            for (const Chain& chain : second.chains)
                if (std::find(first.chains.begin(), first.chains.end(), chain) != first.chains.end())
                    same += chain.runs.size();
            QCOMPARE(runs.size(), runsOf(first) + runsOf(second) - same);
        }
    }
};

QTEST_APPLESS_MAIN(MergeTest)
#include "tst_merge.moc"
