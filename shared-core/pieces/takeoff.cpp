#include "pieces/takeoff.h"

#include "pieces/accessories.h"
#include "pieces/checker.h"
#include "pieces/laying.h"
#include "pieces/profile_book.h"
#include "pieces/rule_book.h"
#include "pieces/run_ends.h"
#include "pieces/run_facts.h"
#include "pieces/run_pieces.h"
#include "pieces/site_cuts.h"
#include "site/checks.h"
#include "site/run_geometry.h"
#include "site/run_kind.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <unordered_map>
#include <utility>

namespace lapwright::pieces {

namespace {

using trim::AngleMeasure;

std::map<AngleMeasure, Angle> anglesOf(const site::RunGeometry& geometry)
{
    std::map<AngleMeasure, Angle> angles;
    const auto give = [&](AngleMeasure measure, const std::optional<Angle>& angle) {
        if (angle)
            angles.emplace(measure, *angle);
    };
    give(AngleMeasure::Slope, geometry.slope);
    give(AngleMeasure::OtherSlope, geometry.otherSlope);
    give(AngleMeasure::WallTurn, geometry.wallTurn);
    give(AngleMeasure::CreaseTurn, geometry.creaseTurn);
    return angles;
}

rules::Finding blocking(std::string code, Phrase statement, Phrase remedy)
{
    return {rules::Weight::Blocks, std::move(code),   {},
            std::move(statement),  std::move(remedy), std::nullopt};
}

rules::Finding unsuited(const trim::Template& trim, site::RunKind kind)
{
    std::string kinds;
    for (const site::RunKind suited : trim.suits)
        kinds += (kinds.empty() ? "" : ", ") + site::wordsFor(suited);
    return blocking("pieces.trim.unsuited",
                    {"{trim} does not suit this kind of run, {kind}; it suits {kinds}",
                     {{"trim", trim.name}, {"kind", site::wordsFor(kind)}, {"kinds", std::move(kinds)}}},
                    {"choose a trim that suits the run, or correct the kind of run", {}});
}

/// One run on its way through the take-off.
struct RunInHand {
    const site::Chain& chain;
    std::size_t index;
    const site::Run& run;
    const site::RunGeometry& geometry;
    const std::map<AngleMeasure, Angle>& angles;
    const Laying& laying;
    const std::string& place;
};

class TakeOff {
public:
    TakeOff(const site::Job& measured, const Catalogue& known) : job(measured), catalogue(known)
    {
        order.job = job;
        std::size_t runs = 0, choices = 0;
        for (const site::Chain& chain : job.chains)
            for (const site::Run& run : chain.runs) {
                ++runs;
                choices += run.trims.size();
            }
        if (!roomFor(static_cast<std::int64_t>(std::max(runs, choices)), {}))
            return;
        piecesSoFar = 0;
        order.findings = site::checkJob(job);
        for (const rules::Finding& finding : order.findings)
            if (finding.weight == rules::Weight::Blocks)
                blockedPlaces.insert(finding.place);
        for (const site::Chain& chain : job.chains)
            for (const site::Run& run : chain.runs)
                runIds.insert(run.id);
        // Most runs make about two pieces and two kinds of accessories.
        order.runs.reserve(choices);
        order.pieces.reserve(2 * choices);
        order.accessories.reserve(2 * choices);
    }

    Order take()
    {
        if (full)
            return std::move(order);
        RuleBook rulesOfJob(catalogue, job.ruleSets, order.findings);
        material = findMaterial(job.material, catalogue, order.findings);
        if (!material.sheet)
            return std::move(order);
        ProfileBook profilesOfJob(catalogue, job.material, material);
        ruleBook = &rulesOfJob;
        profileBook = &profilesOfJob;
        for (const site::Chain& chain : job.chains) {
            obstacleRun = runOfObstacle(chain);
            for (std::size_t i = 0; i < chain.runs.size(); ++i)
                takeRun(chain, i);
        }
        order.profiles = profilesOfJob.takeProfiles();
        dropUnusedProfiles();
        addStockLengths();
        addSpares();
        rules::Findings disagreements = checkPieces(order, catalogue);
        std::move(disagreements.begin(), disagreements.end(), std::back_inserter(order.findings));
        return std::move(order);
    }

private:
    void tell(rules::Finding finding, const std::string& place)
    {
        finding.place = finding.place.empty() ? place : place + ", " + finding.place;
        order.findings.push_back(std::move(finding));
    }

    /// Counts what is to be made. Past the most of one order it says so, once, and nothing more is taken.
    bool roomFor(std::int64_t more, const std::string& place)
    {
        piecesSoFar += more;
        if (full || piecesSoFar <= mostPiecesOfOrder)
            return !full;
        full = true;
        tell(blocking(
                 "pieces.order.count",
                 {"the job makes more pieces than one order may have, {most}", {{"most", mostPiecesOfOrder}}},
                 {"check the lengths, the piece limits and the spares, or divide the job", {}}),
             place);
        return false;
    }

