#include "drawing/gantt.h"

#include "drawing/gantt_marks.h"
#include "drawing/gantt_scale.h"
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

constexpr double margin = GanttScale::margin;
constexpr double barHeight = 7.0;
constexpr double listRow = 3.9;
constexpr double listSize = 2.6;
constexpr double numberSize = 2.6;

class DayPainter {
public:
    DayPainter(const schedule::ScheduleRecord& schedule, const GanttPicture& picture)
        : schedule_(schedule), picture_(picture), width_(inMillimetres(picture.width)),
          scale_(schedule, picture.day, picture.width)
    {
        for (std::size_t index = 0; index < schedule.tasks.size(); ++index)
            if (scale_.shows(schedule.tasks[index]))
                shown_.push_back(index);
    }

    DisplayList paint()
    {
        head();
        axis();
        for (std::size_t row = 0; row < schedule_.machines.size(); ++row)
            drawMachine(row);
        double bottom = legend(scale_.rowTop(schedule_.machines.size()));
        bottom = list(bottom);
        DisplayList page;
        page.width = picture_.width;
        page.height = std::max(picture_.height, nearestFromMillimetres(std::ceil(bottom + margin)));
        page.title = said("Schedule of " + schedule::inWords(picture_.day));
        page.description = description();
        page.shapes = std::move(shapes_);
        return page;
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, picture_.style);
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

    /// Null where nobody said.
    [[nodiscard]] const GanttProgress* progressOf(const schedule::RecordedTask& task) const
    {
        const auto found = picture_.progress.find(task.key);
        return found == picture_.progress.end() ? nullptr : &found->second;
    }
    [[nodiscard]] bool isOver(const schedule::RecordedTask& task) const
    {
        const GanttProgress* progress = progressOf(task);
        return progress != nullptr && progress->over;
    }
    /// What is over is not late any more.
    [[nodiscard]] bool isLate(const schedule::RecordedTask& task) const
    {
        return !task.late.empty() && !isOver(task);
    }
    /// ", 3 of 8 made"; empty where nobody said.
    [[nodiscard]] std::string howFar(const schedule::RecordedTask& task) const
    {
        const GanttProgress* progress = progressOf(task);
        return progress == nullptr || progress->words.empty() ? "" : ", " + said(progress->words);
    }

    /// Every hour, or as many of them as have room for their names.
    void axis()
    {
        const auto step =
            static_cast<std::int64_t>(std::ceil((textWidth("00:00", 2.6) + 2.0) / scale_.perHour()));
        const double y = scale_.rowTop(0) - 2.0;
        shapes_.emplace_back(line(Role::Note, {scale_.x(scale_.from()), y}, {scale_.x(scale_.to()), y}, 0.2));
        for (std::int64_t hour = 0; hour <= scale_.hours(); ++hour) {
            const Moment moment = scale_.from() + Duration::hours(hour);
            const double x = scale_.x(moment);
            const bool named = hour % step == 0;
            shapes_.emplace_back(line(Role::Note, {x, y - (named ? 1.4 : 0.7)}, {x, y}, 0.2));
            if (named)
                shapes_.emplace_back(words(Role::Note, schedule::writeTimeOfDay(moment - scale_.dayBegins()),
                                           {std::min(x, width_ - margin - 4.0), y - 2.2}, 2.6,
                                           Anchor::Middle));
        }
    }

    void drawMachine(std::size_t row)
    {
        const schedule::RecordedMachine& machine = schedule_.machines[row];
        const double top = scale_.rowTop(row) + 1.0;
        shapes_.emplace_back(words(Role::Label,
                                   shortened(said(machine.name), 3.2, GanttScale::nameRoom - 3.0, true),
                                   {margin, top + 3.4}, 3.2, Anchor::Start, true));
        shapes_.emplace_back(words(Role::Note,
                                   said(machine.stage == schedule::Stage::Cut ? "cutting" : "folding"),
                                   {margin, top + 7.0}, 2.6));
        drawClosed(machine, top);
        numbersEnd_ = 0.0;
        for (const std::size_t task : shown_)
            if (schedule_.tasks[task].machine == machine.id)
                drawTask(task, machine, top);
        shapes_.emplace_back(box(Role::Machine, barOf({scale_.from(), scale_.to()}, top),
                                 Stroke{0.2, Dash::Solid, {}}, std::nullopt));
    }

