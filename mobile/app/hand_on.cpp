#include <QtGlobal>
#ifndef Q_OS_ANDROID

#include "app/hand_on.h"

#include <QDesktopServices>
#include <QFileInfo>
#include <QUrl>

namespace lapwright::field {

HandingOn handingOn()
{
    return {HandingOn::Way::ShowFolder, [](const QString& path) {
                return QDesktopServices::openUrl(QUrl::fromLocalFile(QFileInfo(path).absolutePath()));
            }};
}

} // namespace lapwright::field

#endif
