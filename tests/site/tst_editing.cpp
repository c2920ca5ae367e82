#include "site/checks.h"
#include "site/corner.h"
#include "site/editing.h"

#include <QtTest>

using namespace lapwright;
using namespace lapwright::site;

namespace {

Run run(RunKind kind, Length length)
{
    Run made;
    made.kind = kind;
    made.lengths = {{length, ""}};
    made.slope = Slope::twelfths(6);
    return made;
}

/// Four eaves, closed.
Job rectangle()
{
    Job job;
    const std::size_t chain = addChain(job, "Eave line");
    for (const Length length : {Length::feet(40), Length::feet(24), Length::feet(40), Length::feet(24)})
        addRun(job, chain, run(RunKind::Eave, length), SquareOutside{});
    closeChain(job, chain, SquareOutside{});
    return job;
}

/// A reason and a photo at each place.
void sayOf(Job& job, const std::vector<std::string>& places)
{
    for (const std::string& place : places) {
        job.acknowledgements.push_back({"code", place, "seen"});
        job.photos.push_back({"hash", place, {}});
    }
}

template <class Said>
std::vector<std::string> placesOf(const std::vector<Said>& said)
{
    std::vector<std::string> places;
    for (const Said& one : said)
        places.push_back(one.place);
    return places;
}

} // namespace

/// Guards: a job that grows and shrinks run by run always has as many corners as its chains need, ends that
/// suit them, and ids that are told apart; what is said of a run or a chain goes where that goes.
class Editing : public QObject {
    Q_OBJECT

private slots:
    void growsWithCornersAndEnds();
    void idsAreFree();
    void endsFollowTheirCorner();
    void takingRunsOutKeepsItWhole_data();
    void takingRunsOutKeepsItWhole();
    void whatIsSaidOfARunGoesWithIt();
    void whatIsSaidOfAChainGoesWithIt();
    void whatIsSaidOfAChainTakesItsNewName();
    void aChainsNameIsFree();
    void findsTheRunOfAFinding();
    void spreadOfRepeats();
};

void Editing::growsWithCornersAndEnds()
{
    const Job job = rectangle();
    const Chain& chain = job.chains.front();
    QVERIFY(chain.closed);
    QCOMPARE(chain.corners.size(), std::size_t{4});
    for (const Run& one : chain.runs) {
        QCOMPARE(one.start, EndKind::Mitre);
        QCOMPARE(one.end, EndKind::Mitre);
    }
    for (const rules::Finding& finding : checkJob(job))
        QVERIFY2(finding.weight == rules::Weight::Informs, finding.code.c_str());
}

void Editing::idsAreFree()
{
    Job job = rectangle();
    QCOMPARE(nextRunId(job, RunKind::Eave), std::string("E5"));
    QCOMPARE(nextRunId(job, RunKind::Rake), std::string("K1"));
    removeRun(job, 0, 1);
    QCOMPARE(nextRunId(job, RunKind::Eave), std::string("E2"));
    addChain(job, "another");
    QVERIFY(job.chains[0].id != job.chains[1].id);
}

void Editing::endsFollowTheirCorner()
{
    Job job = rectangle();
    setCorner(job, 0, 1, InteriorAngle{halfTurn, "180°"});
    QCOMPARE(job.chains[0].runs[1].end, EndKind::Free);
    QCOMPARE(job.chains[0].runs[2].start, EndKind::Free);
    setCorner(job, 0, 1, SquareInside{});
    QCOMPARE(job.chains[0].runs[1].end, EndKind::Mitre);
    job.chains[0].runs[1].end = EndKind::TurnUp; // chosen by a person: stays
    setCorner(job, 0, 1, SquareOutside{});
    QCOMPARE(job.chains[0].runs[1].end, EndKind::TurnUp);
    openChain(job, 0);
    QCOMPARE(job.chains[0].runs[3].end, EndKind::Free);
    QCOMPARE(job.chains[0].runs[0].start, EndKind::Free);
}

void Editing::takingRunsOutKeepsItWhole_data()
{
    QTest::addColumn<bool>("closed");
    QTest::addColumn<int>("run");
    for (const bool closed : {true, false})
        for (int index = 0; index < 4; ++index)
            QTest::addRow("%s, run %d", closed ? "closed" : "open", index) << closed << index;
}

void Editing::takingRunsOutKeepsItWhole()
{
    QFETCH(bool, closed);
    QFETCH(int, run);
    Job job = rectangle();
    if (!closed)
        openChain(job, 0);
    removeRun(job, 0, static_cast<std::size_t>(run));
    const Chain& chain = job.chains.front();
    QCOMPARE(chain.runs.size(), std::size_t{3});
    QCOMPARE(chain.corners.size(), chain.closed ? chain.runs.size() : chain.runs.size() - 1);
    removeRun(job, 0, 0);
    QVERIFY2(!chain.closed, "two runs close nothing");
    QCOMPARE(chain.corners.size(), std::size_t{1});
    removeRun(job, 0, 1);
    removeRun(job, 0, 0);
    QVERIFY(chain.runs.empty() && chain.corners.empty());
}

