#include "pictures.h"

#include "drawing/plan_picture.h"
#include "drawing/profile_picture.h"
#include "drawing/svg.h"
#include "pieces/summary.h"
#include "print/words.h"

namespace lapwright::command {

drawing::AngleShown anglesOf(const QCommandLineParser& options)
{
    return options.value("angles") == "included" ? drawing::AngleShown::Included : drawing::AngleShown::Fold;
}

Pictures::Pictures(const schedule::ShopStock& stock, const Style& style, drawing::AngleShown angles)
    : style_(style), angles_(angles)
{
    for (const auto& [name, colour] : stock.colours) {
        // The schema of the stock document holds it to "#rrggbb".
        const unsigned long value = std::stoul(colour.substr(1), nullptr, 16);
        colours_[name] = {static_cast<std::uint8_t>(value >> 16U),
                          static_cast<std::uint8_t>((value >> 8U) & 0xFFU),
                          static_cast<std::uint8_t>(value & 0xFFU)};
    }
}

drawing::Colour Pictures::colourOf(const std::string& name) const
{
    const auto colour = colours_.find(name);
    return colour == colours_.end() ? unknownColour : colour->second;
}

drawing::DisplayList Pictures::profile(const pieces::OrderedProfile& profile, const metal::Metal& metal) const
{
    drawing::ProfilePicture picture;
    picture.thickness = profile.thickness;
    picture.metal = metal.name + ", " + profile.material.gauge;
    picture.colour = colourOf(profile.material.colour);
    picture.colourName = profile.material.colour;
    picture.girth = profile.girth;
    picture.style = style_;
    picture.angles = angles_;
    return drawing::profilePicture(profile.profile, picture);
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

std::vector<drawing::DisplayList> Pictures::foldTicket(const pieces::Order& order, std::size_t profile,
                                                       const acts::FoldProgram& program,
                                                       const fold::Machine& machine,
                                                       const fold::FoldPictures& pictures,
                                                       const print::Printing& printing) const
{
    const pieces::OrderedProfile& ordered = order.profiles[profile];
    drawing::FoldTicket ticket =
        foldTicketOf(program.stuff, ordered.material, machine, *program.plan(), style_, angles_);
    ticket.job = order.job.name;
    ticket.colour = colourOf(ordered.material.colour);
    ticket.caution = print::cautionOnFoldTickets();
    ticket.form = {printing.paper.width, printing.paper.height,
                   print::footOf(order.job.name, order.revision, printing)};
    for (const pieces::Piece& piece : order.pieces)
        if (piece.profile == profile)
            ticket.pieces.push_back({piece.mark, piece.count, piece.blankLength});
    return drawing::foldTicket(ordered.profile, program.flat, *program.plan(), pictures, ticket);
}

std::string Pictures::plan(const pieces::Order& order) const
{
    drawing::PlanPicture picture;
    picture.style = style_;
    picture.marks = pieces::marksByRun(order);
    return drawing::toSvg(drawing::planPicture(order.job, picture));
}

} // namespace lapwright::command
