#pragma once

#include "documents/extras.h"
#include "measure/result.h"
#include "metal/metal.h"

#include <string>
#include <string_view>

namespace lapwright::documents {

using MetalDocument = Document<metal::Metal>;

/// A metal (lapwright/metal). Errors: those of openDocument; a gauge given twice. The sources that stand in
/// the file beside the values are kept as extras.
[[nodiscard]] Result<MetalDocument> readMetal(std::string_view text);
[[nodiscard]] std::string writeMetal(const MetalDocument& metal, Layout layout = Layout::Readable);

} // namespace lapwright::documents
