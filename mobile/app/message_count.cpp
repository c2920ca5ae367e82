#include "app/message_count.h"

#include <QMutex>
#include <QMutexLocker>
#include <QtGlobal>

namespace lapwright::field {

namespace {

QMutex guard;
QStringList heard;
QtMessageHandler passedOn = nullptr;

void hear(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    if (type == QtWarningMsg || type == QtCriticalMsg || type == QtFatalMsg) {
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

} // namespace lapwright::field
