#include "database_watch.h"

#include <exception>
#include <utility>

namespace lapwright::model {

namespace {

/// How often other stations' work on the same database is looked for, milliseconds.
constexpr int lookEvery = 700;

} // namespace

DatabaseWatch::DatabaseWatch(const storage::Database& database, std::string address, QObject* parent)
    : QObject(parent), database_(database), address_(std::move(address))
{
    connect(&timer_, &QTimer::timeout, this, &DatabaseWatch::look);
    timer_.start(lookEvery);
    try {
        // A file does not tell; the timer does for both.
        (void)database_.listen([this] { look(); });
    } catch (const std::exception& failure) {
        lose(QString::fromUtf8(failure.what()));
    }
}

DatabaseWatch::~DatabaseWatch()
{
    if (prober_)
        prober_->wait();
}

void DatabaseWatch::catchUp()
{
    seen_ = database_.dataVersion();
}

void DatabaseWatch::look()
{
    if (!lost_.isEmpty())
        return probe();
    try {
        if (database_.dataVersion() != seen_)
            emit written();
    } catch (const std::exception& failure) {
        lose(QString::fromUtf8(failure.what()));
    }
}

void DatabaseWatch::lose(const QString& why)
{
    lost_ = why;
    emit lostChanged();
}

void DatabaseWatch::probe()
{
    if (prober_)
        return;
    answers_ = false;
    prober_.reset(QThread::create(
        [this] { answers_ = storage::Database::open(address_, storage::WhenMissing::Refuse).ok(); }));
    connect(prober_.get(), &QThread::finished, this, [this] {
        prober_->wait();
        prober_.release()->deleteLater();
        if (answers_)
            reconnect();
    });
    prober_->start();
}

void DatabaseWatch::reconnect()
{
    try {
        database_.reconnect();
    } catch (const std::exception& failure) {
        lost_ = QString::fromUtf8(failure.what());
        return;
    }
    lost_.clear();
    emit lostChanged();
    emit written();
}

} // namespace lapwright::model
