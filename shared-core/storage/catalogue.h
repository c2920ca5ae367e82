#pragma once

#include "measure/result.h"
#include "pieces/takeoff.h"

#include <future>
#include <string>
#include <vector>

namespace lapwright::storage {

/// Metals, trims and rule sets that ship with the program, and those of the shop's own folders. Errors: those
/// of libraryFiles and of documents::CatalogueBuilder.
[[nodiscard]] Result<pieces::Catalogue> loadCatalogue(const std::vector<std::string>& shopFolders);
/// The same in a thread of its own, so that a program starts with its window meanwhile.
[[nodiscard]] std::future<Result<pieces::Catalogue>>
loadCatalogueBeside(std::vector<std::string> shopFolders);

} // namespace lapwright::storage
