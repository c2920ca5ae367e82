#pragma once

#include "measure/writing.h"

#include <QString>

#include <string>

namespace lapwright::model {

/// What a person calls a member of a document of the reference data: "Bending length".
[[nodiscard]] QString formWord(const std::string& member);

/// What a person calls one of the values that a member may have: "At least".
[[nodiscard]] QString formChoice(const std::string& value);

/// The unit behind the value of such a member; empty where it has none, or where the value says it itself.
/// `length`: it is shown as the reader writes lengths, not in the document's millimetres.
[[nodiscard]] QString formUnit(const std::string& member, bool length, const Style& style);

} // namespace lapwright::model
