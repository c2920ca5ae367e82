#pragma once

#include "cutting/plan.h"
#include "fold/plan.h"
#include "schedule/floor.h"
#include "schedule/problem.h"
#include "site/job.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// From what the shop has planned to cut and fold to what has to be scheduled.
namespace lapwright::schedule {

/// Which sheets of which cut plan a task cuts.
struct CutOf {
    std::string plan; ///< UUID
    std::size_t pattern = 0;

    friend bool operator==(const CutOf&, const CutOf&) = default;
};

/// A cut plan that waits; blank keys are those of batch.h.
struct PlannedCut {
    std::string plan; ///< UUID
    site::Material material;
    std::vector<cutting::Blank> blanks;
    std::vector<cutting::Stock> stocks;
    std::vector<cutting::Pattern> patterns;
};

/// How a kind of machine folds the pieces of a lot.
struct FoldWay {
    std::string model;                 ///< id in the machine library
    std::string program;               ///< the same where nothing has to be programmed anew (programOf)
    std::string beamFace;              ///< what must be fitted
    std::int64_t millisecondsEach = 0; ///< handlingTime of the fold plan
};

/// Pieces of one profile of one order.
struct LotWork {
    std::string order;   ///< UUID
    std::string profile; ///< id in the order
    std::string name;    ///< for people
    std::vector<std::string> marks;
    std::int64_t cutAlready = 0; ///< pieces that stand there cut
    std::vector<FoldWay> ways;   ///< empty: no machine known can fold it
};

struct OrderDue {
    std::string order;
    std::string name;
    std::optional<Date> wantedBy;
    int priority = 0;
};

struct ShopWork {
    std::vector<PlannedCut> cuts;
    std::vector<LotWork> lots;
    std::vector<OrderDue> orders;
};

/// A pin by the names of what it pins, as a person gives it and a document keeps it.
struct NamedPin {
    std::string task; ///< Task::key
    std::optional<std::string> machine;
    std::optional<Moment> start;
    std::optional<std::string> after;

    friend bool operator==(const NamedPin&, const NamedPin&) = default;
};

struct Assembly {
    std::optional<Problem> problem; ///< missing where nothing is to be done, or only what cannot be
    /// Lots and patterns that no machine of the floor can make, pins of what is not there; all of it left
    /// out.
    rules::Findings findings;
    std::map<std::string, CutOf> cuts; ///< by Task::key
};

/// One cut task for each pattern of each plan, named "cut, <gauge> <metal> <colour>, map <number>", one lot
/// for each profile of each order, keyed "order/profile". Errors: those of ProblemBuilder::build.
[[nodiscard]] Result<Assembly> assemble(const ShopWork& work, const Floor& floor, Moment begin,
                                        const std::vector<NamedPin>& pins = {});

/// What tells fold programs apart: every step's gauge setting, angle and direction. Plans with the same need
/// no programming in between.
[[nodiscard]] std::string programOf(const fold::FoldPlan& plan);

/// Handling time of one piece, milliseconds: the steps alone, without fitting a beam face once for all.
[[nodiscard]] std::int64_t handlingTime(const fold::FoldPlan& plan);

/// Cutting time of one sheet or level, milliseconds: laid in, slit, crosscut, blanks narrower than their
/// strip trimmed.
[[nodiscard]] std::int64_t cuttingTime(const std::vector<cutting::Blank>& blanks,
                                       const cutting::Pattern& pattern, const Rates& rates);

} // namespace lapwright::schedule
