#include "fold/turning.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lapwright::fold {

double squaredDistanceTo(Vector a, Vector b)
{
    const Vector along = b - a;
    const double squared = dot(along, along);
    const double at = squared > 0.0 ? std::clamp(-dot(a, along) / squared, 0.0, 1.0) : 0.0;
    const Vector nearest = a + at * along;
    return dot(nearest, nearest);
}

void cornerOntoEdge(Vector corner, Vector a, Vector b, double sign, FirstContact& first)
{
    const Vector along = b - a;
    const double squared = dot(along, along);
    if (squared <= 0.0)
        return;
    const double half = dot(a, along);
    const double root = half * half - squared * (dot(a, a) - dot(corner, corner));
    if (root < 0.0)
        return;
    for (const double branch : {-1.0, 1.0}) {
        const double at = (-half + branch * std::sqrt(root)) / squared;
        if (at >= 0.0 && at <= 1.0)
            first.consider(corner, a + at * along, sign);
    }
}

void cornerOntoCircle(Vector corner, Vector centre, double radius, double sign, FirstContact& first)
{
    const double orbit = lengthOf(corner), distance = lengthOf(centre);
    if (orbit <= 0.0 || distance <= 0.0)
        return;
    const double cosine = (orbit * orbit + distance * distance - radius * radius) / (2.0 * orbit * distance);
    if (cosine < -1.0 || cosine > 1.0)
        return;
    double turn = sign * std::atan2(cross(corner, centre), dot(corner, centre)) - std::acos(cosine);
    while (turn < 0.0)
        turn += 2.0 * std::numbers::pi;
    first.consider(turn);
}

double largestAngle(const std::vector<Vector>& points, Vector pole, double sense)
{
    Vector largest{1.0, -1.0};
    double order = -2.0; // grows with the angle
    for (const Vector point : points) {
        const Vector at{point.x - pole.x, sense * (point.y - pole.y)};
        const double size = std::abs(at.x) + std::abs(at.y);
        if (size < closeToPole)
            continue;
        if (at.y < 0.0 && at.x < closeToPole / 2.0)
            return std::numeric_limits<double>::infinity();
        const double its = at.x >= 0.0 ? at.y / size : 2.0 - at.y / size;
        if (its > order) {
            order = its;
            largest = at;
        }
    }
    return std::atan2(largest.y, largest.x);
}

} // namespace lapwright::fold
