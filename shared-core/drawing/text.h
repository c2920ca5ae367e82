#pragma once

#include "drawing/display_list.h"

#include <cstddef>
#include <string>
#include <vector>

/// How much room text takes, without a font at hand.
namespace lapwright::drawing {

/// Width of one line in em: from the advance widths of DejaVu Sans 2.37 for printable ASCII and the signs
/// that measures are written with; any other character counts as one em, which no letter of the Latin, Greek
/// and Cyrillic alphabets but a few ligatures exceeds. Kerning is left out: it only draws letters together.
[[nodiscard]] double widthInEm(const std::string& text, bool bold = false);
[[nodiscard]] double textWidth(const std::string& text, double size, bool bold = false);

/// Above the base line a line of text reaches 0.76 em (an ascender), below it 0.24 em (a descender).
inline constexpr double ascentInEm = 0.76;
inline constexpr double descentInEm = 0.24;

/// What a text covers on the page.
[[nodiscard]] Box boxOf(const Text& text);
/// The text that covers `box` (turned as the box is), its base line set so that the two centres coincide.
[[nodiscard]] Text textIn(const Box& box, Role role, std::string words, double size, bool bold = false);

/// Where the word that begins at `from` ends: at a space, or at the end of the text. A length is one word,
/// also 9' 4 1/2", so that no line ends in the middle of it.
[[nodiscard]] std::size_t endOfWord(const std::string& text, std::size_t from);

/// `size`, or as much less as lets the text take no more than `width`.
[[nodiscard]] double fittingSize(const std::string& text, double size, double width, bool bold = false);

/// Words set into lines no wider than `width`; a longer word stands alone.
[[nodiscard]] std::vector<std::string> wrapped(const std::string& text, double size, double width);
/// The text, or as much of it as `width` takes with an ellipsis behind.
[[nodiscard]] std::string shortened(const std::string& text, double size, double width, bool bold = false);

/// Text made harmless for a picture: control characters and the marks that reorder text become spaces, bytes
/// that are no UTF-8 become U+FFFD.
[[nodiscard]] std::string harmless(const std::string& text);
/// The same of text of several lines, which stay lines: for a screen or a terminal, where a name in a
/// document must not turn the words around it or move a cursor.
[[nodiscard]] std::string harmlessLines(const std::string& lines);

/// The characters of UTF-8 text; each byte that belongs to none is U+FFFD.
[[nodiscard]] std::u32string codePoints(const std::string& text);

} // namespace lapwright::drawing
