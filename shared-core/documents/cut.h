#pragma once

#include "cutting/plan.h"
#include "cutting/problem.h"
#include "documents/extras.h"
#include "documents/json_text.h"

#include <string>
#include <string_view>
#include <vector>

/// Cutting problems and the plans made for them.
namespace lapwright::documents {

/// What is to be cut and from what, as written down; cutting::ProblemBuilder says whether it can be right.
struct CutProblem {
    std::vector<cutting::Blank> blanks;
    std::vector<cutting::Stock> stocks;
    cutting::ShopRules rules;

    friend bool operator==(const CutProblem&, const CutProblem&) = default;
};

/// A plan together with its problem, so that it can be checked and drawn wherever it goes.
struct CutPlan {
    CutProblem problem;
    cutting::Plan plan;

    friend bool operator==(const CutPlan&, const CutPlan&) = default;
};

/// lapwright/cut-problem. Errors: those of openDocument; place is a JSON pointer.
[[nodiscard]] Result<Document<CutProblem>> readCutProblem(std::string_view text);
[[nodiscard]] std::string writeCutProblem(const Document<CutProblem>& problem,
                                          Layout layout = Layout::Readable);

/// lapwright/cut-plan. Errors: those of openDocument; an index of a blank, stock, pattern or strip beyond
/// what is there. `plan.feasibility` is left for cutting::check to say.
[[nodiscard]] Result<Document<CutPlan>> readCutPlan(std::string_view text);
[[nodiscard]] std::string writeCutPlan(const Document<CutPlan>& plan, Layout layout = Layout::Readable);

/// The problem as the builder takes it: each blank, stock and rule that cannot be right is refused with its
/// reason.
[[nodiscard]] cutting::Admission admit(const CutProblem& problem);

/// A validated problem as it is written down.
[[nodiscard]] CutProblem writtenDown(const cutting::Problem& problem);

} // namespace lapwright::documents
