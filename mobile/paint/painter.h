#pragma once

#include "drawing/display_list.h"
#include "paint/inks.h"

#include <QTransform>

class QPainter;
class QRectF;

/// Pictures on screens and on paper: the shapes of drawing/display_list.h with Qt's painter, with the same
/// meaning as the SVG writer gives them.
namespace lapwright::paint {

/// From millimetres on the picture's page to the units of `into`: the largest even scale at which the page
/// fits, centred. Nothing moves if the page or `into` has no extent.
[[nodiscard]] QTransform placed(const drawing::DisplayList& list, const QRectF& into);

/// Paints the picture into `into`, page ground and all. Hand in the page's own size in device units to print
/// true to size. The painter is left as it was.
void paint(QPainter& painter, const drawing::DisplayList& list, const QRectF& into,
           Ground ground = Ground::Paper);

/// The same with a place of the caller's own (zoomed, panned): `place` takes millimetres to device units.
/// Nothing is painted outside the page.
void paint(QPainter& painter, const drawing::DisplayList& list, const QTransform& place, Ground ground);

} // namespace lapwright::paint
