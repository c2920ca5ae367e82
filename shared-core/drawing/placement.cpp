#include "drawing/placement.h"

#include "drawing/text.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::drawing {

namespace {

/// Side of a cell of the search grid, about as large as a label.
constexpr double cell = 8.0;
/// Step between rings, and between places on a ring.
constexpr double ringStep = 1.5;
/// Size of a label's second line to its first.
constexpr double belowShare = 0.8;

std::vector<Segment> chords(Point centre, double radius, double start, double sweep)
{
    constexpr double sag = 0.05;
    const double step = radius > sag ? 2.0 * std::acos(1.0 - sag / radius) : std::numbers::pi / 2.0;
    const int count = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / step)));
    std::vector<Segment> lines;
    lines.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        lines.push_back({centre + radius * direction(-start - sweep * i / count),
                         centre + radius * direction(-start - sweep * (i + 1) / count)});
    return lines;
}

Rectangle boundsOf(const Segment& segment)
{
    return bounds({segment.from, segment.to});
}

} // namespace

std::vector<Segment> strokes(const Shape& shape)
{
    std::vector<Segment> lines;
    if (const auto* path = std::get_if<Path>(&shape)) {
        if (!path->stroke && !(path->fill && path->fill->ground))
            return lines;
        for (std::size_t i = 0; i + 1 < path->points.size(); ++i)
            lines.push_back({path->points[i], path->points[i + 1]});
        if (path->closed && path->points.size() > 2)
            lines.push_back({path->points.back(), path->points.front()});
    } else if (const auto* circle = std::get_if<Circle>(&shape)) {
        lines = chords(circle->centre, circle->radius, 0.0, 2.0 * std::numbers::pi);
    } else if (const auto* arc = std::get_if<Arc>(&shape)) {
        lines = chords(arc->centre, arc->radius, arc->start, arc->sweep);
    }
    return lines;
}

Placement::Placement(Rectangle area)
    : area_(area), columns_(static_cast<std::size_t>(std::max(area.width(), 0.0) / cell) + 1),
      rows_(static_cast<std::size_t>(std::max(area.height(), 0.0) / cell) + 1), cells_(columns_ * rows_)
{
}

std::size_t Placement::column(double x) const
{
    const double index = std::floor((x - area_.left) / cell);
    return static_cast<std::size_t>(std::clamp(index, 0.0, static_cast<double>(columns_ - 1)));
}

std::size_t Placement::row(double y) const
{
    const double index = std::floor((y - area_.top) / cell);
    return static_cast<std::size_t>(std::clamp(index, 0.0, static_cast<double>(rows_ - 1)));
}

void Placement::add(const Item& item, const Rectangle& where)
{
    items_.push_back(item);
    for (std::size_t y = row(where.top); y <= row(where.bottom); ++y)
        for (std::size_t x = column(where.left); x <= column(where.right); ++x)
            cells_[y * columns_ + x].push_back(items_.size() - 1);
}

template <class Test>
bool Placement::anyNear(const Rectangle& where, Test test) const
{
    for (std::size_t y = row(where.top); y <= row(where.bottom); ++y)
        for (std::size_t x = column(where.left); x <= column(where.right); ++x)
            for (const std::size_t index : cells_[y * columns_ + x])
                if (test(items_[index]))
                    return true;
    return false;
}

void Placement::block(const Segment& segment)
{
    add({Item::Kind::Line, segment, {}}, boundsOf(segment));
}

void Placement::block(const Box& box)
{
    add({Item::Kind::Label, {}, box}, box.bounds());
}

void Placement::blockForLabels(const Shape& shape)
{
    for (const Segment& line : strokes(shape))
        add({Item::Kind::CrossableLine, line, {}}, boundsOf(line));
}

void Placement::block(const Shape& shape)
{
    if (const auto* text = std::get_if<Text>(&shape))
        block(boxOf(*text));
    for (const Segment& line : strokes(shape))
        block(line);
}

void Placement::block(const std::vector<Shape>& shapes)
{
    for (const Shape& shape : shapes)
        block(shape);
}

