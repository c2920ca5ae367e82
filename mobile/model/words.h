#pragma once

#include "measure/phrase.h"
#include "measure/writing.h"
#include "site/run_kind.h"

#include <QString>

#include <string>

/// From what the core says to what a person reads, in their language and units.
namespace lapwright::field {

/// Core text as a screen shows it: what would turn the words around it, or shows nothing, is a space
/// (drawing::harmlessLines).
[[nodiscard]] QString shown(const std::string& text);
/// Core text by which something is found again: as it is, never for a screen.
[[nodiscard]] QString exact(const std::string& text);
/// What a person typed, as the core keeps it: UTF-8.
[[nodiscard]] std::string kept(const QString& text);
/// The same, cut to what a document takes in its place (schemas/job.schema.json).
[[nodiscard]] std::string kept(const QString& text, qsizetype most);
inline constexpr qsizetype longestName = 200;
inline constexpr qsizetype longestAddress = 1000;
inline constexpr qsizetype longestColour = 100;

/// The sentence translated (context "core") with its values put in, first letter a capital; empty for an
/// empty phrase.
[[nodiscard]] QString said(const Phrase& phrase, const Style& style);

/// A name, label, place or note of the core, translated, first letter a capital.
[[nodiscard]] QString named(const std::string& text);

/// "Eave", "Slope change", translated.
[[nodiscard]] QString kindWords(site::RunKind kind);
[[nodiscard]] QString endWords(site::EndKind kind);
/// The name of `text` with its first letter a capital.
[[nodiscard]] QString capital(QString text);

/// 6 in 12, translated.
[[nodiscard]] QString slopeWords(Slope slope);

/// Why a kind of finding matters and what to do.
[[nodiscard]] QString helpWords(const std::string& findingCode);

/// Both write the same.
[[nodiscard]] bool sameStyle(const Style& left, const Style& right);

} // namespace lapwright::field
