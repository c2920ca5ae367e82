#include "model/field_app.h"

#include "documents/envelope.h"
#include "documents/order.h"
#include "model/free_path.h"
#include "model/guarded.h"
#include "model/sample_house.h"
#include "model/words.h"
#include "parcel/photos.h"
#include "storage/document_file.h"
#include "store/safekeeping.h"

#include <utility>

namespace lapwright::field {

namespace {

/// Between two acts somebody thinks or walks.
constexpr int pauseMilliseconds = 1500;

} // namespace

FieldApp::FieldApp(const Tablet& tablet, QObject* parent)
    : QObject(parent), tablet_(tablet), settings_(tablet), jobs_(tablet), editor_(tablet, settings_),
      form_(tablet, editor_, settings_), takeOff_(tablet, editor_), trim_(takeOff_, settings_),
      photos_(tablet, editor_), check_(takeOff_, settings_), order_(takeOff_, settings_),
      delivery_(tablet, settings_)
{
    connect(&settings_, &Settings::failed, this, &FieldApp::refuse);
    connect(&jobs_, &JobList::failed, this, &FieldApp::refuse);
    connect(&editor_, &JobEditor::failed, this, &FieldApp::refuse);
    connect(&form_, &JobForm::failed, this, &FieldApp::refuse);
    connect(&trim_, &TrimModel::failed, this, &FieldApp::refuse);
    connect(&photos_, &PhotoList::failed, this, &FieldApp::refuse);
    connect(&check_, &CheckList::failed, this, &FieldApp::refuse);
    connect(&order_, &OrderModel::failed, this, &FieldApp::refuse);
    connect(&delivery_, &DeliveryCheck::failed, this, &FieldApp::refuse);
    connect(this, &FieldApp::failed, this, &FieldApp::refuse);
    connect(&editor_, &JobEditor::jobChanged, this, &FieldApp::forgetRefusal);
    connect(&delivery_, &DeliveryCheck::acted, this, &FieldApp::forgetRefusal);
    connect(&order_, &OrderModel::sent, this, &FieldApp::forgetRefusal);
    connect(&editor_, &JobEditor::jobChanged, &pause_, qOverload<>(&QTimer::start));
    connect(&delivery_, &DeliveryCheck::changed, &pause_, qOverload<>(&QTimer::start));
    connect(&pause_, &QTimer::timeout, this,
            [this] { guarded(*this, [this] { tablet_.database().tidy(); }); });
    pause_.setSingleShot(true);
    pause_.setInterval(pauseMilliseconds);
    const QStringList damage = tablet.database().damage();
    if (!damage.isEmpty())
        say(tr("The file of this tablet is damaged: restore a backup under Settings. (%1)")
                .arg(damage.front()));
}

QString FieldApp::backUp(const QString& folder)
{
    try {
        QString path = store::backUp(tablet_.database(), folder, fileStamp(tablet_.now()));
        settings_.setFolder(folder);
        forgetRefusal();
        return path;
    } catch (const store::StoreFailure& failure) {
        refuse(tr("No backup was made: %1").arg(QString::fromUtf8(failure.what())));
        return {};
    }
}

QString FieldApp::restore(const QString& path)
{
    QString before;
    try {
        before = store::restore(tablet_.database(), path, fileStamp(tablet_.now()));
    } catch (const store::StoreFailure& failure) {
        refuse(tr("Nothing was restored: %1").arg(QString::fromUtf8(failure.what())));
        return {};
    }
    guarded(*this, [&] {
        settings_.reload();
        editor_.closeJob();
        jobs_.forgetUndo();
        jobs_.refresh();
        delivery_.reload();
    });
    return before;
}

void FieldApp::sayAnew()
{
    editor_.sayAnew();
    jobs_.refresh();
    if (!delivery_.load().isEmpty())
        delivery_.refresh();
    if (editor_.isOpen()) {
        trim_.refresh();
        check_.refresh();
        order_.refresh();
    }
}

void FieldApp::say(const QString& message)
{
    message_ = message;
    refused_ = false;
    emit messageChanged();
}

void FieldApp::refuse(const QString& why)
{
    say(why);
    refused_ = true;
}

void FieldApp::forgetRefusal()
{
    if (refused_)
        seen();
}

void FieldApp::setViewfinder(const QUrl& viewfinder)
{
    if (viewfinder == viewfinder_)
        return;
    viewfinder_ = viewfinder;
    emit viewfinderChanged();
}

void FieldApp::setHandingOn(HandingOn way)
{
    handingOn_ = std::move(way);
    emit handingOnChanged();
}

void FieldApp::handOn(const QString& path)
{
    if (!handingOn_.act || !handingOn_.act(path))
        say(shares() ? tr("Nothing on this tablet takes the file: it lies at %1").arg(path)
                     : tr("The folder cannot be shown; the file lies at %1").arg(path));
}

void FieldApp::seen()
{
    say({});
}

bool FieldApp::takeInJob(documents::JobDocument job)
{
    return guarded(*this, [&] {
        const std::string text = documents::writeJob(job, documents::Layout::Canonical);
        const auto here = store::keptJob(tablet_.database(), job.value.id);
        if (here && here->document == text) {
            if (store::shelfOf(tablet_.database(), job.value.id) != store::Shelf::Open)
                jobs_.reopen(exact(job.value.id));
            return editor_.openJob(exact(job.value.id));
        }
        if (here) {
            job.value.id = tablet_.newId();
            job.value.name = kept(tr("%1 (from another tablet)").arg(shown(job.value.name)), longestName);
        }
        store::addJob(tablet_.database(), job.value, documents::writeJob(job, documents::Layout::Canonical),
                      {"job.import", kept(tr("taken in")), tablet_.now()});
        jobs_.refresh();
        return editor_.openJob(exact(job.value.id));
    });
}

bool FieldApp::takeInOrder(const parcel::Parcel& parcel)
{
    auto order = documents::readOrder(parcel.order);
    if (!order.ok()) {
        refuse(shown(order.errors().front().sentence()));
        return false;
    }
    for (const auto& [hash, bytes] : parcel.pictures) {
        const auto kept = tablet_.pictures().keep(QByteArray::fromStdString(bytes));
        if (!kept.ok()) {
            refuse(shown(kept.errors().front().sentence()));
            return false;
        }
    }
    const rules::Findings missing = parcel::missingPhotos(order->value.job, parcel);
    const bool taken = takeInJob({std::move(order->value.job), order->extras.inside["job"]});
    if (taken && !missing.empty())
        say(tr("%n photos did not come with this order, or were altered on the way.", "",
               static_cast<int>(missing.size())));
    return taken;
}

bool FieldApp::openFile(const QString& path)
{
    const auto bytes = storage::readDocument(kept(path));
    const auto parcel = bytes.ok() ? parcel::unpack(*bytes) : Result<parcel::Parcel>(bytes.errors());
    const auto format =
        parcel.ok() ? documents::formatOf(parcel->order) : Result<std::string>(parcel.errors());
    if (!format.ok()) {
        refuse(shown(format.errors().front().sentence()));
        return false;
    }
    openedDelivery_ = *format == documents::kinds::load.format || *format == documents::kinds::receipt.format;
    emit opened();
    if (*format == documents::kinds::load.format)
        return delivery_.openFile(path);
    if (*format == documents::kinds::receipt.format)
        return delivery_.mergeFile(path);
    if (*format == documents::kinds::order.format)
        return takeInOrder(*parcel);
    auto job = documents::readJob(parcel->order);
    if (!job.ok()) {
        refuse(shown(job.errors().front().sentence()));
        return false;
    }
    return takeInJob(*std::move(job));
}

bool FieldApp::openSample()
{
    site::Job sample = sampleHouse();
    sample.id = tablet_.newId();
    sample.name = kept(tr("Sample house"));
    sample.customer = kept(tr("Invented customer"));
    sample.address = kept(tr("1 Invented Lane"));
    const bool taken = takeInJob({std::move(sample), {}});
    if (taken)
        emit sampleOpened();
    return taken;
}

} // namespace lapwright::field
