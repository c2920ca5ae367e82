#include "site/merge.h"

#include "site/checks.h"
#include "site/editing.h"
#include "site/run_length.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace lapwright::site {

namespace {

using Measure = std::pair<Length, std::string>; ///< and the run's id

/// Runs by kind and length.
std::map<RunKind, std::vector<Measure>> measuresOf(const Job& job)
{
    std::map<RunKind, std::vector<Measure>> measures;
    for (const Chain& chain : job.chains)
        for (const Run& run : chain.runs)
            if (const auto length = measuredLength(run))
                measures[run.kind].emplace_back(*length, run.id);
    for (auto& [kind, lengths] : measures)
        std::stable_sort(lengths.begin(), lengths.end(),
                         [](const Measure& left, const Measure& right) { return left.first < right.first; });
    return measures;
}

std::string joined(const std::vector<std::string>& names)
{
    std::string all;
    for (const std::string& name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all.empty() ? "none" : all;
}

class Merger {
public:
    Merger(const Job& first, const Job& second) : merged_{first, {}}, first_(first), second_(second)
    {
        for (const Job* job : {&first, &second})
            named_.chains.insert(named_.chains.end(), job->chains.begin(), job->chains.end());
        named_.chains.emplace_back();
        for (const Chain& chain : first.chains)
            for (const Run& run : chain.runs)
                taken_.insert(run.id);
    }

    MergedJob merge()
    {
        compareJobs();
        for (const Chain& chain : second_.chains)
            places_.push_back(take(chain));
        takeAcknowledgements();
        takePhotos();
        return std::move(merged_);
    }

private:
    void tell(rules::Weight weight, const char* code, std::string place, Phrase statement, Phrase remedy = {})
    {
        merged_.findings.push_back({weight, std::string("site.merge.") + code, std::move(place),
                                    std::move(statement), std::move(remedy), std::nullopt});
    }

    void compare(const char* what, const std::string& first, const std::string& second)
    {
        if (first != second)
            tell(rules::Weight::Warns, "differs", "job",
                 {"{what} is {first} in one and {second} in the other; the first counts",
                  {{"what", std::string(what)}, {"first", first}, {"second", second}}});
    }

    void compareJobs()
    {
        const Job& first = merged_.job;
        compare("the address", first.address, second_.address);
        compare("the customer", first.customer, second_.customer);
        compare("the date wanted", first.wantedBy, second_.wantedBy);
        compare("the metal", first.material.metal, second_.material.metal);
        compare("the gauge", first.material.gauge, second_.material.gauge);
        compare("the colour", first.material.colour, second_.material.colour);
        compare("the list of rule sets", joined(first.ruleSets), joined(second_.ruleSets));
        if (!(first.limits == second_.limits && first.policy == second_.policy &&
              first.spares == second_.spares && first.tolerance == second_.tolerance &&
              first.velocityPressurePsf == second_.velocityPressurePsf))
            tell(rules::Weight::Warns, "differs", "job",
                 {"limits, division of runs, spares, tolerances or wind pressure differ; the first's count",
                  {}});
    }

    /// What the merged job calls the place of the chain.
    std::string take(const Chain& given)
    {
        if (std::find(first_.chains.begin(), first_.chains.end(), given) != first_.chains.end()) {
            tell(rules::Weight::Informs, "same", chainPlace(given),
                 {"is in both jobs with all its runs; kept once", {}});
            return chainPlace(given);
        }
        Chain chain = given;
        const auto sameId = [&](const Chain& other) { return other.id == chain.id; };
        if (std::any_of(merged_.job.chains.begin(), merged_.job.chains.end(), sameId))
            chain.id = nextChainId(merged_.job);
        nameFreely(chain, nameOrId(given));
        for (Run& run : chain.runs)
            renameIfTaken(run, chainPlace(chain));
        tellAlike(chain);
        merged_.job.chains.push_back(std::move(chain));
        return chainPlace(merged_.job.chains.back());
    }

    void tellAlike(const Chain& chain)
    {
        Job alone;
        alone.chains.push_back(chain);
        for (const AlikeRuns& pair : alikeRuns(first_, alone))
            tell(
                rules::Weight::Warns, "alike", "run " + pair.second,
                {"is of one kind and length with run {run} of the first job: perhaps one edge measured twice",
                 {{"run", pair.first}}},
                {"both are kept; take one out if they are one edge", {}});
    }

    /// Places of findings name a chain by its name: what is said of one must not be said of another.
    void nameFreely(Chain& chain, const std::string& old)
    {
        if (const std::string free = freeChainName(merged_.job, nameOrId(chain)); free != nameOrId(chain))
            chain.name = free;
        if (nameOrId(chain) != old)
            tell(rules::Weight::Informs, "renamed", chainPlace(chain),
                 {"chain {old} of the second job is chain {now} from now on",
                  {{"old", old}, {"now", nameOrId(chain)}}});
    }

    /// A place in the second job, as the merged job calls it.
    [[nodiscard]] std::string placeNow(const std::string& place) const
    {
        const auto chain = chainNamed(second_, place);
        return chain ? movedPlace(place, chainPlace(second_.chains[*chain]), places_[*chain]) : place;
    }

    void renameIfTaken(Run& run, const std::string& place)
    {
        if (taken_.find(run.id) == taken_.end())
            return;
        const std::string old = std::exchange(run.id, nextRunId(named_, run.kind));
        named_.chains.back().runs.push_back(run);
        renamed_.emplace(old, run.id);
        tell(rules::Weight::Informs, "renamed", place,
             {"run {old} of the second job is run {now} from now on", {{"old", old}, {"now", run.id}}});
    }

    void takeAcknowledgements()
    {
        std::vector<Acknowledgement>& kept = merged_.job.acknowledgements;
        for (Acknowledgement given : second_.acknowledgements) {
            const auto place = runNamed(second_, given.place);
            const bool moved =
                place && renamed_.find(second_.chains[place->chain].runs[place->run].id) != renamed_.end();
            if (moved)
                tell(rules::Weight::Warns, "reason", given.place,
                     {"the reason given for going on is left behind with the run's old name: {reason}",
                      {{"reason", given.reason}}});
            given.place = placeNow(given.place);
            if (!moved && std::find(kept.begin(), kept.end(), given) == kept.end())
                kept.push_back(std::move(given));
        }
    }

    /// A photo goes with its run, whatever that is called now.
    void takePhotos()
    {
        for (Photo photo : second_.photos) {
            const auto place = runNamed(second_, photo.place);
            if (place)
                if (const auto now = renamed_.find(second_.chains[place->chain].runs[place->run].id);
                    now != renamed_.end())
                    photo = {photo.sha256, "run " + now->second, {}};
            photo.place = placeNow(photo.place);
            if (std::find(merged_.job.photos.begin(), merged_.job.photos.end(), photo) ==
                merged_.job.photos.end())
                merged_.job.photos.push_back(std::move(photo));
        }
    }

    MergedJob merged_;
    const Job& first_;
    const Job& second_;
    Job named_;                   ///< every run that has a name, so that a new one is free
    std::set<std::string> taken_; ///< run ids of the first job
    /// Run ids of the second job that were taken, and what they are now.
    std::map<std::string, std::string> renamed_;
    std::vector<std::string> places_; ///< of each chain of the second job, as the merged job calls it
};

} // namespace

std::vector<AlikeRuns> alikeRuns(const Job& first, const Job& second)
{
    const auto measures = measuresOf(first);
    std::vector<AlikeRuns> alike;
    for (const Chain& chain : second.chains)
        for (const Run& run : chain.runs) {
            const auto length = measuredLength(run);
            const auto found = measures.find(run.kind);
            if (!length || found == measures.end())
                continue;
            auto one =
                std::lower_bound(found->second.begin(), found->second.end(), *length - alikeWithin,
                                 [](const Measure& measure, Length least) { return measure.first < least; });
            for (; one != found->second.end() && one->first <= *length + alikeWithin; ++one)
                alike.push_back({one->second, run.id});
        }
    return alike;
}

MergedJob mergeJobs(const Job& first, const Job& second)
{
    return Merger(first, second).merge();
}

} // namespace lapwright::site
