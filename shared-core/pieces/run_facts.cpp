#include "pieces/run_facts.h"

#include "site/roof_geometry.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <string>
#include <utility>

namespace lapwright::pieces {

namespace {

class Adding {
public:
    Adding(const RuleBook& book, rules::Facts& known) : rules(book), facts(known) {}

    template <class Value>
    void add(const char* name, const Value& value)
    {
        if (rules.mentions(name))
            facts.insert_or_assign(name, rules::Fact(value));
    }
    template <class Value>
    void add(const char* name, const std::optional<Value>& value)
    {
        if (value)
            add(name, *value);
    }

private:
    const RuleBook& rules;
    rules::Facts& facts;
};

std::string nameOf(Hand hand)
{
    return hand == Hand::None ? "none" : hand == Hand::Left ? "left" : "right";
}

/// Longest and shortest of what is cut for the run.
std::pair<Length, Length> extent(const RunPieces& made)
{
    Length longest, shortest;
    bool first = true;
    const auto see = [&](Length length) {
        longest = first ? length : std::max(longest, length);
        shortest = first ? length : std::min(shortest, length);
        first = false;
    };
    for (const Piece& piece : made.pieces)
        see(piece.blankLength);
    for (const WantedCut& cut : made.cuts)
        see(cut.length);
    return {longest, shortest};
}

} // namespace

void addRunFacts(const RuleBook& rules, const site::Job& job, const site::Run& run, Length measured,
                 rules::Facts& facts)
{
    Adding adding(rules, facts);
    adding.add("velocity_pressure_psf", job.velocityPressurePsf);
    adding.add("run_kind", std::string(site::nameOf(run.kind)));
    adding.add("start", std::string(site::nameOf(run.start)));
    adding.add("end", std::string(site::nameOf(run.end)));
    adding.add("slope", run.slope);
    adding.add("other_slope", run.otherSlope);
    adding.add("exposure", run.courseExposure);
    adding.add("run_length", measured);
}

namespace {

bool hasTrim(const site::Run& run)
{
    return !run.trims.empty();
}

std::optional<Length> widthOf(const site::Chain& chain)
{
    if (chain.obstacle->width)
        return chain.obstacle->width->value;
    for (const site::Run& run : chain.runs)
        if (run.kind == site::RunKind::Headwall)
            if (const std::optional<Length> length = site::measuredLength(run))
                return length;
    return std::nullopt;
}

} // namespace

std::optional<std::size_t> runOfObstacle(const site::Chain& chain)
{
    if (!chain.obstacle)
        return std::nullopt;
    const auto first = chain.runs.begin(), last = chain.runs.end();
    auto found = std::find_if(first, last, [](const site::Run& run) {
        return run.kind == site::RunKind::Headwall && hasTrim(run);
    });
    if (found == last)
        found = std::find_if(first, last, hasTrim);
    return found == last ? std::nullopt : std::optional(static_cast<std::size_t>(found - first));
}

void addObstacleFacts(const RuleBook& rules, const site::Chain& chain, const site::Run& run,
                      rules::Facts& facts)
{
    Adding adding(rules, facts);
    const std::optional<Length> width = widthOf(chain);
    adding.add("width", width);
    adding.add("cricket", chain.obstacle->cricket);
    if (width && run.slope)
        adding.add("cricket_height", site::cricketHeight(*width, *run.slope).value);
}

void addPieceFacts(const RuleBook& rules, const RunWork& work, const RunPieces& pieces,
                   const std::vector<Accessory>& accessories, rules::Facts& facts)
{
    Adding adding(rules, facts);
    adding.add("hand", nameOf(work.trim->handed ? handOf(work.laying.from) : Hand::None));
    const auto [longest, shortest] = extent(pieces);
    adding.add("piece_length", longest);
    adding.add("shortest_piece", shortest);
    adding.add("piece_count", pieces.count());
    std::int64_t joints = 0;
    for (const Accessory& accessory : accessories)
        if (accessory.name == movementJointName)
            joints = accessory.count;
    adding.add("joint_interval", work.measured / (joints + 1));
}

} // namespace lapwright::pieces
