#pragma once

#include <QString>

#include <functional>

namespace lapwright::field {

/// How a file that was written goes on from here: what the system offers, and the act, true if it began.
struct HandingOn {
    enum class Way { None, ShowFolder, Share };

    Way way = Way::None;
    std::function<bool(const QString& path)> act;
};

} // namespace lapwright::field
