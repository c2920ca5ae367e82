#include "drawing/machine_picture.h"

#include "drawing/clipping.h"
#include "drawing/marks.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::drawing {

namespace {

constexpr double margin = 6.0;
constexpr double panelWidth = 66.0;
/// What is drawn of a machine, real millimetres about the bend line.
constexpr Rectangle shown{-330.0, -230.0, 170.0, 210.0};

class MachinePainter {
public:
    MachinePainter(const fold::Machine& machine, const MachinePicture& picture)
        : machine_(machine),
          picture_(picture), page_{0.0, 0.0, inMillimetres(picture.width), inMillimetres(picture.height)},
          view_{margin, margin + 11.0, page_.right - margin - panelWidth - 4.0, page_.bottom - margin - 5.0},
          scale_(usualScale(shown.width(), shown.height(), view_)),
          origin_(view_.centre() - scale_ * Point{shown.centre().x, shown.centre().y}), placement_(view_)
    {
    }

    DisplayList paint()
    {
        parts();
        names();
        panel();
        DisplayList list;
        list.width = picture_.width;
        list.height = picture_.height;
        list.title = said(machine_->name);
        list.description = said("Section of the machine, operator to the right.") + " " + described_;
        list.shapes = std::move(shapes_);
        return list;
    }

private:
    /// In the reader's language.
    [[nodiscard]] std::string said(const std::string& english) const
    {
        return translated(english, picture_.style);
    }

    /// Real millimetres, y up.
    [[nodiscard]] Point onPage(double x, double y) const { return origin_ + scale_ * Point{x, -y}; }

    void part(Role role, const fold::Outline& outline, bool ghost)
    {
        std::vector<Point> corners;
        for (const fold::Point& point : outline)
            corners.push_back(onPage(inMillimetres(point.x), inMillimetres(point.y)));
        if (const std::vector<Point> ground = clipped(corners, view_); !ghost && ground.size() > 2)
            shapes_.emplace_back(Path{role, ground, true, std::nullopt, Fill{}});
        for (std::size_t i = 0; i < corners.size(); ++i)
            if (const auto edge = clipped(Segment{corners[i], corners[(i + 1) % corners.size()]}, view_);
                edge && norm(edge->to - edge->from) > 0.01)
                shapes_.emplace_back(
                    line(role, edge->from, edge->to, ghost ? 0.2 : 0.3, ghost ? Dash::Dashed : Dash::Solid));
    }

    void parts()
    {
        part(Role::Machine, machine_->bed, false);
        part(Role::Machine, machine_->clamp, false);
        if (machine_->downFolding)
            part(Role::MovingBeam, machine_->downFolding->beam.body, true);
        for (std::size_t face = 0; face < machine_->beamFaces.size(); ++face)
            part(Role::MovingBeam, machine_->beamFaces[face].body, face != 0);
        const double angle = machine_->largestFoldAngle.inRadians(), reach = 400.0;
        const Segment folded{onPage(0.0, 0.0), onPage(reach * std::cos(angle), reach * std::sin(angle))};
        const Segment flat{onPage(-reach, 0.0), onPage(0.0, 0.0)};
        for (const Segment& sheet : {flat, folded})
            if (const auto seen = clipped(sheet, view_))
                shapes_.emplace_back(line(Role::Sheet, seen->from, seen->to, 0.35, Dash::DashDot));
    }

    void name(const std::string& text, Point target, std::vector<Point> directions)
    {
        LabelWish wish;
        wish.text = said(text);
        wish.size = 3.2;
        wish.target = target;
        wish.directions = std::move(directions);
        placement_.place(wish, shapes_);
    }

    static Point middleOf(const std::vector<Point>& points) { return bounds(points).centre(); }

