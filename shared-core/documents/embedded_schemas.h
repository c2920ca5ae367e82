#pragma once

#include <cstddef>
#include <string_view>

namespace lapwright::documents {

/// A file of shared-core/schemas as it was when the library was built.
struct EmbeddedSchema {
    std::string_view file;
    std::string_view text;
};

/// The embedded schemas, one after the other in memory.
[[nodiscard]] const EmbeddedSchema* firstEmbeddedSchema();
[[nodiscard]] std::size_t embeddedSchemaCount();

} // namespace lapwright::documents
