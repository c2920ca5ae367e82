#include "rows_model.h"

#include "schedule/label_text.h"
#include "text.h"

#include <QSet>
#include <QStringList>

#include <algorithm>
#include <utility>

namespace lapwright::model {

namespace {

QString textOf(const Row& row)
{
    return QStringList{row.title, row.detail, row.trailing, row.trailingDetail, row.also}.join(u' ');
}

bool hasAll(const QStringList& words, const Row& row)
{
    const QString text = textOf(row);
    return std::all_of(words.begin(), words.end(),
                       [&text](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

/// Lines of an order are named by it, or by it and a mark.
bool isOn(const schedule::LabelText& label, const Row& row)
{
    const QString order = exact(label.order), what = shown(label.mark.empty() ? label.bundle : label.mark);
    return row.id == order || (row.id.startsWith(order) && textOf(row).contains(what));
}

} // namespace

RowsModel::RowsModel(QObject* parent) : QAbstractListModel(parent) {}

int RowsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant RowsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = shown_[index.row()];
    switch (role) {
    case IdRole:
        return row.id;
    case TitleRole:
    case Qt::DisplayRole:
        return row.title;
    case DetailRole:
        return row.detail;
    case TrailingRole:
        return row.trailing;
    case TrailingDetailRole:
        return row.trailingDetail;
    case SignRole:
        return row.sign;
    case SwatchRole:
        return row.swatch;
    case WeightRole:
        return row.weight;
    case HelpRole:
        return row.help;
    default:
        return {};
    }
}

QHash<int, QByteArray> RowsModel::roleNames() const
{
    return {{IdRole, "rowId"},
            {TitleRole, "title"},
            {DetailRole, "detail"},
            {TrailingRole, "trailing"},
            {TrailingDetailRole, "trailingDetail"},
            {SignRole, "sign"},
            {SwatchRole, "swatch"},
            {WeightRole, "weight"},
            {HelpRole, "help"}};
}

void RowsModel::setRows(QList<Row> rows)
{
    all_ = std::move(rows);
    show(found());
    emit countChanged();
}

void RowsModel::setSearch(const QString& search)
{
    if (search == search_)
        return;
    search_ = search;
    // What is searched for is looked at from the first line on: there is no place to keep.
    beginResetModel();
    shown_ = found();
    endResetModel();
    emit searchChanged();
    emit countChanged();
}

int RowsModel::indexOf(const QString& id) const
{
    const auto at =
        std::find_if(shown_.begin(), shown_.end(), [&id](const Row& row) { return row.id == id; });
    return at == shown_.end() ? -1 : static_cast<int>(at - shown_.begin());
}

QString RowsModel::idAt(int index) const
{
    return index >= 0 && index < count() ? shown_[index].id : QString();
}

QList<Row> RowsModel::found() const
{
    const QStringList words = search_.split(u' ', Qt::SkipEmptyParts);
    if (words.isEmpty())
        return all_;
    const auto label = schedule::readLabelText(search_.toStdString());
    QList<Row> rows;
    for (const Row& row : all_)
        if (label.ok() ? isOn(*label, row) : hasAll(words, row))
            rows.append(row);
    return rows;
}

void RowsModel::show(const QList<Row>& rows)
{
    removeVanished(rows);
    QSet<QString> here;
    for (const Row& row : shown_)
        here.insert(row.id);
    for (int at = 0; at < rows.size(); ++at) {
        if (!here.contains(rows[at].id)) {
            int last = at;
            while (last + 1 < rows.size() && !here.contains(rows[last + 1].id))
                ++last;
            beginInsertRows({}, at, last);
            shown_.insert(at, last - at + 1, Row());
            std::copy(rows.begin() + at, rows.begin() + last + 1, shown_.begin() + at);
            endInsertRows();
            at = last;
            continue;
        }
        int now = at;
        while (shown_[now].id != rows[at].id)
            ++now;
        if (now != at) {
            beginMoveRows({}, now, now, {}, at);
            shown_.move(now, at);
            endMoveRows();
        }
        if (!(shown_[at] == rows[at])) {
            shown_[at] = rows[at];
            emit dataChanged(index(at), index(at));
        }
    }
}

void RowsModel::removeVanished(const QList<Row>& rows)
{
    QSet<QString> wanted;
    for (const Row& row : rows)
        wanted.insert(row.id);
    for (int last = count() - 1; last >= 0; --last) {
        if (wanted.contains(shown_[last].id))
            continue;
        int first = last;
        while (first > 0 && !wanted.contains(shown_[first - 1].id))
            --first;
        beginRemoveRows({}, first, last);
        shown_.remove(first, last - first + 1);
        endRemoveRows();
        last = first;
    }
}

} // namespace lapwright::model
