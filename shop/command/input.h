#pragma once

#include "measure/result.h"
#include "storage/document_file.h"

#include <string>
#include <string_view>
#include <utility>

namespace lapwright::command {

/// A document with the text it was read from, word for word.
template <class Document>
struct Received {
    std::string text;
    Document document;
};

/// What a path is called in messages: "-" is standard input.
[[nodiscard]] inline std::string nameOf(const std::string& path)
{
    return path == "-" ? "standard input" : path;
}

/// The document at `path` ("-" for standard input) as `read`, one of documents::read…, understands it. Errors
/// name the file.
template <class Document>
[[nodiscard]] Result<Received<Document>> receiveFrom(const std::string& path,
                                                     Result<Document> (*read)(std::string_view))
{
    auto text = storage::readDocument(path);
    if (!text.ok())
        return text.errors();
    auto document = read(*text);
    if (!document.ok())
        return document.errorsWithin(nameOf(path));
    return Received<Document>{*std::move(text), *std::move(document)};
}

/// The same where the text itself is not needed.
template <class Document>
[[nodiscard]] Result<Document> readFrom(const std::string& path, Result<Document> (*read)(std::string_view))
{
    auto received = receiveFrom(path, read);
    if (!received.ok())
        return received.errors();
    return std::move(received->document);
}

} // namespace lapwright::command
