#pragma once

#include "rules/finding.h"
#include "site/job.h"

#include <cstddef>
#include <string>

/// What is wrong with a job as measured, told before anyone leaves the house.
namespace lapwright::site {

/// A run longer than this blocks: it is far likelier a slip of units than an edge of a house.
inline constexpr Length longestRun = Length::feet(400);
/// A run longer than this is asked about.
inline constexpr Length longRun = Length::feet(300);
/// A run shorter than this is asked about.
inline constexpr Length shortRun = Length::inches(1);

/// What a chain goes by: its name, or its id if it has none.
[[nodiscard]] const std::string& nameOrId(const Chain& chain);
/// Places as the person names them: "chain House eave, run E3", "chain House eave, corner E3 to E4".
[[nodiscard]] std::string chainPlace(const Chain& chain);
[[nodiscard]] std::string runPlace(const Chain& chain, std::size_t run);
[[nodiscard]] std::string cornerPlace(const Chain& chain, std::size_t corner);

/// One run by itself: lengths missing, not positive or absurd; repeats that spread; a measured beside a
/// derived length; slopes and plan corners that are missing or do not suit the kind. Codes site.run.*.
[[nodiscard]] rules::Findings checkRun(const Run& run, const Tolerance& tolerance, const std::string& place);
/// The runs and corners of one chain and how they fit together; not its closure. Codes site.run.*,
/// site.corner.*, site.chain.*, site.end.*.
[[nodiscard]] rules::Findings checkChain(const Chain& chain, const Tolerance& tolerance);
/// The whole job: ids, every chain, and every chain's closure (closure.h). Codes as above, site.job.*,
/// site.closure.*. Work grows with n log n in the number of runs where chains do not fail to close.
[[nodiscard]] rules::Findings checkJob(const Job& job);

} // namespace lapwright::site
