#include "documents/catalogue.h"

#include "documents/envelope.h"
#include "documents/metal.h"
#include "documents/rules.h"
#include "documents/trim.h"

#include <algorithm>
#include <iterator>

namespace lapwright::documents {
namespace {

template <class T>
Result<T> valueOf(Result<Document<T>> document)
{
    if (!document)
        return document.errors();
    return (*std::move(document)).value;
}

} // namespace

template <class T>
void CatalogueBuilder::keep(const std::string& file, const std::string& kind, Result<T> read,
                            std::map<std::string, T>& all)
{
    if (!read) {
        const std::vector<Error> errors = read.errorsWithin(file);
        errors_.insert(errors_.end(), errors.begin(), errors.end());
        return;
    }
    const std::string id = read->id;
    const auto [known, isNew] = files_.emplace(kind + " " + id, file);
    if (isNew)
        all.emplace(id, *std::move(read));
    else
        errors_.push_back({file + "/id", known->first + ", as in " + known->second, "an id of its own"});
}

CatalogueBuilder& CatalogueBuilder::add(const std::string& file, std::string_view text)
{
    const Result<std::string> format = formatOf(text);
    if (!format)
        keep(file, "", Result<metal::Metal>(format.errors()), catalogue_.metals);
    else if (*format == kinds::metal.format)
        keep(file, "metal", valueOf(readMetal(text)), catalogue_.metals);
    else if (*format == kinds::trim.format)
        keep(file, "trim", valueOf(readTrim(text)), catalogue_.trims);
    else if (*format == kinds::rules.format)
        keep(file, "rule set", valueOf(readRules(text)), catalogue_.ruleSets);
    else
        errors_.push_back(
            {file + "/format", format->substr(0, 60), "lapwright/metal, lapwright/trim or lapwright/rules"});
    return *this;
}

Result<pieces::Catalogue> CatalogueBuilder::build() const
{
    if (!errors_.empty())
        return errors_;
    return catalogue_;
}

} // namespace lapwright::documents
