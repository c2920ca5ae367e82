#pragma once

#include "acts/fold_programs.h"
#include "drawing/display_list.h"
#include "drawing/fold_ticket.h"
#include "fold/machine.h"
#include "fold/picture.h"
#include "measure/writing.h"
#include "metal/metal.h"
#include "pieces/order.h"
#include "print/paper.h"
#include "schedule/stock.h"

#include <QCommandLineParser>

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace lapwright::command {

/// What a colour looks like that no data file knows; its name is written beside it.
inline constexpr drawing::Colour unknownColour{140, 140, 140};

/// What every fold ticket says of the metal, the machine and the plan; the colour is unknownColour.
[[nodiscard]] drawing::FoldTicket foldTicketOf(const acts::Stuff& stuff, const site::Material& material,
                                               const fold::Machine& machine, const fold::FoldPlan& plan,
                                               const Style& style, drawing::AngleShown angles);

/// How the person asked for angles with --angles.
[[nodiscard]] drawing::AngleShown anglesOf(const QCommandLineParser& options);

/// Pictures of orders, in the shop's units and with the colours as its stock document says they look;
/// any other is unknownColour.
class Pictures {
public:
    Pictures(const schedule::ShopStock& stock, const Style& style, drawing::AngleShown angles);

    /// The profile in section with its dimensions.
    [[nodiscard]] drawing::DisplayList profile(const pieces::OrderedProfile& profile,
                                               const metal::Metal& metal) const;
    /// The fold ticket of one profile of the order, page by page. Precondition: `pictures` are of `plan`.
    [[nodiscard]] std::vector<drawing::DisplayList>
    foldTicket(const pieces::Order& order, std::size_t profile, const acts::FoldProgram& program,
               const fold::Machine& machine, const fold::FoldPictures& pictures,
               const print::Printing& printing) const;
    /// The chains of the order's job, with the marks of the pieces on each run.
    [[nodiscard]] std::string plan(const pieces::Order& order) const;

    [[nodiscard]] const Style& style() const { return style_; }
    [[nodiscard]] drawing::AngleShown angles() const { return angles_; }

    /// By name.
    [[nodiscard]] const std::map<std::string, drawing::Colour>& colours() const { return colours_; }

private:
    [[nodiscard]] drawing::Colour colourOf(const std::string& name) const;

    std::map<std::string, drawing::Colour> colours_;
    Style style_;
    drawing::AngleShown angles_;
};

} // namespace lapwright::command
