#pragma once

#include "acts/words.h"
#include "measure/result.h"

#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::model {

[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// One below the other.
[[nodiscard]] inline QString shown(const std::vector<Error>& errors)
{
    QStringList lines;
    for (const Error& error : errors)
        lines.append(shown(error.sentence()));
    return lines.join(u'\n');
}

/// "1 piece", "3 pieces".
[[nodiscard]] inline QString counted(std::int64_t count, const char* what)
{
    return shown(lapwright::counted(count, what));
}

} // namespace lapwright::model
