#include "drawing/gantt_marks.h"

namespace lapwright::drawing {

Path lateFlag(Point end)
{
    return {Role::Caution,
            {end, end + Point{0.0, -2.4}, end + Point{-2.2, -1.6}, end + Point{0.0, -0.8}},
            true,
            Stroke{0.25, Dash::Solid, {}},
            Fill{}};
}

Path madeTick(Point end)
{
    return {Role::Label,
            {end + Point{-2.6, -1.5}, end + Point{-1.8, -0.6}, end + Point{-0.3, -2.4}},
            false,
            Stroke{0.4, Dash::Solid, {}},
            std::nullopt};
}

Circle pinHead(Point centre)
{
    return {Role::Label, centre, 0.7, Stroke{0.2, Dash::Solid, {}},
            Fill{true, Colour{20, 20, 24}, Hatch::None}};
}

} // namespace lapwright::drawing
