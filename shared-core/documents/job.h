#pragma once

#include "documents/extras.h"
#include "documents/json_text.h"
#include "measure/result.h"
#include "site/job.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using JobDocument = Document<site::Job>;

/// A job as measured (lapwright/job). Errors: those of openDocument; ids of chains or runs used twice; a
/// number of corners that does not fit the chain; `counts` beyond the lengths. Place is a JSON pointer.
/// Entered texts that say something else than the millimetres beside them are findings: entered.h.
[[nodiscard]] Result<JobDocument> readJob(std::string_view text);

[[nodiscard]] std::string writeJob(const JobDocument& job, Layout layout = Layout::Readable);

} // namespace lapwright::documents
