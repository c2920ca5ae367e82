#pragma once

#include "measure/result.h"
#include "pieces/takeoff.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::documents {

/// Makes the catalogue a take-off works with out of the texts of metal, trim and rule-set documents.
class CatalogueBuilder {
public:
    /// Takes in one document of any of the three kinds, by its format. `file` is what errors call it.
    CatalogueBuilder& add(const std::string& file, std::string_view text);

    /// The catalogue, or every error of every document; place begins with the file. An id given twice by
    /// documents of one kind is an error that names both files.
    [[nodiscard]] Result<pieces::Catalogue> build() const;

private:
    template <class T>
    void keep(const std::string& file, const std::string& kind, Result<T> read,
              std::map<std::string, T>& all);

    pieces::Catalogue catalogue_;
    std::map<std::string, std::string> files_; ///< by kind and id
    std::vector<Error> errors_;
};

} // namespace lapwright::documents
