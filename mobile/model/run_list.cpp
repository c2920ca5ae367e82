#include "model/run_list.h"

#include "look/row_changes.h"
#include "model/words.h"
#include "site/corner.h"
#include "site/editing.h"
#include "site/run_length.h"

#include <utility>

namespace lapwright::field {

namespace {

/// A chain whose runs have gone before others come in their place.
std::shared_ptr<const site::Chain> without(const site::Chain& chain, const look::RowChanges& changes)
{
    auto rest = std::make_shared<site::Chain>(chain);
    rest->runs.erase(rest->runs.begin() + changes.first,
                     rest->runs.begin() + changes.first + changes.removed);
    return rest;
}

} // namespace

QString cornerInWords(const site::Corner& corner)
{
    if (std::holds_alternative<site::SquareOutside>(corner))
        return RunList::tr("square, outside");
    if (std::holds_alternative<site::SquareInside>(corner))
        return RunList::tr("square, inside");
    const auto interior = site::interiorAngle(corner);
    return interior ? shown(write(*interior)) : RunList::tr("cannot be");
}

int RunList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant RunList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    const site::Run& run = chain_->runs[row];
    switch (role) {
    case Qt::DisplayRole:
    case IdRole:
        return shown(run.id);
    case KindRole:
        return kindWords(run.kind);
    case LengthRole: {
        const auto length = site::effectiveLength(run);
        return length ? shown(write(length->value, style_)) : tr("no length");
    }
    case CornerRole:
        return cornerWords(row);
    case SpreadRole: {
        const auto apart = site::spread(run);
        return apart ? tr("%n measures", "", static_cast<int>(run.lengths.size())) + ", " +
                           tr("%1 apart").arg(shown(write(*apart, style_)))
                     : QString();
    }
    case EnteredRole:
        return run.counts < run.lengths.size() ? shown(run.lengths[run.counts].entered) : QString();
    case TrimsRole:
        return static_cast<int>(run.trims.size());
    default:
        return {};
    }
}

QString RunList::cornerWords(std::size_t run) const
{
    return run < chain_->corners.size() ? cornerInWords(chain_->corners[run]) : QString();
}

QHash<int, QByteArray> RunList::roleNames() const
{
    return {{IdRole, "runId"},      {KindRole, "kind"},     {LengthRole, "lengthWords"},
            {CornerRole, "corner"}, {SpreadRole, "spread"}, {EnteredRole, "entered"},
            {TrimsRole, "trims"}};
}

void RunList::show(std::shared_ptr<const site::Chain> chain, const Style& style)
{
    const bool otherStyle = !sameStyle(style, style_);
    style_ = style;
    if (chain == chain_ && !otherStyle)
        return;
    static const auto none = std::make_shared<const site::Chain>();
    const std::shared_ptr<const site::Chain> before = chain_ ? chain_ : none;
    if (!chain)
        chain = none;
    const look::RowChanges changes =
        look::rowChanges(before->runs, chain->runs,
                         [](const site::Run& left, const site::Run& right) { return left.id == right.id; });
    if (changes.removed > 0) {
        beginRemoveRows({}, changes.first, changes.first + changes.removed - 1);
        chain_ = changes.inserted > 0 ? without(*before, changes) : chain;
        endRemoveRows();
    }
    if (changes.inserted > 0) {
        beginInsertRows({}, changes.first, changes.first + changes.inserted - 1);
        chain_ = chain;
        endInsertRows();
    }
    chain_ = std::move(chain);
    sayChanges(*before, changes, otherStyle);
    if (before->runs.size() != chain_->runs.size())
        emit countChanged();
}

/// Says which of the rows that stayed read otherwise now.
void RunList::sayChanges(const site::Chain& before, const look::RowChanges& changes, bool all)
{
    const auto corner = [](const site::Chain& chain, std::size_t at) {
        return at < chain.corners.size() ? &chain.corners[at] : nullptr;
    };
    const auto alike = [](const site::Corner* left, const site::Corner* right) {
        return left == nullptr || right == nullptr ? left == right : *left == *right;
    };
    const auto first = static_cast<std::size_t>(changes.first);
    const auto removed = static_cast<std::size_t>(changes.removed);
    const auto inserted = static_cast<std::size_t>(changes.inserted);
    for (std::size_t row = 0; row < chain_->runs.size(); ++row) {
        if (row >= first && row < first + inserted)
            continue;
        const std::size_t old = row < first ? row : row - inserted + removed;
        if (all || !(before.runs[old] == chain_->runs[row]) ||
            !alike(corner(before, old), corner(*chain_, row)))
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
    }
}

} // namespace lapwright::field
