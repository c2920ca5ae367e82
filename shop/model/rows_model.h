#pragma once

#include <QAbstractListModel>
#include <QColor>
#include <QList>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace lapwright::model {

/// One line of a list on a screen.
struct Row {
    QString id; ///< unique in its list
    QString title;
    QString detail;
    QString trailing;
    QString trailingDetail;
    QString sign;                    ///< name of an icon; may be empty
    QColor swatch = Qt::transparent; ///< the metal's real colour
    int weight = -1;                 ///< rules::Weight of a finding; -1: not a finding
    QString also = {};               ///< not shown, but searched
    QString help = {};               ///< of a finding: why it matters and what to do

    friend bool operator==(const Row&, const Row&) = default;
};

/// A list of lines. Setting new lines says exactly what changed, so that a list on the screen keeps its place
/// and its choice. A search leaves the lines that have every word of it, in any of their texts; what a
/// scanner reads off a label finds the lines of its order and mark.
class RowsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by its desk")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
    /// Lines there are without the search.
    Q_PROPERTY(int total READ total NOTIFY countChanged FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged FINAL)

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        TitleRole,
        DetailRole,
        TrailingRole,
        TrailingDetailRole,
        SignRole,
        SwatchRole,
        WeightRole,
        HelpRole
    };
    Q_ENUM(Role)

    explicit RowsModel(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    void setRows(QList<Row> rows);
    [[nodiscard]] const QList<Row>& rows() const { return shown_; }

    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] int total() const { return static_cast<int>(all_.size()); }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& search);

    /// -1 if there is no such line in sight.
    Q_INVOKABLE [[nodiscard]] int indexOf(const QString& id) const;
    /// Empty beyond the ends.
    Q_INVOKABLE [[nodiscard]] QString idAt(int index) const;

signals:
    void countChanged();
    void searchChanged();

private:
    [[nodiscard]] QList<Row> found() const;
    void show(const QList<Row>& rows);
    void removeVanished(const QList<Row>& rows);

    QList<Row> all_;
    QList<Row> shown_;
    QString search_;
};

} // namespace lapwright::model
