#include "model/read_back.h"

#include "documents/describe_site.h"
#include "look/row_changes.h"

#include <algorithm>
#include <cstddef>

namespace lapwright::field {

namespace {

/// Far below every limit of a document (documents/json_text.h).
constexpr std::size_t surelyWithinLimits = std::size_t{16} << 20;

/// A run with the corner after it, if there is one.
bool sameAt(const site::Chain& before, std::size_t i, const site::Chain& now, std::size_t j)
{
    const bool corner = i < before.corners.size();
    return before.runs[i] == now.runs[j] && corner == (j < now.corners.size()) &&
           (!corner || before.corners[i] == now.corners[j]);
}

/// The chain with only those of its runs that stand in `before` otherwise or not at all, and the corners
/// after them. It counts as closed if there is a corner after the last of them.
site::Chain changedPart(const site::Chain& before, const site::Chain& now)
{
    const look::RowChanges changes =
        look::rowChanges(before.runs.size(), now.runs.size(),
                         [&](std::size_t i, std::size_t j) { return sameAt(before, i, now, j); });
    const std::ptrdiff_t from = changes.first, to = from + changes.inserted;
    const auto corners = std::min(to, static_cast<std::ptrdiff_t>(now.corners.size()));
    site::Chain part{now.id, now.name, false, {}, {}, now.firstBearing, now.obstacle};
    part.runs.assign(now.runs.begin() + from, now.runs.begin() + to);
    if (corners > from)
        part.corners.assign(now.corners.begin() + from, now.corners.begin() + corners);
    part.closed = !part.runs.empty() && part.corners.size() == part.runs.size();
    return part;
}

site::Job changedPart(const site::Job& before, const site::Job& now)
{
    site::Job part = now;
    for (site::Chain& chain : part.chains) {
        const auto known = std::find_if(before.chains.begin(), before.chains.end(),
                                        [&chain](const site::Chain& one) { return one.id == chain.id; });
        if (known != before.chains.end())
            chain = changedPart(*known, chain);
    }
    return part;
}

bool readsInParts(const documents::JobDocument& before, const documents::JobDocument& now)
{
    documents::Errors wrong;
    documents::checkJob(now.value, wrong); // what holds between runs far apart
    return wrong.empty() &&
           documents::readJob(documents::writeJob({changedPart(before.value, now.value), now.extras},
                                                  documents::Layout::Canonical))
               .ok();
}

} // namespace

std::optional<Error> whatDoesNotRead(const documents::JobDocument& before, const documents::JobDocument& now,
                                     const std::string& text)
{
    if (text.size() <= surelyWithinLimits && readsInParts(before, now))
        return std::nullopt;
    const auto read = documents::readJob(text);
    return read.ok() ? std::nullopt : std::optional(read.errors().front());
}

} // namespace lapwright::field
