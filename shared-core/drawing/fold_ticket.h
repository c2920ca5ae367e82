#pragma once

#include "drawing/display_list.h"
#include "drawing/profile_picture.h"
#include "drawing/ticket_page.h"
#include "fold/picture.h"
#include "measure/writing.h"
#include "trim/girth.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::drawing {

/// Pieces of one mark that are folded by the ticket.
struct TicketPieces {
    std::string mark;
    std::int64_t count = 1;
    Length length;
};

/// What a fold ticket says beside the profile and the plan.
struct FoldTicket {
    std::string job; ///< whose it is; may be empty
    std::string metal;
    Length thickness;
    Colour colour;
    std::string colourName;
    std::string machine;  ///< name
    std::string beamFace; ///< name of the one fitted; may be empty
    std::vector<TicketPieces> pieces;
    /// What a finished piece may be off. Common practice, no source: a shop sets its own.
    Length legTolerance = Length::inches(1) / 16;
    Angle angleTolerance = Angle::degrees(1.0);
    /// As the plan's settings have it: less than this nobody has to lift.
    Length slidesOver = fold::Settings().slidesOver;
    Style style;
    AngleShown angles = AngleShown::Fold;
    /// Said with the plan's own cautions, before the steps.
    std::string caution;
    TicketForm form;
};

/// The ticket that goes to the folder, on pages of the form: the finished profile, what to check on it and
/// how far it may be off, marks and piece count, all steps in a table with the gauge setting large, the
/// cautions, and then every step as a picture, two on a page. No label stands on a line or another label.
[[nodiscard]] std::vector<DisplayList> foldTicket(const trim::Profile& profile, const trim::FlatPattern& flat,
                                                  const fold::FoldPlan& plan,
                                                  const fold::FoldPictures& pictures,
                                                  const FoldTicket& ticket);

} // namespace lapwright::drawing
