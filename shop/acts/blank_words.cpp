#include "acts/blank_words.h"

namespace lapwright::acts {

std::string blankInWords(const schedule::Batch& batch, const std::string& blankKey)
{
    const std::string order = schedule::orderOfBlank(blankKey);
    for (const schedule::ServedOrder& served : batch.orders)
        if (served.order == order)
            return served.job + ", " + schedule::markOfBlank(blankKey);
    return schedule::markOfBlank(blankKey);
}

} // namespace lapwright::acts
