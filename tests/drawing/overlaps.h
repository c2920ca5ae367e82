#pragma once

// What a person would complain about in a picture: a text that lies over a line, over another text, or
// outside the page. Written apart from the placement itself, which it checks: dense sampling instead of
// separating axes.
#include "drawing/display_list.h"
#include "drawing/placement.h"
#include "drawing/text.h"
#include "measure/rounding.h"

#include <cmath>
#include <set>
#include <string>
#include <vector>

namespace lapwright::drawing {

inline bool insideBox(Point point, const Box& box)
{
    const Point off = point - box.centre;
    const Point along = direction(box.rotation);
    return std::abs(dot(off, along)) < box.halfWidth && std::abs(dot(off, quarter(along))) < box.halfHeight;
}

inline bool runsThrough(const Segment& segment, const Box& box)
{
    const Rectangle reach = box.bounds();
    if (std::max(segment.from.x, segment.to.x) < reach.left ||
        std::min(segment.from.x, segment.to.x) > reach.right ||
        std::max(segment.from.y, segment.to.y) < reach.top ||
        std::min(segment.from.y, segment.to.y) > reach.bottom)
        return false;
    const int steps = 1 + static_cast<int>(norm(segment.to - segment.from) / 0.1);
    for (int i = 0; i <= steps; ++i)
        if (insideBox(between(segment.from, segment.to, static_cast<double>(i) / steps), box))
            return true;
    return false;
}

inline bool sampledOverlap(const Box& left, const Box& right)
{
    if (norm(left.centre - right.centre) >
        std::hypot(left.halfWidth, left.halfHeight) + std::hypot(right.halfWidth, right.halfHeight))
        return false;
    for (int i = 0; i <= 60; ++i)
        for (int k = 0; k <= 12; ++k) {
            const Point along = direction(left.rotation);
            const Point at = left.centre + (left.halfWidth * (i / 30.0 - 1.0)) * along +
                             (left.halfHeight * (k / 6.0 - 1.0)) * quarter(along);
            if (insideBox(at, right))
                return true;
        }
    return false;
}

inline bool onPage(const DisplayList& list, Point point)
{
    constexpr double slack = 1e-6;
    return std::isfinite(point.x) && std::isfinite(point.y) && point.x >= -slack && point.y >= -slack &&
           point.x <= inMillimetres(list.width) + slack && point.y <= inMillimetres(list.height) + slack;
}

/// Everything wrong with a picture, in words. Lines of `mayBeCovered` roles may run under texts.
inline std::vector<std::string> faultsOf(const DisplayList& list, const std::set<Role>& mayBeCovered = {})
{
    std::vector<std::string> faults;
    std::vector<const Text*> texts;
    for (const Shape& shape : list.shapes) {
        if (const auto* text = std::get_if<Text>(&shape))
            texts.push_back(text);
        for (const Segment& line : strokes(shape))
            if (!onPage(list, line.from) || !onPage(list, line.to))
                faults.emplace_back("a line leaves the page");
    }
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const Box box = boxOf(*texts[i]).grown(-0.02);
        for (const Point& corner : box.corners())
            if (!onPage(list, corner))
                faults.push_back("off the page: " + texts[i]->text);
        for (std::size_t k = i + 1; k < texts.size(); ++k)
            if (sampledOverlap(box, boxOf(*texts[k])) || sampledOverlap(boxOf(*texts[k]), box))
                faults.push_back(texts[i]->text + " over " + texts[k]->text);
        for (const Shape& shape : list.shapes) {
            const Role role = std::visit([](const auto& kind) { return kind.role; }, shape);
            if (mayBeCovered.count(role) != 0)
                continue;
            for (const Segment& line : strokes(shape))
                if (runsThrough(line, box)) {
                    faults.push_back("a line through: " + texts[i]->text);
                    break;
                }
        }
    }
    return faults;
}

} // namespace lapwright::drawing
