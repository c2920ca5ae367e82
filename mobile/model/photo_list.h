#pragma once

#include "model/job_editor.h"

#include <QAbstractListModel>
#include <QImage>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <string>
#include <vector>

namespace lapwright::field {

/// Photos of one run, or of what one finding says about a place. Each is a file beside the database, named by
/// its hash; the job keeps the hash, so that adding, retaking and removing are acts that undo takes back.
class PhotoList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(int count READ count NOTIFY shownChanged FINAL)
    /// What they are of, in words; empty while nothing is shown.
    Q_PROPERTY(QString of READ of NOTIFY shownChanged FINAL)

public:
    enum Role {
        UrlRole = Qt::UserRole + 1,
        MissingRole ///< the file is not on this tablet
    };
    Q_ENUM(Role)

    PhotoList(const Tablet& tablet, JobEditor& editor, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] QString of() const;

    Q_INVOKABLE void showRun(const QString& run);
    /// Of a finding by its code and place, as it says them itself.
    Q_INVOKABLE void showFinding(const QString& code, const QString& place);
    /// Keeps the picture of a file, made smaller (photo_file.h). False, with failed() said, if it cannot be
    /// read or kept.
    Q_INVOKABLE bool add(const QString& path);
    /// The picture of a file in the place of the one in `row`.
    Q_INVOKABLE bool retake(int row, const QString& path);
    /// Both with what the camera sees.
    Q_INVOKABLE bool addSeen(const QImage& seen);
    Q_INVOKABLE bool retakeSeen(int row, const QImage& seen);
    /// Takes it out of the job; the file stays, for undo and for jobs copied from this one.
    Q_INVOKABLE bool remove(int row);

signals:
    void shownChanged();
    void failed(const QString& why);

private:
    void show(std::string code, std::string place);
    void refresh();
    /// Makes the photo to keep: asked for once it is sure that it may be kept.
    using Source = std::function<Result<QByteArray>()>;
    bool addPhoto(const Source& photo);
    bool retakePhoto(int row, const Source& photo);
    /// Keeps the picture beside the database; its hash, empty if that failed.
    [[nodiscard]] std::string taken(const Result<QByteArray>& photo);
    /// Where the photo of a row stands among the job's.
    [[nodiscard]] std::size_t indexOf(int row) const { return shown_[static_cast<std::size_t>(row)]; }

    const Tablet& tablet_;
    JobEditor& editor_;
    std::string code_;
    std::string place_;
    std::vector<std::size_t> shown_;
};

/// As the place of a photo names a run.
[[nodiscard]] std::string photoPlace(const std::string& run);
/// How many photos a job has of a place; of the run itself where `code` is empty.
[[nodiscard]] int photosOf(const site::Job& job, const std::string& code, const std::string& place);

} // namespace lapwright::field
