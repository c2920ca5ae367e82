#pragma once

#include "model/field_app.h"

namespace lapwright::field {

/// How a file that was written goes on from this system: Android's share sheet, elsewhere the folder it lies
/// in, shown by the system's own file program. In hand_on_android.cpp and hand_on.cpp.
[[nodiscard]] HandingOn handingOn();

} // namespace lapwright::field
