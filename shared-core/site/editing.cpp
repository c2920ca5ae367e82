#include "site/editing.h"

#include "site/checks.h"
#include "site/corner.h"
#include "site/run_kind.h"

#include <algorithm>
#include <set>
#include <vector>

namespace lapwright::site {

namespace {

char letterOf(RunKind kind)
{
    switch (kind) {
    case RunKind::Eave:
        return 'E';
    case RunKind::Rake:
        return 'K';
    case RunKind::Ridge:
        return 'R';
    case RunKind::Hip:
        return 'H';
    case RunKind::Valley:
        return 'V';
    case RunKind::Headwall:
        return 'A';
    case RunKind::Sidewall:
        return 'S';
    case RunKind::SlopeChange:
        return 'C';
    case RunKind::Fascia:
        return 'F';
    case RunKind::WallBase:
        return 'B';
    case RunKind::OutsideCorner:
        return 'X';
    case RunKind::InsideCorner:
        return 'N';
    case RunKind::OpeningHead:
        return 'D';
    case RunKind::OpeningSill:
        return 'L';
    case RunKind::OpeningJamb:
        return 'J';
    case RunKind::Parapet:
        return 'P';
    case RunKind::GravelEdge:
        break;
    }
    return 'G';
}

bool isStraight(const Corner& corner)
{
    const std::optional<Angle> interior = interiorAngle(corner);
    return interior && magnitude(*interior - halfTurn) < Angle::degrees(0.5);
}

/// Level runs of one kind that turn a corner carry their trim round it.
bool meetMitred(const Run& before, const Run& after, const Corner& corner)
{
    return before.kind == after.kind && lieOf(before.kind) == Lie::Level && !isStraight(corner);
}

void joinEnds(Run& before, Run& after, const Corner& corner)
{
    const bool mitred = meetMitred(before, after, corner);
    const auto join = [mitred](EndKind& end) {
        if (mitred && end == EndKind::Free)
            end = EndKind::Mitre;
        else if (!mitred && end == EndKind::Mitre)
            end = EndKind::Free;
    };
    join(before.end);
    join(after.start);
}

/// The place is of that name, or goes on after it: "…, run E3, eave drip edge".
bool isAt(const std::string& place, const std::string& name)
{
    return place.compare(0, name.size(), name) == 0 &&
           (place.size() == name.size() || place[name.size()] == ',');
}

bool isOfRun(const std::string& place, const Chain& chain, std::size_t run)
{
    const std::string& id = chain.runs[run].id;
    return isAt(place, runPlace(chain, run)) || isAt(place, "run " + id) || isAt(place, id);
}

/// Also of one that the run no longer has: an opened chain keeps what was said of its closing corner.
bool isOfItsCorner(const std::string& place, const Chain& chain, std::size_t run)
{
    const std::string corner = chainPlace(chain) + ", corner ";
    if (place.compare(0, corner.size(), corner) != 0)
        return false;
    const std::string& id = chain.runs[run].id;
    return std::any_of(chain.runs.begin(), chain.runs.end(), [&](const Run& other) {
        return isAt(place, corner + id + " to " + other.id) || isAt(place, corner + other.id + " to " + id);
    });
}

std::optional<RunPlace> runOrCornerNamed(const Job& job, const std::string& place)
{
    for (std::size_t chain = 0; chain < job.chains.size(); ++chain) {
        const Chain& searched = job.chains[chain];
        for (std::size_t run = 0; run < searched.runs.size(); ++run)
            if (isOfRun(place, searched, run))
                return RunPlace{chain, run};
        for (std::size_t corner = 0; corner < searched.corners.size(); ++corner)
            if (isAt(place, cornerPlace(searched, corner)))
                return RunPlace{chain, corner};
    }
    return std::nullopt;
}

/// The first whose name the place begins with, of several the one with the longest.
std::optional<std::size_t> chainByName(const Job& job, const std::string& place)
{
    std::optional<std::size_t> found;
    std::size_t longest = 0;
    for (std::size_t chain = 0; chain < job.chains.size(); ++chain)
        if (const std::string own = chainPlace(job.chains[chain]); isAt(place, own) && own.size() > longest) {
            found = chain;
            longest = own.size();
        }
    return found;
}

/// Where photos and reasons say that they are of the chain.
std::vector<std::string*> placesOf(Job& job, std::size_t chain)
{
    std::vector<std::string*> places;
    const auto gather = [&](auto& from) {
        for (auto& one : from)
            if (chainNamed(job, one.place) == chain)
                places.push_back(&one.place);
    };
    gather(job.photos);
    gather(job.acknowledgements);
    return places;
}

/// Drops photos and reasons by what their place is.
template <class Goes>
void dropWhere(Job& job, const Goes& goes)
{
    const auto drop = [&goes](auto& from) {
        from.erase(std::remove_if(from.begin(), from.end(), [&](const auto& one) { return goes(one.place); }),
                   from.end());
    };
    drop(job.photos);
    drop(job.acknowledgements);
}

void forgetRun(Job& job, const Chain& chain, std::size_t run)
{
    dropWhere(job, [&](const std::string& place) {
        return isOfRun(place, chain, run) || isOfItsCorner(place, chain, run);
    });
}

/// An end without a corner is not mitred.
void free(EndKind& end)
{
    if (end == EndKind::Mitre)
        end = EndKind::Free;
}

} // namespace

std::string nextRunId(const Job& job, RunKind kind)
{
    std::set<std::string> taken;
    for (const Chain& chain : job.chains)
        for (const Run& run : chain.runs)
            taken.insert(run.id);
    for (std::size_t number = 1;; ++number) {
        std::string id = letterOf(kind) + std::to_string(number);
        if (taken.count(id) == 0)
            return id;
    }
}

std::string nextChainId(const Job& job)
{
    for (std::size_t number = job.chains.size() + 1;; ++number) {
        std::string id = "chain-" + std::to_string(number);
        if (std::none_of(job.chains.begin(), job.chains.end(),
                         [&id](const Chain& chain) { return chain.id == id; }))
            return id;
    }
}

std::string freeChainName(const Job& job, const std::string& wanted, std::optional<std::size_t> chain)
{
    const auto isTaken = [&](const std::string& name) {
        for (std::size_t other = 0; other < job.chains.size(); ++other)
            if (other != chain && nameOrId(job.chains[other]) == name)
                return true;
        return false;
    };
    std::string name = wanted;
    for (int number = 2; isTaken(name); ++number)
        name = wanted + " " + std::to_string(number);
    return name;
}

std::size_t addChain(Job& job, std::string name)
{
    Chain chain;
    chain.id = nextChainId(job);
    chain.name = std::move(name);
    job.chains.push_back(std::move(chain));
    return job.chains.size() - 1;
}

void renameChain(Job& job, std::size_t chain, const std::string& name)
{
    const std::vector<std::string*> places = placesOf(job, chain);
    Chain& renamed = job.chains[chain];
    const std::string old = chainPlace(renamed);
    renamed.name = freeChainName(job, name, chain);
    for (std::string* place : places)
        *place = movedPlace(*place, old, chainPlace(renamed));
}

std::size_t addRun(Job& job, std::size_t chain, Run run, const Corner& corner)
{
    if (run.id.empty())
        run.id = nextRunId(job, run.kind);
    Chain& grown = job.chains[chain];
    grown.runs.push_back(std::move(run));
    if (grown.runs.size() > 1) {
        grown.corners.push_back(corner);
        joinEnds(grown.runs[grown.runs.size() - 2], grown.runs.back(), corner);
    }
    return grown.runs.size() - 1;
}

void closeChain(Job& job, std::size_t chain, const Corner& corner)
{
    Chain& closed = job.chains[chain];
    closed.closed = true;
    closed.corners.push_back(corner);
    joinEnds(closed.runs.back(), closed.runs.front(), corner);
}

void openChain(Job& job, std::size_t chain)
{
    Chain& opened = job.chains[chain];
    if (!opened.closed)
        return;
    opened.closed = false;
    opened.corners.pop_back();
    free(opened.runs.back().end);
    free(opened.runs.front().start);
}

void setCorner(Job& job, std::size_t chain, std::size_t corner, const Corner& given)
{
    Chain& changed = job.chains[chain];
    changed.corners[corner] = given;
    joinEnds(changed.runs[corner], changed.runs[(corner + 1) % changed.runs.size()], given);
}

void removeRun(Job& job, std::size_t chain, std::size_t run)
{
    forgetRun(job, job.chains[chain], run);
    if (job.chains[chain].closed && job.chains[chain].runs.size() <= 3)
        openChain(job, chain);
    Chain& changed = job.chains[chain];
    const std::size_t last = changed.runs.size() - 1;
    changed.runs.erase(changed.runs.begin() + static_cast<std::ptrdiff_t>(run));
    if (!changed.corners.empty()) {
        const std::size_t lost = run == last && !changed.closed ? run - 1 : run;
        changed.corners.erase(changed.corners.begin() + static_cast<std::ptrdiff_t>(lost));
    }
    if (changed.runs.empty())
        return;
    if (!changed.closed) {
        free(changed.runs.front().start);
        free(changed.runs.back().end);
    }
    const std::size_t before = run > 0 ? run - 1 : changed.runs.size() - 1;
    if (run > 0 ? run < changed.runs.size() || changed.closed : changed.closed)
        joinEnds(changed.runs[before], changed.runs[(before + 1) % changed.runs.size()],
                 changed.corners[before]);
}

void removeChain(Job& job, std::size_t chain)
{
    const Chain& removed = job.chains[chain];
    for (std::size_t run = 0; run < removed.runs.size(); ++run)
        forgetRun(job, removed, run);
    dropWhere(job, [&removed](const std::string& place) { return place == chainPlace(removed); });
    job.chains.erase(job.chains.begin() + static_cast<std::ptrdiff_t>(chain));
}

std::optional<RunPlace> runNamed(const Job& job, const std::string& place)
{
    if (const auto found = runOrCornerNamed(job, place))
        return found;
    const auto chain = chainByName(job, place);
    if (!chain || job.chains[*chain].runs.empty())
        return std::nullopt;
    return RunPlace{*chain, job.chains[*chain].runs.size() - 1};
}

std::optional<std::size_t> chainNamed(const Job& job, const std::string& place)
{
    const auto found = runOrCornerNamed(job, place);
    return found ? found->chain : chainByName(job, place);
}

std::string movedPlace(const std::string& place, const std::string& old, const std::string& now)
{
    return isAt(place, old) ? now + place.substr(old.size()) : place;
}

std::optional<Length> spread(const Run& run)
{
    if (run.lengths.size() < 2)
        return std::nullopt;
    const auto [least, most] = std::minmax_element(
        run.lengths.begin(), run.lengths.end(),
        [](const Measured& left, const Measured& right) { return left.value < right.value; });
    return most->value - least->value;
}

} // namespace lapwright::site
