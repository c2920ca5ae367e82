#include "look/row_changes.h"
#include "model/trim_model.h"
#include "model/words.h"

#include <utility>

namespace lapwright::field {

int TrimSizes::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(sizes_.size());
}

QVariant TrimSizes::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Size& size = sizes_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case NameRole:
        return shown(size.name);
    case Qt::DisplayRole:
    case LabelRole:
        return size.label;
    case ValueRole:
        return size.value;
    case LimitsRole:
        return size.limits;
    case KindRole:
        return static_cast<int>(size.kind);
    case ByHandRole:
        return size.byHand;
    case MissingRole:
        return size.missing;
    default:
        return {};
    }
}

QHash<int, QByteArray> TrimSizes::roleNames() const
{
    return {{NameRole, "name"}, {LabelRole, "label"},   {ValueRole, "value"},    {LimitsRole, "limits"},
            {KindRole, "kind"}, {ByHandRole, "byHand"}, {MissingRole, "missing"}};
}

void TrimSizes::show(std::vector<Size> sizes)
{
    const look::RowChanges changes = look::rowChanges(sizes_, sizes, [](const Size& left, const Size& right) {
        return left.name == right.name && left.kind == right.kind;
    });
    if (changes.removed > 0 || changes.inserted > 0) {
        beginResetModel();
        sizes_ = std::move(sizes);
        endResetModel();
        return;
    }
    for (std::size_t row = 0; row < sizes.size(); ++row)
        if (!(sizes_[row] == sizes[row])) {
            sizes_[row] = std::move(sizes[row]);
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
        }
}

} // namespace lapwright::field