    void names()
    {
        placement_.block(shapes_);
        const auto inView = [&](const fold::Outline& outline) {
            std::vector<Point> corners;
            for (const fold::Point& point : outline)
                corners.push_back(onPage(inMillimetres(point.x), inMillimetres(point.y)));
            return clipped(corners, view_);
        };
        const auto named = [&](const std::string& text, const fold::Outline& outline) {
            if (const std::vector<Point> seen = inView(outline); seen.size() > 2)
                name(text, middleOf(seen), {{0.0, -1.0}, {0.0, 1.0}, {1.0, 0.0}, {-1.0, 0.0}});
        };
        named("bed", machine_->bed);
        named("clamp", machine_->clamp);
        named("folding beam, " + machine_->beamFaces.front().name, machine_->beamFaces.front().body);
        for (std::size_t face = 1; face < machine_->beamFaces.size(); ++face)
            name(machine_->beamFaces[face].name + " face",
                 onPage(inMillimetres(machine_->beamFaces[face].width), 0.0),
                 {{1.0, -1.0}, {1.0, 0.0}, {0.0, -1.0}});
        if (machine_->downFolding)
            named("beam that folds down", machine_->downFolding->beam.body);
    }

    [[nodiscard]] std::string length(Length value) const { return write(value, picture_.style); }

    [[nodiscard]] std::vector<std::pair<std::string, std::string>> facts() const
    {
        std::vector<std::pair<std::string, std::string>> all{
            {"bending length", length(machine_->bendingLength)},
            {"capacity",
             writeThickness(machine_->capacity.thickness, picture_.style) + " " + machine_->capacity.metal},
            {"folds", std::string(machine_->downFolding ? "up and down" : "up only") + ", " +
                          write(machine_->largestFoldAngle)},
            {"clamp opens", length(machine_->clampOpening)},
            {"throat", length(machine_->throat)},
            {"least leg", length(machine_->leastLeg)}};
        if (machine_->backGauge)
            all.emplace_back("back gauge",
                             length(machine_->backGauge->least) + " to " + length(machine_->backGauge->most));
        else
            all.emplace_back("back gauge", "none, to marks");
        all.emplace_back("hems", !machine_->flattensHems ? "not pressed"
                                 : machine_->largestOpenHem > Length()
                                     ? "closed, open to " + length(machine_->largestOpenHem)
                                     : "closed");
        return all;
    }

    void panel()
    {
        const double width = page_.width() - 2.0 * margin;
        shapes_.emplace_back(words(Role::Title, shortened(said(machine_->name), 5.0, width, true),
                                   {margin, margin + 4.8}, 5.0, Anchor::Start, true));
        shapes_.emplace_back(
            line(Role::Note, {margin, margin + 7.6}, {page_.right - margin, margin + 7.6}, 0.2));
        const double left = page_.right - margin - panelWidth;
        double row = margin + 15.0;
        for (const auto& [name, measure] : facts()) {
            const std::string fact = said(name), value = said(measure);
            shapes_.emplace_back(words(Role::Note, fact, {left, row}, 3.0));
            shapes_.emplace_back(words(Role::Label, shortened(value, 3.4, panelWidth - 25.0, true),
                                       {left + 25.0, row}, 3.4, Anchor::Start, true));
            described_ += fact + ": " + value + ". ";
            row += 6.0;
        }
        for (const std::string& part : wrapped(said(machine_->note), 2.8, panelWidth)) {
            if (row > page_.bottom - margin - 4.0)
                break;
            shapes_.emplace_back(words(Role::Note, part, {left, row + 2.0}, 2.8));
            row += 3.8;
        }
        shapes_.emplace_back(
            words(Role::Note,
                  said("Operator to the right. Chain line: the sheet, folded as far as the clamp lets it.") +
                      " " + said("Scale") + " " + scaleName(scale_) + ".",
                  {margin, page_.bottom - 3.0}, 2.3));
    }

    const fold::Machine& machine_;
    const MachinePicture& picture_;
    Rectangle page_;
    Rectangle view_;
    double scale_;
    Point origin_;
    Placement placement_;
    std::vector<Shape> shapes_;
    std::string described_;
};

} // namespace

DisplayList machinePicture(const fold::Machine& machine, const MachinePicture& picture)
{
    return MachinePainter(machine, picture).paint();
}

} // namespace lapwright::drawing
