#pragma once

#include "measure/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::schedule {

/// What the code on a label says: which pieces of which order these are.
struct LabelText {
    std::string order; ///< UUID in lower case
    std::int64_t revision = 1;
    std::string mark;   ///< of a piece; empty on the label of a bundle
    std::string bundle; ///< its label on the load: "B3"; empty on the label of a piece
    std::int64_t count = 1;

    friend bool operator==(const LabelText&, const LabelText&) = default;
};

/// The text for a QR code, short and of characters that such a code packs tightly and every scanner types:
///
///     L1:ORDER:REVISION:MARK:BUNDLE:COUNT:C
///
/// ORDER is the UUID's 128 bits as 26 digits to the base of 32; revision and count are decimal. In mark and
/// bundle a lower-case letter is written as $ and its capital, any other byte than A-Z, 0-9, . and - as / and
/// two hexadecimal digits. The last character checks all others: each of the 41 characters has a value, and
/// the values weighted by powers of a primitive root add up to a multiple of 41, a prime; so every single
/// wrong character and every swap of neighbours is found (arithmetic: no weight, no difference of
/// neighbouring weights and no difference of two values is a multiple of 41).
/// Errors: an order that is no UUID in lower case, a revision or count under 1, neither mark nor bundle, a
/// mark or bundle of more than 400 bytes; place is the field's name.
[[nodiscard]] Result<std::string> labelText(const LabelText& label);

/// What a scanner read, back again; spaces and line ends around it do not count. Errors: anything labelText
/// would not have written, with what to do about it; place is "label".
[[nodiscard]] Result<LabelText> readLabelText(std::string_view text);

} // namespace lapwright::schedule
