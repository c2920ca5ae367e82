#include "storage/catalogue.h"

#include "documents/catalogue.h"
#include "storage/library.h"

#include <utility>

namespace lapwright::storage {

Result<pieces::Catalogue> loadCatalogue(const std::vector<std::string>& shopFolders)
{
    documents::CatalogueBuilder builder;
    for (const auto kind : {LibraryKind::Metals, LibraryKind::Trims, LibraryKind::RuleSets}) {
        const auto files = libraryFiles(kind, shopFolders);
        if (!files.ok())
            return files.errors();
        for (const LibraryFile& file : *files)
            builder.add(file.name, file.text);
    }
    return builder.build();
}

std::future<Result<pieces::Catalogue>> loadCatalogueBeside(std::vector<std::string> shopFolders)
{
    return std::async(std::launch::async,
                      [folders = std::move(shopFolders)] { return loadCatalogue(folders); });
}

} // namespace lapwright::storage
