#include "plan_worker.h"

#include "storage/database.h"

#include <QElapsedTimer>

#include <exception>
#include <utility>

namespace lapwright::model {

namespace {

/// The least time between two reports, milliseconds.
constexpr qint64 reportEvery = 100;

} // namespace

PlanWorker::PlanWorker(QObject* parent) : QObject(parent) {}

PlanWorker::~PlanWorker()
{
    stop();
    if (thread_.joinable())
        thread_.join();
}

void PlanWorker::start(const std::string& databasePath, acts::PlanRequest request,
                       const storage::Stamp& stamp)
{
    if (thread_.joinable())
        thread_.join();
    stopping_ = false;
    running_ = true;
    thread_ = std::thread([this, databasePath, request = std::move(request), stamp]() mutable {
        Outcome outcome = plan(databasePath, std::move(request), stamp);
        QMetaObject::invokeMethod(
            this,
            [this, outcome = std::move(outcome)]() mutable {
                outcome_ = std::move(outcome);
                running_ = false;
                emit finished();
            },
            Qt::QueuedConnection);
    });
}

void PlanWorker::stop()
{
    stopping_ = true;
}

PlanWorker::Outcome PlanWorker::plan(const std::string& databasePath, acts::PlanRequest request,
                                     const storage::Stamp& stamp)
{
    QElapsedTimer sinceReport;
    sinceReport.start();
    request.progress = [this, sinceReport](const cutting::Progress& progress) mutable {
        if (sinceReport.elapsed() >= reportEvery) {
            sinceReport.restart();
            const QString phase =
                QString::fromUtf8(progress.phase.data(), static_cast<qsizetype>(progress.phase.size()));
            QMetaObject::invokeMethod(
                this,
                [this, phase, value = progress.value, bound = progress.bound] {
                    emit progressed(phase, value, bound);
                },
                Qt::QueuedConnection);
        }
        return !stopping_.load();
    };
    try {
        const auto database = storage::Database::open(databasePath);
        if (!database.ok())
            return database.errors();
        return acts::planAll(*database, request, stamp);
    } catch (const std::exception& failure) {
        return Error{"", failure.what(), "a database that can be read and written"};
    }
}

} // namespace lapwright::model
