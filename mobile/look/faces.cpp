#include "faces.h"

#include "paint/face.h"

#include <QFile>
#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace lapwright::look {

void prepareFaces()
{
    QGuiApplication::setFont(QFont(interfaceFamily()));
}

QString interfaceFamily()
{
    static const QString family = [] {
        for (const char* file :
             {":/lapwright/faces/ClearSans-Regular.ttf", ":/lapwright/faces/ClearSans-Bold.ttf"}) {
            if (QFile::exists(file))
                QFontDatabase::addApplicationFont(file);
        }
        const QString wanted = QStringLiteral("Clear Sans");
        return QFontDatabase::hasFamily(wanted) ? wanted : paint::pictureFace(false).families().constFirst();
    }();
    return family;
}

} // namespace lapwright::look
