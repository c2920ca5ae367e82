#pragma once

#include "model/tablet.h"
#include "store/jobs.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace lapwright::field {

/// The jobs on this tablet, newest change first, read page by page as a list asks for them.
class JobList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY filterChanged FINAL)
    Q_PROPERTY(Shown shown READ shown WRITE setShown NOTIFY filterChanged FINAL)
    /// How many jobs the filter finds, read or not.
    Q_PROPERTY(int total READ total NOTIFY totalChanged FINAL)
    /// What can be taken back with undo(); empty if nothing.
    Q_PROPERTY(QString undoWords READ undoWords NOTIFY undoChanged FINAL)

public:
    enum class Shown { Open, Measuring, Sent, Changed, Archived, Deleted };
    Q_ENUM(Shown)
    enum Role {
        IdRole = Qt::UserRole + 1,
        NameRole,
        CustomerRole,
        AddressRole,
        WantedByRole,
        RunsRole,
        StateRole,
        StateWordsRole,
        ChangedRole
    };
    Q_ENUM(Role)

    explicit JobList(const Tablet& tablet, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

    [[nodiscard]] QString words() const { return filter_.words; }
    void setWords(const QString& words);
    [[nodiscard]] Shown shown() const { return shown_; }
    void setShown(Shown shown);
    [[nodiscard]] int total() const { return total_; }
    [[nodiscard]] QString undoWords() const;

    /// Reads everything again; after a change made elsewhere.
    Q_INVOKABLE void refresh();
    /// A copy of the job under a new id, named "… (copy)"; its id, empty if it could not be made.
    Q_INVOKABLE QString duplicate(const QString& id);
    Q_INVOKABLE void archive(const QString& id);
    Q_INVOKABLE void remove(const QString& id);
    /// Back among the open jobs.
    Q_INVOKABLE void reopen(const QString& id);
    /// Takes the last archive, delete or reopen of this session back.
    Q_INVOKABLE void undo();
    /// Nothing is offered to be taken back any more.
    Q_INVOKABLE void forgetUndo();

signals:
    void filterChanged();
    void totalChanged();
    void undoChanged();
    void failed(const QString& why);

private:
    struct Move {
        std::string id;
        store::Shelf from;
        QString words;
    };
    /// `words` have a place for the job's name.
    void move(const QString& id, store::Shelf to, const char* kind, const QString& words);
    /// The row of a job that moved to another shelf.
    void takeOut(const std::string& id, store::Shelf to);

    const Tablet& tablet_;
    store::JobFilter filter_;
    Shown shown_ = Shown::Open;
    std::vector<store::JobLine> lines_;
    int total_ = 0;
    std::optional<Move> lastMove_;
};

} // namespace lapwright::field
