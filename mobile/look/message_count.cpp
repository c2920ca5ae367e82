#include "message_count.h"

#include <QMutex>
#include <QMutexLocker>
#include <QtGlobal>

namespace lapwright::look {

namespace {

QMutex guard;
QStringList heard;
QtMessageHandler passedOn = nullptr;

void hear(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // A machine without a session says so, which is no fault of a screen.
    const bool ofTheSession = message.contains(QLatin1String("XDG_RUNTIME_DIR"));
    if (!ofTheSession && (type == QtWarningMsg || type == QtCriticalMsg || type == QtFatalMsg)) {
        const QMutexLocker lock(&guard);
        heard << message;
    }
    if (passedOn != nullptr)
        passedOn(type, context, message);
}

} // namespace

MessageCount::MessageCount()
{
    heard.clear();
    passedOn = qInstallMessageHandler(hear);
}

MessageCount::~MessageCount()
{
    qInstallMessageHandler(passedOn);
    passedOn = nullptr;
}

QStringList MessageCount::warnings()
{
    const QMutexLocker lock(&guard);
    return heard;
}

} // namespace lapwright::look
