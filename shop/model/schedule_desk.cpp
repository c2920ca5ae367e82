#include "schedule_desk.h"

#include "acts/schedule_words.h"
#include "acts/scheduling.h"
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
                     [&](const schedule::RecordedTask& task) { return exact(task.key) == key; });
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
            return saidWhole(machine.name);
    return shown(id);
}

/// Keys and fingers move a task in steps of so much.
constexpr schedule::Duration step = schedule::Duration::minutes(5);

schedule::Moment toStep(schedule::Moment moment)
{
    const std::int64_t seconds = moment.sinceEpoch().inSeconds(), whole = step.inSeconds();
    return schedule::Moment::sinceEpoch(schedule::Duration::seconds((seconds + whole / 2) / whole * whole));
}

std::size_t machineOf(const schedule::ScheduleRecord& record, const schedule::RecordedTask& task)
{
    const auto found =
        std::find_if(record.machines.begin(), record.machines.end(),
                     [&](const schedule::RecordedMachine& machine) { return machine.id == task.machine; });
    return static_cast<std::size_t>(found - record.machines.begin());
}

} // namespace

QString clockWords(schedule::Moment moment, const std::optional<schedule::Date>& day)
{
    const schedule::Moment at = schedule::nearestMinute(moment);
    return day && schedule::dateOf(at) == *day ? shown(schedule::writeTimeOfDay(schedule::timeOfDay(at)))
                                               : said(schedule::inWords(at));
}

ScheduleDesk::ScheduleDesk(Shop& shop) : Desk(shop) {}

bool ScheduleDesk::isLate(const schedule::RecordedTask& task) const
{
    return !task.late.empty() && !acts::isOver(progress_, task.key);
}

Row ScheduleDesk::rowOf(const schedule::RecordedTask& task, const std::optional<schedule::Date>& day) const
{
    const auto progress = progress_.find(task.key);
    const bool late = isLate(task);
    Row row;
    row.id = exact(task.key);
    row.title = said(task.name);
    row.detail = late ? said(task.late) : machineName(*record_, task.machine);
    row.trailing = clockWords(task.start, day);
    row.trailingDetail = progress == progress_.end() ? tr("to %1").arg(clockWords(task.end, day))
                                                     : said(acts::inWords(progress->second, task));
    row.sign = acts::isOver(progress_, task.key) ? QStringLiteral("done")
               : task.pinned                     ? QStringLiteral("hold")
               : late                            ? QStringLiteral("warns")
                                                 : QString();
    return row;
}

void ScheduleDesk::reload()
{
    auto standing = acts::standingSchedule(shop().database());
    if (!standing.ok())
        return shop().tellTrouble(standing.errors());
    record_ = *std::move(standing);
    progress_ = record_ ? acts::progressOf(shop().database(), *record_) : acts::ScheduleProgress();
    shown_ = {};
    shown_.style = shop().style();
    QList<Row> rows;
    if (record_) {
        for (const schedule::RecordedTask& task : record_->tasks)
            if (const auto of = progress_.find(task.key); of != progress_.end())
                shown_.progress[task.key] = {acts::inWords(of->second, task),
                                             of->second.state == acts::TaskProgress::State::Made,
                                             acts::isOver(progress_, task.key)};
        for (const schedule::Date& day : drawing::daysOf(*record_)) {
            std::int64_t count = 0;
            bool late = false;
            for (const schedule::RecordedTask& task : record_->tasks) {
                count += worksOn(task, day) ? 1 : 0;
                late = late || (worksOn(task, day) && isLate(task));
            }
            Row row;
            row.id = exact(schedule::write(day));
            row.title = said(schedule::inWords(day));
            row.detail = counted(count, "task");
            row.sign = late ? QStringLiteral("warns") : QStringLiteral("schedule");
            rows.append(row);
        }
    }
    days_.setRows(rows);
    if (days_.indexOf(currentDay_) < 0)
        currentDay_ = days_.idAt(0);
    showLateTasks();
    showDay();
}

void ScheduleDesk::showLateTasks()
{
    QList<Row> rows;
    if (record_)
        for (const schedule::RecordedTask& task : record_->tasks) {
            if (!isLate(task))
                continue;
            Row row = rowOf(task, std::nullopt);
            row.trailingDetail =
                task.due ? tr("due %1").arg(said(schedule::inWords(*task.due))) : row.trailingDetail;
            row.trailing = tr("done %1").arg(said(schedule::inWords(task.end)));
            rows.append(row);
        }
    late_.setRows(rows);
}

void ScheduleDesk::showLate(const QString& task)
{
    const schedule::RecordedTask* found = find(record_, task);
    if (found == nullptr)
        return;
    setCurrentDay(shown(schedule::write(schedule::dateOf(found->start))));
    setCurrentTask(task);
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
    setMove(std::nullopt);
    emit taskChanged();
}

bool ScheduleDesk::currentPinned() const
{
    const schedule::RecordedTask* task = find(record_, currentTask_);
    return task != nullptr && task->pinned;
}

bool ScheduleDesk::currentOver() const
{
    return acts::isOver(progress_, currentTask_.toStdString());
}

QString ScheduleDesk::summary() const
{
    if (!record_)
        return {};
    QStringList lines;
    if (const std::string made = acts::inWords(progress_, *record_); !made.empty())
        lines.append(said(made));
    for (const std::string& line : acts::totalsInWords(*record_))
        lines.append(said(line));
    return lines.join(u'\n');
}

