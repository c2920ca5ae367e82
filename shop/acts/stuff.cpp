#include "acts/stuff.h"

namespace lapwright::acts {

Result<Stuff> stuffOf(const site::Material& material, const std::map<std::string, metal::Metal>& metals)
{
    const auto metal = metals.find(material.metal);
    if (metal == metals.end()) {
        std::string known;
        for (const auto& [id, each] : metals)
            known += (known.empty() ? "" : ", ") + id;
        return Error{"/material/metal", material.metal, "one of " + known};
    }
    const metal::Sheet* sheet = metal::findSheet(metal->second, material.gauge);
    if (!sheet) {
        std::string known;
        for (const metal::Sheet& each : metal->second.sheets)
            known += (known.empty() ? "" : ", ") + each.gauge;
        return Error{"/material/gauge", material.gauge, "a gauge of " + metal->second.name + ": " + known};
    }
    return Stuff{metal->second, *sheet};
}

} // namespace lapwright::acts
