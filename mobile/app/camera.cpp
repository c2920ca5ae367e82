#include "app/camera.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace lapwright::field {

namespace {

/// A camera of Linux is a device file. Other systems are asked by CameraView.qml itself.
bool mayHaveCamera()
{
#if defined(Q_OS_LINUX) && !defined(Q_OS_ANDROID)
    return !QDir("/dev").entryList({"video*"}, QDir::System).isEmpty();
#else
    return true;
#endif
}

} // namespace

QUrl cameraView(const QQmlEngine& engine)
{
    const QStringList folders = engine.importPathList();
    const bool installed = std::any_of(folders.begin(), folders.end(), [](const QString& folder) {
        const QString path = folder.startsWith("qrc:") ? folder.mid(3) : folder;
        return QFile::exists(path + "/QtMultimedia/qmldir");
    });
    return installed && mayHaveCamera() ? QUrl("qrc:/qt/qml/Lapwright/Field/CameraView.qml") : QUrl();
}

} // namespace lapwright::field
