#pragma once

// Pictures the tests make can be looked at: LAPWRIGHT_PICTURES=folder keeps them there as SVG.
#include "drawing/svg.h"

#include <QDir>
#include <QFile>
#include <QString>
#include <QXmlStreamReader>

#include <string>
#include <variant>
#include <vector>

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

/// Texts of the picture, one per line.
inline std::string textsOf(const DisplayList& list)
{
    std::string all;
    for (const Shape& shape : list.shapes)
        if (const auto* text = std::get_if<Text>(&shape))
            all += text->text + "\n";
    return all;
}

/// The faults in one line, empty if there are none.
inline QString report(const std::vector<std::string>& faults)
{
    QString text;
    for (const std::string& fault : faults)
        text += QString::fromStdString(fault) + "; ";
    return text;
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
