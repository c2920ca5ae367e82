#include "drawing/fold_picture.h"

#include "drawing/clipping.h"
#include "drawing/fold_step_panel.h"
#include "drawing/marks.h"
#include "drawing/move_marks.h"
#include "drawing/palette.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

namespace {

constexpr double margin = 6.0;
constexpr double panelWidth = 66.0;
constexpr double headHeight = 13.0;
constexpr double sheetThickness = 0.9;
constexpr double bandWidth = 1.2;
/// Room under the section for the gauge's dimension.
constexpr double gaugeRoom = 15.0;

/// A long flat part behind the bend line is taken out between `from` and `to` (real millimetres, from < to <
/// 0).
struct Break {
    double from = 0.0;
    double to = 0.0;

    [[nodiscard]] double moved(double x) const { return x >= to ? x : x > from ? to : x + (to - from); }
};

std::vector<Point> millimetres(const std::vector<fold::Point>& points)
{
    std::vector<Point> made;
    made.reserve(points.size());
    for (const fold::Point& point : points)
        made.push_back({inMillimetres(point.x), inMillimetres(point.y)});
    return made;
}

class StepPainter {
public:
    StepPainter(const fold::FoldStep& step, const fold::StepPicture& section, const FoldStepPicture& picture)
        : step_(step), section_(section), picture_(picture), before_(millimetres(section.before.middle)),
          after_(millimetres(section.after.middle)), page_{0.0, 0.0, inMillimetres(picture.width),
                                                           inMillimetres(picture.height)},
          view_{margin, picture.framed ? margin + headHeight : 2.0,
                page_.right - margin - (picture.framed ? panelWidth + 4.0 : 0.0),
                page_.bottom - margin - gaugeRoom - 4.0},
          placement_(view_)
    {
    }

    DisplayList paint()
    {
        findBreak();
        chooseScale();
        drawMachine();
        drawSheet();
        drawGauge();
        if (picture_.framed)
            head();
        nameParts();
        if (picture_.framed)
            addStepPanel(
                step_, picture_, section_.machine.gauge.has_value(),
                {page_.right - margin - panelWidth, margin + 15.0, page_.right - margin, page_.bottom},
                shapes_);
        foot();
        DisplayList list;
        list.width = picture_.width;
        list.height = picture_.height;
        list.title = said("Fold step " + std::to_string(picture_.number) + " of " +
                          std::to_string(picture_.count) + ", " + picture_.profile);
        list.description =
            said(stepAction(step_) + ", to gauge " + write(section_.gaugeSetting, picture_.style) + ", " +
                 writeAngle(step_.foldAngle, picture_.angles) + ", " + writeFace(step_) + ", " +
                 wordsFor(step_.move) + ".");
        list.shapes = std::move(shapes_);
        return list;
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, picture_.style);
    }

    [[nodiscard]] bool flattens() const { return step_.action == fold::Action::Flatten; }

    /// The longest flat stretch of the sheet on y = 0 well behind the bend line.
    void findBreak()
    {
        constexpr double left = 35.0, most = 150.0;
        double longest = most;
        for (std::size_t i = 0; i + 1 < after_.size(); ++i) {
            const Point a = after_[i], b = after_[i + 1];
            if (std::abs(a.y) > 0.01 || std::abs(b.y) > 0.01)
                continue;
            const double from = std::min(a.x, b.x) + left, to = std::min(std::max(a.x, b.x), -40.0) - left;
            if (to - from > longest - 2.0 * left) {
                longest = to - from + 2.0 * left;
                break_ = {from, to};
            }
        }
    }

    [[nodiscard]] Point moved(Point real) const { return {break_.moved(real.x), real.y}; }
    [[nodiscard]] Point onPage(Point real) const { return origin_ + scale_ * Point{moved(real).x, -real.y}; }

    /// A machine or sheet line with corners where it is broken.
    [[nodiscard]] std::vector<Point> brokenLine(const std::vector<Point>& line, bool closed) const
    {
        std::vector<Point> made;
        for (std::size_t i = 0; i < line.size(); ++i) {
            made.push_back(line[i]);
            if (i + 1 == line.size() && !closed)
                break;
            const Point next = line[(i + 1) % line.size()];
            std::vector<double> cuts{break_.from, break_.to};
            if (next.x < line[i].x)
                std::swap(cuts[0], cuts[1]);
            for (const double cut : cuts)
                if ((cut - line[i].x) * (cut - next.x) < 0.0)
                    made.push_back(between(line[i], next, (cut - line[i].x) / (next.x - line[i].x)));
        }
        return made;
    }

