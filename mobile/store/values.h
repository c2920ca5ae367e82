#pragma once

#include <QByteArray>
#include <QString>
#include <QVariant>

#include <string>
#include <string_view>

/// How core values stand in the columns of the tablet's database; for the files of this folder.
namespace lapwright::store {

[[nodiscard]] inline QString text(std::string_view value)
{
    return QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size()));
}
[[nodiscard]] inline QByteArray bytes(std::string_view value)
{
    return {value.data(), static_cast<qsizetype>(value.size())};
}
[[nodiscard]] inline std::string string(const QVariant& value)
{
    return value.toString().toStdString();
}
[[nodiscard]] inline std::string raw(const QVariant& value)
{
    return value.toByteArray().toStdString();
}

} // namespace lapwright::store
