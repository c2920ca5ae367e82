#include "plan_worker.h"

#include "storage/database.h"

#include <QElapsedTimer>

#include <chrono>
#include <exception>
#include <string_view>
#include <utility>

namespace lapwright::model {

namespace {

/// The least time between two reports, milliseconds.
constexpr qint64 reportEvery = 100;

/// A schedule is looked for so long at most; it cannot be stopped sooner.
constexpr std::chrono::seconds longestScheduling{10};

} // namespace

PlanWorker::PlanWorker(QObject* parent) : QObject(parent) {}

PlanWorker::~PlanWorker()
{
    stop();
    if (thread_.joinable())
        thread_.join();
}

void PlanWorker::start(const std::string& databasePath, PlanWork work, const storage::Stamp& stamp)
{
    if (thread_.joinable())
        thread_.join();
    stopping_ = false;
    running_ = true;
    thread_ = std::thread([this, databasePath, work = std::move(work), stamp]() mutable {
        Outcome outcome = plan(databasePath, std::move(work), stamp);
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

void PlanWorker::report(std::string_view phase)
{
    QMetaObject::invokeMethod(
        this,
        [this, words = QString::fromUtf8(phase.data(), static_cast<qsizetype>(phase.size()))] {
            emit progressed(words);
        },
        Qt::QueuedConnection);
}

PlanWorker::Outcome PlanWorker::plan(const std::string& databasePath, PlanWork work,
                                     const storage::Stamp& stamp)
{
    QElapsedTimer sinceReport;
    sinceReport.start();
    const auto goOn = [this, &sinceReport](std::string_view phase) {
        if (sinceReport.elapsed() >= reportEvery) {
            sinceReport.restart();
            report(phase);
        }
        return !stopping_.load();
    };
    work.schedule.timeLimit = longestScheduling;
    try {
        const auto database = storage::Database::open(databasePath);
        if (!database.ok())
            return database.errors();
        PlanDone done;
        if (work.cuts) {
            work.cuts->progress = [&goOn](const cutting::Progress& progress) { return goOn(progress.phase); };
            const auto floor = acts::standingFloor(*database);
            if (floor.ok() && floor->has_value())
                work.cuts->coilWidthsApart = (*floor)->value.coilWidthsApart;
            auto planned = acts::planAll(*database, *work.cuts, stamp);
            if (!planned.ok())
                return planned.errors();
            done.planned = *std::move(planned);
        }
        auto scheduled = acts::scheduleAll(*database, work.schedule);
        if (!scheduled.ok())
            return scheduled.errors();
        done.scheduled = *std::move(scheduled);
        return done;
    } catch (const std::exception& failure) {
        return Error{"", failure.what(), "a database that can be read and written"};
    }
}

} // namespace lapwright::model
