#include "search_options.h"

#include <chrono>

namespace lapwright::command {

QCommandLineOption timeOption()
{
    return {"time", "Seconds to look for a better plan, for each problem.", "S", "5"};
}

Result<cutting::Settings> searchSettings(const QCommandLineParser& options)
{
    constexpr double longest = 86'400.0;
    bool isNumber = false;
    const double seconds = options.value("time").toDouble(&isNumber);
    if (!isNumber || !(seconds >= 0.0 && seconds <= longest))
        return Error{"--time", options.value("time").toStdString(), "seconds from 0 to 86400"};
    cutting::Settings settings;
    settings.timeLimit = std::chrono::milliseconds(static_cast<std::int64_t>(seconds * 1000.0));
    return settings;
}

} // namespace lapwright::command
