#include "example_trim.h"

#include "drawing/profile_picture.h"

#include <cmath>

namespace lapwright::model {

namespace {

/// What a run at 6 in 12 with square corners supplies, to draw a trim by; measures without a default a
/// quarter up their range.
trim::Site exampleSite(const trim::Template& trim)
{
    using trim::AngleMeasure;
    const Angle slope = Slope::twelfths(6).angle();
    const site::RunKind kind = trim.suits.empty() ? site::RunKind::Eave : trim.suits.front();
    const double flat = std::cos(slope.inRadians());
    // Two equal planes over a square corner: cos(crease) = cos² θ.
    const Angle crease = Angle::radians(std::acos(flat * flat));
    trim::Site made;
    made.angles[AngleMeasure::Slope] = slope;
    made.angles[AngleMeasure::OtherSlope] =
        kind == site::RunKind::SlopeChange ? Slope::twelfths(12).angle() : slope;
    made.angles[AngleMeasure::CreaseTurn] = kind == site::RunKind::Hip ? -crease : crease;
    made.angles[AngleMeasure::WallTurn] = kind == site::RunKind::InsideCorner ? -quarterTurn : quarterTurn;
    for (const trim::MeasureDeclaration& measure : trim.measures)
        if (!measure.byDefault)
            made.measures[measure.name] = measure.least + (measure.most - measure.least) / 4;
    return made;
}

} // namespace

std::optional<drawing::DisplayList> drawExample(const trim::Template& trim, const Style& style)
{
    const trim::Resolution made = trim::resolve(trim, exampleSite(trim));
    if (!made.profile)
        return std::nullopt;
    drawing::ProfilePicture picture;
    picture.thickness = Length::thousandths(24);
    picture.colour = {74, 106, 128};
    picture.style = style;
    return drawing::profilePicture(*made.profile, picture);
}

} // namespace lapwright::model
