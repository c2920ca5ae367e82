#include "print/paper.h"

#include "speech/spoken.h"

namespace lapwright::print {

std::string footOf(const std::string& job, std::int64_t revision, const Printing& printing)
{
    std::string foot;
    const auto add = [&foot](const std::string& part) {
        foot += (foot.empty() || part.empty() ? "" : " \xC2\xB7 ") + part;
    };
    add(revision > 0 ? spoken("revision") + " " + std::to_string(revision) : std::string());
    add(printing.at.empty() ? std::string() : spoken("printed") + " " + printing.at);
    add(job);
    add(printing.shop);
    return foot;
}

} // namespace lapwright::print
