#pragma once

#include "pieces/accessories.h"
#include "pieces/rule_book.h"
#include "pieces/run_pieces.h"
#include "rules/rule_set.h"
#include "site/job.h"
#include "trim/profile.h"

#include <cstddef>
#include <optional>
#include <vector>

/// The facts (rules/facts.h) that the take-off knows. Only facts that a rule mentions are added.
namespace lapwright::pieces {

/// Kind, ends, slopes, exposure and length of the run, and the wind at the job.
void addRunFacts(const RuleBook& rules, const site::Job& job, const site::Run& run, Length measured,
                 rules::Facts& facts);

/// The run at which the obstacle that its chain goes round is told of, so that it is told once: the first
/// headwall with a trim, else the first run with one. Nothing where there is no obstacle or no trim.
[[nodiscard]] std::optional<std::size_t> runOfObstacle(const site::Chain& chain);

/// Width and cricket of the obstacle; the cricket's height at the slope of `run`. Precondition: the chain
/// goes round one.
void addObstacleFacts(const RuleBook& rules, const site::Chain& chain, const site::Run& run,
                      rules::Facts& facts);

/// Pieces, hand and distance between movement joints.
void addPieceFacts(const RuleBook& rules, const RunWork& work, const RunPieces& pieces,
                   const std::vector<Accessory>& accessories, rules::Facts& facts);

} // namespace lapwright::pieces