    void takeRun(const site::Chain& chain, std::size_t index)
    {
        if (full)
            return;
        const site::Run& run = chain.runs[index];
        const std::string place = site::runPlace(chain, index);
        if (blockedPlaces.count(place) > 0)
            return;
        if (run.trims.empty()) {
            tell({rules::Weight::Informs,
                  "pieces.run.no_trim",
                  {},
                  {"no trim is chosen for the run", {}},
                  {"choose a trim, if the edge is to have one", {}},
                  std::nullopt},
                 place);
            return;
        }
        const std::optional<site::RunGeometry> geometry = site::runGeometry(chain, index);
        if (!geometry)
            return;
        const std::map<AngleMeasure, Angle> angles = anglesOf(*geometry);
        const Laying laying = layingOf(chain, index);
        const RunInHand inHand{chain, index, run, *geometry, angles, laying, place};
        for (std::size_t t = 0; t < run.trims.size() && !full; ++t)
            takeTrim(inHand, t);
    }

    void takeTrim(const RunInHand& inHand, std::size_t t)
    {
        const site::TrimChoice& choice = inHand.run.trims[t];
        const auto found = catalogue.trims.find(choice.trim);
        if (found == catalogue.trims.end()) {
            tell(blocking("pieces.trim.unknown",
                          {"the trim {trim} is not in the library", {{"trim", choice.trim}}},
                          {"choose a trim of the library, or add it", {}}),
                 inHand.place);
            return;
        }
        const trim::Template& trim = found->second;
        const std::string place = inHand.place + ", " + trim.name;
        if (std::find(trim.suits.begin(), trim.suits.end(), inHand.run.kind) == trim.suits.end()) {
            tell(unsuited(trim, inHand.run.kind), inHand.place);
            return;
        }
        const MadeTrim& made = profileBook->make(choice, inHand.angles);
        for (const rules::Finding& finding : made.findings)
            tell(finding, place);
        if (made.profile)
            makePieces(inHand, t, made, place);
    }

    void makePieces(const RunInHand& inHand, std::size_t t, const MadeTrim& made, const std::string& place)
    {
        rules::Facts facts = baseFacts(made);
        addRunFacts(*ruleBook, job, inHand.run, inHand.geometry.length, facts);
        if (inHand.index == obstacleRun && t == 0)
            addObstacleFacts(*ruleBook, inHand.chain, inHand.run, facts);
        const std::optional<JointInterval> interval =
            shorter(ruleBook->jointInterval(facts), jointIntervalOf(*material.metal));
        RunWork work;
        work.run = &inHand.run;
        work.trim = made.trim;
        work.lap = made.lap;
        work.mark = prefixFor(inHand.run, t);
        work.profile = *made.profile;
        work.measured = inHand.geometry.length;
        work.measuredDerivation = inHand.geometry.derivation;
        work.start = endFor(inHand, made, false);
        work.end = endFor(inHand, made, true);
        work.laying = inHand.laying;
        work.limit = limitWith(interval);
        work.shortest = job.limits.shortestPiece;
        work.policy = job.policy;
        for (const RunEnd* end : {&work.start, &work.end})
            for (const rules::Finding& finding : end->findings)
                tell(finding, place);
        if (rules::anyBlocks(work.start.findings) || rules::anyBlocks(work.end.findings))
            return;
        RunPieces pieces = piecesOf(work);
        for (rules::Finding& finding : pieces.findings)
            tell(std::move(finding), place);
        if (pieces.count() == 0 || !roomFor(pieces.count(), place))
            return;
        AccessoryWork accessories{&work,           &pieces,  material.metal,
                                  made.flat.girth, interval, startCornerCounted(inHand, made.trim->id)};
        std::vector<Accessory> counted = accessoriesOf(accessories);
        addPieceFacts(*ruleBook, work, pieces, counted, facts);
        ruleBook->check(facts, place, order.findings);
        std::move(counted.begin(), counted.end(), std::back_inserter(order.accessories));
        keep(std::move(pieces));
    }

    /// What the rules ask about the trim, once per trim as made.
    const rules::Facts& baseFacts(const MadeTrim& made)
    {
        const auto [entry, isNew] = factsOfMade.try_emplace(&made);
        if (isNew)
            for (const auto& [name, fact] : made.facts)
                if (ruleBook->mentions(name))
                    entry->second.emplace(name, fact);
        return entry->second;
    }

    [[nodiscard]] RunEnd endFor(const RunInHand& inHand, const MadeTrim& made, bool atEnd) const
    {
        return runEndOf(inHand.chain, inHand.index, inHand.geometry,
                        profileBook->profiles()[*made.profile].profile, made.trim->installation, atEnd);
    }

    PieceLimit limitWith(const std::optional<JointInterval>& interval) const
    {
        if (!interval || interval->length >= commonLimit.length)
            return commonLimit;
        return {
            interval->length,
            {{"longest piece {limit}: no piece may cross a movement joint", {{"limit", interval->length}}},
             interval->clause,
             {}},
            true};
    }

