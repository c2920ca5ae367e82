#include "drawing/profile_picture.h"

#include "drawing/marks.h"
#include "drawing/palette.h"
#include "drawing/placement.h"
#include "drawing/profile_frame.h"
#include "drawing/section.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::drawing {

namespace {

constexpr double labelSize = 3.0;
/// Room around the section for its dimensions.
constexpr double widestApron = 14.0;

const char* hemName(trim::HemKind kind)
{
    switch (kind) {
    case trim::HemKind::Closed:
        return "closed hem";
    case trim::HemKind::Open:
        return "open hem";
    case trim::HemKind::Teardrop:
        return "teardrop hem";
    }
    return "hem";
}

class Painter {
public:
    Painter(const trim::Profile& profile, const ProfilePicture& picture, double apron = widestApron)
        : profile_(profile),
          picture_(picture), page_{0.0, 0.0, inMillimetres(picture.width), inMillimetres(picture.height)},
          field_(fieldOf(page_, picture.framed)), apron_(apron), placement_(field_)
    {
    }

    DisplayList paint()
    {
        layOut();
        drawSheet();
        placement_.block(shapes_);
        drawAngleArcs();
        nameColour();
        for (std::size_t i = 0; i < section_.legs.size(); ++i)
            dimensionLeg(i);
        nameAngles();
        nameEdges();
        nameHems();
        addProfileFrame(frame(), shapes_);
        DisplayList list;
        list.width = picture_.width;
        list.height = picture_.height;
        list.title = translated(profile_.name, picture_.style);
        list.description = translated(description(), picture_.style);
        list.shapes = std::move(shapes_);
        return list;
    }

    [[nodiscard]] bool hasAllLabels() const { return leftOut_.empty(); }

private:
    [[nodiscard]] Point onPage(Point section) const { return {section.x + shift_.x, shift_.y - section.y}; }
    [[nodiscard]] std::vector<Point> onPage(const std::vector<Point>& section) const
    {
        std::vector<Point> points;
        points.reserve(section.size());
        for (const Point& point : section)
            points.push_back(onPage(point));
        return points;
    }
    /// A direction on the page.
    static Point flipped(Point heading) { return {heading.x, -heading.y}; }

    [[nodiscard]] SectionStyle styleAt(double scale) const
    {
        SectionStyle style;
        style.scale = scale;
        style.thickness = inMillimetres(picture_.thickness);
        return style;
    }

    void layOut()
    {
        const Rectangle room = field_.grown(-apron_);
        SectionStyle bare = styleAt(1.0);
        bare.leastThickness = 0.0;
        bare.bandWidth = 0.0;
        bare.hemGap = 0.0;
        const Rectangle real = bounds(drawSection(profile_, bare).sheet);
        const double wide = std::max(real.width(), 1.0), high = std::max(real.height(), 1.0);
        scale_ =
            picture_.scale.value_or(picture_.framed ? usualScale(wide, high, room)
                                                    : std::min(room.width() / wide, room.height() / high));
        section_ = drawSection(profile_, styleAt(scale_));
        std::vector<Point> all = section_.sheet;
        all.insert(all.end(), section_.colour.begin(), section_.colour.end());
        const Point middle = bounds(all).centre();
        shift_ = {room.centre().x - middle.x, room.centre().y + middle.y};
        centre_ = room.centre();
    }

    [[nodiscard]] double lengthOf(std::size_t leg) const
    {
        const Segment& measured = section_.legs[leg].measured;
        return norm(measured.to - measured.from);
    }

    void drawSheet()
    {
        const Stroke outline{0.2, Dash::Solid, {}};
        shapes_.emplace_back(Path{Role::ColouredFace, onPage(section_.colour), true, outline,
                                  Fill{true, picture_.colour, Hatch::None}});
        // The dots tell the coloured face where colours cannot be told apart.
        shapes_.emplace_back(Path{Role::ColouredFace,
                                  onPage(section_.colourMiddle),
                                  false,
                                  Stroke{0.4, Dash::Dotted, contrasting(picture_.colour)},
                                  {}});
        shapes_.emplace_back(Path{Role::Sheet, onPage(section_.sheet), true, outline, Fill{}});
    }

