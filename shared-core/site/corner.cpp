#include "site/corner.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::site {

namespace {

constexpr Angle doubtfulCorner = Angle::degrees(15.0);
constexpr Length tapeStep = Length::sixtyFourths(8);

template <class... Cases>
struct Choose : Cases... {
    using Cases::operator()...;
};
template <class... Cases>
Choose(Cases...) -> Choose<Cases...>;

std::optional<Angle> tapedAngle(const TapedTriangle& taped)
{
    const std::optional<Angle> within =
        angleAcross(taped.diagonal.value, taped.before.value, taped.after.value);
    if (!within)
        return std::nullopt;
    return taped.inside ? fullTurn - *within : *within;
}

rules::Finding noTriangle(const TapedTriangle& taped, const std::string& place)
{
    return {
        rules::Weight::Blocks,
        "site.corner.no-triangle",
        place,
        {"sides {before} and {after} and diagonal {diagonal} make no triangle",
         {{"before", taped.before.value}, {"after", taped.after.value}, {"diagonal", taped.diagonal.value}}},
        {"the diagonal must be shorter than the two sides together and longer than their difference; tape "
         "the three again",
         {}},
        std::nullopt};
}

rules::Finding impossibleAngle(Angle given, const std::string& place)
{
    return {rules::Weight::Blocks,
            "site.corner.angle",
            place,
            {"an interior angle of {given} is no corner", {{"given", given}}},
            {"give the angle on the building's side: 90° at a square outside corner, 270° at a square inside "
             "one, 180° straight on",
             {}},
            std::nullopt};
}

} // namespace

std::optional<Angle> angleAcross(Length diagonal, Length before, Length after)
{
    const double a = inMillimetres(before), b = inMillimetres(after), c = inMillimetres(diagonal);
    if (a <= 0.0 || b <= 0.0 || c <= 0.0 || c >= a + b || c <= std::abs(a - b))
        return std::nullopt;
    const double cosine = (a * a + b * b - c * c) / (2.0 * a * b);
    return Angle::radians(std::acos(std::clamp(cosine, -1.0, 1.0)));
}

std::optional<Angle> interiorAngle(const Corner& corner)
{
    const std::optional<Angle> angle =
        std::visit(Choose{[](SquareOutside) { return std::optional(quarterTurn); },
                          [](SquareInside) { return std::optional(Angle::degrees(270.0)); },
                          [](const InteriorAngle& given) { return std::optional(given.angle); },
                          [](const TapedTriangle& taped) { return tapedAngle(taped); }},
                   corner);
    // Written so that an angle that is not a number is refused as well.
    if (angle && *angle >= sharpestCorner && *angle <= fullTurn - sharpestCorner)
        return angle;
    return std::nullopt;
}

Angle tapedSensitivity(const TapedTriangle& triangle, Length error)
{
    const double a = inMillimetres(triangle.before.value), b = inMillimetres(triangle.after.value);
    const double c = inMillimetres(triangle.diagonal.value);
    const double gamma =
        angleAcross(triangle.diagonal.value, triangle.before.value, triangle.after.value).value().inRadians();
    const double cosine = std::cos(gamma), product = a * b * std::sin(gamma);
    const double perDiagonal = c / product;
    const double perBefore = std::abs(b * cosine - a) / product;
    const double perAfter = std::abs(a * cosine - b) / product;
    return Angle::radians(std::max({perDiagonal, perBefore, perAfter}) * std::abs(inMillimetres(error)));
}

rules::Findings checkCorner(const Corner& corner, Angle tolerance, const std::string& place)
{
    const std::optional<Angle> angle = interiorAngle(corner);
    const auto* taped = std::get_if<TapedTriangle>(&corner);
    if (!angle) {
        if (taped == nullptr)
            return {impossibleAngle(std::get<InteriorAngle>(corner).angle, place)};
        const std::optional<Angle> doubled = tapedAngle(*taped);
        return {doubled ? impossibleAngle(*doubled, place) : noTriangle(*taped, place)};
    }
    rules::Findings findings;
    if (*angle < doubtfulCorner || *angle > fullTurn - doubtfulCorner)
        findings.push_back({rules::Weight::Warns,
                            "site.corner.sharp",
                            place,
                            {"the interior angle {given} is very sharp", {{"given", *angle}}},
                            {"check that it is the angle on the building's side", {}},
                            std::nullopt});
    if (taped != nullptr && tapedSensitivity(*taped, tapeStep) > tolerance)
        findings.push_back({rules::Weight::Informs,
                            "site.corner.short-tape",
                            place,
                            {"{step} of tape is worth {angle} at this corner",
                             {{"step", tapeStep}, {"angle", tapedSensitivity(*taped, tapeStep)}}},
                            {"longer sides give the angle more sharply", {}},
                            std::nullopt});
    return findings;
}

} // namespace lapwright::site
