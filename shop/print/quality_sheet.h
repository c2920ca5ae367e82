#pragma once

#include "drawing/display_list.h"
#include "drawing/profile_picture.h"
#include "measure/writing.h"
#include "pieces/order.h"
#include "print/paper.h"
#include "print/sheet.h"

#include <map>
#include <string>

namespace lapwright::print {

/// How far a finished piece may be off. Common practice, no source: a shop sets its own.
struct Tolerances {
    Length leg = Length::inches(1) / 16;
    Angle angle = Angle::degrees(1.0);
    Length girth = Length::inches(1) / 32;
    Length pieceLength = Length::inches(1) / 8;
};

/// What a finished piece is measured against: for each profile its section, and every leg, bend and hem with
/// the value wanted, how far it may be off, and room for the first and the last piece. `colours` is
/// what colours look like, by name; any other is grey, and named. `angles` is how they are read off.
[[nodiscard]] Sheet qualitySheet(const pieces::Order& order, const Tolerances& tolerances,
                                 const std::map<std::string, drawing::Colour>& colours,
                                 const Printing& printing, const Style& style,
                                 drawing::AngleShown angles = drawing::AngleShown::Fold);

} // namespace lapwright::print
