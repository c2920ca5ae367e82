#pragma once

// Pictures the tests make can be looked at: LAPWRIGHT_PICTURES=folder keeps them there as SVG.
#include "drawing/svg.h"

#include <QDir>
#include <QFile>
#include <QString>
#include <QXmlStreamReader>

namespace lapwright::drawing {

inline void keepPicture(const DisplayList& list, const QString& name)
{
    const QString folder = qEnvironmentVariable("LAPWRIGHT_PICTURES");
    if (folder.isEmpty())
        return;
    QDir().mkpath(folder);
    QFile file(QDir(folder).filePath(name + ".svg"));
    if (file.open(QIODevice::WriteOnly))
        file.write(QByteArray::fromStdString(toSvg(list)));
}

/// Empty if the text is a well-formed XML document, else what is wrong with it.
inline QString xmlError(const std::string& text)
{
    QXmlStreamReader reader(QByteArray::fromStdString(text));
    while (!reader.atEnd())
        reader.readNext();
    return reader.hasError() ? reader.errorString() : QString();
}

} // namespace lapwright::drawing
