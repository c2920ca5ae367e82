#pragma once

#include "source_directory.h"

#include <QDir>
#include <QFile>

#include <string>
#include <utility>
#include <vector>

/// Documents the tests start from: those of tests/documents/cases and the shipped data.
namespace texts {

struct Text {
    std::string file;
    std::string text;
};

inline std::string read(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

inline std::string ofCase(const char* file)
{
    return read(QString::fromStdString(sourceDirectory() + "/tests/documents/cases/") + file);
}

/// Documents as version 0.1.0 wrote them.
inline std::string released()
{
    return sourceDirectory() + "/tests/documents/released/0.1.0";
}

inline std::vector<Text> ofFolder(const char* folder)
{
    std::vector<Text> all;
    const QDir directory(QString::fromStdString(sourceDirectory() + "/shared-core/") + folder);
    for (const QString& name : directory.entryList({"*.json"}, QDir::Files, QDir::Name))
        all.push_back({name.toStdString(), read(directory.filePath(name))});
    return all;
}

} // namespace texts