    /// The angle itself: the old direction carried on (fold angle) or the leg back (included angle), and an
    /// arc.
    void drawAngleArcs()
    {
        for (std::size_t i = 0; i < section_.bends.size(); ++i) {
            const DrawnBend& bend = section_.bends[i];
            const std::size_t firstMark = shapes_.size();
            const double shorter = std::min(lengthOf(i), lengthOf(i + 1));
            const double radius = std::clamp(0.55 * shorter, 2.5, 5.5);
            const double turn = profile_.bends[i].turn.inRadians();
            const Point apex = onPage(bend.apex);
            const double after = std::atan2(bend.after.y, bend.after.x);
            if (picture_.angles == AngleShown::Fold) {
                const Point before = flipped(bend.before);
                shapes_.emplace_back(line(Role::AngleMark, apex + 0.8 * before,
                                          apex + (radius + 1.2) * before, 0.15, Dash::Dashed));
                shapes_.emplace_back(
                    Arc{Role::AngleMark, apex, radius, after - turn, turn, Stroke{0.2, Dash::Solid, {}}});
            } else {
                const double included = (turn > 0.0 ? 1.0 : -1.0) * std::numbers::pi - turn;
                shapes_.emplace_back(
                    Arc{Role::AngleMark, apex, radius, after, included, Stroke{0.2, Dash::Solid, {}}});
            }
            radii_.push_back(radius);
            for (std::size_t mark = firstMark; mark < shapes_.size(); ++mark)
                placement_.blockForLabels(shapes_[mark]);
        }
    }

    /// The side of a leg that its dimension goes to first: outside its bends, else away from the middle of
    /// the picture.
    [[nodiscard]] std::vector<double> sidesOf(std::size_t leg) const
    {
        const Segment& measured = section_.legs[leg].measured;
        double left = 0.0;
        if (leg > 0)
            left -= profile_.bends[leg - 1].turn.inRadians();
        if (leg < profile_.bends.size())
            left -= profile_.bends[leg].turn.inRadians();
        if (std::abs(left) < 1e-6) {
            const Point middle = onPage(between(measured.from, measured.to, 0.5));
            left = dot(flipped(quarter(unit(measured.to - measured.from))), middle - centre_);
        }
        return left >= 0.0 ? std::vector<double>{1.0, -1.0} : std::vector<double>{-1.0, 1.0};
    }

    void dimensionLeg(std::size_t leg)
    {
        const std::string text = write(profile_.legs[leg].length, picture_.style);
        // Close by, on either side, before beyond a label that stands there already.
        for (const double side : sidesOf(leg))
            for (const double offset : {5.5, 4.0, 7.5, 9.5})
                for (const double start : {1.4, offset - 2.0})
                    if (tryDimension(section_.legs[leg].measured, side * offset, start, text))
                        return;
        for (const double side : sidesOf(leg))
            for (const double offset : {16.0, 19.0})
                for (const double start : {1.4, offset - 2.0})
                    if (tryDimension(section_.legs[leg].measured, side * offset, start, text))
                        return;
        const Segment& measured = section_.legs[leg].measured;
        const Point normal = flipped(quarter(unit(measured.to - measured.from)));
        LabelWish wish;
        wish.text = text;
        wish.size = labelSize;
        wish.role = Role::Dimension;
        wish.target = onPage(between(measured.from, measured.to, 0.5)) +
                      (section_.drawnThickness / 2.0) * sidesOf(leg).front() * normal;
        wish.directions = {sidesOf(leg).front() * normal, sidesOf(leg).back() * normal};
        wish.approach = normal;
        place({wish});
    }

