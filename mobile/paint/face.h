#pragma once

#include <QFont>

namespace lapwright::paint {

/// DejaVu Sans, whose widths every picture is laid out with (drawing/text.h), from inside the program or else
/// from the system; unhinted, so that text keeps its proportions at every scale. Call it on the GUI thread
/// first: it registers the face.
[[nodiscard]] QFont pictureFace(bool bold);

} // namespace lapwright::paint
