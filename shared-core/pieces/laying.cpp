#include "pieces/laying.h"

#include "site/run_kind.h"

#include <algorithm>
#include <charconv>

namespace lapwright::pieces {

namespace {

using site::RunKind;

/// Far beyond any order; what comes after it can still be counted.
constexpr std::int64_t mostOrdinal = 1'000'000'000;

enum class Height { Low, High };

/// How high an upright run is where it meets a run of kind `other`, if that can be told: edges of the roof
/// are above a wall.
std::optional<Height> heightOfUprightWhereMeeting(RunKind other)
{
    switch (other) {
    case RunKind::WallBase:
    case RunKind::OpeningSill:
        return Height::Low;
    case RunKind::Eave:
    case RunKind::Fascia:
    case RunKind::GravelEdge:
    case RunKind::Parapet:
    case RunKind::Headwall:
    case RunKind::OpeningHead:
        return Height::High;
    default:
        return std::nullopt;
    }
}

/// How high a sloping or upright run of kind `own` is where it meets a run of kind `other`, if that can be
/// told.
std::optional<Height> heightWhereMeeting(RunKind own, RunKind other)
{
    if (site::lieOf(own) == site::Lie::Upright)
        return heightOfUprightWhereMeeting(other);
    if (own == other)
        return Height::High;
    switch (other) {
    case RunKind::Eave:
    case RunKind::Fascia:
    case RunKind::GravelEdge:
    case RunKind::WallBase:
    case RunKind::OpeningSill:
        return Height::Low;
    case RunKind::Ridge:
    case RunKind::Headwall:
    case RunKind::OpeningHead:
        return Height::High;
    default:
        return std::nullopt;
    }
}

const site::Run* neighbour(const site::Chain& chain, std::size_t run, bool after)
{
    const std::size_t count = chain.runs.size();
    const bool last = after ? run + 1 == count : run == 0;
    if (count < 2 || (last && !chain.closed))
        return nullptr;
    return &chain.runs[(run + (after ? 1 : count - 1)) % count];
}

bool lowEndIsTheStart(const site::Chain& chain, std::size_t run)
{
    const RunKind kind = chain.runs[run].kind;
    std::optional<Height> start, end;
    if (const site::Run* before = neighbour(chain, run, false))
        start = heightWhereMeeting(kind, before->kind);
    if (const site::Run* after = neighbour(chain, run, true))
        end = heightWhereMeeting(kind, after->kind);
    if (start == end)
        return true;
    return start == Height::Low || end == Height::High;
}

} // namespace

Laying layingOf(const site::Chain& chain, std::size_t run)
{
    const RunKind kind = chain.runs[run].kind;
    if (site::lieOf(kind) == site::Lie::Level)
        return {
            LaidFrom::Start,
            {{"laid from the start of the run, taken for the hidden or down-wind end; each piece covers the "
              "one before",
              {}},
             "UFGS 07600 3.1.6.5",
             {}}};
    const LaidFrom from = lowEndIsTheStart(chain, run) ? LaidFrom::Start : LaidFrom::End;
    return {from,
            {{"laid from the low end, the {end} of the run, upwards; each piece covers the one below",
              {{"end", std::string(from == LaidFrom::Start ? "start" : "end")}}},
             "UFGS 07600 3.1.6.5",
             {}}};
}

Hand handOf(LaidFrom from)
{
    return from == LaidFrom::Start ? Hand::Left : Hand::Right;
}

std::string trimLetter(std::size_t index)
{
    std::string letters;
    for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / 26)
        letters.push_back(static_cast<char>('a' + static_cast<int>((rest - 1) % 26)));
    std::reverse(letters.begin(), letters.end());
    return letters;
}

std::string markOf(const std::string& prefix, std::int64_t ordinal)
{
    return prefix + '.' + std::to_string(ordinal);
}

std::optional<MarkParts> partsOf(std::string_view mark)
{
    const std::size_t point = mark.rfind('.');
    if (point == std::string_view::npos || point == 0)
        return std::nullopt;
    MarkParts parts{mark.substr(0, point), 0};
    const char* const end = mark.data() + mark.size();
    const auto [stop, error] = std::from_chars(mark.data() + point + 1, end, parts.ordinal);
    if (error != std::errc() || stop != end || parts.ordinal < 1 || parts.ordinal > mostOrdinal)
        return std::nullopt;
    return parts;
}

} // namespace lapwright::pieces
