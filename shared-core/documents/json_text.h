#pragma once

#include "measure/result.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <string>
#include <string_view>

/// JSON text (RFC 8259) in and out, stricter than the standard asks and within bounds.
namespace lapwright::documents {

using Json = nlohmann::json;

/// What a document may take before it is refused unread.
struct Limits {
    std::size_t bytes = std::size_t{256} << 20;
    /// Of one text, number or stretch of white space: the reader copies each several times.
    std::size_t token = std::size_t{16} << 20;
    std::size_t depth = 64;
    /// Numbers, texts, lists and objects together: bounds the memory a small text of brackets could claim.
    std::size_t values = 20'000'000;
};

/// Refused, with line, column and JSON pointer in the place: text that is not UTF-8 JSON, members named
/// twice, numbers that no double holds, lone surrogates, anything after the value, and what is beyond
/// `limits`.
[[nodiscard]] Result<Json> parseJson(std::string_view text, const Limits& limits = {});

enum class Layout {
    Canonical, ///< no white space: the form that is hashed
    Readable   ///< what fits stands on one line, the rest is indented
};

/// Appends the canonical text of `value`: members by name in byte order; whole numbers without a point,
/// others with the fewest decimals up to nine that give the same number back, or else the shortest form that
/// does; bytes that are not UTF-8 become U+FFFD. The same value always gives the same bytes.
void writeJson(const Json& value, std::string& text);
/// Appends a value given as canonical text in the readable layout, whose further lines are indented.
void layOut(std::string_view canonical, std::size_t indent, std::string& text);
/// A text with its quotation marks and escapes.
void writeJsonText(std::string_view value, std::string& text);

/// A step of a JSON pointer (RFC 6901) with its "~" and "/" escaped, cut short if it is longer than a person
/// would read.
[[nodiscard]] std::string pointerStep(std::string_view name);

} // namespace lapwright::documents
