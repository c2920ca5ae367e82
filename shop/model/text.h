#pragma once

#include "acts/words.h"

#include <QString>

#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::model {

[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return shown(lapwright::counted(count, what));
}

} // namespace lapwright::model
