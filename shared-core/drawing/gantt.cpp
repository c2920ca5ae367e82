#include "drawing/gantt.h"

#include "drawing/gantt_marks.h"
#include "drawing/marks.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace lapwright::drawing {

namespace {

using schedule::Duration;
using schedule::Interval;
using schedule::Moment;

constexpr double margin = 8.0;
constexpr double headHeight = 22.0;
constexpr double nameRoom = 36.0;
constexpr double rowHeight = 15.0;
constexpr double barHeight = 7.0;
constexpr double listRow = 3.9;
constexpr double listSize = 2.6;
constexpr double numberSize = 2.6;

class DayPainter {
public:
    DayPainter(const schedule::ScheduleRecord& schedule, const GanttPicture& picture)
        : schedule_(schedule), picture_(picture), width_(inMillimetres(picture.width)),
          dayBegins_(schedule::momentOf(picture.day, Duration())), dayEnds_(dayBegins_ + Duration::days(1))
    {
        chooseHours();
        for (std::size_t index = 0; index < schedule.tasks.size(); ++index)
            if (schedule.tasks[index].end > dayBegins_ && schedule.tasks[index].setupFrom < dayEnds_)
                shown_.push_back(index);
    }

    DisplayList paint()
    {
        head();
        axis();
        for (std::size_t row = 0; row < schedule_.machines.size(); ++row)
            drawMachine(row);
        double bottom = legend(rowTop(schedule_.machines.size()));
        bottom = list(bottom);
        DisplayList page;
        page.width = picture_.width;
        page.height = std::max(picture_.height, nearestFromMillimetres(std::ceil(bottom + margin)));
        page.title = said("Schedule of " + schedule::inWords(picture_.day));
        page.description = description();
        page.shapes = std::move(shapes_);
        return page;
    }

    [[nodiscard]] std::optional<GanttSpot> spotAt(Point at) const
    {
        const double down = at.y - rowTop(0), along = at.x - margin - nameRoom;
        const auto seconds = static_cast<std::int64_t>(std::floor(along / perSecond_));
        const auto row = static_cast<std::int64_t>(std::floor(down / rowHeight));
        if (row < 0 || row >= static_cast<std::int64_t>(schedule_.machines.size()) || seconds < 0 ||
            seconds >= hours_ * 3'600)
            return std::nullopt;
        GanttSpot spot{static_cast<std::size_t>(row), from_ + Duration::seconds(seconds), std::nullopt};
        for (const std::size_t task : shown_)
            if (schedule_.tasks[task].machine == schedule_.machines[spot.machine].id &&
                schedule_.tasks[task].start <= spot.moment && spot.moment < schedule_.tasks[task].end)
                spot.task = task;
        spot.moment = schedule::nearestMinute(spot.moment);
        return spot;
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, picture_.style);
    }

