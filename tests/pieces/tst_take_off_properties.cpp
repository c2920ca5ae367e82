// Guards: over thousands of random jobs, lengths with laps sum exactly, no piece is over the limit or under
// the shortest, marks are unique and the checker agrees; and the checker sees what is wrong with a spoilt
// list.
#include "invented_jobs.h"

#include "measure/writing.h"
#include "pieces/checker.h"

#include <QtTest>

#include <algorithm>
#include <functional>
#include <map>
#include <set>

using namespace invented;
using pieces::Order;
using pieces::Piece;
using pieces::takeoff;

namespace {

class RandomJobs {
public:
    explicit RandomJobs(std::uint32_t seed) : random_(seed) {}

    site::Job next()
    {
        std::vector<site::Chain> chains;
        const std::size_t count = 1 + pick(3);
        for (std::size_t i = 0; i < count; ++i)
            chains.push_back(nextChain("R" + std::to_string(i)));
        site::Job job = jobOf(std::move(chains));
        job.limits.foldingLength = Length::inches(static_cast<std::int64_t>(24 + pick(140)));
        if (pick(3) == 0)
            job.limits.stockLength = Length::inches(static_cast<std::int64_t>(48 + pick(100)));
        if (pick(3) == 0)
            job.limits.transportLength = Length::inches(static_cast<std::int64_t>(48 + pick(100)));
        job.limits.shortestPiece = Length::inches(static_cast<std::int64_t>(1 + pick(20)));
        job.policy = static_cast<site::PiecePolicy>(pick(3));
        job.spares = static_cast<std::int64_t>(pick(3));
        return job;
    }

private:
    std::size_t pick(std::size_t below) { return random_() % below; }

    Length length()
    {
        return pick(2) == 0 ? Length::sixtyFourths(static_cast<std::int64_t>(64 * 4 + pick(64 * 600)))
                            : Length::micrometres(100) * static_cast<std::int64_t>(1'000 + pick(150'000));
    }

    site::Run nextRun(const std::string& id)
    {
        struct Kind {
            site::RunKind kind;
            const char* trim;
        };
        constexpr Kind kinds[] = {{site::RunKind::Eave, "eave-edge"},
                                  {site::RunKind::Rake, "rake-edge"},
                                  {site::RunKind::Sidewall, "step"},
                                  {site::RunKind::Parapet, "cap"},
                                  {site::RunKind::GravelEdge, "cap"}};
        const Kind kind = kinds[pick(5)];
        site::Run made = run(id, kind.kind, length(), kind.trim);
        made.slope = Slope::twelfths(static_cast<std::int64_t>(1 + pick(14)));
        made.start = static_cast<site::EndKind>(pick(6));
        made.end = static_cast<site::EndKind>(pick(6));
        made.courseExposure = Length::sixtyFourths(static_cast<std::int64_t>(200 + pick(500)));
        if (pick(5) == 0)
            made.trims.push_back(made.trims.front());
        for (site::TrimChoice& choice : made.trims) {
            if (choice.trim == "cap")
                choice.measures["wall_thickness"] =
                    measured(Length::inches(static_cast<std::int64_t>(4 + pick(6))));
            if (pick(6) == 0)
                choice.colour = "brick red";
            if (pick(3) == 0)
                choice.lap = Length::inches(static_cast<std::int64_t>(1 + pick(4)));
        }
        return made;
    }

    site::Chain nextChain(const std::string& id)
    {
        site::Chain chain;
        chain.id = chain.name = id;
        const std::size_t runs = 1 + pick(3);
        for (std::size_t i = 0; i < runs; ++i) {
            chain.runs.push_back(nextRun(id + std::string(1, static_cast<char>('a' + i))));
            if (i + 1 < runs) {
                const double degrees = 45.0 + static_cast<double>(pick(270));
                chain.corners.emplace_back(site::InteriorAngle{Angle::degrees(degrees), "by instrument"});
            }
        }
        return chain;
    }

    std::mt19937 random_;
};

bool fromChecker(const rules::Finding& finding)
{
    return finding.code.rfind("check.", 0) == 0;
}

std::string firstCode(const Order& order, const pieces::Catalogue& data)
{
    const rules::Findings findings = pieces::checkPieces(order, data);
    return findings.empty() ? std::string() : findings.front().code;
}