    /// The corner at the start is counted with the run before where that carries the same trim round it.
    [[nodiscard]] bool startCornerCounted(const RunInHand& inHand, const std::string& trim) const
    {
        const site::Chain& chain = inHand.chain;
        const std::size_t count = chain.runs.size();
        if (count < 2 || (inHand.index == 0 && !chain.closed))
            return false;
        const std::size_t before = (inHand.index + count - 1) % count;
        const auto isTrim = [&trim](const site::TrimChoice& choice) { return choice.trim == trim; };
        const std::vector<site::TrimChoice>& trims = chain.runs[before].trims;
        return std::any_of(trims.begin(), trims.end(), isTrim) && isMitred(chain, before, true) &&
               blockedPlaces.count(site::runPlace(chain, before)) == 0;
    }

    /// The run's id, with a letter where it has several trims, such that no other run is called so.
    std::string prefixFor(const site::Run& run, std::size_t t) const
    {
        if (run.trims.size() < 2)
            return run.id;
        const std::string letter = trimLetter(t);
        std::string stem = run.id;
        while (runIds.count(stem + letter) > 0)
            stem += '-';
        return stem + letter;
    }

    void keep(RunPieces&& made)
    {
        made.takeoff.firstPiece = order.pieces.size();
        made.takeoff.pieceCount = made.pieces.size();
        if (!made.cuts.empty()) {
            std::vector<WantedCut>& cuts = cutsOfProfile[made.takeoff.profile];
            std::move(made.cuts.begin(), made.cuts.end(), std::back_inserter(cuts));
        }
        std::move(made.pieces.begin(), made.pieces.end(), std::back_inserter(order.pieces));
        order.runs.push_back(std::move(made.takeoff));
    }

    /// A trim may have been made for runs that then turned out not to be makeable.
    void dropUnusedProfiles()
    {
        constexpr std::size_t unused = static_cast<std::size_t>(-1);
        std::vector<std::size_t> place(order.profiles.size(), unused);
        for (const RunTakeoff& run : order.runs)
            place[run.profile] = 0;
        std::size_t next = 0;
        for (std::size_t old = 0; old < place.size(); ++old) {
            if (place[old] == unused)
                continue;
            place[old] = next++;
            if (place[old] != old)
                order.profiles[place[old]] = std::move(order.profiles[old]);
            order.profiles[place[old]].id = profileId(place[old]);
        }
        order.profiles.resize(next);
        for (RunTakeoff& run : order.runs)
            run.profile = place[run.profile];
        for (Piece& piece : order.pieces)
            piece.profile = place[piece.profile];
        std::map<std::size_t, std::vector<WantedCut>> cuts;
        for (auto& [old, wanted] : cutsOfProfile)
            cuts.emplace(place[old], std::move(wanted));
        cutsOfProfile = std::move(cuts);
    }

    static Piece loosePiece(std::string mark, std::size_t profile, std::int64_t count, Length length)
    {
        Piece piece;
        piece.mark = std::move(mark);
        piece.profile = profile;
        piece.count = count;
        piece.length = piece.blankLength = length;
        return piece;
    }

    std::string freeName(std::string name) const
    {
        while (runIds.count(name) > 0)
            name += '-';
        return name;
    }

    void addStockLengths()
    {
        const std::string name = freeName("stock");
        std::int64_t next = 1;
        for (auto& [profile, wanted] : cutsOfProfile) {
            const Length stock = commonLimit.length;
            std::vector<SiteCut> cuts = cutFromStock(std::move(wanted), stock, next);
            const std::int64_t after = cuts.back().stock + 1;
            order.pieces.push_back(loosePiece(markOf(name, next), profile, after - next, stock));
            std::move(cuts.begin(), cuts.end(), std::back_inserter(order.siteCuts));
            next = after;
        }
    }

    /// Spare pieces are as long as the longest piece of their profile.
    void addSpares()
    {
        if (job.spares < 1)
            return;
        std::vector<Length> longest(order.profiles.size());
        for (const Piece& piece : order.pieces)
            longest[piece.profile] = std::max(longest[piece.profile], piece.blankLength);
        const std::string name = freeName("spare");
        std::int64_t next = 1;
        for (std::size_t profile = 0; profile < longest.size(); ++profile) {
            if (longest[profile] == Length())
                continue;
            Piece spare = loosePiece(markOf(name, next), profile, job.spares, longest[profile]);
            spare.spare = true;
            next += job.spares;
            order.pieces.push_back(std::move(spare));
            (void)roomFor(job.spares, {});
        }
    }

    const site::Job& job;
    const Catalogue& catalogue;
    RuleBook* ruleBook = nullptr;
    ProfileBook* profileBook = nullptr;
    SheetOfMetal material;
    const PieceLimit commonLimit = pieceLimitOf(job.limits);
    Order order;
    std::set<std::string> blockedPlaces;
    std::set<std::string> runIds;
    std::int64_t piecesSoFar = 0;
    bool full = false;
    /// Of the chain in hand.
    std::optional<std::size_t> obstacleRun;
    std::unordered_map<const MadeTrim*, rules::Facts> factsOfMade;
    std::map<std::size_t, std::vector<WantedCut>> cutsOfProfile;
};

} // namespace

Order takeoff(const site::Job& job, const Catalogue& catalogue)
{
    return TakeOff(job, catalogue).take();
}

} // namespace lapwright::pieces
