#pragma once

#include "acts/schedule_progress.h"
#include "desk.h"
#include "drawing/gantt.h"
#include "picture.h"
#include "plan_worker.h"
#include "rows_model.h"
#include "schedule/record.h"

#include <QPointF>
#include <QString>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::model {

/// "Tue 1 Dec 07:30" in the language that is spoken, to the nearest minute; under its own `day` the time
/// alone.
[[nodiscard]] QString clockWords(schedule::Moment moment, const std::optional<schedule::Date>& day);

/// When each cut and each lot is made, day by day, what is late and why; a person pins what must stay.
class ScheduleDesk : public Desk {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the shop")
    Q_PROPERTY(lapwright::model::RowsModel* days READ days CONSTANT FINAL)
    /// The tasks of the current day.
    Q_PROPERTY(lapwright::model::RowsModel* tasks READ tasks CONSTANT FINAL)
    /// The tasks of the whole schedule that are late, and why.
    Q_PROPERTY(lapwright::model::RowsModel* late READ late CONSTANT FINAL)
    Q_PROPERTY(QString currentDay READ currentDay WRITE setCurrentDay NOTIFY dayChanged FINAL)
    Q_PROPERTY(QString currentTask READ currentTask WRITE setCurrentTask NOTIFY taskChanged FINAL)
    Q_PROPERTY(bool currentPinned READ currentPinned NOTIFY taskChanged FINAL)
    /// Where the current task is being moved to, in words; empty: it stays where it is.
    Q_PROPERTY(QString moving READ moving NOTIFY movingChanged FINAL)
    Q_PROPERTY(lapwright::look::Picture picture READ picture NOTIFY pictureChanged FINAL)
    /// The current task is made, or not to be made any more: it stays where it stood.
    Q_PROPERTY(bool currentOver READ currentOver NOTIFY taskChanged FINAL)
    /// What the whole schedule comes to, how much of it is made, and how far it can be from the best.
    Q_PROPERTY(QString summary READ summary NOTIFY dayChanged FINAL)

public:
    explicit ScheduleDesk(Shop& shop);

    [[nodiscard]] RowsModel* days() { return &days_; }
    [[nodiscard]] RowsModel* tasks() { return &tasks_; }
    [[nodiscard]] RowsModel* late() { return &late_; }
    [[nodiscard]] QString currentDay() const { return currentDay_; }
    void setCurrentDay(const QString& day);
    [[nodiscard]] QString currentTask() const { return currentTask_; }
    void setCurrentTask(const QString& task);
    [[nodiscard]] bool currentPinned() const;
    [[nodiscard]] bool currentOver() const;
    [[nodiscard]] QString moving() const;
    [[nodiscard]] look::Picture picture() const { return picture_; }
    [[nodiscard]] QString summary() const;

    /// Schedules what there is to do from now on, around the pins.
    Q_INVOKABLE void scheduleAnew();
    /// Holds the current task on its machine at its time, or lets it go; the rest is scheduled around it.
    Q_INVOKABLE void togglePin();

    /// Shows a late task on its day.
    Q_INVOKABLE void showLate(const QString& task);
    /// Takes up the task at a place of the picture, millimetres on its page; it becomes the current one.
    Q_INVOKABLE void takeUp(QPointF at);
    /// Moves what was taken up along with the finger or the mouse.
    Q_INVOKABLE void carry(QPointF at);
    /// Moves the current task by keys: earlier or later, or to another machine that does the same.
    Q_INVOKABLE void nudge(int steps);
    Q_INVOKABLE void changeMachine(int by);
    /// Pins it where it was moved to; the rest is scheduled around it.
    Q_INVOKABLE void putDown();
    /// Leaves it where it was.
    Q_INVOKABLE void leave();

signals:
    void dayChanged();
    void taskChanged();
    void movingChanged();
    void pictureChanged();

protected:
    void reload() override;

private:
    /// Where a task is being moved to.
    struct Move {
        std::string task;
        std::size_t machine = 0;
        schedule::Moment start;
        bool operator==(const Move&) const = default;
    };

    [[nodiscard]] bool isLate(const schedule::RecordedTask& task) const;
    /// `day`: the row stands under this day.
    [[nodiscard]] Row rowOf(const schedule::RecordedTask& task,
                            const std::optional<schedule::Date>& day) const;
    void showLateTasks();
    void showDay();
    /// The day, with the current task where it is being moved to.
    void draw();
    /// The place where the current task stands, to move it from; nothing where there is none.
    [[nodiscard]] std::optional<Move> placeOfCurrent() const;
    void setMove(std::optional<Move> move);
    /// Pins `task` there and nowhere else.
    void pin(const std::string& task, const std::string& machine, schedule::Moment start);
    void start(PlanWork work);
    void tell(const PlanDone& done);

    RowsModel days_;
    RowsModel tasks_;
    RowsModel late_;
    QString currentDay_;
    QString currentTask_;
    look::Picture picture_;
    std::optional<schedule::ScheduleRecord> record_;
    acts::ScheduleProgress progress_; ///< since the record was made
    drawing::GanttPicture shown_;     ///< what picture_ is drawn by
    std::optional<Move> move_;
    schedule::Duration grip_; ///< from the start of the task taken up to where it was gripped
};

} // namespace lapwright::model