    void chooseScale()
    {
        std::vector<Point> all{{-25.0, -20.0}, {28.0, 25.0}};
        for (const std::vector<Point>* line : {&before_, &after_})
            for (const Point& point : *line)
                all.push_back(moved(point));
        if (section_.machine.gauge)
            all.push_back({break_.moved(inMillimetres(section_.machine.gauge->x)) - 4.0,
                           inMillimetres(section_.machine.fingerHeight)});
        const Rectangle reach = bounds(all).grown(6.0);
        const Rectangle room = view_.grown(-5.0);
        scale_ = picture_.framed ? usualScale(reach.width(), reach.height(), room)
                                 : std::min(room.width() / reach.width(), room.height() / reach.height());
        origin_ = room.centre() - scale_ * Point{reach.centre().x, -reach.centre().y};
    }

    /// How far the machine's parts make way for the sheet's drawn thickness and band, upwards or downwards.
    [[nodiscard]] double makeWay(bool up) const
    {
        return sheetThickness / 2.0 + (step_.colourUp == up ? bandWidth : 0.0) -
               inMillimetres(section_.after.thickness) / 2.0 * scale_ * 0.5;
    }

    /// A part of the machine: its ground cut to the view, its outline only where it is its own.
    void addPart(Role role, const fold::Outline& outline, Point shift, double turn, bool ghost)
    {
        std::vector<Point> corners;
        for (const Point& real : brokenLine(millimetres(outline), true)) {
            const Point turned{real.x * std::cos(turn) - real.y * std::sin(turn),
                               real.x * std::sin(turn) + real.y * std::cos(turn)};
            corners.push_back(onPage(turned) + shift);
        }
        if (const std::vector<Point> ground = clipped(corners, view_); !ghost && ground.size() > 2)
            shapes_.emplace_back(Path{role, ground, true, std::nullopt, Fill{}});
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const std::optional<Segment> edge =
                clipped(Segment{corners[i], corners[(i + 1) % corners.size()]}, view_);
            if (edge && norm(edge->to - edge->from) > 0.01)
                shapes_.emplace_back(
                    line(role, edge->from, edge->to, ghost ? 0.2 : 0.3, ghost ? Dash::Dashed : Dash::Solid));
        }
    }

    void drawMachine()
    {
        const bool up = step_.direction == fold::Direction::Up;
        addPart(Role::Machine, section_.machine.bed, {0.0, makeWay(false)}, 0.0, false);
        addPart(Role::Machine, section_.machine.clamp, {0.0, -makeWay(true)}, 0.0, false);
        const Point beamShift{0.4, up ? makeWay(false) : -makeWay(true)};
        addPart(Role::MovingBeam, section_.machine.beam, beamShift, 0.0, false);
        if (!flattens())
            addPart(Role::MovingBeam, section_.machine.beam, {},
                    (up ? 1.0 : -1.0) * step_.angleToSet.inRadians(), true);
    }

    [[nodiscard]] std::vector<Point> sheetOnPage(const std::vector<Point>& real) const
    {
        std::vector<Point> made;
        for (const Point& point : brokenLine(real, false)) {
            const Point at = onPage(point);
            if (made.empty() || norm(at - made.back()) > 1e-6)
                made.push_back(at);
        }
        return made;
    }

    void drawSheet()
    {
        shapes_.emplace_back(
            Path{Role::Sheet, sheetOnPage(before_), false, Stroke{0.3, Dash::Dashed, {}}, {}});
        const std::vector<Point> middle = sheetOnPage(after_);
        // On the page y runs down: left of the path as the machine lies is right of it here.
        const double side = section_.after.colourOnLeft ? -1.0 : 1.0;
        const std::vector<Point> face = beside(middle, side * (sheetThickness + bandWidth) / 2.0);
        const Colour black = paperInk(Role::Sheet).line;
        shapes_.emplace_back(
            Path{Role::ColouredFace, face, false, Stroke{bandWidth + 0.2, Dash::Solid, black}, {}});
        shapes_.emplace_back(
            Path{Role::ColouredFace, face, false, Stroke{bandWidth - 0.2, Dash::Solid, picture_.colour}, {}});
        shapes_.emplace_back(Path{
            Role::ColouredFace, face, false, Stroke{0.4, Dash::Dotted, contrasting(picture_.colour)}, {}});
        shapes_.emplace_back(
            Path{Role::Sheet, middle, false, Stroke{sheetThickness, Dash::Solid, black}, {}});
        shapes_.emplace_back(Path{Role::Sheet,
                                  middle,
                                  false,
                                  Stroke{sheetThickness - 0.4, Dash::Solid, paperInk(Role::Sheet).fill},
                                  {}});
        if (break_.to > break_.from)
            drawBreak();
    }

    /// Two slanted strokes with a gap: here a flat part is left out.
    void drawBreak()
    {
        const Point at = onPage({break_.to, 0.0});
        const double high = 4.0;
        const std::vector<Point> gap = {at + Point{-1.4, high}, at + Point{0.2, high}, at + Point{1.4, -high},
                                        at + Point{-0.2, -high}};
        shapes_.emplace_back(Path{Role::Note, gap, true, std::nullopt, Fill{}});
        shapes_.emplace_back(line(Role::Sheet, gap[0], gap[3], 0.25));
        shapes_.emplace_back(line(Role::Sheet, gap[1], gap[2], 0.25));
    }

    void drawGauge()
    {
        const double row = view_.bottom + 5.5;
        const double bend = origin_.x;
        if (!section_.machine.gauge) {
            const std::string text = flattens()
                                         ? "push the folded edge under the clamp"
                                         : "fold to a mark, " + write(section_.gaugeSetting, picture_.style) +
                                               " from the " + fold::nameOf(step_.touching);
            shapes_.emplace_back(
                words(Role::Gauge, said(text), {view_.left, row + 5.0}, 4.0, Anchor::Start, true));
            return;
        }
        const Point finger{inMillimetres(section_.machine.gauge->x), 0.0};
        const double top = inMillimetres(section_.machine.fingerHeight);
        const Point foot = onPage(finger);
        const Rectangle bar{foot.x - 1.8 - sheetThickness / 2.0, onPage({finger.x, top}).y,
                            foot.x - sheetThickness / 2.0, foot.y + makeWay(false)};
        shapes_.emplace_back(box(Role::Gauge, bar, Stroke{0.2, Dash::Solid, {}}, Fill{}));
        shapes_.emplace_back(
            line(Role::Gauge, {bar.right, bar.bottom + 1.0}, {bar.right, row + 1.5}, 0.18, Dash::DashDot));
        shapes_.emplace_back(
            line(Role::Gauge, {bend, origin_.y + 2.0}, {bend, row + 1.5}, 0.18, Dash::DashDot));
        const std::string text = write(section_.gaugeSetting, picture_.style);
        addArrow(shapes_, Role::Gauge, {bend - 2.5, row}, {bar.right, row}, 0.4,
                 std::min(2.4, (bend - bar.right) / 3.0));
        addArrow(shapes_, Role::Gauge, {bend - 2.5, row}, {bend, row}, 0.4,
                 std::min(2.4, (bend - bar.right) / 3.0));
        const double half = textWidth(text, 6.0, true) / 2.0;
        const double middle = std::clamp((bend + bar.right) / 2.0, view_.left + half, view_.right - half);
        shapes_.emplace_back(words(Role::Gauge, text, {middle, row + 8.4}, 6.0, Anchor::Middle, true));
    }

    void head()
    {
        const std::string title =
            said("Step " + std::to_string(picture_.number) + " of " + std::to_string(picture_.count));
        shapes_.emplace_back(words(Role::Title, title, {margin, margin + 4.8}, 5.0, Anchor::Start, true));
        const double after = margin + textWidth(title, 5.0, true) + 4.0;
        const std::string names =
            said(picture_.profile) + (picture_.machine.empty() ? "" : " \xC2\xB7 " + said(picture_.machine));
        shapes_.emplace_back(words(Role::Label, shortened(names, 3.2, page_.right - margin - after),
                                   {after, margin + 4.8}, 3.2));
        shapes_.emplace_back(
            line(Role::Note, {margin, margin + 7.6}, {page_.right - margin, margin + 7.6}, 0.2));
        shapes_.emplace_back(line(Role::Note, {page_.right - margin - panelWidth - 2.0, margin + 9.5},
                                  {page_.right - margin - panelWidth - 2.0, page_.bottom - margin}, 0.2));
    }

    void nameParts()
    {
        placement_.block(shapes_);
        if (!flattens()) {
            const double turn =
                (step_.direction == fold::Direction::Up ? 1.0 : -1.0) * step_.angleToSet.inRadians();
            const double radius = std::clamp(18.0 * scale_, 7.0, 14.0);
            const Arc swing{Role::AngleMark, origin_, radius, 0.0, turn, Stroke{0.3, Dash::Solid, {}}};
            shapes_.emplace_back(swing);
            placement_.block(Shape(swing));
            LabelWish angle;
            angle.text = said(writeAngle(step_.foldAngle, picture_.angles));
            angle.size = 4.2;
            angle.bold = true;
            angle.role = Role::AngleMark;
            const Point heading = direction(-turn / 2.0);
            angle.target = origin_ + radius * heading;
            angle.directions = {heading, direction(-turn / 3.0), direction(-turn * 2.0 / 3.0)};
            angle.gap = 0.9;
            placement_.place(angle, shapes_);
        }
        const std::vector<Point> middle = sheetOnPage(after_);
        std::size_t longest = 0;
        for (std::size_t i = 1; i + 1 < middle.size(); ++i)
            if (norm(middle[i + 1] - middle[i]) > norm(middle[longest + 1] - middle[longest]))
                longest = i;
        const Point along = unit(middle[longest + 1] - middle[longest]);
        const Point out = (section_.after.colourOnLeft ? -1.0 : 1.0) * quarter(along);
        LabelWish colour;
        colour.text = said("colour");
        colour.size = 3.0;
        colour.bold = true;
        colour.target =
            between(middle[longest], middle[longest + 1], 0.4) + (sheetThickness / 2.0 + bandWidth) * out;
        colour.directions = {out};
        colour.approach = out;
        colour.gap = 3.0;
        colour.nearby = 0.0;
        placement_.place(colour, shapes_);
    }

    void foot()
    {
        std::string note = said(
            break_.to > break_.from
                ? "Operator to the right. Dashed: as laid in. Sheet drawn thicker than it is, a flat part "
                  "behind left out."
                : "Operator to the right. Dashed: as laid in. Sheet drawn thicker than it is.");
        if (picture_.framed)
            note += " " + said("Scale") + " " + scaleName(scale_) + ".";
        double base = page_.bottom - 5.4;
        for (const std::string& part : wrapped(note, 2.3, view_.width())) {
            shapes_.emplace_back(words(Role::Note, part, {margin, base}, 2.3));
            base += 2.9;
        }
    }

    const fold::FoldStep& step_;
    const fold::StepPicture& section_;
    const FoldStepPicture& picture_;
    std::vector<Point> before_;
    std::vector<Point> after_;
    Rectangle page_;
    Rectangle view_;
    Placement placement_;
    Break break_;
    double scale_ = 1.0;
    Point origin_;
    std::vector<Shape> shapes_;
};

} // namespace

std::string stepAction(const fold::FoldStep& step)
{
    const bool up = step.direction == fold::Direction::Up;
    switch (step.action) {
    case fold::Action::Fold:
        return up ? "Fold up" : "Fold down";
    case fold::Action::FoldPartly:
        return up ? "Fold up, partly" : "Fold down, partly";
    case fold::Action::FinishFold:
        return up ? "Finish the fold up" : "Finish the fold down";
    case fold::Action::PreBend:
        return up ? "Pre-bend hem up" : "Pre-bend hem down";
    case fold::Action::Flatten:
        return step.openGap > Length() ? "Press to a gap" : "Flatten the hem";
    }
    return "";
}

DisplayList foldStepPicture(const fold::FoldStep& step, const fold::StepPicture& section,
                            const FoldStepPicture& picture)
{
    return StepPainter(step, section, picture).paint();
}

} // namespace lapwright::drawing