bool Placement::isFree(const Box& box) const
{
    if (!area_.contains(box.bounds()))
        return false;
    const Box roomy = box.grown(clearance);
    return !anyNear(roomy.bounds(), [&](const Item& item) {
        return item.kind == Item::Kind::Label ? overlap(roomy, item.box) : overlap(item.segment, roomy);
    });
}

bool Placement::isFree(const Segment& segment, bool offLines, double ignore) const
{
    if (!area_.contains(boundsOf(segment)))
        return false;
    const double length = norm(segment.to - segment.from);
    const Segment checked{segment.from, length > ignore
                                            ? between(segment.from, segment.to, 1.0 - ignore / length)
                                            : segment.from};
    return !anyNear(boundsOf(segment).grown(clearance), [&](const Item& item) {
        if (item.kind == Item::Kind::Label)
            return overlap(segment, item.box.grown(clearance / 2.0));
        return offLines && item.kind == Item::Kind::Line && intersect(checked, item.segment);
    });
}

bool Placement::tryAt(const LabelWish& wish, const Box& box, Care care, std::vector<Shape>& onto)
{
    if (!isFree(box))
        return false;
    const Rectangle rim = box.bounds().grown(0.4);
    const Point nearest{std::clamp(wish.target.x, rim.left, rim.right),
                        std::clamp(wish.target.y, rim.top, rim.bottom)};
    const Segment leader{nearest, wish.target};
    const double length = norm(leader.to - leader.from);
    const bool needsLeader = length > wish.nearby;
    if (needsLeader || (length > 1e-6 && care != Care::AcrossLines))
        if (!isFree(leader, care != Care::AcrossLines, wish.ignore))
            return false;
    if (needsLeader && wish.approach && care == Care::Full &&
        std::abs(dot(leader.to - leader.from, unit(*wish.approach))) < 0.5 * length)
        return false;
    const double below = wish.below.empty() ? 0.0 : belowShare * wish.size;
    onto.emplace_back(textIn({box.centre - Point{0.0, below / 2.0}, box.halfWidth, wish.size / 2.0, 0.0},
                             wish.role, wish.text, wish.size, wish.bold));
    if (!wish.below.empty())
        onto.emplace_back(textIn({box.centre + Point{0.0, wish.size / 2.0}, box.halfWidth, below / 2.0, 0.0},
                                 wish.role, wish.below, below));
    block(box);
    if (needsLeader) {
        onto.emplace_back(
            Path{Role::Leader, {leader.from, leader.to}, false, Stroke{0.15, Dash::Solid, {}}, {}});
        block(leader);
    }
    return true;
}

bool Placement::place(const LabelWish& wish, std::vector<Shape>& onto)
{
    const double halfWidth =
        std::max(textWidth(wish.text, wish.size, wish.bold), textWidth(wish.below, belowShare * wish.size)) /
        2.0;
    const double halfHeight =
        (ascentInEm + descentInEm) / 2.0 * wish.size * (wish.below.empty() ? 1.0 : 1.0 + belowShare);
    const double farthest = std::hypot(area_.width(), area_.height());
    const auto boxAt = [&](Point heading, double gap) {
        const double extent = std::abs(heading.x) * halfWidth + std::abs(heading.y) * halfHeight;
        return Box{wish.target + (extent + gap) * heading, halfWidth, halfHeight, 0.0};
    };
    for (const Care care : {Care::Full, Care::AnyApproach, Care::AcrossLines}) {
        if (care == Care::AcrossLines && !wish.mayCrossLines)
            return false;
        for (double gap = wish.gap; gap < std::min(wish.gap + 2.0 * ringStep, wish.reach) + 0.1;
             gap += ringStep)
            for (const Point& heading : wish.directions)
                if (norm(heading) > 0.0 && tryAt(wish, boxAt(unit(heading), gap), care, onto))
                    return true;
        const double reach = std::min(wish.reach, care == Care::Full ? farthest / 3.0 : farthest);
        for (double gap = wish.gap; gap < reach; gap += ringStep) {
            const int places =
                std::max(16, static_cast<int>(gap * 2.0 * std::numbers::pi / (2.0 * ringStep)));
            for (int i = 0; i < places; ++i)
                if (tryAt(wish, boxAt(direction(2.0 * std::numbers::pi * i / places), gap), care, onto))
                    return true;
        }
    }
    return false;
}

} // namespace lapwright::drawing
