#include "drawing/profile_picture.h"

#include "drawing/marks.h"
#include "drawing/palette.h"
#include "drawing/placement.h"
#include "drawing/section.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::drawing {

namespace {

constexpr double margin = 4.0;
constexpr double labelSize = 3.0;
/// Room around the section for its dimensions.
constexpr double apron = 14.0;
constexpr double headHeight = 13.0;
constexpr double footHeight = 14.0;

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
    Painter(const trim::Profile& profile, const ProfilePicture& picture)
        : profile_(profile),
          picture_(picture), page_{0.0, 0.0, inMillimetres(picture.width), inMillimetres(picture.height)},
          field_{margin, margin + headHeight, page_.right - margin, page_.bottom - margin - footHeight},
          placement_(field_)
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
        nameHems();
        nameEdges();
        head();
        foot();
        DisplayList list;
        list.width = picture_.width;
        list.height = picture_.height;
        list.title = profile_.name;
        list.description = description();
        list.shapes = std::move(shapes_);
        return list;
    }

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
        const Rectangle room = field_.grown(-apron);
        SectionStyle bare = styleAt(1.0);
        bare.leastThickness = 0.0;
        bare.bandWidth = 0.0;
        bare.hemGap = 0.0;
        const Rectangle real = bounds(drawSection(profile_, bare).sheet);
        scale_ = picture_.scale.value_or(
            usualScale(std::max(real.width(), 1.0), std::max(real.height(), 1.0), room));
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
        for (const double side : sidesOf(leg))
            for (const double offset : {5.5, 4.0, 7.5, 9.5})
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
        place(wish);
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
            wish.reach = 1e6;
            place(wish);
        }
    }

    void nameHems()
    {
        std::size_t drawn = 0;
        for (const auto& hem : {profile_.startHem, profile_.endHem}) {
            if (!hem)
                continue;
            const DrawnHem& shape = section_.hems[drawn++];
            LabelWish wish;
            wish.text = write(hem->flat, picture_.style) + " " + hemName(hem->kind);
            wish.size = labelSize - 0.3;
            wish.role = Role::Dimension;
            wish.target = onPage(shape.middle);
            const Point outwards = wish.target - centre_;
            wish.directions = {outwards, quarter(outwards), -1.0 * quarter(outwards)};
            wish.nearby = 0.0;
            wish.ignore = 2.6;
            wish.gap = 3.0;
            place(wish);
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
        wish.text = "colour";
        wish.bold = true;
        wish.size = labelSize;
        wish.target = onPage(between(measured.from, measured.to, 0.3) + face * normal);
        wish.directions = {flipped(normal)};
        wish.approach = flipped(normal);
        wish.gap = 2.4;
        wish.nearby = 0.0;
        place(wish);
    }

    void nameEdges()
    {
        const std::vector<std::pair<Point, const char*>> edges = {{section_.firstEdge, "first edge"},
                                                                  {section_.lastEdge, "last edge"}};
        for (const auto& [edge, name] : edges) {
            LabelWish wish;
            wish.text = name;
            wish.size = labelSize - 0.6;
            wish.role = Role::Note;
            wish.target = onPage(edge);
            const Point outwards = wish.target - centre_;
            wish.directions = {outwards, outwards + quarter(outwards), outwards - quarter(outwards)};
            wish.nearby = 2.0;
            wish.ignore = 2.6;
            wish.gap = 1.2;
            place(wish);
        }
    }

    void place(const LabelWish& wish)
    {
        if (!placement_.place(wish, shapes_))
            leftOut_.push_back(wish.text);
    }

    void head()
    {
        const double width = page_.width() - 2.0 * margin;
        const double left = width * 0.66;
        shapes_.emplace_back(words(Role::Title, shortened(profile_.name, 4.4, left, true),
                                   {margin, margin + 4.2}, 4.4, Anchor::Start, true));
        std::string facts;
        const auto add = [&](const std::string& fact) {
            if (!fact.empty())
                facts += (facts.empty() ? "" : " \xC2\xB7 ") + fact;
        };
        if (picture_.girth)
            add("girth " + write(*picture_.girth, picture_.style));
        add(picture_.metal);
        if (picture_.thickness > Length())
            add(writeThickness(picture_.thickness, picture_.style));
        shapes_.emplace_back(
            words(Role::Label, shortened(facts, labelSize, width), {margin, margin + 9.2}, labelSize));
        swatch(width);
        const double below = margin + 11.2;
        shapes_.emplace_back(line(Role::Note, {margin, below}, {page_.right - margin, below}, 0.2));
    }

    /// The colour's name with a piece of the band, upper right.
    void swatch(double width)
    {
        const std::string name = picture_.colourName.empty()
                                     ? "coloured face"
                                     : "colour: " + shortened(picture_.colourName, labelSize, 30.0);
        const double right = page_.right - margin;
        shapes_.emplace_back(words(Role::Label, name, {right, margin + 3.8}, labelSize, Anchor::End));
        const double end = right - textWidth(name, labelSize) - 1.5;
        const double start = std::max(end - 9.0, right - 0.34 * width);
        const double middle = margin + 2.8;
        shapes_.emplace_back(box(Role::ColouredFace, {start, middle - 1.1, end, middle + 1.1},
                                 Stroke{0.2, Dash::Solid, {}}, Fill{true, picture_.colour, Hatch::None}));
        shapes_.emplace_back(Path{Role::ColouredFace,
                                  {{start + 1.0, middle}, {end - 0.6, middle}},
                                  false,
                                  Stroke{0.4, Dash::Dotted, contrasting(picture_.colour)},
                                  {}});
    }

    [[nodiscard]] std::vector<std::string> notes() const
    {
        std::vector<std::string> said{std::string("Outside lengths. ") +
                                      (picture_.angles == AngleShown::Fold
                                           ? "Fold angles: 0\xC2\xB0 is flat."
                                           : "Included angles: 180\xC2\xB0 is flat.")};
        const double real = inMillimetres(picture_.thickness) * scale_;
        if (section_.drawnThickness > real * 1.05)
            said.back() += " Metal drawn thicker than it is.";
        if (!section_.trueToScale)
            said.back() += " Shortest parts drawn larger.";
        for (const std::string& missing : leftOut_)
            said.back() += " No room for: " + missing + ".";
        return said;
    }

    void foot()
    {
        const double top = page_.bottom - margin - footHeight + 3.0;
        shapes_.emplace_back(line(Role::Note, {margin, top}, {page_.right - margin, top}, 0.2));
        addScaleBar(shapes_, {margin, top + 4.6}, scale_, 40.0,
                    picture_.style.unit == LengthUnit::Millimetres);
        shapes_.emplace_back(words(Role::Label, "scale " + scaleName(scale_),
                                   {page_.right - margin, top + 4.6}, 2.6, Anchor::End));
        double base = top + 8.6;
        for (const std::string& note : notes())
            for (const std::string& row : wrapped(note, 2.3, page_.width() - 2.0 * margin)) {
                if (base > page_.bottom - 1.0)
                    return;
                shapes_.emplace_back(words(Role::Note, row, {margin, base}, 2.3));
                base += 3.0;
            }
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
    return Painter(profile, picture).paint();
}

} // namespace lapwright::drawing
