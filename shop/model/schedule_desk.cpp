#include "schedule_desk.h"

#include "acts/schedule_words.h"
#include "acts/scheduling.h"
#include "drawing/gantt.h"
#include "shop.h"
#include "text.h"

#include <algorithm>
#include <utility>

namespace lapwright::model {

namespace {

const schedule::RecordedTask* find(const std::optional<schedule::ScheduleRecord>& record, const QString& key)
{
    if (!record)
        return nullptr;
    const auto found =
        std::find_if(record->tasks.begin(), record->tasks.end(),
                     [&](const schedule::RecordedTask& task) { return shown(task.key) == key; });
    return found == record->tasks.end() ? nullptr : &*found;
}

bool worksOn(const schedule::RecordedTask& task, schedule::Date day)
{
    return schedule::dateOf(task.setupFrom) <= day && day <= schedule::dateOf(task.end);
}

QString machineName(const schedule::ScheduleRecord& record, const std::string& id)
{
    for (const schedule::RecordedMachine& machine : record.machines)
        if (machine.id == id)
            return shown(machine.name);
    return shown(id);
}

Row rowOf(const schedule::ScheduleRecord& record, const schedule::RecordedTask& task)
{
    Row row;
    row.id = shown(task.key);
    row.title = shown(task.name);
    row.detail = task.late.empty() ? machineName(record, task.machine) : shown(task.late);
    row.trailing = shown(schedule::inWords(task.start));
    row.trailingDetail = ScheduleDesk::tr("to %1").arg(shown(schedule::inWords(task.end)));
    row.sign = task.pinned ? QStringLiteral("hold") : task.late.empty() ? QString() : QStringLiteral("warns");
    return row;
}

} // namespace

ScheduleDesk::ScheduleDesk(Shop& shop) : Desk(shop)
{
    connect(&worker_, &PlanWorker::progressed, this, [this](const QString& phase) {
        progress_ = tr("Looking: %1").arg(phase);
        emit workingChanged();
    });
    connect(&worker_, &PlanWorker::finished, this, &ScheduleDesk::finish);
}

void ScheduleDesk::reload()
{
    auto standing = acts::standingSchedule(shop().database());
    if (!standing.ok())
        return shop().tellTrouble(standing.errors());
    record_ = *std::move(standing);
    QList<Row> rows;
    if (record_) {
        for (const schedule::Date& day : drawing::daysOf(*record_)) {
            std::int64_t count = 0;
            bool late = false;
            for (const schedule::RecordedTask& task : record_->tasks) {
                count += worksOn(task, day) ? 1 : 0;
                late = late || (worksOn(task, day) && !task.late.empty());
            }
            Row row;
            row.id = shown(schedule::write(day));
            row.title = shown(schedule::inWords(day));
            row.detail = counted(count, "task");
            row.sign = late ? QStringLiteral("warns") : QStringLiteral("schedule");
            rows.append(row);
        }
    }
    days_.setRows(rows);
    if (days_.indexOf(currentDay_) < 0)
        currentDay_ = days_.idAt(0);
    showDay();
}

void ScheduleDesk::setCurrentDay(const QString& day)
{
    if (day == currentDay_)
        return;
    currentDay_ = day;
    shop().attempt([this] { showDay(); });
}

void ScheduleDesk::setCurrentTask(const QString& task)
{
    if (task == currentTask_)
        return;
    currentTask_ = task;
    emit taskChanged();
}

bool ScheduleDesk::currentPinned() const
{
    const schedule::RecordedTask* task = find(record_, currentTask_);
    return task != nullptr && task->pinned;
}

QString ScheduleDesk::summary() const
{
    if (!record_)
        return {};
    QStringList lines;
    for (const std::string& line : acts::inWords(*record_))
        lines.append(shown(line));
    return lines.join(u'\n');
}

void ScheduleDesk::showDay()
{
    picture_ = look::Picture();
    QList<Row> rows;
    const auto day = schedule::readDate(currentDay_.toStdString());
    if (record_ && day.ok()) {
        drawing::GanttPicture wanted;
        wanted.day = *day;
        picture_ = look::Picture(drawing::gantt(*record_, wanted));
        for (const schedule::RecordedTask& task : record_->tasks)
            if (worksOn(task, *day))
                rows.append(rowOf(*record_, task));
    }
    tasks_.setRows(rows);
    if (tasks_.indexOf(currentTask_) < 0)
        currentTask_ = tasks_.idAt(0);
    emit dayChanged();
    emit taskChanged();
}

void ScheduleDesk::scheduleAnew()
{
    start(std::nullopt);
}

void ScheduleDesk::start(std::optional<std::vector<schedule::NamedPin>> pins)
{
    if (worker_.running() || !shop().mayPlan())
        return;
    PlanWork work;
    work.schedule.from = shop().wallClock();
    work.schedule.pins = std::move(pins);
    work.schedule.libraryFolders = shop().libraryFolders();
    progress_ = tr("Gathering what is to be done");
    worker_.start(shop().databasePath().toStdString(), std::move(work), shop().stamp());
    emit workingChanged();
}

void ScheduleDesk::stopScheduling()
{
    worker_.stop();
}

void ScheduleDesk::togglePin()
{
    const schedule::RecordedTask* task = find(record_, currentTask_);
    if (task == nullptr)
        return;
    std::vector<schedule::NamedPin> pins = record_->pins;
    const auto same = [task](const schedule::NamedPin& pin) { return pin.task == task->key; };
    const bool pinned = task->pinned;
    pins.erase(std::remove_if(pins.begin(), pins.end(), same), pins.end());
    if (!pinned)
        pins.push_back({task->key, task->machine, task->start, std::nullopt});
    start(std::move(pins));
}

void ScheduleDesk::finish()
{
    emit workingChanged();
    const PlanWorker::Outcome& outcome = worker_.outcome();
    if (!outcome.ok())
        return shop().tellTrouble(outcome.errors());
    shop().noteChange();
    QStringList told;
    for (const rules::Finding& finding : outcome->scheduled.findings)
        if (finding.weight != rules::Weight::Informs)
            told.append(shown(acts::describe(finding, shop().style())));
    if (!told.isEmpty())
        return shop().tellTrouble(told.join(u'\n'));
    shop().tell(outcome->scheduled.record ? tr("Scheduled") : tr("Nothing is to be done"));
}

} // namespace lapwright::model
