#include "documents/compare.h"
#include "documents/describe_site.h"
#include "documents/differences.h"
#include "site/corner.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <map>
#include <utility>

namespace lapwright::documents {
namespace {

const std::string none = "none";

Phrase::Value shown(const std::string& text)
{
    return text.empty() ? none : text;
}
Phrase::Value shown(bool yes)
{
    return std::string(yes ? "yes" : "no");
}
Phrase::Value shown(std::int64_t count)
{
    return count;
}
Phrase::Value shown(Length length)
{
    return length;
}
Phrase::Value shown(Angle angle)
{
    return angle;
}
Phrase::Value shown(Slope slope)
{
    return slope;
}
Phrase::Value shown(site::RunKind kind)
{
    return site::wordsFor(kind);
}
Phrase::Value shown(site::EndKind kind)
{
    return site::wordsFor(kind);
}
template <class T>
Phrase::Value shown(const std::optional<T>& value)
{
    return value ? shown(*value) : Phrase::Value(none);
}

std::optional<Length> levelLength(const site::Run& run)
{
    return run.levelRun ? std::optional(run.levelRun->value) : std::nullopt;
}

std::string joined(const std::vector<std::string>& names)
{
    std::string all;
    for (const std::string& name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

std::string trimsOf(const site::Run& run)
{
    std::vector<std::string> names;
    for (const site::TrimChoice& choice : run.trims)
        names.push_back(choice.trim);
    return joined(names);
}

std::optional<Length> obstacleWidth(const site::Chain& chain)
{
    return chain.obstacle && chain.obstacle->width ? std::optional(chain.obstacle->width->value)
                                                   : std::nullopt;
}

class Revision {
public:
    rules::Findings compare(const pieces::Order& before, const pieces::Order& now)
    {
        changed("order", "cancelled", before.cancelled, now.cancelled);
        compareJobs(before.job, now.job);
        compareMade(before, now);
        return std::move(findings_);
    }

private:
    void tell(const char* code, std::string place, Phrase statement)
    {
        findings_.push_back({rules::Weight::Informs,
                             std::string("documents.revision.") + code,
                             std::move(place),
                             std::move(statement),
                             {},
                             std::nullopt});
    }

    template <class T>
    void changed(const std::string& place, const std::string& what, const T& before, const T& now)
    {
        if (!(before == now))
            tell("changed", place,
                 {"{what} was {before}, is now {now}",
                  {{"what", what}, {"before", shown(before)}, {"now", shown(now)}}});
    }

    void compareJobs(const site::Job& before, const site::Job& now)
    {
        const std::string place = "job";
        changed(place, "name", before.name, now.name);
        changed(place, "customer", before.customer, now.customer);
        changed(place, "address", before.address, now.address);
        changed(place, "date wanted", before.wantedBy, now.wantedBy);
        changed(place, "measured by", before.measuredBy, now.measuredBy);
        changed(place, "metal", before.material.metal, now.material.metal);
        changed(place, "gauge", before.material.gauge, now.material.gauge);
        changed(place, "colour", before.material.colour, now.material.colour);
        changed(place, "folding length", before.limits.foldingLength, now.limits.foldingLength);
        changed(place, "stock length", before.limits.stockLength, now.limits.stockLength);
        changed(place, "transport length", before.limits.transportLength, now.limits.transportLength);
        changed(place, "shortest piece", before.limits.shortestPiece, now.limits.shortestPiece);
        changed(place, "how runs are divided", std::string(wordFor(before.policy)),
                std::string(wordFor(now.policy)));
        changed(place, "rule sets", joined(before.ruleSets), joined(now.ruleSets));
        changed(place, "wind pressure, psf", before.velocityPressurePsf, now.velocityPressurePsf);
        changed(place, "spare pieces per profile", before.spares, now.spares);
        changed(place, "photos", static_cast<std::int64_t>(before.photos.size()),
                static_cast<std::int64_t>(now.photos.size()));
        const site::Tolerance &had = before.tolerance, &has = now.tolerance;
        changed(place, "tolerance of a chain", had.closure, has.closure);
        changed(place, "tolerance of a chain, one part in", had.perimeterShare, has.perimeterShare);
        changed(place, "tolerance of a corner", had.perCorner, has.perCorner);
        changed(place, "tolerance of a derived length", had.derived, has.derived);
        changed(place, "tolerance of repeated measures", had.repeats, has.repeats);
        compareChains(before, now);
    }

    void compareChains(const site::Job& before, const site::Job& now)
    {
        std::map<std::string, const site::Run*> old;
        std::map<std::string, const site::Chain*> oldChains;
        for (const site::Chain& chain : before.chains) {
            oldChains.emplace(chain.id, &chain);
            for (const site::Run& run : chain.runs)
                old.emplace(run.id, &run);
        }
        for (const site::Chain& chain : now.chains) {
            if (const auto found = oldChains.find(chain.id); found != oldChains.end())
                compareChain(*found->second, chain);
            for (const site::Run& run : chain.runs) {
                const auto found = old.find(run.id);
                if (found == old.end()) {
                    tell("added", "run " + run.id, {"is new", {}});
                    continue;
                }
                compareRun(*found->second, run);
                old.erase(found);
            }
        }
        for (const auto& [id, run] : old)
            tell("removed", "run " + id, {"is no longer there", {}});
    }

    void compareChain(const site::Chain& before, const site::Chain& now)
    {
        const std::string place = "chain " + now.id;
        const auto form = [](const site::Chain& chain) {
            return std::string(chain.closed ? "closed" : "open");
        };
        changed(place, "the chain", form(before), form(now));
        changed(place, "bearing of the first run", before.firstBearing, now.firstBearing);
        changed(place, "width of the obstacle", obstacleWidth(before), obstacleWidth(now));
        changed(place, "cricket", before.obstacle ? before.obstacle->cricket : std::nullopt,
                now.obstacle ? now.obstacle->cricket : std::nullopt);
        if (before.corners.size() != now.corners.size())
            return changed(place, "number of corners", static_cast<std::int64_t>(before.corners.size()),
                           static_cast<std::int64_t>(now.corners.size()));
        for (std::size_t corner = 0; corner < now.corners.size(); ++corner)
            changed(place + ", corner " + std::to_string(corner + 1), "interior angle",
                    site::interiorAngle(before.corners[corner]), site::interiorAngle(now.corners[corner]));
    }

    void compareRun(const site::Run& before, const site::Run& now)
    {
        const std::string place = "run " + now.id;
        const std::size_t told = findings_.size();
        changed(place, "kind", before.kind, now.kind);
        changed(place, "length", site::measuredLength(before), site::measuredLength(now));
        changed(place, "level run", levelLength(before), levelLength(now));
        changed(place, "slope", before.slope, now.slope);
        changed(place, "other slope", before.otherSlope, now.otherSlope);
        changed(place, "plan corner", before.planCorner, now.planCorner);
        changed(place, "start", before.start, now.start);
        changed(place, "end", before.end, now.end);
        changed(place, "exposure", before.courseExposure, now.courseExposure);
        changed(place, "trim", trimsOf(before), trimsOf(now));
        if (trimsOf(before) == trimsOf(now))
            for (std::size_t trim = 0; trim < now.trims.size(); ++trim)
                compareTrim(place + ", " + now.trims[trim].trim, before.trims[trim], now.trims[trim]);
        changed(place, "note", before.note, now.note);
        if (findings_.size() == told && !(before == now))
            tell("changed", place, {"its repeated measures or texts as entered changed", {}});
    }

    void compareTrim(const std::string& place, const site::TrimChoice& before, const site::TrimChoice& now)
    {
        changed(place, "colour", before.colour, now.colour);
        changed(place, "lap", before.lap, now.lap);
        const auto value = [](const auto& named, const std::string& name) -> std::optional<Length> {
            const auto found = named.find(name);
            if (found == named.end())
                return std::nullopt;
            if constexpr (std::is_same_v<std::decay_t<decltype(found->second)>, site::Measured>)
                return found->second.value;
            else
                return found->second;
        };
        const auto compareNamed = [&](const auto& old, const auto& current) {
            std::map<std::string, int> names;
            for (const auto& [name, held] : old)
                names.emplace(name, 0);
            for (const auto& [name, held] : current)
                names.emplace(name, 0);
            for (const auto& [name, unused] : names)
                changed(place, name, value(old, name), value(current, name));
        };
        compareNamed(before.measures, now.measures);
        compareNamed(before.legs, now.legs);
    }

    void compareMade(const pieces::Order& before, const pieces::Order& now)
    {
        PieceDifferences found = comparePieces(before, now);
        for (Difference& one : found.changed)
            tell(one.aspect.c_str(), std::move(one.place),
                 {"{what} was {before}, is now {now}",
                  {{"what", std::move(one.what)},
                   {"before", std::move(one.first)},
                   {"now", std::move(one.second)}}});
        for (const std::string& mark : found.onlyInSecond)
            tell("added", "mark " + mark, {"is new", {}});
        for (const std::string& mark : found.onlyInFirst)
            tell("removed", "mark " + mark, {"is no longer wanted", {}});
    }

    rules::Findings findings_;
};

} // namespace

rules::Findings compareRevisions(const pieces::Order& before, const pieces::Order& now)
{
    return Revision().compare(before, now);
}

} // namespace lapwright::documents