void ScheduleDesk::showDay()
{
    move_.reset();
    QList<Row> rows;
    const auto day = schedule::readDate(currentDay_.toStdString());
    if (record_ && day.ok()) {
        shown_.day = *day;
        for (const schedule::RecordedTask& task : record_->tasks)
            if (worksOn(task, *day))
                rows.append(rowOf(task, *day));
    }
    tasks_.setRows(rows);
    if (tasks_.indexOf(currentTask_) < 0)
        currentTask_ = tasks_.idAt(0);
    draw();
    emit dayChanged();
    emit taskChanged();
    emit movingChanged();
}

void ScheduleDesk::draw()
{
    picture_ = look::Picture();
    if (record_ && !currentDay_.isEmpty()) {
        schedule::ScheduleRecord drawn = *record_;
        for (schedule::RecordedTask& task : drawn.tasks) {
            if (!move_ || task.key != move_->task)
                continue;
            const schedule::Duration by = move_->start - task.start;
            task.machine = drawn.machines[move_->machine].id;
            task.setupFrom = task.setupFrom + by;
            task.start = task.start + by;
            task.end = task.end + by;
            task.pinned = true;
        }
        picture_ = look::Picture(drawing::gantt(drawn, shown_));
    }
    emit pictureChanged();
}

void ScheduleDesk::scheduleAnew()
{
    start({});
}

void ScheduleDesk::start(PlanWork work)
{
    if (shop().letsPlan())
        shop().plan(std::move(work), [this](const PlanDone& done) { tell(done); });
}

void ScheduleDesk::togglePin()
{
    const schedule::RecordedTask* task = find(record_, currentTask_);
    if (task == nullptr || currentOver())
        return;
    if (!task->pinned)
        return pin(task->key, task->machine, task->start);
    PlanWork work;
    work.schedule.pins = acts::OtherPin{task->key, std::nullopt};
    start(std::move(work));
}

void ScheduleDesk::pin(const std::string& task, const std::string& machine, schedule::Moment start)
{
    PlanWork work;
    work.schedule.pins = acts::OtherPin{task, schedule::NamedPin{task, machine, start, std::nullopt}};
    this->start(std::move(work));
}

std::optional<ScheduleDesk::Move> ScheduleDesk::placeOfCurrent() const
{
    if (move_)
        return move_;
    const schedule::RecordedTask* task = find(record_, currentTask_);
    if (task == nullptr || currentOver())
        return std::nullopt;
    return Move{task->key, machineOf(*record_, *task), task->start};
}

void ScheduleDesk::setMove(std::optional<Move> move)
{
    if (move == move_)
        return;
    move_ = std::move(move);
    draw();
    emit movingChanged();
}

QString ScheduleDesk::moving() const
{
    const schedule::RecordedTask* task = find(record_, currentTask_);
    if (!move_ || task == nullptr)
        return {};
    return tr("%1: %2, from %3")
        .arg(shown(task->name), shown(record_->machines[move_->machine].name),
             said(schedule::inWords(move_->start)));
}

void ScheduleDesk::takeUp(QPointF at)
{
    const auto spot = record_ ? drawing::ganttSpot(*record_, shown_, {at.x(), at.y()})
                              : std::optional<drawing::GanttSpot>();
    if (!spot || !spot->task)
        return;
    const schedule::RecordedTask& task = record_->tasks[*spot->task];
    setCurrentTask(exact(task.key));
    grip_ = spot->moment - task.start;
}

void ScheduleDesk::carry(QPointF at)
{
    const auto from = placeOfCurrent();
    const auto spot =
        from ? drawing::ganttSpot(*record_, shown_, {at.x(), at.y()}) : std::optional<drawing::GanttSpot>();
    if (!spot)
        return;
    const bool sameStage = record_->machines[spot->machine].stage == record_->machines[from->machine].stage;
    setMove(Move{from->task, sameStage ? spot->machine : from->machine, toStep(spot->moment - grip_)});
}

void ScheduleDesk::nudge(int steps)
{
    auto move = placeOfCurrent();
    if (!move)
        return;
    move->start = toStep(move->start) + step * steps;
    setMove(std::move(move));
}

void ScheduleDesk::changeMachine(int by)
{
    auto move = placeOfCurrent();
    if (!move)
        return;
    const auto count = static_cast<std::ptrdiff_t>(record_->machines.size());
    auto at = static_cast<std::ptrdiff_t>(move->machine) + by;
    while (at >= 0 && at < count &&
           record_->machines[static_cast<std::size_t>(at)].stage != record_->machines[move->machine].stage)
        at += by;
    if (at < 0 || at >= count)
        return;
    move->machine = static_cast<std::size_t>(at);
    setMove(std::move(move));
}

void ScheduleDesk::putDown()
{
    if (!move_)
        return;
    const Move move = *move_;
    setMove(std::nullopt);
    pin(move.task, record_->machines[move.machine].id, move.start);
}

void ScheduleDesk::leave()
{
    setMove(std::nullopt);
}

void ScheduleDesk::tell(const PlanDone& done)
{
    QStringList told;
    for (const rules::Finding& finding : done.scheduled.findings)
        if (finding.weight != rules::Weight::Informs)
            told.append(shown(acts::describe(finding, shop().style())));
    if (!told.isEmpty())
        return shop().tellTrouble(told.join(u'\n'));
    shop().tell(done.scheduled.record ? tr("Scheduled") : tr("Nothing is to be done"));
}

} // namespace lapwright::model
