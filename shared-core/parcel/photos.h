#pragma once

#include "parcel/parcel.h"
#include "rules/finding.h"
#include "site/job.h"

namespace lapwright::parcel {

/// A warning for each photo the job speaks of that did not come with it; the place is that of the photo, the
/// code parcel.photo-missing.
[[nodiscard]] rules::Findings missingPhotos(const site::Job& job, const Parcel& came);

} // namespace lapwright::parcel
