#include "pieces/split.h"

#include "measure/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace lapwright::pieces {

namespace {

rules::Finding refusal(std::string code, Phrase statement, Phrase remedy)
{
    return {
        rules::Weight::Blocks, "pieces.split." + std::move(code), {}, std::move(statement), std::move(remedy),
        std::nullopt};
}

/// A piece no longer than its lap would cover nothing.
Length shortestUseful(const SplitProblem& problem)
{
    const Length justOverLap = std::max(problem.lap, Length()) + Length::nanometres(1);
    return std::max(problem.shortest, justOverLap);
}

/// `count` lengths within [least, most] that sum to `total`. Precondition: count * least <= total <= count *
/// most.
void shareEqually(Length total, std::int64_t count, Length least, Length most, std::vector<Length>& lengths)
{
    const auto inRange = [&](Length length) { return least <= length && length <= most; };
    const Length average = total / count;
    const std::array<Length, 3> candidates{roundToNearest(average, equalLengthStep),
                                           roundDown(average, equalLengthStep),
                                           roundUp(average, equalLengthStep)};
    for (const Length each : candidates) {
        const Length last = total - each * (count - 1);
        if (!inRange(each) || !inRange(last))
            continue;
        lengths.insert(lengths.end(), static_cast<std::size_t>(count - 1), each);
        lengths.push_back(last);
        return;
    }
    // So close to a limit that no rounding fits: share to the nanometre.
    const std::int64_t over = (total % count).inNanometres();
    for (std::int64_t i = 0; i < count; ++i)
        lengths.push_back(average + Length::nanometres(i < over ? 1 : 0));
}

/// Full lengths and the rest; as many of the last share as it takes to bring the rest to `least`.
void fullAndRemainder(Length total, std::int64_t count, Length least, Length most,
                      std::vector<Length>& lengths)
{
    std::int64_t sharing = 1;
    Length rest = total - most * (count - 1);
    while (rest < least * sharing) {
        ++sharing;
        rest += most;
    }
    lengths.assign(static_cast<std::size_t>(count - sharing), most);
    shareEqually(rest, sharing, least, most, lengths);
}

std::optional<rules::Finding> refuse(const SplitProblem& problem)
{
    if (problem.length <= Length())
        return refusal("length",
                       {"no length is left for a piece: the ends take away {missing} more than was measured",
                        {{"missing", -problem.length}}},
                       {"check the measured length and what happens at the ends", {}});
    if (problem.limit <= Length())
        return refusal(
            "limit",
            {"the longest piece allowed is {limit}: nothing can be made", {{"limit", problem.limit}}},
            {"check the piece limits of the job", {}});
    if (problem.length <= problem.limit)
        return std::nullopt;
    if (problem.limit <= problem.lap)
        return refusal("lap",
                       {"{length} needs several pieces, but the longest piece allowed, {limit}, is no longer "
                        "than its lap of {lap}",
                        {{"length", problem.length}, {"limit", problem.limit}, {"lap", problem.lap}}},
                       {"allow longer pieces or choose a trim with a shorter lap", {}});
    const std::int64_t count = leastPieceCount(problem);
    if (count > mostPiecesOfRun)
        return refusal("count",
                       {"{length} would need {count} pieces of {limit}; {most} is the most",
                        {{"length", problem.length},
                         {"count", count},
                         {"limit", problem.limit},
                         {"most", mostPiecesOfRun}}},
                       {"check the measured length and the piece limits of the job", {}});
    const Length total = problem.length + problem.lap * (count - 1);
    const Length least = shortestUseful(problem);
    if (total >= least * count)
        return std::nullopt;
    return refusal("shortest",
                   {"{length} cannot be divided: it is over the longest piece, {limit}, and {count} pieces "
                    "with laps of {lap} would be {each} each, under the shortest piece, {shortest}",
                    {{"length", problem.length},
                     {"limit", problem.limit},
                     {"count", count},
                     {"lap", problem.lap},
                     {"each", total / count},
                     {"shortest", least}}},
                   {"allow shorter or longer pieces", {}});
}

} // namespace

std::int64_t leastPieceCount(const SplitProblem& problem)
{
    if (problem.length <= problem.limit)
        return 1;
    const Length advance = problem.limit - problem.lap;
    const Length toCover = problem.length - problem.lap;
    return toCover / advance + (toCover % advance > Length() ? 1 : 0);
}

SplitOutcome split(const SplitProblem& problem)
{
    if (std::optional<rules::Finding> why = refuse(problem))
        return *std::move(why);
    std::vector<Length> lengths;
    const std::int64_t count = leastPieceCount(problem);
    if (count == 1) {
        lengths.push_back(problem.length);
        return lengths;
    }
    lengths.reserve(static_cast<std::size_t>(count));
    const Length total = problem.length + problem.lap * (count - 1);
    const Length least = shortestUseful(problem);
    if (problem.policy == site::PiecePolicy::EqualLengths)
        shareEqually(total, count, least, problem.limit, lengths);
    else
        fullAndRemainder(total, count, least, problem.limit, lengths);
    return lengths;
}

Derivation explainSplit(const SplitProblem& problem, const std::vector<Length>& lengths)
{
    const auto count = static_cast<std::int64_t>(lengths.size());
    if (count == 1)
        return {{"one piece: {length} is within the longest piece, {limit}",
                 {{"length", problem.length}, {"limit", problem.limit}}},
                {},
                {}};
    const char* const policy = problem.policy == site::PiecePolicy::EqualLengths
                                   ? "as equal lengths"
                                   : "as full lengths and the rest";
    const double parts = static_cast<double>((problem.length - problem.lap).inNanometres()) /
                         static_cast<double>((problem.limit - problem.lap).inNanometres());
    return {
        {"{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, "
         "rounded up; with their laps they are {total} together",
         {{"count", count},
          {"policy", std::string(policy)},
          {"length", problem.length},
          {"lap", problem.lap},
          {"limit", problem.limit},
          {"parts", std::ceil(parts * 100.0) / 100.0},
          {"total", problem.length + problem.lap * (count - 1)}}},
        {},
        {}};
}

} // namespace lapwright::pieces
