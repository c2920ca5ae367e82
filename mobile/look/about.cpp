#include "about.h"

#include "speech/spoken.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

namespace lapwright::look {

QString version()
{
    return QStringLiteral(LAPWRIGHT_VERSION);
}

QVariantList About::libraries() const
{
    QFile file(QStringLiteral(":/lapwright/about/made_with.json"));
    return file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).array().toVariantList()
                                          : QVariantList();
}

QString About::used(const QString& use) const
{
    return QString::fromStdString(spoken(use.toStdString()));
}

} // namespace lapwright::look
