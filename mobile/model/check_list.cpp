#include "model/check_list.h"

#include "model/guarded.h"
#include "model/words.h"
#include "site/editing.h"

#include <algorithm>

namespace lapwright::field {

CheckList::CheckList(TakeOff& takeOff, const Settings& settings, QObject* parent)
    : QAbstractListModel(parent), takeOff_(takeOff), settings_(settings)
{
    connect(&takeOff, &TakeOff::stale, this, &CheckList::forget);
}

int CheckList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(findings_.size());
}

QVariant CheckList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const rules::Finding& finding = findings_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case WeightRole:
        return static_cast<int>(finding.weight);
    case CodeRole:
        return exact(finding.code);
    case PlaceRole:
        return named(finding.place);
    case Qt::DisplayRole:
    case TextRole:
        return said(finding.statement, settings_.style());
    case RemedyRole:
        return said(finding.remedy, settings_.style());
    case ClauseRole:
        return finding.clause ? shown(finding.clause->number +
                                      (finding.clause->edition.empty() ? "" : ", " + finding.clause->edition))
                              : QString();
    case ReasonRole:
        return reasonOf(finding);
    case HasPlaceRole:
        return site::runNamed(takeOff_.editor().job(), finding.place).has_value();
    case PhotosRole:
        return photosOf(takeOff_.editor().job(), finding.code, finding.place);
    case HelpRole:
        return helpWords(finding.code);
    default:
        return {};
    }
}

QHash<int, QByteArray> CheckList::roleNames() const
{
    return {{WeightRole, "weight"},  {CodeRole, "code"},         {PlaceRole, "place"},
            {TextRole, "statement"}, {RemedyRole, "remedy"},     {ClauseRole, "clause"},
            {ReasonRole, "reason"},  {HasPlaceRole, "hasPlace"}, {PhotosRole, "photos"},
            {HelpRole, "help"}};
}

QString CheckList::reasonOf(const rules::Finding& finding) const
{
    const site::Acknowledgement* given = takeOff_.acknowledgementOf(finding);
    return given == nullptr ? QString() : shown(given->reason);
}

/// Rows stay until somebody looks again; what they come to is not known any more.
void CheckList::forget()
{
    blocking_ = openWarnings_ = 0;
    emit counted();
}

void CheckList::refresh()
{
    beginResetModel();
    findings_.clear();
    if (takeOff_.editor().isOpen())
        guarded(*this, [&] { findings_ = takeOff_.order().findings; });
    std::stable_sort(
        findings_.begin(), findings_.end(),
        [](const rules::Finding& left, const rules::Finding& right) { return left.weight > right.weight; });
    endResetModel();
    blocking_ = openWarnings_ = 0;
    bool stillThere = false;
    for (const rules::Finding& finding : findings_) {
        blocking_ += finding.weight == rules::Weight::Blocks ? 1 : 0;
        openWarnings_ += finding.weight == rules::Weight::Warns && reasonOf(finding).isEmpty() ? 1 : 0;
        stillThere |= inHand_ && finding.code == inHand_->code && finding.place == inHand_->place;
    }
    if (!stillThere)
        inHand_.reset();
    emit counted();
    emit inHandChanged();
}

void CheckList::take(int row)
{
    inHand_.reset();
    if (row >= 0 && row < rowCount() &&
        findings_[static_cast<std::size_t>(row)].weight == rules::Weight::Warns)
        inHand_ = findings_[static_cast<std::size_t>(row)];
    emit inHandChanged();
}

QString CheckList::statementInHand() const
{
    return inHand_ ? said(inHand_->statement, settings_.style()) : QString();
}

QString CheckList::reasonInHand() const
{
    return inHand_ ? reasonOf(*inHand_) : QString();
}

bool CheckList::acknowledge(const QString& reason)
{
    if (!inHand_)
        return false;
    const rules::Finding finding = *inHand_;
    const std::string given = kept(reason.simplified(), longestAddress);
    const QString words = given.empty() ? tr("reason taken back") : tr("warning acknowledged");
    const bool done = takeOff_.editor().act("finding.acknowledge", words, [&](site::Job& job) {
        const auto same = [&finding](const site::Acknowledgement& one) {
            return one.code == finding.code && one.place == finding.place;
        };
        job.acknowledgements.erase(
            std::remove_if(job.acknowledgements.begin(), job.acknowledgements.end(), same),
            job.acknowledgements.end());
        if (!given.empty())
            job.acknowledgements.push_back({finding.code, finding.place, given});
    });
    if (done) {
        inHand_.reset();
        refresh();
    }
    return done;
}

void CheckList::showPhotos(int row, PhotoList* photos) const
{
    if (row < 0 || row >= rowCount() || photos == nullptr)
        return;
    const rules::Finding& finding = findings_[static_cast<std::size_t>(row)];
    photos->showFinding(exact(finding.code), exact(finding.place));
}

bool CheckList::goTo(int row)
{
    if (row < 0 || row >= rowCount())
        return false;
    const auto place =
        site::runNamed(takeOff_.editor().job(), findings_[static_cast<std::size_t>(row)].place);
    if (place)
        takeOff_.editor().goTo(place->chain, place->run);
    return place.has_value();
}

} // namespace lapwright::field
