#pragma once

#include "cutting/plan.h"
#include "cutting/problem.h"
#include "measure/writing.h"
#include "print/paper.h"
#include "print/served_orders.h"
#include "print/sheet.h"
#include "site/job.h"

#include <string>
#include <vector>

namespace lapwright::print {

/// What a cut ticket says beside the plan.
struct CutTicket {
    int number = 1;
    site::Material material;
    /// What each blank is called, by its index in the problem: "A E1.2".
    std::vector<std::string> names;
    std::vector<ServedOrder> orders;
    /// Stock used and how good the plan is, in words: "12 of sheet S-48, proven least, 4.1 % waste".
    std::string summary;
    Style style;
};

/// Blanks are rounded up to the cut step, so what is set on the shear or slitter is shown as finely.
[[nodiscard]] Style fine(Style style);

/// The ticket that goes to the shear or slitter: stock used and the bound, which order each letter serves,
/// remnants to label, what the stock did not suffice for; then every pattern as a map with its strips to
/// tick. Precondition: the plan is one of the problem's that its checker passes; a name for each blank.
[[nodiscard]] Sheet cutTicket(const cutting::Problem& problem, const cutting::Plan& plan,
                              const CutTicket& ticket, const Printing& printing);

} // namespace lapwright::print
