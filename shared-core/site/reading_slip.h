#pragma once

#include "measure/phrase.h"
#include "site/run.h"

#include <optional>

namespace lapwright::site {

/// How `measured` may have come to stand where `wouldBe` was meant, if a common slip explains it to within
/// half an inch: two digits changed places (26' 4" for 24' 6"), a 6 and a 9 taken for one another, an inch
/// from starting at the tape's one-inch mark, a whole number of feet. Slips of one digit come first. Nothing
/// otherwise. Common practice, no source.
struct ReadingSlip {
    Phrase statement;
    /// Only this number can slip so, unlike a foot that any run can be short of.
    bool ofTheDigits = false;
};
[[nodiscard]] std::optional<ReadingSlip> readingSlip(Length measured, Length wouldBe);

} // namespace lapwright::site
