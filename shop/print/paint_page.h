#pragma once

#include "print/page.h"

class QPainter;
class QRectF;

namespace lapwright::print {

/// The page painted into `into`, which has the page's shape: on paper for the printer and the PDF, on a
/// screen to look at it first. The painter is left as it was.
void paint(QPainter& painter, const Page& page, const QRectF& into);

} // namespace lapwright::print
