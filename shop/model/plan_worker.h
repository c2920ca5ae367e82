#pragma once

#include "acts/planning.h"
#include "acts/scheduling.h"
#include "measure/result.h"
#include "storage/orders.h"

#include <QObject>
#include <QString>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <thread>

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

/// Plans in a thread of its own with a database connection of its own, so that the window never waits.
class PlanWorker : public QObject {
    Q_OBJECT

public:
    using Outcome = Result<PlanDone>;

    explicit PlanWorker(QObject* parent = nullptr);
    ~PlanWorker() override;
    PlanWorker(const PlanWorker&) = delete;
    PlanWorker& operator=(const PlanWorker&) = delete;
    PlanWorker(PlanWorker&&) = delete;
    PlanWorker& operator=(PlanWorker&&) = delete;

    [[nodiscard]] bool running() const { return running_; }
    /// Precondition: not running.
    void start(const std::string& databasePath, PlanWork work, const storage::Stamp& stamp);
    /// The best plan so far is kept.
    void stop();

signals:
    /// On the thread of this object, at most some times a second.
    void progressed(const QString& phase);
    void finished();

public:
    /// What came of it; read once finished() came.
    [[nodiscard]] const Outcome& outcome() const { return *outcome_; }

private:
    void report(std::string_view phase);
    [[nodiscard]] Outcome plan(const std::string& databasePath, PlanWork work, const storage::Stamp& stamp);

    std::thread thread_;
    std::atomic<bool> stopping_ = false;
    bool running_ = false;
    std::optional<Outcome> outcome_;
};

} // namespace lapwright::model
