#include "drawing/plan_sketch.h"

#include "drawing/marks.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "measure/rounding.h"
#include "site/corner.h"
#include "site/run_kind.h"
#include "site/run_length.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::drawing {

namespace {

/// Room for labels around the chain.
constexpr double sideRoom = 15.0;
/// Of a small page no more than this share on each side.
constexpr double mostSideShare = 0.27;
constexpr double labelSize = 3.4;
constexpr double idSize = 2.6;
/// A run drawn shorter than this has no label unless it is in hand.
constexpr double leastLabelled = 9.0;
/// Labels are not set further away than this: a screen can be zoomed.
constexpr double labelReach = 14.0;
constexpr double undrawn = 0.2;

using Verdict = site::ClosureReport::Verdict;

bool missesItsStart(const site::ClosureReport& report)
{
    return report.verdict == Verdict::LengthsOff || report.verdict == Verdict::AnglesOff;
}

/// Corner points in real millimetres, x east, y north. As far as lengths are known.
std::vector<Point> pointsOf(const site::Chain& chain, const site::ClosureReport& report)
{
    std::optional<site::Plan> plan = report.plan ? report.plan : site::planOf(chain);
    if (!plan) {
        site::Chain known = chain;
        known.closed = false;
        const auto missing = std::find_if(known.runs.begin(), known.runs.end(), [](const site::Run& run) {
            return !site::effectiveLength(run) || !site::planRatio(run);
        });
        known.runs.erase(missing, known.runs.end());
        known.corners.resize(known.runs.empty() ? 0 : known.runs.size() - 1);
        plan = site::planOf(known);
    }
    if (!plan)
        return {};
    const bool adjusted = report.drawnPoints.size() == plan->points.size();
    std::vector<Point> points;
    for (const site::PlanVector& point : adjusted ? report.drawnPoints : plan->points)
        points.push_back({inMillimetres(point.east), inMillimetres(point.north)});
    return points;
}

/// Upright runs side by side, each from the ground up.
std::vector<SketchedRun> standing(const site::Chain& chain)
{
    std::vector<SketchedRun> lines;
    double highest = 0.0;
    for (std::size_t i = 0; i < chain.runs.size(); ++i) {
        const auto length = site::effectiveLength(chain.runs[i]);
        if (!length || site::lieOf(chain.runs[i].kind) != site::Lie::Upright)
            continue;
        lines.push_back({i, {{0.0, 0.0}, {0.0, inMillimetres(length->value)}}});
        highest = std::max(highest, inMillimetres(length->value));
    }
    for (std::size_t i = 0; i < lines.size(); ++i)
        lines[i].line.from.x = lines[i].line.to.x = static_cast<double>(i) * highest * 0.5;
    return lines;
}

class Sketcher {
public:
    Sketcher(const site::Chain& chain, const site::ClosureReport& report, const SketchWish& wish)
        : chain_(chain), report_(report),
          wish_(wish), page_{0.0, 0.0, inMillimetres(wish.width), inMillimetres(wish.height)},
          placement_(page_.grown(-0.5))
    {
    }

    PlanSketch sketch()
    {
        made_.list.width = wish_.width;
        made_.list.height = wish_.height;
        made_.list.title =
            translated("Plan of " + (chain_.name.empty() ? chain_.id : chain_.name), wish_.style);
        made_.list.description = translated(std::to_string(chain_.runs.size()) + " runs", wish_.style);
        layOut();
        if (made_.runs.empty())
            return std::move(made_);
        drawRuns();
        if (isPlan_) {
            drawWalk();
            drawCorners();
            drawGap();
        }
        for (const Shape& shape : made_.list.shapes)
            placement_.block(shape);
        if (chosenLine())
            nameRun(*chosenLine());
        for (const SketchedRun& run : made_.runs)
            if (run.run != wish_.chosen && norm(run.line.to - run.line.from) >= leastLabelled)
                nameRun(run);
        return std::move(made_);
    }

private:
    void layOut()
    {
        std::vector<SketchedRun> lines;
        const std::vector<Point> points = pointsOf(chain_, report_);
        for (std::size_t i = 1; i < points.size(); ++i)
            lines.push_back({i - 1, {points[i - 1], points[i]}});
        isPlan_ = std::any_of(lines.begin(), lines.end(),
                              [](const SketchedRun& run) { return norm(run.line.to - run.line.from) > 1.0; });
        if (!isPlan_)
            lines = standing(chain_);
        if (lines.empty())
            return;
        place(lines);
    }

