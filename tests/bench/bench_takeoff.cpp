// Guards nothing by itself: prints how the take-off grows from 10 to 100 000 runs (400 000 with an argument),
// time and memory per run, with rule clauses like those of the roofing code. An order that the checker does
// not accept ends the program with 1. Processor time of one core.
#include "pieces/checker.h"
#include "pieces/invented_jobs.h"

#include <malloc.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>

using namespace invented;

namespace {

double processorMilliseconds()
{
    return 1'000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

std::size_t bytesInUse()
{
    return mallinfo2().uordblks + mallinfo2().hblkhd;
}

std::string named(std::string name, std::size_t number)
{
    return name += std::to_string(number);
}

rules::Clause clause(std::string number, std::vector<rules::Condition> applies, rules::Condition demand)
{
    rules::Clause made;
    made.number = std::move(number);
    made.statement = "{demanded} is demanded";
    made.applies = std::move(applies);
    made.demands.push_back(std::move(demand));
    return made;
}

/// Forty clauses that are met, and two about movement joints.
rules::RuleSet rulesLikeACode()
{
    using Comparison = rules::Condition::Comparison;
    rules::RuleSet set;
    set.id = "code";
    for (int i = 0; i < 10; ++i) {
        const std::string number = named("C", static_cast<std::size_t>(i));
        set.clauses.push_back(clause(
            number + ".1", {{Comparison::In, "trim", {std::string("eave-edge"), std::string("rake-edge")}}},
            {Comparison::AtLeast, "lap", {Length::inches(2)}}));
        set.clauses.push_back(
            clause(number + ".2", {}, {Comparison::AtMost, "fastener_spacing", {Length::inches(12)}}));
        set.clauses.push_back(clause(number + ".3",
                                     {{Comparison::Equal, "run_kind", {std::string("valley")}}},
                                     {Comparison::AtLeast, "girth", {Length::inches(24)}}));
        set.clauses.push_back(
            clause(number + ".4", {}, {Comparison::AtMost, "piece_length", {Length::feet(12)}}));
    }
    set.clauses.push_back(clause("J1", {{Comparison::Equal, "metal", {std::string("copper")}}},
                                 {Comparison::AtMost, "joint_interval", {Length::feet(40)}}));
    set.clauses.push_back(clause("J2", {{Comparison::Equal, "metal", {std::string("galvanised-steel")}}},
                                 {Comparison::AtMost, "joint_interval", {Length::feet(40)}}));
    return set;
}

/// Terraces of gable houses of many lengths and eight slopes, six runs each.
site::Job terrace(std::size_t runs)
{
    std::vector<site::Chain> chains;
    for (std::size_t house = 0; house * 6 < runs; ++house) {
        const auto twelfths = static_cast<std::int64_t>(3 + house % 8);
        const Slope slope = Slope::twelfths(twelfths);
        const Length eave =
            Length::feet(20) + Length::sixtyFourths(static_cast<std::int64_t>(house % 997) * 4);
        const Length rake = lapwright::roundToNearest(
            lapwright::scaled(Length::feet(15), 1.0 / std::cos(slope.angle().inRadians())),
            Length::sixtyFourths(4));
        site::Chain chain = gableHouse().chains.front();
        chain.id = chain.name = named("House ", house + 1);
        for (std::size_t i = 0; i < chain.runs.size(); ++i) {
            site::Run& each = chain.runs[i];
            each.id = named("H", house + 1) + "-" + each.id;
            each.slope = slope;
            each.lengths = {measured(i % 3 == 0 ? eave : rake)};
        }
        chains.push_back(std::move(chain));
    }
    site::Job job = jobOf(std::move(chains));
    job.ruleSets = {"code"};
    return job;
}

} // namespace

int main(int count, char**)
{
    pieces::Catalogue data = catalogue();
    data.ruleSets["code"] = rulesLikeACode();
    const std::size_t most = count > 1 ? 400'000 : 100'000;
    std::printf("%9s %9s %9s %12s %12s %12s %9s\n", "runs", "pieces", "profiles", "time ms", "us per run",
                "check ms", "bytes/run");
    for (std::size_t runs = 10; runs <= most; runs *= runs == 100'000 ? 4 : 10) {
        const site::Job job = terrace(runs);
        const std::size_t bytesBefore = bytesInUse();
        const double start = processorMilliseconds();
        const pieces::Order order = pieces::takeoff(job, data);
        const double taken = processorMilliseconds() - start;
        const std::size_t bytes = bytesInUse() - bytesBefore;
        const double checkStart = processorMilliseconds();
        const bool holds = pieces::checkPieces(order, data).empty();
        const double checked = processorMilliseconds() - checkStart;
        const auto each = static_cast<double>(order.runs.size());
        std::printf("%9zu %9zu %9zu %12.2f %12.2f %12.2f %9.0f\n", order.runs.size(), order.pieces.size(),
                    order.profiles.size(), taken, 1'000.0 * taken / each, checked,
                    static_cast<double>(bytes) / each);
        if (!holds || rules::anyBlocks(order.findings))
            return EXIT_FAILURE;
    }
    return EXIT_SUCCESS;
}
