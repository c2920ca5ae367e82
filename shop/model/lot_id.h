#pragma once

#include "text.h"

#include <QString>

#include <string>

/// A lot at the folder is the pieces of one profile of one order: "order/profile".
namespace lapwright::model {

[[nodiscard]] inline QString lotId(const std::string& order, const std::string& profile)
{
    return exact(order + "/" + profile);
}

[[nodiscard]] inline std::string orderOf(const QString& lot)
{
    return lot.left(lot.indexOf(u'/')).toStdString();
}

[[nodiscard]] inline std::string profileOf(const QString& lot)
{
    return lot.mid(lot.indexOf(u'/') + 1).toStdString();
}

} // namespace lapwright::model
