#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::print {

/// A QR code (ISO/IEC 18004) with medium error correction: a square of modules, row by row from the top,
/// without its quiet zone.
struct Code {
    std::size_t size = 0;
    std::vector<bool> dark;

    [[nodiscard]] bool at(std::size_t column, std::size_t row) const { return dark[row * size + column]; }
};

/// Modules left white on every side of a code.
inline constexpr std::size_t quietModules = 4;

/// Nothing where the text is empty or longer than any code holds.
[[nodiscard]] std::optional<Code> codeOf(const std::string& text);

} // namespace lapwright::print
