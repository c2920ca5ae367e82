#include "model/run_list.h"

#include "model/row_changes.h"
#include "model/words.h"
#include "site/corner.h"
#include "site/editing.h"
#include "site/run_length.h"

namespace lapwright::field {

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
    const site::Run& run = chain_.runs[row];
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
    case SlopeRole:
        return (run.slope ? slopeWords(*run.slope) : QString()) +
               (run.otherSlope ? tr(" and ") + slopeWords(*run.otherSlope) : QString());
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
    return run < chain_.corners.size() ? cornerInWords(chain_.corners[run]) : QString();
}

QHash<int, QByteArray> RunList::roleNames() const
{
    return {{IdRole, "runId"},         {KindRole, "kind"},     {LengthRole, "lengthWords"},
            {SlopeRole, "slopeWords"}, {CornerRole, "corner"}, {SpreadRole, "spread"},
            {EnteredRole, "entered"},  {TrimsRole, "trims"}};
}

void RunList::show(const site::Chain& chain, const Style& style)
{
    const bool otherStyle = style.unit != style_.unit || style.inchDenominator != style_.inchDenominator;
    const site::Chain before = chain_;
    const RowChanges changes =
        rowChanges(before.runs, chain.runs,
                   [](const site::Run& left, const site::Run& right) { return left.id == right.id; });
    style_ = style;
    if (changes.removed > 0) {
        beginRemoveRows({}, changes.first, changes.first + changes.removed - 1);
        chain_.runs.erase(chain_.runs.begin() + changes.first,
                          chain_.runs.begin() + changes.first + changes.removed);
        endRemoveRows();
    }
    if (changes.inserted > 0) {
        beginInsertRows({}, changes.first, changes.first + changes.inserted - 1);
        chain_.runs.insert(chain_.runs.begin() + changes.first, chain.runs.begin() + changes.first,
                           chain.runs.begin() + changes.first + changes.inserted);
        endInsertRows();
    }
    const site::Chain meanwhile = std::exchange(chain_, chain);
    const auto corner = [](const site::Chain& one, std::size_t at) {
        return at < one.corners.size() ? std::optional(one.corners[at]) : std::nullopt;
    };
    for (std::size_t row = 0; row < chain_.runs.size(); ++row)
        if (otherStyle || !(meanwhile.runs[row] == chain_.runs[row]) ||
            !(corner(before, row) == corner(chain_, row)))
            emit dataChanged(index(static_cast<int>(row)), index(static_cast<int>(row)));
    if (before.runs.size() != chain_.runs.size())
        emit countChanged();
}

} // namespace lapwright::field