    [[nodiscard]] Rectangle barOf(const Interval& time, double top) const
    {
        return {scale_.x(time.from), top, scale_.x(time.to), top + barHeight};
    }

    void drawClosed(const schedule::RecordedMachine& machine, double top)
    {
        const auto closed = [&](Moment from, Moment to) {
            const Rectangle place = barOf({from, to}, top);
            if (place.width() > 0.05)
                shapes_.emplace_back(
                    box(Role::Waste, place, std::nullopt, Fill{true, std::nullopt, Hatch::Rising}));
        };
        Moment open = scale_.dayBegins();
        for (const Interval& part : scale_.workedParts(machine, open, scale_.dayEnds())) {
            closed(open, part.from);
            open = part.to;
        }
        closed(open, scale_.dayEnds());
    }

    void drawTask(std::size_t index, const schedule::RecordedMachine& machine, double top)
    {
        const schedule::RecordedTask& task = schedule_.tasks[index];
        for (const Interval& part : scale_.workedParts(machine, task.setupFrom, task.start))
            shapes_.emplace_back(box(Role::Machine, barOf(part, top), Stroke{0.2, Dash::Solid, {}},
                                     Fill{true, std::nullopt, Hatch::Crossed}));
        const std::vector<Interval> parts = scale_.workedParts(machine, task.start, task.end);
        Rectangle widest{};
        for (const Interval& part : parts) {
            const Rectangle place = barOf(part, top);
            drawPart(place, isLate(task), isOver(task));
            if (place.width() > widest.width())
                widest = place;
        }
        if (!parts.empty())
            drawMarks(task, parts.front().from, top);
        writeNumber(index, widest);
    }

    /// Above its bar, that begins at `begins` this day.
    void drawMarks(const schedule::RecordedTask& task, Moment begins, double top)
    {
        const Point end{scale_.x(task.end), top};
        const bool endsToday = task.end <= scale_.dayEnds();
        if (isLate(task) && endsToday)
            shapes_.emplace_back(lateFlag(end));
        if (const GanttProgress* progress = progressOf(task);
            progress != nullptr && progress->made && endsToday)
            shapes_.emplace_back(madeTick(end));
        if (task.pinned && task.start >= scale_.dayBegins())
            shapes_.emplace_back(pinHead({scale_.x(begins), top - 0.9}));
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
            return moment < scale_.dayBegins() || moment > scale_.dayEnds()
                       ? said(schedule::inWords(moment))
                       : schedule::writeTimeOfDay(moment - scale_.dayBegins());
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
        text += howFar(task);
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
                    howFar(task) +
                    (isLate(task) ? ", " + said("late because") + " " + said(task.late) + ". " : ". ");
        }
        return text.empty() ? said("Nothing is scheduled.") : text;
    }

    const schedule::ScheduleRecord& schedule_;
    const GanttPicture& picture_;
    double width_;
    GanttScale scale_;
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
    const GanttScale scale(schedule, picture.day, picture.width);
    const auto row = scale.rowAt(at.y);
    const auto moment = scale.momentAt(at.x);
    if (!row || !moment)
        return std::nullopt;
    GanttSpot spot{*row, schedule::nearestMinute(*moment), std::nullopt};
    for (std::size_t index = 0; index < schedule.tasks.size(); ++index) {
        const schedule::RecordedTask& task = schedule.tasks[index];
        if (task.machine == schedule.machines[*row].id && task.start <= *moment && *moment < task.end)
            spot.task = index;
    }
    return spot;
}

} // namespace lapwright::drawing
