#pragma once

#include "pieces/accessories.h"
#include "pieces/rule_book.h"
#include "pieces/run_pieces.h"
#include "rules/rule_set.h"
#include "site/run.h"
#include "trim/profile.h"

#include <vector>

/// The facts (rules/facts.h) that the take-off knows. Only facts that a rule mentions are added.
namespace lapwright::pieces {

/// Kind, ends, slopes, exposure and length of the run.
void addRunFacts(const RuleBook& rules, const site::Run& run, Length measured, rules::Facts& facts);

/// Pieces, hand and distance between movement joints.
void addPieceFacts(const RuleBook& rules, const RunWork& work, const RunPieces& pieces,
                   const std::vector<Accessory>& accessories, rules::Facts& facts);

} // namespace lapwright::pieces