    /// To the page: y down, centred, at the largest scale that leaves room for labels.
    void place(const std::vector<SketchedRun>& lines)
    {
        std::vector<Point> ends;
        for (const SketchedRun& run : lines) {
            ends.push_back(run.line.from);
            ends.push_back(run.line.to);
        }
        const Rectangle reach = bounds(ends);
        const auto within = [](double side) { return side - 2.0 * std::min(sideRoom, mostSideShare * side); };
        const double scale = std::min(within(page_.width()) / std::max(reach.width(), 1.0),
                                      within(page_.height()) / std::max(reach.height(), 1.0));
        const auto onPage = [&](Point point) {
            const Point off = point - reach.centre();
            return page_.centre() + Point{off.x * scale, -off.y * scale};
        };
        for (const SketchedRun& run : lines)
            made_.runs.push_back({run.run, {onPage(run.line.from), onPage(run.line.to)}});
    }

    [[nodiscard]] std::optional<SketchedRun> chosenLine() const
    {
        for (const SketchedRun& run : made_.runs)
            if (run.run == wish_.chosen)
                return run;
        return std::nullopt;
    }

    [[nodiscard]] bool isSuspect(std::size_t run) const
    {
        return missesItsStart(report_) && !report_.blames.empty() && report_.blames.front().length &&
               report_.blames.front().length->run == run;
    }

    [[nodiscard]] bool isDone(const site::Run& run) const
    {
        const auto marks = wish_.marks.find(run.id);
        return marks != wish_.marks.end() && marks->second.empty();
    }

    [[nodiscard]] double length(std::size_t run) const
    {
        return norm(made_.runs[run].line.to - made_.runs[run].line.from);
    }

    void drawRuns()
    {
        if (const auto chosen = chosenLine())
            made_.list.shapes.emplace_back(line(Role::Gauge, chosen->line.from, chosen->line.to, 2.6));
        for (const SketchedRun& run : made_.runs) {
            const Role role = isSuspect(run.run)             ? Role::Misclosure
                              : isDone(chain_.runs[run.run]) ? Role::Note
                                                             : Role::Run;
            made_.list.shapes.emplace_back(line(role, run.line.from, run.line.to, 0.8));
        }
    }

    void drawWalk()
    {
        const Point start = made_.runs.front().line.from;
        made_.list.shapes.emplace_back(Circle{Role::Run, start, 1.3, std::nullopt, Fill{}});
        if (!chain_.closed)
            made_.list.shapes.emplace_back(
                Circle{Role::Run, made_.runs.back().line.to, 1.1, Stroke{0.5, Dash::Solid, {}}, {}});
        if (length(0) < 12.0)
            return;
        const Segment first = made_.runs.front().line;
        const Point heading = unit(first.to - first.from);
        addArrow(made_.list.shapes, Role::Run, between(first.from, first.to, 0.5),
                 between(first.from, first.to, 0.5) + 3.0 * heading, 0.8, 3.0);
    }

