#include "model/order_model.h"
#include "model/words.h"

#include <algorithm>

namespace lapwright::field {

int PieceList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant PieceList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const pieces::PieceLine& line = row.line;
    switch (role) {
    case Qt::DisplayRole:
    case MarksRole:
        return line.firstMark == line.lastMark
                   ? field::shown(line.firstMark)
                   : tr("%1 to %2").arg(field::shown(line.firstMark), field::shown(line.lastMark));
    case FirstMarkRole:
        return field::shown(line.firstMark);
    case RunRole:
        return field::shown(line.run);
    case ProfileRole:
        return row.profile;
    case TrimRole:
        return row.trim;
    case LengthRole:
        return field::shown(write(line.length, style_));
    case CountRole:
        return static_cast<int>(line.count);
    case MassRole:
        return field::shown(writeMass(line.kilograms, style_));
    case HandRole:
        return line.hand == pieces::Hand::Left    ? tr("left")
               : line.hand == pieces::Hand::Right ? tr("right")
                                                  : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> PieceList::roleNames() const
{
    return {{MarksRole, "marks"},     {FirstMarkRole, "firstMark"}, {RunRole, "run"},
            {ProfileRole, "profile"}, {TrimRole, "trimName"},       {LengthRole, "length"},
            {CountRole, "pieces"},    {MassRole, "mass"},           {HandRole, "hand"}};
}

std::string PieceList::firstMark(int row) const
{
    return row < 0 || row >= rowCount() ? std::string() : rows_[static_cast<std::size_t>(row)].line.firstMark;
}

void PieceList::show(const pieces::Order& order, const Style& style)
{
    beginResetModel();
    style_ = style;
    rows_.clear();
    for (pieces::PieceLine& line : pieces::pieceLines(order)) {
        const pieces::OrderedProfile& profile = order.profiles[line.profile];
        const QString name =
            line.spare ? tr("%1, spare").arg(named(profile.profile.name)) : named(profile.profile.name);
        rows_.push_back({std::move(line), field::shown(profile.id), name});
    }
    std::stable_sort(rows_.begin(), rows_.end(), [](const Row& left, const Row& right) {
        return left.line.profile < right.line.profile;
    });
    endResetModel();
}

} // namespace lapwright::field
