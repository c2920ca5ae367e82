#pragma once

#include "rules/finding.h"
#include "site/job.h"

#include <string>
#include <vector>

/// Two tablets' measures of one house, brought together.
namespace lapwright::site {

/// Two tapes on one edge come closer than this: common practice, no source.
inline constexpr Length alikeWithin = Length::millimetres(13);

/// A run of each job, of one kind and of lengths no further apart than alikeWithin: perhaps one edge,
/// measured twice.
struct AlikeRuns {
    std::string first;  ///< id in the first job
    std::string second; ///< id in the second

    friend bool operator==(const AlikeRuns&, const AlikeRuns&) = default;
};

/// All pairs: run by run of the second job, those of the first from short to long. Runs without a measured
/// length are like none.
[[nodiscard]] std::vector<AlikeRuns> alikeRuns(const Job& first, const Job& second);

struct MergedJob {
    Job job;
    rules::Findings findings; ///< codes site.merge.*
};

/// The first job with the chains of the second behind its own. A chain that is in both with all it holds is
/// kept once; any other stays, though it may be a duplicate: runs alike are told, and a person takes one out.
/// Ids and chains' names of the second that the first uses too are replaced by free ones. What is said of the
/// whole job (metal, limits, rule sets…) is the first's; where the second differs it is told. Reasons given
/// for warnings come along unless their run has a new id.
[[nodiscard]] MergedJob mergeJobs(const Job& first, const Job& second);

} // namespace lapwright::site