bool hasCode(const Order& order, const pieces::Catalogue& data, const std::string& code)
{
    const rules::Findings findings = pieces::checkPieces(order, data);
    return std::any_of(findings.begin(), findings.end(),
                       [&](const rules::Finding& finding) { return finding.code == code; });
}

/// What was set by hand for the trim whose letter ends the mark, else the trim's own.
Length lapOf(const Order& order, const pieces::RunTakeoff& takeoff, Length own)
{
    for (const site::Chain& chain : order.job.chains)
        for (const site::Run& run : chain.runs)
            if (run.id == takeoff.run)
                return run.trims.at(run.trims.size() == 1 ? 0 : takeoff.mark.back() - 'a').lap.value_or(own);
    return own;
}

Length sumOfRun(const Order& order, const pieces::RunTakeoff& run)
{
    Length sum;
    for (std::size_t i = 0; i < run.pieceCount; ++i)
        sum += order.pieces[run.firstPiece + i].blankLength;
    if (run.pieceCount == 0)
        for (const pieces::SiteCut& cut : order.siteCuts)
            if (cut.mark.substr(0, cut.mark.rfind('.')) == run.mark)
                sum += cut.length;
    return sum;
}

std::int64_t piecesOfRun(const Order& order, const pieces::RunTakeoff& run)
{
    if (run.pieceCount > 0)
        return static_cast<std::int64_t>(run.pieceCount);
    return std::count_if(order.siteCuts.begin(), order.siteCuts.end(), [&](const pieces::SiteCut& cut) {
        return cut.mark.substr(0, cut.mark.rfind('.')) == run.mark;
    });
}

} // namespace

