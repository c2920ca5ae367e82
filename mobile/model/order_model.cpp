#include "model/order_model.h"

#include "documents/compare.h"
#include "documents/signature.h"
#include "model/free_path.h"
#include "model/guarded.h"
#include "model/words.h"
#include "parcel/parcel.h"
#include "pieces/why.h"
#include "speech/spoken.h"
#include "storage/document_file.h"
#include "store/signing_key.h"

#include <algorithm>
#include <utility>

namespace lapwright::field {

namespace {

/// A name that every file system takes, of letters and digits.
QString slug(const QString& name)
{
    QString made;
    for (const QChar character : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const bool plain = character.unicode() < 128 && character.isLetterOrNumber();
        if (plain)
            made += character;
        else if (!made.isEmpty() && !made.endsWith('-') && !character.isMark())
            made += '-';
    }
    while (made.endsWith('-'))
        made.chop(1);
    return made.isEmpty() ? QString("job") : made.left(60);
}

/// The same revision of the same order, sent before: as a plain document or with photos.
bool holdsRevision(const std::string& bytes, const pieces::Order& order)
{
    const auto parcel = parcel::unpack(bytes);
    const auto there =
        parcel.ok() ? documents::readOrder(parcel->order) : Result<documents::OrderDocument>(parcel.errors());
    return there.ok() && there->value.id == order.id && there->value.revision == order.revision;
}

} // namespace

OrderModel::OrderModel(TakeOff& takeOff, Settings& settings, QObject* parent)
    : QObject(parent), takeOff_(takeOff), settings_(settings)
{
    connect(&takeOff, &TakeOff::stale, this, [this] {
        // Of another order than the one that was written, or of another job.
        writtenTo_.clear();
        emit changed();
    });
}

QString OrderModel::mass() const
{
    return shown(writeMass(totals_.kilograms, settings_.style()));
}

int OrderModel::policy() const
{
    return static_cast<int>(takeOff_.editor().job().policy);
}

void OrderModel::setPolicy(int policy)
{
    if (policy < 0 || policy > static_cast<int>(site::PiecePolicy::StockLengths) || policy == this->policy())
        return;
    takeOff_.editor().act("order.policy", tr("how runs are divided"),
                          [&](site::Job& job) { job.policy = static_cast<site::PiecePolicy>(policy); });
    refresh();
}

int OrderModel::spares() const
{
    return static_cast<int>(takeOff_.editor().job().spares);
}

void OrderModel::setSpares(int spares)
{
    if (spares < 0 || spares > 99 || spares == this->spares())
        return;
    takeOff_.editor().act("order.spares", tr("spare pieces"), [&](site::Job& job) { job.spares = spares; });
    refresh();
}

int OrderModel::photos() const
{
    return static_cast<int>(takeOff_.editor().job().photos.size());
}

int OrderModel::photosMissing() const
{
    const auto& photos = takeOff_.editor().job().photos;
    return static_cast<int>(std::count_if(photos.begin(), photos.end(), [this](const site::Photo& photo) {
        return !takeOff_.tablet().pictures().has(photo.sha256);
    }));
}

QString OrderModel::stem() const
{
    return QString("%1-r%2").arg(slug(takeOff_.editor().name())).arg(revision_);
}

QString OrderModel::ending() const
{
    return photos() > 0 ? ".order.zip" : ".order.json";
}

QString OrderModel::fileName() const
{
    return stem() + ending();
}

void OrderModel::refresh()
{
    if (takeOff_.editor().isOpen())
        guarded(*this, [&] { show(takeOff_.order()); });
}

void OrderModel::show(const pieces::Order& order)
{
    const Style style = settings_.style();
    pieces_.show(order, style);
    profiles_.show(order, takeOff_.tablet().catalogue(), style);
    totals_ = pieces::totalsOf(order);
    revision_ = static_cast<int>(order.revision);
    sent_ = takeOff_.isSent();
    blocking_ = openWarnings_ = 0;
    for (const rules::Finding& finding : order.findings) {
        const bool open =
            finding.weight == rules::Weight::Warns && takeOff_.acknowledgementOf(finding) == nullptr;
        blocking_ += finding.weight == rules::Weight::Blocks ? 1 : 0;
        openWarnings_ += open ? 1 : 0;
    }
    showAccessories(order);
    std::vector<Choice> changes;
    if (takeOff_.sent() && !sent_)
        for (const rules::Finding& change : documents::compareRevisions(takeOff_.sent()->value, order))
            changes.push_back(
                {QString::number(changes.size()), named(change.place), said(change.statement, style), false});
    changes_.show(std::move(changes));
    emit changed();
}

void OrderModel::showAccessories(const pieces::Order& order)
{
    std::vector<Choice> accessories;
    for (const pieces::AccessoryTotal& total : pieces::accessoryTotals(order))
        accessories.push_back({exact(total.name), named(total.name),
                               total.length > Length() ? shown(write(total.length, settings_.style()))
                                                       : QString::number(total.count),
                               false});
    accessories_.show(std::move(accessories));
}

QString OrderModel::why(int row)
{
    return guarded(*this, [&]() -> QString {
        const auto derivation = pieces::explain(takeOff_.order(), pieces_.firstMark(row));
        return derivation ? shown(pieces::writeDerivation(spoken(*derivation), settings_.style()))
                          : QString();
    });
}

bool OrderModel::send(const QString& folder)
{
    refresh();
    if (blocking_ > 0) {
        emit failed(tr("%n findings block this order; resolve them first.", "", blocking_));
        return false;
    }
    QString path;
    const bool kept = guarded(*this, [&] {
        path = freePath(folder, stem(), ending(),
                        [this](const std::string& bytes) { return holdsRevision(bytes, takeOff_.order()); });
        return writeTo(path);
    });
    if (kept) {
        emit sent();
        settings_.setFolder(folder);
        takeOff_.forget();
        writtenTo_ = path;
        refresh();
    }
    return kept;
}

/// A photo that is no longer on this tablet stays away; the screen says so before, and the shop after.
Result<std::string> OrderModel::packed(const documents::OrderDocument& order) const
{
    auto signedText = documents::signDocument(documents::writeOrder(order),
                                              store::signingKey(takeOff_.tablet().database()));
    if (!signedText.ok())
        return signedText.errors();
    std::string text = *std::move(signedText);
    if (order.value.job.photos.empty())
        return text;
    parcel::Parcel parcel{std::move(text), {}};
    for (const site::Photo& photo : order.value.job.photos)
        if (const auto bytes = takeOff_.tablet().pictures().read(photo.sha256); bytes.ok())
            parcel.pictures.emplace(photo.sha256, bytes->toStdString());
    return parcel::pack(parcel);
}

bool OrderModel::writeTo(const QString& path)
{
    const documents::OrderDocument& order = takeOff_.document();
    const auto bytes = packed(order);
    const auto written =
        bytes.ok() ? storage::writeDocument(kept(path), *bytes) : Result<bool>(bytes.errors());
    if (!written.ok()) {
        emit failed(tr("The order was not written: %1").arg(shown(written.errors().front().sentence())));
        return false;
    }
    store::keepSent(takeOff_.tablet().database(), kept(takeOff_.editor().jobId()),
                    {order.value.revision, documents::revisionHash(order), takeOff_.tablet().now(),
                     documents::writeOrder(order, documents::Layout::Canonical)});
    return true;
}

} // namespace lapwright::field
