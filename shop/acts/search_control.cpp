#include "acts/search_control.h"

#include <chrono>

namespace lapwright::acts {

cutting::Control searchControl()
{
    cutting::Control control;
    control.clock = [] {
        return std::chrono::duration_cast<std::chrono::microseconds>(
            std::chrono::steady_clock::now().time_since_epoch());
    };
    return control;
}

} // namespace lapwright::acts
