#pragma once

#include <QString>

#include <string>

namespace lapwright {

/// "10 Dec 2026" of "2026-12-10", as the language that is spoken writes it; what is no day stays.
[[nodiscard]] QString dayWords(const std::string& day);

/// The same with the time of the clock on the wall, of a time that is kept in UTC.
[[nodiscard]] QString timeWords(const std::string& utc);

} // namespace lapwright