    void drawCorners()
    {
        const auto interior = site::interiorAngles(chain_);
        if (!interior || made_.runs.size() != chain_.runs.size())
            return;
        for (std::size_t i = 0; i < chain_.corners.size(); ++i) {
            const std::size_t next = (i + 1) % chain_.runs.size();
            if (length(i) < 6.0 || length(next) < 6.0 || missingAt(i))
                continue;
            const Point at = made_.runs[i].line.to;
            const Point back = unit(made_.runs[i].line.from - at);
            const Point on = unit(made_.runs[next].line.to - made_.runs[next].line.from);
            if (std::holds_alternative<site::SquareOutside>(chain_.corners[i]) ||
                std::holds_alternative<site::SquareInside>(chain_.corners[i]))
                made_.list.shapes.emplace_back(Path{Role::Corner,
                                                    {at + 2.2 * back, at + 2.2 * (back + on), at + 2.2 * on},
                                                    false,
                                                    Stroke{0.25, Dash::Solid, {}},
                                                    {}});
            else
                drawAngle(at, on, (*interior)[i]);
        }
    }

    /// The corner where a chain closes that does not: its two runs do not meet.
    [[nodiscard]] bool missingAt(std::size_t corner) const
    {
        return corner + 1 == chain_.runs.size() && missesItsStart(report_);
    }

    void drawAngle(Point at, Point on, Angle interior)
    {
        const double start = std::atan2(-on.y, on.x);
        made_.list.shapes.emplace_back(
            Arc{Role::AngleMark, at, 3.0, start, interior.inRadians(), Stroke{0.25, Dash::Solid, {}}});
        const Point middle = direction(-(start + interior.inRadians() / 2.0));
        made_.list.shapes.emplace_back(words(Role::AngleMark, write(interior),
                                             at + 6.5 * middle + Point{0.0, 1.0}, idSize, Anchor::Middle));
    }

    void drawGap()
    {
        if (!missesItsStart(report_))
            return;
        const Point start = made_.runs.front().line.from, end = made_.runs.back().line.to;
        const Point middle = between(start, end, 0.5);
        made_.list.shapes.emplace_back(Circle{
            Role::Misclosure, middle, norm(start - end) / 2.0 + 2.6, Stroke{0.6, Dash::Dashed, {}}, {}});
        if (norm(start - end) > 2.0)
            addArrow(made_.list.shapes, Role::Misclosure, end, start, 0.5, 1.8);
    }

    void nameRun(const SketchedRun& placed)
    {
        const site::Run& run = chain_.runs[placed.run];
        if (norm(placed.line.to - placed.line.from) < undrawn)
            return;
        const auto measured = site::effectiveLength(run);
        const auto marks = wish_.marks.find(run.id);
        LabelWish label;
        label.text = measured ? write(measured->value, wish_.style) : run.id;
        label.below =
            translated(marks != wish_.marks.end() ? marks->second : run.id + " " + site::wordsFor(run.kind),
                       wish_.style);
        label.bold = true;
        label.size = labelSize;
        label.role = isSuspect(placed.run)        ? Role::Misclosure
                     : placed.run == wish_.chosen ? Role::Gauge
                                                  : Role::Label;
        label.target = between(placed.line.from, placed.line.to, 0.5);
        const Point outwards = quarter(unit(placed.line.to - placed.line.from));
        label.directions = {outwards, -1.0 * outwards};
        label.gap = 1.6;
        label.nearby = labelReach;
        label.reach = labelReach;
        label.mayCrossLines = false;
        if (placement_.place(label, made_.list.shapes))
            return;
        label.below.clear();
        placement_.place(label, made_.list.shapes);
    }

    const site::Chain& chain_;
    const site::ClosureReport& report_;
    const SketchWish& wish_;
    Rectangle page_;
    Placement placement_;
    PlanSketch made_;
    bool isPlan_ = true;
};

} // namespace

PlanSketch planSketch(const site::Chain& chain, const site::ClosureReport& report, const SketchWish& wish)
{
    return Sketcher(chain, report, wish).sketch();
}

std::optional<std::size_t> runAt(const PlanSketch& sketch, Point point, double reach)
{
    std::optional<std::size_t> nearest;
    double least = reach;
    for (const SketchedRun& run : sketch.runs)
        if (const double away = distance(point, run.line); away <= least) {
            least = away;
            nearest = run.run;
        }
    return nearest;
}

} // namespace lapwright::drawing