    /// Dimension line at `offset` to the left of the leg with its text beside it, if there is room for all of
    /// it.
    bool tryDimension(const Segment& measured, double offset, double gap, const std::string& text)
    {
        const Point from = onPage(measured.from), to = onPage(measured.to);
        const Point normal =
            flipped(quarter(unit(measured.to - measured.from))) * (offset > 0.0 ? 1.0 : -1.0);
        const double away = std::abs(offset);
        const double start = section_.drawnThickness / 2.0 + gap;
        const Segment across{from + away * normal, to + away * normal};
        const Segment first{from + start * normal, from + (away + 0.8) * normal};
        const Segment second{to + start * normal, to + (away + 0.8) * normal};
        for (const Segment& part : {across, first, second})
            if (!placement_.isFree(part, true))
                return false;
        const double halfWidth = textWidth(text, labelSize) / 2.0;
        const double halfHeight = (ascentInEm + descentInEm) / 2.0 * labelSize;
        const double reach = std::abs(normal.x) * halfWidth + std::abs(normal.y) * halfHeight;
        for (const double beyond : {1.0, 2.5}) {
            const Box box{between(across.from, across.to, 0.5) + (reach + beyond) * normal, halfWidth,
                          halfHeight, 0.0};
            if (!placement_.isFree(box) || overlap(first, box.grown(0.4)) ||
                overlap(second, box.grown(0.4)) || overlap(across, box.grown(0.3)))
                continue;
            std::vector<Shape> made{line(Role::Dimension, first.from, first.to, 0.13),
                                    line(Role::Dimension, second.from, second.to, 0.13),
                                    line(Role::Dimension, across.from, across.to, 0.18)};
            for (const Point& end : {across.from, across.to})
                made.emplace_back(Circle{Role::Dimension, end, 0.45, std::nullopt, Fill{}});
            made.emplace_back(textIn(box, Role::Dimension, text, labelSize));
            placement_.block(made);
            shapes_.insert(shapes_.end(), made.begin(), made.end());
            return true;
        }
        return false;
    }

    void nameAngles()
    {
        for (std::size_t i = 0; i < section_.bends.size(); ++i) {
            const DrawnBend& bend = section_.bends[i];
            const Angle fold = magnitude(profile_.bends[i].turn);
            const bool showFold = picture_.angles == AngleShown::Fold;
            const Point towards = showFold ? bend.before + bend.after : bend.after - bend.before;
            const Point heading = norm(towards) > 1e-6 ? flipped(unit(towards)) : flipped(bend.after);
            LabelWish wish;
            wish.text = write(showFold ? fold : halfTurn - fold);
            wish.size = labelSize - 0.3;
            wish.role = Role::AngleMark;
            wish.target = onPage(bend.apex) + radii_[i] * heading;
            wish.directions = {heading, heading + 0.5 * quarter(heading), heading - 0.5 * quarter(heading)};
            wish.gap = 0.8;
            wish.reach = 5.0;
            if (placement_.place(wish, shapes_))
                continue;
            // No room by the arc: inside the bend, where both legs say which one is meant.
            LabelWish inside = wish;
            const Point inwards = flipped(bend.after - bend.before);
            const Point bisector = norm(inwards) > 1e-6 ? unit(inwards) : heading;
            inside.target = onPage(bend.apex) + (section_.drawnThickness / 2.0) * bisector;
            inside.directions = {bisector};
            inside.ignore = 2.6;
            inside.nearby = 5.0;
            if (placement_.place(inside, shapes_))
                continue;
            place({wish});
        }
    }

    void nameHems()
    {
        std::size_t drawn = 0;
        for (const auto* at : {&profile_.startHem, &profile_.endHem}) {
            const std::optional<trim::Hem>& hem = *at;
            if (!hem)
                continue;
            const DrawnHem& shape = section_.hems[drawn++];
            const bool isStart = at == &profile_.startHem;
            const Segment& leg = (isStart ? section_.legs.front() : section_.legs.back()).measured;
            LabelWish fold;
            fold.text =
                write(hem->flat, picture_.style) + " " + translated(hemName(hem->kind), picture_.style);
            fold.size = labelSize - 0.3;
            fold.role = Role::Dimension;
            fold.nearby = 0.0;
            fold.ignore = 2.6;
            fold.gap = 3.0;
            LabelWish flat = fold;
            flat.target = onPage(shape.middle);
            const Point outwards = flat.target - centre_;
            flat.directions = {outwards, quarter(outwards), -1.0 * quarter(outwards)};
            fold.target = onPage(shape.edge);
            fold.directions = {flipped(isStart ? leg.from - leg.to : leg.to - leg.from)};
            place({flat, fold});
        }
    }

