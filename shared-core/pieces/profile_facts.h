#pragma once

#include "pieces/order.h"
#include "rules/rule_set.h"
#include "site/run.h"
#include "trim/template.h"

namespace lapwright::pieces {

/// What rules may ask about a trim as made, whatever run it is on (rules/facts.h): metal, girth, lap,
/// fasteners, cleats, `leg.…`, `measure.…` with defaults, and what the legs are for by their names: deck →
/// deck_width; face → face_height; wall → wall_height; roof, or the lesser of first_wing and second_wing or
/// of upper and lower → roof_width; joint → masonry_depth. A measure that is called as a length fact
/// (rib_height) gives that fact, if no leg does.
[[nodiscard]] rules::Facts profileFacts(const OrderedProfile& ordered, const trim::Template& trim,
                                        const site::TrimChoice& choice);

} // namespace lapwright::pieces
