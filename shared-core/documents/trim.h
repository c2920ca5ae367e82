#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "trim/template.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using TrimDocument = Document<trim::Template>;

/// A trim template (lapwright/trim). Errors: those of openDocument; not one bend between each two legs; a
/// measure that is used and not declared; names of measures or legs used twice; a least value over the most;
/// an anchor beyond the path.
[[nodiscard]] Result<TrimDocument> readTrim(std::string_view text);
[[nodiscard]] std::string writeTrim(const TrimDocument& trim, Layout layout = Layout::Readable);

} // namespace lapwright::documents
