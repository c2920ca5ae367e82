#pragma once

#include <string>
#include <vector>

namespace lapwright::print {

/// The text in lines no wider than `width` at `size`; a word that is wider itself is broken where it must be.
/// Harmless for paper (drawing::harmless). One empty line for an empty text. Widths in millimetres.
[[nodiscard]] std::vector<std::string> linesOf(const std::string& text, double size, double width,
                                               bool bold = false);

/// `size`, or as much less as keeps each length in the text, like 9' 4 1/2", whole on a line of `width`.
[[nodiscard]] double sizeOfWholeLengths(const std::string& text, double size, double width,
                                        bool bold = false);

/// The same lines, but at most `most` (> 0) lines, the last ending in an ellipsis where something is left
/// out.
[[nodiscard]] std::vector<std::string> fewLinesOf(const std::string& text, double size, double width,
                                                  std::size_t most, bool bold = false);

/// From one line's base to the next, and how far the text of one line reaches above its base, in em.
inline constexpr double lineInEm = 1.32;

} // namespace lapwright::print
