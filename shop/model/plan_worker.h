#pragma once

#include "acts/planning.h"
#include "acts/scheduling.h"
#include "beside.h"
#include "measure/result.h"
#include "storage/orders.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <functional>
#include <optional>
#include <string>

namespace lapwright::model {

/// What a planner asks for: cuts, then the schedule; or the schedule alone.
struct PlanWork {
    std::optional<acts::PlanRequest> cuts;
    acts::ScheduleRequest schedule;
};

struct PlanDone {
    std::optional<acts::Planned> planned;
    acts::Scheduled scheduled;
};

/// Plans in a thread of its own with a database connection of its own, so that the window never waits. One
/// for the whole station: two plans at once would only put each other's work aside.
class PlanWorker : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(bool running READ running NOTIFY progressed FINAL)
    /// What it is at, and how good the plan is that it has.
    Q_PROPERTY(QString progress READ progress NOTIFY progressed FINAL)

public:
    using Outcome = Result<PlanDone>;

    explicit PlanWorker(QObject* parent = nullptr);
    ~PlanWorker() override;
    PlanWorker(const PlanWorker&) = delete;
    PlanWorker& operator=(const PlanWorker&) = delete;
    PlanWorker(PlanWorker&&) = delete;
    PlanWorker& operator=(PlanWorker&&) = delete;

    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] QString progress() const { return progress_; }
    /// Does it, then calls `done` on the thread of this object. Precondition: not running.
    void start(const std::string& databasePath, PlanWork work, const storage::Stamp& stamp,
               std::function<void(const Outcome&)> done);
    /// The best plan so far is kept.
    Q_INVOKABLE void stop();

signals:
    /// At most some times a second.
    void progressed();

private:
    void say(const QString& progress);
    void finish(const Outcome& outcome);
    /// In the thread.
    [[nodiscard]] Outcome plan(const storage::Database& database, PlanWork work, const storage::Stamp& stamp);

    std::atomic<bool> stopping_ = false;
    bool running_ = false;
    QString progress_;
    std::function<void(const Outcome&)> done_;
    Beside<PlanDone> beside_;
};

} // namespace lapwright::model
