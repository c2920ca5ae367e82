#include "documents/envelope.h"

#include "documents/schema.h"

#include <utility>

namespace lapwright::documents {
namespace {

std::string inQuotes(std::string_view text)
{
    std::string result;
    writeJsonText(text.substr(0, 60), result);
    return result;
}

Result<std::string> formatMember(const Json& document)
{
    if (!document.is_object())
        return Error{"", "no object", "an object with member \"format\""};
    const auto format = document.find("format");
    if (format == document.end() || !format->is_string())
        return Error{"/format", format == document.end() ? "no such member" : "no text",
                     "a text like lapwright/job"};
    return format->get<std::string>();
}

Error newer(const Json& document, std::int64_t version, const Kind& kind)
{
    const auto program = document.find("program");
    const bool known = program != document.end() && program->is_string();
    return {"/version", "version " + std::to_string(version),
            "version " + std::to_string(kind.version) + " or older; this document is read by Lapwright " +
                (known ? program->get<std::string>().substr(0, 20) : std::string("of a later version")) +
                (known ? " or later" : "")};
}

Result<Json> migrated(Json document, std::int64_t version, const Kind& kind)
{
    for (auto step = static_cast<std::size_t>(version - 1); step < kind.migrations.size(); ++step) {
        Result<Json> next = kind.migrations[step](std::move(document));
        if (!next)
            return next;
        document = *std::move(next);
        document["version"] = step + 2;
    }
    return document;
}

} // namespace

Result<std::string> formatOf(std::string_view text, const Limits& limits)
{
    const Result<Json> document = parseJson(text, limits);
    return document ? formatMember(*document) : Result<std::string>(document.errors());
}

Result<Json> openDocument(std::string_view text, const Kind& kind, const Limits& limits)
{
    Result<Json> document = parseJson(text, limits);
    if (!document)
        return document;
    const Result<std::string> format = formatMember(*document);
    if (!format)
        return format.errors();
    if (*format != kind.format)
        return Error{"/format", inQuotes(*format), inQuotes(kind.format)};
    const auto version = document->find("version");
    if (version == document->end() || !version->is_number_integer() || *version < 1)
        return Error{"/version", version == document->end() ? "no such member" : "no version",
                     "a whole number from 1 to " + std::to_string(kind.version)};
    if (*version > kind.version)
        return newer(*document, version->get<std::int64_t>(), kind);
    const auto number = version->get<std::int64_t>();
    document = migrated(*std::move(document), number, kind);
    if (!document)
        return document;
    return allowedBy(kind.schemaFile, *std::move(document));
}

Result<Json> allowedBy(std::string_view schemaFile, Json document)
{
    const Result<Schema>& schema = Schema::embedded(schemaFile);
    if (!schema)
        return schema.errors();
    std::vector<Error> errors = schema->check(document);
    if (!errors.empty())
        return errors;
    return document;
}

std::string closeDocument(const Kind& kind, const Members& members, const Extras& extras, Layout layout)
{
    std::map<std::string_view, std::string> unknown;
    for (const auto& [name, value] : extras.members)
        if (members.find(name) == members.end())
            writeJson(value, unknown[name]);
    for (const auto& [name, inner] : extras.inside)
        if (const auto found = members.find(name); found != members.end())
            unknown[name] = withExtras(found->second, inner);
    Members all(unknown.begin(), unknown.end());
    all.insert(members.begin(), members.end());

    const std::string_view gap = layout == Layout::Readable ? "\n  " : "";
    const std::string_view colon = layout == Layout::Readable ? ": " : ":";
    std::string text("{");
    text.append(gap).append("\"format\"").append(colon).append(inQuotes(kind.format)).append(",");
    text.append(gap).append("\"version\"").append(colon).append(std::to_string(kind.version)).append(",");
    text.append(gap).append("\"program\"").append(colon).append(inQuotes(kind.program));
    for (const auto& [name, value] : all) {
        text.append(",").append(gap);
        writeJsonText(name, text);
        text.append(colon);
        if (layout == Layout::Readable)
            layOut(value, 2, text);
        else
            text.append(value);
    }
    text += layout == Layout::Readable ? "\n}\n" : "}";
    if (layout == Layout::Readable && text.size() > Limits().bytes)
        return closeDocument(kind, members, extras, Layout::Canonical);
    return text;
}

} // namespace lapwright::documents
