#include "store/splice.h"

#include "store/connection.h"

#include <algorithm>

namespace lapwright::store {

Splice spliceBetween(std::string_view before, std::string_view after)
{
    const std::size_t shorter = std::min(before.size(), after.size());
    std::size_t start = 0;
    while (start < shorter && before[start] == after[start])
        ++start;
    std::size_t end = 0;
    while (end < shorter - start && before[before.size() - 1 - end] == after[after.size() - 1 - end])
        ++end;
    return {start, std::string(before.substr(start, before.size() - start - end)),
            std::string(after.substr(start, after.size() - start - end))};
}

std::string spliced(const std::string& text, const Splice& splice)
{
    if (splice.place > text.size() || text.compare(splice.place, splice.removed.size(), splice.removed) != 0)
        throw StoreFailure("the journal of this job does not fit the job: restore a backup");
    std::string made = text;
    made.replace(splice.place, splice.removed.size(), splice.inserted);
    return made;
}

} // namespace lapwright::store
