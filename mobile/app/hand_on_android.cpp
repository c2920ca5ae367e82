// Compiled with Qt's Android kit only, which is not part of the tests (mobile/README.md).
#include <QtGlobal>
#ifdef Q_OS_ANDROID

#include "app/hand_on.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QJniObject>

namespace lapwright::field {

namespace {

/// A copy where SharedFiles.java lends files to other programs from; empty if there is no room.
QString lent(const QString& path, const QJniObject& activity)
{
    const QJniObject folder = QJniObject::callStaticObjectMethod(
        "org/lapwright/field/SharedFiles", "folder", "(Landroid/content/Context;)Ljava/lang/String;",
        activity.object());
    const QString copy = folder.toString() + "/" + QFileInfo(path).fileName();
    QFile::remove(copy);
    return QFile::copy(path, copy) ? copy : QString();
}

} // namespace

HandingOn handingOn()
{
    return {HandingOn::Way::Share, [](const QString& path) {
                const QJniObject activity(QNativeInterface::QAndroidApplication::context());
                const QString copy = lent(path, activity);
                if (copy.isEmpty())
                    return false;
                const bool zip = path.endsWith(".zip");
                return static_cast<bool>(QJniObject::callStaticMethod<jboolean>(
                    "org/lapwright/field/SharedFiles", "share",
                    "(Landroid/content/Context;Ljava/lang/String;Ljava/lang/String;)Z", activity.object(),
                    QJniObject::fromString(QFileInfo(copy).fileName()).object(),
                    QJniObject::fromString(zip ? "application/zip" : "application/json").object()));
            }};
}

} // namespace lapwright::field

#endif
