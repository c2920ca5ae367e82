#include "model/choice_list.h"

#include "look/row_changes.h"

#include <utility>

namespace lapwright::field {

int ChoiceList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant ChoiceList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Choice& choice = choices_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case KeyRole:
        return choice.key;
    case Qt::DisplayRole:
    case WordsRole:
        return choice.words;
    case DetailRole:
        return choice.detail;
    case ChosenRole:
        return choice.chosen;
    default:
        return {};
    }
}

QHash<int, QByteArray> ChoiceList::roleNames() const
{
    return {{KeyRole, "key"}, {WordsRole, "words"}, {DetailRole, "detail"}, {ChosenRole, "chosen"}};
}

void ChoiceList::show(std::vector<Choice> choices)
{
    const auto same = [](const Choice& left, const Choice& right) { return left.key == right.key; };
    const std::size_t before = choices_.size();
    const look::RowChanges changes = look::rowChanges(choices_, choices, same);
    if (changes.removed > 0) {
        beginRemoveRows({}, changes.first, changes.first + changes.removed - 1);
        choices_.erase(choices_.begin() + changes.first, choices_.begin() + changes.first + changes.removed);
        endRemoveRows();
    }
    if (changes.inserted > 0) {
        beginInsertRows({}, changes.first, changes.first + changes.inserted - 1);
        choices_.insert(choices_.begin() + changes.first, choices.begin() + changes.first,
                        choices.begin() + changes.first + changes.inserted);
        endInsertRows();
    }
    for (std::size_t row = 0; row < choices.size(); ++row)
        if (!(choices_[row] == choices[row])) {
            choices_[row] = std::move(choices[row]);
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
        }
    if (choices_.size() != before)
        emit countChanged();
}

} // namespace lapwright::field
