#include "fold/turning.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::fold {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

/// The turn, in the sense of `sign`, from direction `from` to direction `to`, in [0, 2π).
double turnBetween(Vector from, Vector to, double sign)
{
    const double angle = sign * std::atan2(cross(from, to), dot(from, to));
    return angle < 0.0 ? angle + 2.0 * std::numbers::pi : angle;
}

} // namespace

double squaredDistanceTo(Vector a, Vector b)
{
    const Vector along = b - a;
    const double squared = dot(along, along);
    const double at = squared > 0.0 ? std::clamp(-dot(a, along) / squared, 0.0, 1.0) : 0.0;
    const Vector nearest = a + at * along;
    return dot(nearest, nearest);
}

double cornerOntoEdge(Vector corner, Vector a, Vector b, double sign, double most)
{
    const Vector along = b - a;
    const double squared = dot(along, along);
    if (squared <= 0.0)
        return never;
    const double half = dot(a, along);
    const double root = half * half - squared * (dot(a, a) - dot(corner, corner));
    if (root < 0.0)
        return never;
    double least = never;
    for (const double branch : {-1.0, 1.0}) {
        const double at = (-half + branch * std::sqrt(root)) / squared;
        if (at < 0.0 || at > 1.0)
            continue;
        const double turn = turnBetween(corner, a + at * along, sign);
        if (turn <= most)
            least = std::min(least, turn);
    }
    return least;
}

double cornerOntoCircle(Vector corner, Vector centre, double radius, double sign, double most)
{
    const double orbit = lengthOf(corner), distance = lengthOf(centre);
    if (orbit <= 0.0 || distance <= 0.0)
        return never;
    const double cosine = (orbit * orbit + distance * distance - radius * radius) / (2.0 * orbit * distance);
    if (cosine < -1.0 || cosine > 1.0)
        return never;
    double turn = turnBetween(corner, centre, sign) - std::acos(cosine);
    if (turn < 0.0)
        turn += 2.0 * std::numbers::pi;
    return turn <= most ? turn : never;
}

} // namespace lapwright::fold
