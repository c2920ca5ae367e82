#pragma once

#include "desk.h"
#include "picture.h"
#include "plan_worker.h"
#include "rows_model.h"
#include "schedule/record.h"

#include <QString>

#include <optional>

namespace lapwright::model {

/// When each cut and each lot is made, day by day, what is late and why; a person pins what must stay.
class ScheduleDesk : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* days READ days CONSTANT FINAL)
    /// The tasks of the current day.
    Q_PROPERTY(lapwright::model::RowsModel* tasks READ tasks CONSTANT FINAL)
    Q_PROPERTY(QString currentDay READ currentDay WRITE setCurrentDay NOTIFY dayChanged FINAL)
    Q_PROPERTY(QString currentTask READ currentTask WRITE setCurrentTask NOTIFY taskChanged FINAL)
    Q_PROPERTY(bool currentPinned READ currentPinned NOTIFY taskChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY dayChanged FINAL)
    /// What the whole schedule comes to, and how far it can be from the best.
    Q_PROPERTY(QString summary READ summary NOTIFY dayChanged FINAL)
    Q_PROPERTY(bool working READ working NOTIFY workingChanged FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY workingChanged FINAL)

public:
    explicit ScheduleDesk(Shop& shop);

    [[nodiscard]] RowsModel* days() { return &days_; }
    [[nodiscard]] RowsModel* tasks() { return &tasks_; }
    [[nodiscard]] QString currentDay() const { return currentDay_; }
    void setCurrentDay(const QString& day);
    [[nodiscard]] QString currentTask() const { return currentTask_; }
    void setCurrentTask(const QString& task);
    [[nodiscard]] bool currentPinned() const;
    [[nodiscard]] look::Picture picture() const { return picture_; }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool working() const { return worker_.running(); }
    [[nodiscard]] QString progress() const { return progress_; }

    /// Schedules what there is to do from now on, around the pins.
    Q_INVOKABLE void scheduleAnew();
    Q_INVOKABLE void stopScheduling();
    /// Holds the current task on its machine at its time, or lets it go; the rest is scheduled around it.
    Q_INVOKABLE void togglePin();

signals:
    void dayChanged();
    void taskChanged();
    void workingChanged();

protected:
    void reload() override;

private:
    void showDay();
    void start(std::optional<std::vector<schedule::NamedPin>> pins);
    void finish();

    RowsModel days_;
    RowsModel tasks_;
    QString currentDay_;
    QString currentTask_;
    QString progress_;
    look::Picture picture_;
    std::optional<schedule::ScheduleRecord> record_;
    PlanWorker worker_;
};

} // namespace lapwright::model