void Editing::whatIsSaidOfARunGoesWithIt()
{
    Job job = rectangle();
    const Chain& chain = job.chains.front();
    const std::vector<std::string> stay = {runPlace(chain, 0),         "run E22",
                                           "chain Eave line",          "chain Eave line, corner E3 to E4",
                                           "chain Eave line, run E22", "chain Ridge, corner E2 to R1"};
    sayOf(job, stay);
    sayOf(job, {runPlace(chain, 1), runPlace(chain, 1) + ", eave drip edge", "run E2", "E2",
                cornerPlace(chain, 0), cornerPlace(chain, 1)});
    removeRun(job, 0, 1);
    QCOMPARE(placesOf(job.acknowledgements), stay);
    QCOMPARE(placesOf(job.photos), stay);
}

void Editing::whatIsSaidOfAChainGoesWithIt()
{
    Job job = rectangle();
    addRun(job, addChain(job, "Eave line, back"), run(RunKind::Eave, Length::feet(16)), SquareOutside{});
    const std::vector<std::string> stay = {chainPlace(job.chains[1]), runPlace(job.chains[1], 0), "run E5"};
    sayOf(job, stay);
    sayOf(job, {chainPlace(job.chains[0]), runPlace(job.chains[0], 3), cornerPlace(job.chains[0], 3)});
    openChain(job, 0);
    removeChain(job, 0);
    QCOMPARE(job.chains.size(), std::size_t{1});
    QCOMPARE(placesOf(job.acknowledgements), stay);
    QCOMPARE(placesOf(job.photos), stay);
}

/// Seen: the reasons and photos of a chain stayed with its old name, or were another's from then on.
void Editing::whatIsSaidOfAChainTakesItsNewName()
{
    Job job = rectangle();
    const std::size_t back = addChain(job, "Eave line, back");
    addRun(job, back, run(RunKind::Eave, Length::feet(16)), SquareOutside{});
    const Chain& front = job.chains.front();
    const auto all = [&] {
        return std::vector<std::string>{chainPlace(front),
                                        runPlace(front, 1),
                                        cornerPlace(front, 3),
                                        runPlace(front, 1) + ", eave drip edge",
                                        "run E2",
                                        "job",
                                        chainPlace(job.chains[back]),
                                        runPlace(job.chains[back], 0)};
    };
    sayOf(job, all());
    for (const char* name : {"Street", "Street, left", "Eave line, back"}) {
        renameChain(job, 0, name);
        QCOMPARE(placesOf(job.acknowledgements), all());
        QCOMPARE(placesOf(job.photos), all());
    }
    QCOMPARE(front.name, std::string("Eave line, back 2"));
}

void Editing::aChainsNameIsFree()
{
    Job job = rectangle();
    addChain(job, "");
    QCOMPARE(freeChainName(job, "Ridge"), std::string("Ridge"));
    QCOMPARE(freeChainName(job, "Eave line"), std::string("Eave line 2"));
    QCOMPARE(freeChainName(job, "Eave line", 0), std::string("Eave line"));
    QCOMPARE(freeChainName(job, job.chains[1].id), job.chains[1].id + " 2");
    addChain(job, "Eave line 2");
    QCOMPARE(freeChainName(job, "Eave line"), std::string("Eave line 3"));
}

void Editing::findsTheRunOfAFinding()
{
    Job job = rectangle();
    addRun(job, addChain(job, "Ridge"), run(RunKind::Ridge, Length::feet(16)), SquareOutside{});
    QCOMPARE(runNamed(job, runPlace(job.chains[0], 2)).value(), (RunPlace{0, 2}));
    QCOMPARE(runNamed(job, runPlace(job.chains[1], 0) + ", Ridge cap").value(), (RunPlace{1, 0}));
    QCOMPARE(runNamed(job, cornerPlace(job.chains[0], 1)).value(), (RunPlace{0, 1}));
    QCOMPARE(runNamed(job, chainPlace(job.chains[0])).value(), (RunPlace{0, 3}));
    QVERIFY(!runNamed(job, "job"));
}

void Editing::spreadOfRepeats()
{
    Run one = run(RunKind::Eave, Length::feet(10));
    QVERIFY(!spread(one));
    one.lengths.push_back({Length::feet(10) + Length::inches(1), ""});
    one.lengths.push_back({Length::feet(10) - Length::inches(1), ""});
    QCOMPARE(spread(one).value(), Length::inches(2));
}

QTEST_APPLESS_MAIN(Editing)
#include "tst_editing.moc"
