#pragma once

#include <QString>
#include <QStringList>

namespace lapwright::look {

/// Every warning that Qt or QML says while this lives, passed on as well. QML errors leave the exit code at
/// 0, so somebody has to count.
class MessageCount {
public:
    MessageCount();
    MessageCount(const MessageCount&) = delete;
    MessageCount& operator=(const MessageCount&) = delete;
    MessageCount(MessageCount&&) = delete;
    MessageCount& operator=(MessageCount&&) = delete;
    ~MessageCount();

    [[nodiscard]] static QStringList warnings();
};

} // namespace lapwright::look