    void nameColour()
    {
        std::size_t longest = 0;
        for (std::size_t i = 1; i < section_.legs.size(); ++i)
            if (lengthOf(i) > lengthOf(longest))
                longest = i;
        const Segment& measured = section_.legs[longest].measured;
        const double side = profile_.colourFace == trim::Side::Left ? 1.0 : -1.0;
        const Point normal = side * quarter(unit(measured.to - measured.from));
        const double face = section_.drawnThickness / 2.0 + styleAt(scale_).bandWidth;
        LabelWish wish;
        wish.text = translated("colour", picture_.style);
        wish.bold = true;
        wish.size = labelSize;
        wish.target = onPage(between(measured.from, measured.to, 0.3) + face * normal);
        wish.directions = {flipped(normal)};
        wish.approach = flipped(normal);
        wish.gap = 2.4;
        wish.nearby = 0.0;
        place({wish});
    }

    void nameEdges()
    {
        const std::vector<std::pair<Point, const char*>> edges = {{section_.firstEdge, "first edge"},
                                                                  {section_.lastEdge, "last edge"}};
        for (const auto& [edge, name] : edges) {
            LabelWish wish;
            wish.text = translated(name, picture_.style);
            wish.size = labelSize - 0.6;
            wish.role = Role::Note;
            wish.target = onPage(edge);
            const Point outwards = wish.target - centre_;
            wish.directions = {outwards, outwards + quarter(outwards), outwards - quarter(outwards)};
            wish.nearby = 2.0;
            wish.ignore = 2.6;
            wish.gap = 1.2;
            place({wish});
        }
    }

    /// One label at the first of several places that has room: near by before far away, across no line before
    /// across one.
    void place(std::vector<LabelWish> wishes)
    {
        constexpr double anywhere = 1e6;
        for (const auto& [reach, mayCross] : {std::pair(10.0, false), std::pair(20.0, false),
                                              std::pair(10.0, true), std::pair(anywhere, true)})
            for (LabelWish& wish : wishes) {
                wish.reach = reach;
                wish.mayCrossLines = mayCross;
                if (placement_.place(wish, shapes_))
                    return;
            }
        leftOut_.push_back(wishes.front().text);
    }

    [[nodiscard]] ProfileFrame frame() const
    {
        const double real = inMillimetres(picture_.thickness) * scale_;
        return {profile_.name,         picture_, page_, scale_, section_.drawnThickness > real * 1.05,
                !section_.trueToScale, leftOut_};
    }

    [[nodiscard]] std::string description() const
    {
        std::string text = "Section of " + profile_.name + ". From the first edge:";
        for (std::size_t i = 0; i < profile_.legs.size(); ++i) {
            text += (i == 0 ? " " : ", ") + profile_.legs[i].name + " " +
                    write(profile_.legs[i].length, picture_.style);
            if (i < profile_.bends.size())
                text += std::string(", fold ") + write(magnitude(profile_.bends[i].turn)) +
                        (profile_.bends[i].turn > Angle() ? " to the left" : " to the right");
        }
        return text + ". Coloured face on the " +
               (profile_.colourFace == trim::Side::Left ? "left" : "right") + " of the path.";
    }

    const trim::Profile& profile_;
    const ProfilePicture& picture_;
    Rectangle page_;
    Rectangle field_;
    double apron_;
    Placement placement_;
    double scale_ = 1.0;
    Point shift_;
    Point centre_;
    Section section_;
    std::vector<double> radii_;
    std::vector<Shape> shapes_;
    std::vector<std::string> leftOut_;
};

} // namespace

DisplayList profilePicture(const trim::Profile& profile, const ProfilePicture& picture)
{
    if (!picture.framed)
        for (const double apron : {6.0, 8.0, 11.0}) {
            Painter painter(profile, picture, apron);
            DisplayList list = painter.paint();
            if (painter.hasAllLabels())
                return list;
        }
    return Painter(profile, picture).paint();
}

} // namespace lapwright::drawing
