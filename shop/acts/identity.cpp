#include "acts/identity.h"

#include <QUuid>

namespace lapwright::acts {

std::string newUuid()
{
    return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

} // namespace lapwright::acts
