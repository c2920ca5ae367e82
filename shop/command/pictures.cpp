#include "pictures.h"

#include "drawing/plan_picture.h"
#include "drawing/profile_picture.h"
#include "drawing/svg.h"

namespace lapwright::command {

drawing::AngleShown anglesOf(const QCommandLineParser& options)
{
    return options.value("angles") == "included" ? drawing::AngleShown::Included : drawing::AngleShown::Fold;
}

Pictures::Pictures(const schedule::ShopStock& stock, const Style& style, drawing::AngleShown angles)
    : colours_(stock.colours), style_(style), angles_(angles)
{
}

drawing::Colour Pictures::colourOf(const std::string& name) const
{
    const auto colour = colours_.find(name);
    if (colour == colours_.end())
        return unknownColour;
    // The schema of the stock document holds it to "#rrggbb".
    const unsigned long value = std::stoul(colour->second.substr(1), nullptr, 16);
    return {static_cast<std::uint8_t>(value >> 16U), static_cast<std::uint8_t>((value >> 8U) & 0xFFU),
            static_cast<std::uint8_t>(value & 0xFFU)};
}

std::string Pictures::profile(const pieces::OrderedProfile& profile, const metal::Metal& metal) const
{
    drawing::ProfilePicture picture;
    picture.thickness = profile.thickness;
    picture.metal = metal.name + ", " + profile.material.gauge;
    picture.colour = colourOf(profile.material.colour);
    picture.colourName = profile.material.colour;
    picture.girth = profile.girth;
    picture.style = style_;
    picture.angles = angles_;
    return drawing::toSvg(drawing::profilePicture(profile.profile, picture));
}

drawing::FoldTicket foldTicketOf(const acts::Stuff& stuff, const site::Material& material,
                                 const fold::Machine& machine, const fold::FoldPlan& plan, const Style& style,
                                 drawing::AngleShown angles)
{
    drawing::FoldTicket ticket;
    ticket.metal = stuff.metal.name + ", " + stuff.sheet.gauge;
    ticket.thickness = stuff.sheet.thickness;
    ticket.colour = unknownColour;
    ticket.colourName = material.colour;
    ticket.machine = machine->name;
    if (machine->beamFaces.size() > 1)
        ticket.beamFace = machine->beamFaces[plan.beamFace].name;
    ticket.style = style;
    ticket.angles = angles;
    return ticket;
}

std::vector<std::string> Pictures::foldTicket(const pieces::Order& order, std::size_t profile,
                                              const acts::FoldProgram& program, const fold::Machine& machine,
                                              const fold::FoldPictures& pictures) const
{
    const pieces::OrderedProfile& ordered = order.profiles[profile];
    drawing::FoldTicket ticket =
        foldTicketOf(program.stuff, ordered.material, machine, *program.plan(), style_, angles_);
    ticket.job = order.job.name;
    ticket.colour = colourOf(ordered.material.colour);
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile)
            ticket.pieces.push_back({piece.mark, piece.count, piece.blankLength});
    std::vector<std::string> pages;
    for (const drawing::DisplayList& page :
         drawing::foldTicket(ordered.profile, program.flat, *program.plan(), pictures, ticket))
        pages.push_back(drawing::toSvg(page));
    return pages;
}

std::string Pictures::plan(const pieces::Order& order) const
{
    drawing::PlanPicture picture;
    picture.style = style_;
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
