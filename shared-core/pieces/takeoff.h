#pragma once

#include "metal/metal.h"
#include "pieces/order.h"
#include "rules/rule_set.h"
#include "site/job.h"
#include "trim/template.h"

#include <cstdint>
#include <map>
#include <string>

namespace lapwright::pieces {

/// The data a take-off works with, by id; read once, shared by any number of jobs.
struct Catalogue {
    std::map<std::string, metal::Metal> metals;
    std::map<std::string, trim::Template> trims;
    std::map<std::string, rules::RuleSet> ruleSets;
};

/// The most pieces of one order, spares and cuts on site included: more would not fit into its document.
inline constexpr std::int64_t mostPiecesOfOrder = 1'000'000;

/// A measured job becomes an order: closure and geometry checked, each trim resolved, pieces split, marked
/// and counted, the job's rules applied. Never fails: what is wrong with the job is in Order::findings, and a
/// run that cannot be made yields no pieces and a finding that blocks. `Order::id` is left empty and
/// `revision` 1: identity is given by whoever keeps the order. Work and memory grow linearly with the number
/// of runs and pieces; past `mostPiecesOfOrder` nothing more is taken off and "pieces.order.count" blocks.
[[nodiscard]] Order takeoff(const site::Job& job, const Catalogue& catalogue);

} // namespace lapwright::pieces
