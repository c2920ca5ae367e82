#include "plan_worker.h"

#include "acts/cut_words.h"
#include "storage/database.h"
#include "text.h"

#include <QElapsedTimer>

#include <chrono>
#include <utility>

namespace lapwright::model {

namespace {

/// The least time between two reports, milliseconds.
constexpr qint64 reportEvery = 100;

/// A schedule is looked for so long at most.
constexpr std::chrono::seconds longestScheduling{10};

} // namespace

PlanWorker::PlanWorker(QObject* parent) : QObject(parent) {}

PlanWorker::~PlanWorker()
{
    stopping_ = true;
}

void PlanWorker::start(const std::string& databasePath, PlanWork work, const storage::Stamp& stamp,
                       std::function<void(const Outcome&)> done)
{
    stopping_ = false;
    running_ = true;
    done_ = std::move(done);
    say(tr("Gathering what is to be done"));
    beside_.start(
        *this, databasePath,
        [this, work = std::move(work), stamp](const storage::Database& database) {
            return plan(database, work, stamp);
        },
        [this](const Outcome& outcome) { finish(outcome); });
}

void PlanWorker::stop()
{
    if (!running_)
        return;
    stopping_ = true;
    say(tr("Stopping; the best plan so far is kept"));
}

void PlanWorker::say(const QString& progress)
{
    progress_ = progress;
    emit progressed();
}

void PlanWorker::finish(const Outcome& outcome)
{
    running_ = false;
    say({});
    std::exchange(done_, {})(outcome);
}

PlanWorker::Outcome PlanWorker::plan(const storage::Database& database, PlanWork work,
                                     const storage::Stamp& stamp)
{
    QElapsedTimer sinceReport;
    sinceReport.start();
    const auto goOn = [this, &sinceReport](const auto& words) {
        if (!stopping_ && sinceReport.elapsed() >= reportEvery) {
            sinceReport.restart();
            QMetaObject::invokeMethod(
                this,
                [this, said = words()] {
                    if (!stopping_)
                        say(said);
                },
                Qt::QueuedConnection);
        }
        return !stopping_.load();
    };
    if (work.cuts)
        work.cuts->progress = [&goOn](const cutting::Progress& progress) {
            return goOn([&progress] { return said(acts::progressInWords(progress)); });
        };
    work.schedule.timeLimit = longestScheduling;
    work.schedule.goOn = [&goOn](const schedule::Progress& progress) {
        return goOn([&progress] { return tr("Scheduling: %1").arg(said(progress.phase)); });
    };
    PlanDone done;
    if (work.cuts) {
        const auto floor = acts::standingFloor(database);
        if (floor.ok() && floor->has_value())
            work.cuts->coilWidthsApart = (*floor)->value.coilWidthsApart;
        auto planned = acts::planAll(database, *work.cuts, stamp);
        if (!planned.ok())
            return planned.errors();
        done.planned = *std::move(planned);
    }
    auto scheduled = acts::scheduleAll(database, work.schedule);
    if (!scheduled.ok())
        return scheduled.errors();
    done.scheduled = *std::move(scheduled);
    return done;
}

} // namespace lapwright::model