class TakeOffProperties : public QObject {
    Q_OBJECT
private slots:
    void randomJobsKeepEveryPromise()
    {
        const int jobs = qEnvironmentVariableIsSet("LAPWRIGHT_LONG") ? 40'000 : 2'000;
        const pieces::Catalogue data = catalogue();
        RandomJobs random(41);
        std::size_t runs = 0, madePieces = 0, refused = 0;
        for (int i = 0; i < jobs; ++i) {
            const site::Job job = random.next();
            const Order order = takeoff(job, data);
            QCOMPARE(order.job, job);
            for (const rules::Finding& finding : order.findings)
                QVERIFY2(!fromChecker(finding), lapwright::say(finding.statement, {}).c_str());
            std::size_t choices = 0;
            for (const site::Chain& chain : job.chains)
                for (const site::Run& each : chain.runs)
                    choices += each.trims.size();
            if (order.runs.size() < choices) {
                QVERIFY(rules::anyBlocks(order.findings));
                refused += choices - order.runs.size();
            }
            checkLengths(order, data);
            checkMarks(order);
            for (const pieces::OrderedProfile& profile : order.profiles)
                QVERIFY(profile.girth > Length() && profile.kilogramsPerMetre > 0.0);
            runs += order.runs.size();
            madePieces += order.pieces.size() + order.siteCuts.size();
        }
        qInfo("%d jobs: %zu runs taken off into %zu pieces, %zu refused with a reason", jobs, runs,
              madePieces, refused);
        QVERIFY(runs > static_cast<std::size_t>(jobs) * 2 && refused > 0);
    }
    void theCheckerSeesWhatIsWrong_data()
    {
        QTest::addColumn<QString>("code");
        for (const char* code : {"check.marks", "check.run", "check.coverage", "check.lap", "check.limit",
                                 "check.count", "check.spares", "check.site_cuts", "check.courses"})
            QTest::newRow(code) << code;
    }
    void theCheckerSeesWhatIsWrong()
    {
        QFETCH(QString, code);
        const pieces::Catalogue data = catalogue();
        site::Job job = gableHouse();
        job.spares = 1;
        if (code == "check.site_cuts")
            job.policy = site::PiecePolicy::StockLengths;
        site::Run wall = run("S1", site::RunKind::Sidewall, Length::feet(10), "step");
        wall.courseExposure = Length::inches(5);
        job.chains.push_back(alone(wall));
        Order order = takeoff(job, data);
        QCOMPARE(firstCode(order, data), std::string());
        const std::map<QString, std::function<void()>> spoil{
            {"check.marks", [&] { order.pieces[1].mark = order.pieces[0].mark; }},
            {"check.run", [&] { order.pieces[1].run = "E2"; }},
            {"check.coverage", [&] { order.pieces[3].blankLength -= Length::nanometres(1); }},
            {"check.lap", [&] { order.pieces[2].start.kind = pieces::PieceEnd::Kind::Square; }},
            {"check.limit", [&] { order.pieces[2].blankLength = Length::inches(121); }},
            {"check.count",
             [&] {
                 order.job.limits.foldingLength = Length::feet(20);
                 order.runs[0].pieceLimit = Length::feet(20);
             }},
            {"check.spares", [&] { order.pieces.pop_back(); }},
            {"check.site_cuts", [&] { order.siteCuts[1].left += Length::nanometres(1); }},
            {"check.courses", [&] { order.pieces[order.runs.back().firstPiece].count -= 1; }}};
        spoil.at(code)();
        QVERIFY(hasCode(order, data, code.toStdString()));
    }
    void aRunWithoutItsPiecesIsSeen()
    {
        const pieces::Catalogue data = catalogue();
        Order order = takeoff(gableHouse(), data);
        const pieces::RunTakeoff last = order.runs.back();
        QCOMPARE(last.firstPiece + last.pieceCount, order.pieces.size());
        order.runs.pop_back();
        order.pieces.resize(last.firstPiece);
        QVERIFY(hasCode(order, data, "check.run"));
    }
    void aCutFromAnothersStockIsSeen()
    {
        const pieces::Catalogue data = catalogue();
        site::Job job = gableHouse();
        job.policy = site::PiecePolicy::StockLengths;
        Order order = takeoff(job, data);
        QVERIFY(order.profiles.size() > 1);
        for (Piece& piece : order.pieces)
            piece.profile = piece.profile == 0 ? 1 : 0;
        QVERIFY(hasCode(order, data, "check.site_cuts"));
    }
    void everySmallChangeOfALengthIsSeen()
    {
        const pieces::Catalogue data = catalogue();
        const Order order = takeoff(gableHouse(), data);
        std::size_t seen = 0;
        for (std::size_t i = 0; i < order.pieces.size(); ++i)
            for (const std::int64_t by : {-1, 1}) {
                Order spoilt = order;
                spoilt.pieces[i].blankLength += Length::nanometres(by);
                QVERIFY(hasCode(spoilt, data, "check.coverage"));
                ++seen;
            }
        QCOMPARE(seen, order.pieces.size() * 2);
    }
    void theSameJobGivesTheSameOrder()
    {
        const pieces::Catalogue data = catalogue();
        RandomJobs random(5);
        for (int i = 0; i < 50; ++i) {
            const site::Job job = random.next();
            QVERIFY(takeoff(job, data) == takeoff(job, data));
        }
    }

private:
    static void checkLengths(const Order& order, const pieces::Catalogue& data)
    {
        const site::PieceLimits& limits = order.job.limits;
        Length limit = limits.foldingLength;
        limit = std::min({limit, limits.stockLength.value_or(limit), limits.transportLength.value_or(limit)});
        for (const pieces::RunTakeoff& run : order.runs) {
            const trim::Installation& how = data.trims.at(run.trim).installation;
            if (how.courseHeadLap)
                continue;
            const std::int64_t count = piecesOfRun(order, run);
            QVERIFY(count > 0);
            QCOMPARE(sumOfRun(order, run), run.usableLength + lapOf(order, run, how.lap) * (count - 1));
            for (std::size_t i = 0; i < run.pieceCount; ++i) {
                const Length length = order.pieces[run.firstPiece + i].blankLength;
                QVERIFY(length <= limit);
                QVERIFY(count == 1 || length >= limits.shortestPiece);
            }
        }
        for (const pieces::SiteCut& cut : order.siteCuts)
            QVERIFY(cut.length <= limit && cut.left >= Length());
    }
    static void checkMarks(const Order& order)
    {
        std::set<std::string> marks;
        for (const Piece& piece : order.pieces) {
            const std::size_t point = piece.mark.rfind('.');
            const std::int64_t first = std::stoll(piece.mark.substr(point + 1));
            for (std::int64_t k = 0; k < piece.count; ++k)
                QVERIFY(marks.insert(piece.mark.substr(0, point + 1) + std::to_string(first + k)).second);
        }
        for (const pieces::SiteCut& cut : order.siteCuts)
            QVERIFY(marks.insert(cut.mark).second);
    }
};

QTEST_APPLESS_MAIN(TakeOffProperties)
#include "tst_take_off_properties.moc"
