#pragma once

#include "measure/length.h"
#include "measure/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A document as a form that its schema describes: a field for each value that stands there or may, a heading
/// for each part. What the schema does not know stays in the document and is not in the form.
namespace lapwright::documents {

struct FormField {
    enum class Kind {
        Text,
        Number,
        Whole,
        Length, ///< never negative; the document has millimetres
        YesNo,
        Choice,
        List,  ///< of texts or numbers, or of points
        Part,  ///< heading of a part
        Items, ///< heading of a list of parts
        Item   ///< heading of one of them
    };
    Kind kind = Kind::Text;
    std::string pointer; ///< JSON pointer
    std::string name;    ///< of the member: "bending_length_mm"; of an Item that of its list
    std::string help;    ///< what the schema says of it; may be empty
    std::size_t depth = 0;
    bool given = false;    ///< it stands in the document
    bool required = false; ///< it has to
    /// What stands there: a text, a number, "07:00-12:00, 12:30-15:30", "0, 0; 40, -12.5", "true"; of an Item
    /// its number and name.
    std::string text;
    std::optional<Length> length;
    std::vector<std::string> choices; ///< of a Choice
    bool ofNumbers = false;           ///< of a List

    friend bool operator==(const FormField&, const FormField&) = default;
};

/// The fields in the document's order, behind those that stand there those that may. `schemaFile` is one of
/// the embedded ones: "machine.schema.json". Errors: no JSON object, or more than 10 000 values.
[[nodiscard]] Result<std::vector<FormField>> formOf(std::string_view schemaFile, std::string_view document);

/// The document with `entered` in that field; nothing entered takes it out where it is not required. Errors:
/// no such number or list; for a length use the other one.
[[nodiscard]] Result<std::string> filledIn(std::string_view document, const FormField& field,
                                           std::string_view entered);
[[nodiscard]] Result<std::string> filledIn(std::string_view document, const FormField& field, Length entered);

/// One more of that list, alike to its last but for its name; or a part that is not there, with what has to
/// be in it. Errors: no such place.
[[nodiscard]] Result<std::string> withMore(std::string_view schemaFile, std::string_view document,
                                           const FormField& heading);
/// Without that field, part or item; as it is where that does not stand there. Errors: no JSON object.
[[nodiscard]] Result<std::string> without(std::string_view document, const FormField& heading);

} // namespace lapwright::documents