    /// From the first machine that opens to the last that closes that day, to whole hours.
    void chooseHours()
    {
        Moment from = dayEnds_, to = dayBegins_;
        for (const schedule::RecordedMachine& machine : schedule_.machines)
            for (const Interval& worked : machine.worked)
                if (worked.to > dayBegins_ && worked.from < dayEnds_) {
                    from = std::min(from, std::max(worked.from, dayBegins_));
                    to = std::max(to, std::min(worked.to, dayEnds_));
                }
        if (from >= to) {
            from = dayBegins_;
            to = dayEnds_;
        }
        const std::int64_t first = (from - dayBegins_).inSeconds() / 3'600;
        const std::int64_t last = ((to - dayBegins_).inSeconds() + 3'599) / 3'600;
        from_ = dayBegins_ + Duration::hours(first);
        hours_ = std::max<std::int64_t>(1, last - first);
        perSecond_ = (width_ - 2.0 * margin - nameRoom) / static_cast<double>(hours_ * 3'600);
    }

    [[nodiscard]] double x(Moment moment) const
    {
        const Duration along = std::clamp(moment - from_, Duration(), Duration::hours(hours_));
        return margin + nameRoom + static_cast<double>(along.inSeconds()) * perSecond_;
    }
    [[nodiscard]] static double rowTop(std::size_t row)
    {
        return margin + headHeight + static_cast<double>(row) * rowHeight;
    }
    [[nodiscard]] std::size_t numberOf(std::size_t task) const
    {
        return static_cast<std::size_t>(std::find(shown_.begin(), shown_.end(), task) - shown_.begin()) + 1;
    }

    void head()
    {
        const double room = width_ - 2.0 * margin;
        const std::string title = said("Schedule, " + schedule::inWords(picture_.day));
        shapes_.emplace_back(words(Role::Title, shortened(title, 5.0, room, true), {margin, margin + 5.0},
                                   5.0, Anchor::Start, true));
        const std::int64_t late = std::count_if(
            shown_.begin(), shown_.end(), [&](std::size_t task) { return isLate(schedule_.tasks[task]); });
        const std::string facts = std::to_string(shown_.size()) + " tasks, " + std::to_string(late) +
                                  " of them late \xC2\xB7 all done " +
                                  schedule::inWords(schedule_.from + schedule_.score.makespan) +
                                  " \xC2\xB7 making ready " + schedule::inWords(schedule_.score.makingReady) +
                                  ", in order of arrival " +
                                  schedule::inWords(schedule_.firstCome.makingReady);
        shapes_.emplace_back(
            words(Role::Label, shortened(said(facts), 3.2, room), {margin, margin + 10.4}, 3.2));
    }

    /// Nothing where nobody said.
    [[nodiscard]] GanttProgress progressOf(const schedule::RecordedTask& task) const
    {
        const auto found = picture_.progress.find(task.key);
        return found == picture_.progress.end() ? GanttProgress() : found->second;
    }
    /// What is over is not late any more.
    [[nodiscard]] bool isLate(const schedule::RecordedTask& task) const
    {
        return !task.late.empty() && !progressOf(task).over;
    }

    /// Every hour, or as many of them as have room for their names.
    void axis()
    {
        const double perHour = perSecond_ * 3'600.0;
        const auto step = static_cast<std::int64_t>(std::ceil((textWidth("00:00", 2.6) + 2.0) / perHour));
        const double at = margin + headHeight - 2.0;
        shapes_.emplace_back(line(Role::Note, {x(from_), at}, {x(from_ + Duration::hours(hours_)), at}, 0.2));
        for (std::int64_t hour = 0; hour <= hours_; ++hour) {
            const Moment moment = from_ + Duration::hours(hour);
            const bool named = hour % step == 0;
            shapes_.emplace_back(
                line(Role::Note, {x(moment), at - (named ? 1.4 : 0.7)}, {x(moment), at}, 0.2));
            if (named)
                shapes_.emplace_back(words(Role::Note, schedule::writeTimeOfDay(moment - dayBegins_),
                                           {std::min(x(moment), width_ - margin - 4.0), at - 2.2}, 2.6,
                                           Anchor::Middle));
        }
    }

    void drawMachine(std::size_t row)
    {
        const schedule::RecordedMachine& machine = schedule_.machines[row];
        const double top = rowTop(row) + 1.0;
        shapes_.emplace_back(words(Role::Label, shortened(said(machine.name), 3.2, nameRoom - 3.0, true),
                                   {margin, top + 3.4}, 3.2, Anchor::Start, true));
        shapes_.emplace_back(words(Role::Note,
                                   said(machine.stage == schedule::Stage::Cut ? "cutting" : "folding"),
                                   {margin, top + 7.0}, 2.6));
        drawClosed(machine, top);
        numbersEnd_ = 0.0;
        for (const std::size_t task : shown_)
            if (schedule_.tasks[task].machine == machine.id)
                drawTask(task, machine, top);
        shapes_.emplace_back(box(Role::Machine,
                                 {x(from_), top, x(from_ + Duration::hours(hours_)), top + barHeight},
                                 Stroke{0.2, Dash::Solid, {}}, std::nullopt));
    }

    void drawClosed(const schedule::RecordedMachine& machine, double top)
    {
        const auto closed = [&](Moment from, Moment to) {
            if (x(to) - x(from) > 0.05)
                shapes_.emplace_back(box(Role::Waste, {x(from), top, x(to), top + barHeight}, std::nullopt,
                                         Fill{true, std::nullopt, Hatch::Rising}));
        };
        Moment open = dayBegins_;
        for (const Interval& worked : machine.worked) {
            if (worked.to <= dayBegins_ || worked.from >= dayEnds_)
                continue;
            closed(open, worked.from);
            open = worked.to;
        }
        closed(open, dayEnds_);
    }

    /// The parts of [from, to) that the machine works this day.
    [[nodiscard]] std::vector<Interval> workedParts(const schedule::RecordedMachine& machine, Moment from,
                                                    Moment to) const
    {
        std::vector<Interval> parts;
        for (const Interval& worked : machine.worked) {
            const Moment first = std::max({from, worked.from, dayBegins_});
            const Moment last = std::min({to, worked.to, dayEnds_});
            if (first < last)
                parts.push_back({first, last});
        }
        return parts;
    }

    void drawTask(std::size_t index, const schedule::RecordedMachine& machine, double top)
    {
        const schedule::RecordedTask& task = schedule_.tasks[index];
        const bool late = isLate(task);
        const GanttProgress progress = progressOf(task);
        for (const Interval& part : workedParts(machine, task.setupFrom, task.start))
            shapes_.emplace_back(box(Role::Machine, {x(part.from), top, x(part.to), top + barHeight},
                                     Stroke{0.2, Dash::Solid, {}}, Fill{true, std::nullopt, Hatch::Crossed}));
        const std::vector<Interval> parts = workedParts(machine, task.start, task.end);
        Rectangle widest{};
        for (const Interval& part : parts) {
            const Rectangle place{x(part.from), top, x(part.to), top + barHeight};
            drawPart(place, late, progress.over);
            if (place.width() > widest.width())
                widest = place;
        }
        if (late && task.end <= dayEnds_ && !parts.empty())
            shapes_.emplace_back(lateFlag({x(task.end), top}));
        if (progress.made && task.end <= dayEnds_ && !parts.empty())
            shapes_.emplace_back(madeTick({x(task.end), top}));
        if (task.pinned && task.start >= dayBegins_ && !parts.empty())
            shapes_.emplace_back(pinHead({x(parts.front().from), top - 0.9}));
        writeNumber(index, widest);
    }

    void drawPart(const Rectangle& place, bool late, bool over)
    {
        if (over)
            shapes_.emplace_back(box(Role::Waste, place, Stroke{0.25, Dash::Dashed, {}}, std::nullopt));
        else
            shapes_.emplace_back(box(Role::Blank, place, Stroke{late ? 0.7 : 0.25, Dash::Solid, {}}, Fill{}));
    }

    /// In the bar, below it, or only in the list.
    void writeNumber(std::size_t index, const Rectangle& place)
    {
        if (place.width() <= 0.0)
            return;
        const std::string number = std::to_string(numberOf(index));
        const double wide = textWidth(number, numberSize, true);
        const double middle = place.centre().x;
        if (wide + 1.0 <= place.width()) {
            shapes_.emplace_back(words(Role::Label, number, {middle, place.centre().y + 0.95}, numberSize,
                                       Anchor::Middle, true));
            return;
        }
        if (middle - wide / 2.0 < numbersEnd_)
            return;
        numbersEnd_ = middle + wide / 2.0 + 0.8;
        shapes_.emplace_back(
            words(Role::Label, number, {middle, place.bottom + 3.0}, numberSize, Anchor::Middle, true));
    }

    double legend(double top)
    {
        double at = margin;
        const double middle = top + 1.5;
        const auto entry = [&](const std::string& english) {
            const std::string text = said(english);
            shapes_.emplace_back(words(Role::Note, text, {at + 7.5, middle + 1.0}, 2.6));
            at += 7.5 + textWidth(text, 2.6) + 7.0;
        };
        const auto sample = [&](Role role, double thick, Hatch hatch) {
            shapes_.emplace_back(box(role, {at, middle - 1.6, at + 6.0, middle + 1.6},
                                     Stroke{thick, Dash::Solid, {}}, Fill{true, std::nullopt, hatch}));
        };
        sample(Role::Machine, 0.2, Hatch::Crossed);
        entry("making ready");
        sample(Role::Blank, 0.25, Hatch::None);
        entry("task");
        sample(Role::Blank, 0.7, Hatch::None);
        shapes_.emplace_back(lateFlag({at + 6.0, middle - 1.6}));
        entry("late");
        shapes_.emplace_back(pinHead({at + 5.0, middle}));
        entry("pinned");
        if (!picture_.progress.empty()) {
            drawPart({at, middle - 1.6, at + 6.0, middle + 1.6}, false, true);
            shapes_.emplace_back(madeTick({at + 6.0, middle - 1.6}));
            entry("made");
        }
        sample(Role::Waste, 0.2, Hatch::Rising);
        entry("not worked");
        return top + 6.0;
    }

    struct ListLine {
        Role role = Role::Label;
        std::string text;
        bool bold = false;
        std::string number = {}; ///< before the text
        bool heading = false;
    };

    [[nodiscard]] std::string timesOf(const schedule::RecordedTask& task) const
    {
        const auto time = [&](Moment exact) {
            const Moment moment = schedule::nearestMinute(exact);
            return moment < dayBegins_ || moment > dayEnds_ ? said(schedule::inWords(moment))
                                                            : schedule::writeTimeOfDay(moment - dayBegins_);
        };
        return time(task.start) + "\xE2\x80\x93" + time(task.end);
    }

    void addLines(std::size_t index, double room, std::vector<ListLine>& lines) const
    {
        const schedule::RecordedTask& task = schedule_.tasks[index];
        const bool late = isLate(task);
        std::string text = (late ? said("LATE") + " " : "") + timesOf(task) + ", " + said(task.name) + ", " +
                           std::to_string(task.units);
        if (!task.order)
            text += " " + said(task.units == 1 ? "sheet" : "sheets");
        if (const GanttProgress progress = progressOf(task); !progress.words.empty())
            text += ", " + said(progress.words);
        if (task.due)
            text += ", " + said("due " + schedule::inWords(*task.due));
        lines.push_back({Role::Label, text, late, std::to_string(numberOf(index))});
        if (late)
            for (const std::string& part : wrapped(said("because") + " " + said(task.late), listSize, room))
                lines.push_back({Role::Caution, part});
        std::string ready = said(task.fitting);
        if (!task.setting.empty())
            ready += (ready.empty() ? "" : ", ") + (task.order ? said("new program") : said(task.setting));
        if (!ready.empty())
            lines.push_back({Role::Note, said("made ready") + ": " + ready});
    }

    double list(double top)
    {
        const double gap = 6.0, indent = 6.5;
        const double column = (width_ - 2.0 * margin - gap) / 2.0, room = column - indent;
        std::vector<ListLine> lines;
        for (const schedule::RecordedMachine& machine : schedule_.machines) {
            lines.push_back({Role::Label, said(machine.name), true, {}, true});
            const std::size_t before = lines.size();
            for (const std::size_t task : shown_)
                if (schedule_.tasks[task].machine == machine.id)
                    addLines(task, room, lines);
            if (lines.size() == before)
                lines.push_back({Role::Note, said("nothing")});
        }
        const std::size_t rows = (lines.size() + 1) / 2;
        for (std::size_t index = 0; index < lines.size(); ++index) {
            const ListLine& one = lines[index];
            const double left = index < rows ? margin : margin + column + gap;
            const double y = top + 3.0 + static_cast<double>(index % rows) * listRow;
            shapes_.emplace_back(words(one.role, shortened(one.text, listSize, room, one.bold),
                                       {left + (one.heading ? 0.0 : indent), y}, listSize, Anchor::Start,
                                       one.bold));
            if (!one.number.empty())
                shapes_.emplace_back(
                    words(Role::Label, one.number, {left, y}, listSize, Anchor::Start, one.bold));
        }
        return top + 3.0 + static_cast<double>(rows) * listRow;
    }

    [[nodiscard]] std::string description() const
    {
        std::string text;
        for (const std::size_t index : shown_) {
            const schedule::RecordedTask& task = schedule_.tasks[index];
            text += timesOf(task) + " " + said("on") + " " + task.machine + ": " + said(task.name) +
                    (progressOf(task).words.empty() ? "" : ", " + said(progressOf(task).words)) +
                    (isLate(task) ? ", " + said("late because") + " " + said(task.late) + ". " : ". ");
        }
        return text.empty() ? said("Nothing is scheduled.") : text;
    }

    const schedule::ScheduleRecord& schedule_;
    const GanttPicture& picture_;
    double width_;
    Moment dayBegins_, dayEnds_, from_;
    std::int64_t hours_ = 1;
    double perSecond_ = 1.0;
    double numbersEnd_ = 0.0; ///< right end of the last number below the bars of the row
    std::vector<std::size_t> shown_;
    std::vector<Shape> shapes_;
};

} // namespace

std::vector<schedule::Date> daysOf(const schedule::ScheduleRecord& schedule)
{
    std::set<schedule::Date> days;
    for (const schedule::RecordedMachine& machine : schedule.machines)
        for (const Interval& worked : machine.worked)
            for (const schedule::RecordedTask& task : schedule.tasks)
                if (task.machine == machine.id && task.setupFrom < worked.to && worked.from < task.end) {
                    const Moment last = std::min(worked.to, task.end) - Duration::seconds(1);
                    Moment day = std::max(worked.from, task.setupFrom);
                    for (; day <= last; day = schedule::momentOf(schedule::dateOf(day), Duration::days(1)))
                        days.insert(schedule::dateOf(day));
                }
    return {days.begin(), days.end()};
}

DisplayList gantt(const schedule::ScheduleRecord& schedule, const GanttPicture& picture)
{
    return DayPainter(schedule, picture).paint();
}

std::optional<GanttSpot> ganttSpot(const schedule::ScheduleRecord& schedule, const GanttPicture& picture,
                                   Point at)
{
    return DayPainter(schedule, picture).spotAt(at);
}

} // namespace lapwright::drawing
