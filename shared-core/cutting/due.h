#pragma once

#include "cutting/part.h"

#include <vector>

namespace lapwright::cutting {

/// The due classes of the kinds, ascending.
[[nodiscard]] std::vector<int> dueClassesOf(const Instance& instance);

/// What the plan for the blanks due by then takes of each stock, stage by stage; later blanks may only fill
/// it up.
struct DueStages {
    std::vector<int> classes;
    std::vector<std::vector<std::int64_t>> taken; ///< for each stage done, of each stock, what is new in it
};

/// The part of a stage: each stock as often as stages take of it.
struct StagePart {
    Part part;
    std::vector<std::size_t> stageOfStock;
};

/// The blanks due by the next stage, with the stock of the stages before, each part of it for the blanks of
/// that stage and later ones, and after that what is left of all stock for the blanks of this stage.
[[nodiscard]] StagePart nextStage(const Instance& whole, const DueStages& stages);

/// A plan of the stage, in its terms, to begin with: the plan of the stage before (in terms of the whole,
/// empty at the first), filled up, and first fit for the rest. What the stock cannot hold stays in
/// `residual`, by kinds of the part.
[[nodiscard]] RawPlan stageStart(const Instance& whole, const StagePart& stage, const RawPlan& before,
                                 std::vector<std::int64_t>& residual);

/// What the plan (in terms of the whole) takes of each stock, stage by stage: the earliest blank of a pattern
/// says whose it is.
[[nodiscard]] std::vector<std::vector<std::int64_t>> takenByStages(const Instance& whole, const RawPlan& plan,
                                                                   std::size_t stages);

} // namespace lapwright::cutting
