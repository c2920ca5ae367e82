#include "parcel/photos.h"

namespace lapwright::parcel {

rules::Findings missingPhotos(const site::Job& job, const Parcel& came)
{
    rules::Findings missing;
    for (const site::Photo& photo : job.photos)
        if (came.pictures.count(photo.sha256) == 0)
            missing.push_back({rules::Weight::Warns,
                               "parcel.photo-missing",
                               photo.place,
                               {"a photo did not come with the order, or was altered on the way", {}},
                               {"ask the installer for the order's ZIP as the tablet wrote it", {}},
                               std::nullopt});
    return missing;
}

} // namespace lapwright::parcel
