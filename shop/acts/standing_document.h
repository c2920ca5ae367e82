#pragma once

#include "measure/result.h"

#include <optional>
#include <string>
#include <type_traits>
#include <utility>

namespace lapwright::acts {

/// A document that the database keeps one of; nothing before there is one. `read` reads its text; errors say
/// that it is of `where`.
template <class Read>
[[nodiscard]] auto standingDocument(const std::optional<std::string>& text, Read read,
                                    const std::string& where)
    -> Result<std::optional<std::decay_t<decltype(*read(*text))>>>
{
    using Document = std::decay_t<decltype(*read(*text))>;
    if (!text)
        return std::optional<Document>();
    auto document = read(*text);
    if (!document.ok())
        return document.errorsWithin(where);
    return std::optional<Document>(*std::move(document));
}

} // namespace lapwright::acts
