#pragma once

#include "rules/finding.h"
#include "site/job.h"

namespace lapwright::documents {

/// The code of such findings.
inline constexpr const char* enteredCode = "documents.entered";

/// Measures whose text as entered does not read as the millimetres beside it: someone changed one of the two.
/// The millimetres count. A text that can be read in several ways is right if one of them fits; an empty text
/// says nothing. Lengths fit within 0.051 mm, angles within 0.01°. They warn; the place
/// is the run (and the measure), or the chain and corner.
[[nodiscard]] rules::Findings enteredThatDiffer(const site::Job& job);

} // namespace lapwright::documents
