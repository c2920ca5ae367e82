#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lapwright::field {

/// One folder of the tablet, to choose a file in or a place to write to: folders first, then the files whose
/// names end as wanted.
class FolderList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString path READ path WRITE setPath NOTIFY changed FINAL)
    /// Endings of files shown: ".json", ".zip". None: only folders.
    Q_PROPERTY(QStringList endings READ endings WRITE setEndings NOTIFY changed FINAL)
    Q_PROPERTY(bool canGoUp READ canGoUp NOTIFY changed FINAL)
    /// The program may write here.
    Q_PROPERTY(bool writable READ writable NOTIFY changed FINAL)

public:
    enum Role { NameRole = Qt::UserRole + 1, PathRole, IsFolderRole, DetailRole };
    Q_ENUM(Role)

    explicit FolderList(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString path() const { return path_; }
    void setPath(const QString& path);
    [[nodiscard]] QStringList endings() const { return endings_; }
    void setEndings(const QStringList& endings);
    [[nodiscard]] bool canGoUp() const;
    [[nodiscard]] bool writable() const;

    Q_INVOKABLE void up();
    Q_INVOKABLE void refresh();

signals:
    void changed();

private:
    struct Row {
        QString name;
        QString path;
        bool isFolder = false;
        QString detail;
    };

    QString path_;
    QStringList endings_;
    std::vector<Row> rows_;
};

} // namespace lapwright::field
