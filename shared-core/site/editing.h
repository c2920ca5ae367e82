#pragma once

#include "site/job.h"

#include <cstddef>
#include <optional>
#include <string>

/// How a job grows run by run. Each function takes a job and changes it as one act of the person; what the
/// act makes of corners and ends is decided here and nowhere else.
namespace lapwright::site {

/// A letter for each kind and the next free number in the job: "E3" for an eave, "K1" for a rake.
[[nodiscard]] std::string nextRunId(const Job& job, RunKind kind);
/// "chain-3": free in the job.
[[nodiscard]] std::string nextChainId(const Job& job);

/// `wanted`, or "wanted 2", "wanted 3" …: what no other chain of the job than `chain` goes by.
[[nodiscard]] std::string freeChainName(const Job& job, const std::string& wanted,
                                        std::optional<std::size_t> chain = std::nullopt);

/// A new chain without runs at the end of the job; its index.
std::size_t addChain(Job& job, std::string name);
/// Another name for the chain, made free. Places name a chain by its name: what is said of it and of its runs
/// goes along.
void renameChain(Job& job, std::size_t chain, const std::string& name);

/// `run` after the last of the chain, met at `corner` (not used for the first run); its index. An empty id is
/// filled in. Two level runs of one kind meet mitred unless the corner is straight; other ends stay as given.
/// Precondition: the chain is open.
std::size_t addRun(Job& job, std::size_t chain, Run run, const Corner& corner);

/// The last run meets the first at `corner`. Precondition: the chain is open and has three runs or more.
void closeChain(Job& job, std::size_t chain, const Corner& corner);
/// The chain is open again between its last run and its first.
void openChain(Job& job, std::size_t chain);

/// Another corner at place `corner` of the chain; the ends that meet there follow as in addRun.
void setCorner(Job& job, std::size_t chain, std::size_t corner, const Corner& given);

/// Takes a run out, and with it the photos and the reasons given whose place names it, alone or at a corner
/// (checks.h): the next run of that id is another one. Its neighbours meet at the corner that was before it;
/// a closed chain left with fewer than three runs is open. A chain left without runs stays.
void removeRun(Job& job, std::size_t chain, std::size_t run);
/// Takes a chain out, and with it what was said of it and of its runs.
void removeChain(Job& job, std::size_t chain);

/// Where the chain's measured run stands in the job.
struct RunPlace {
    std::size_t chain = 0;
    std::size_t run = 0;

    friend bool operator==(const RunPlace&, const RunPlace&) = default;
};
/// The run that a finding's place names (checks.h), or of a corner the run before it; nothing if it names no
/// run of the job.
[[nodiscard]] std::optional<RunPlace> runNamed(const Job& job, const std::string& place);

/// The chain that a finding's place names, by itself or by a run or corner of it; nothing if it names none of
/// the job. Of two chains of one name a place without a run is the first one's.
[[nodiscard]] std::optional<std::size_t> chainNamed(const Job& job, const std::string& place);
/// The place, or where it begins with chain place `old`, the same with `now` instead.
[[nodiscard]] std::string movedPlace(const std::string& place, const std::string& old,
                                     const std::string& now);

/// How far apart the repeated measures of a run lie; nothing while there are fewer than two.
[[nodiscard]] std::optional<Length> spread(const Run& run);

} // namespace lapwright::site
