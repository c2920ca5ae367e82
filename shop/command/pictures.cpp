#include "pictures.h"

#include "drawing/plan_picture.h"
#include "drawing/profile_picture.h"
#include "drawing/svg.h"

namespace lapwright::command {

drawing::Colour colourOf(const std::string& name)
{
    std::uint32_t hash = 2'166'136'261U;
    for (const char character : name)
        hash = (hash ^ static_cast<unsigned char>(character)) * 16'777'619U;
    const auto channel = [&](unsigned shift) {
        return static_cast<std::uint8_t>(40U + ((hash >> shift) & 0xFFU) / 2U);
    };
    return {channel(0), channel(8), channel(16)};
}

std::string profileSvg(const pieces::OrderedProfile& profile, const metal::Metal& metal, const Style& style)
{
    drawing::ProfilePicture picture;
    picture.thickness = profile.thickness;
    picture.metal = metal.name + ", " + profile.material.gauge;
    picture.colour = colourOf(profile.material.colour);
    picture.colourName = profile.material.colour;
    picture.girth = profile.girth;
    picture.style = style;
    return drawing::toSvg(drawing::profilePicture(profile.profile, picture));
}

std::string planSvg(const pieces::Order& order, const Style& style)
{
    drawing::PlanPicture picture;
    picture.style = style;
    for (const pieces::RunTakeoff& run : order.runs) {
        if (run.pieceCount == 0)
            continue;
        const std::string& first = order.pieces[run.firstPiece].mark;
        const std::string& last = order.pieces[run.firstPiece + run.pieceCount - 1].mark;
        std::string& marks = picture.marks[run.run];
        marks += (marks.empty() ? "" : ", ") + (first == last ? first : first + " to " + last);
    }
    return drawing::toSvg(drawing::planPicture(order.job, picture));
}

} // namespace lapwright::command
