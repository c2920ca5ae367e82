#pragma once

#include "measure/result.h"

#include <QByteArray>
#include <QString>

#include <string>
#include <vector>

/// Photos as files named by their SHA-256, in a folder beside the database. A picture is written once and
/// never changed; the same picture twice is one file.
namespace lapwright::store {

class PictureFolder {
public:
    /// "FILE.pictures" beside the database file; made when the first picture comes.
    explicit PictureFolder(const QString& databasePath) : folder_(databasePath + ".pictures") {}

    /// Writes the bytes and flushes them to the disk; their hash. Errors: the folder cannot be written.
    [[nodiscard]] Result<std::string> keep(const QByteArray& bytes) const;
    /// The bytes of a picture. Errors: missing, or no longer what its name says.
    [[nodiscard]] Result<QByteArray> read(const std::string& hash) const;
    [[nodiscard]] bool has(const std::string& hash) const;
    [[nodiscard]] QString pathOf(const std::string& hash) const;
    /// Hashes of all pictures here.
    [[nodiscard]] std::vector<std::string> all() const;
    [[nodiscard]] const QString& folder() const { return folder_; }

private:
    QString folder_;
};

} // namespace lapwright::store
