#include "fold/crossing.h"

#include "fold/contact.h"

namespace lapwright::fold {

namespace {

/// The flats of the section with every bend made, laid by the first bend line.
Edges finishedFlats(const Blank& blank)
{
    const FoldLine& first = blank.lines.front();
    const Made all = static_cast<Made>((std::uint64_t{1} << blank.lines.size()) - 1);
    const Half ahead = halfSection(blank, 0, End::End, all, first.side);
    const std::vector<Vector> points = folded(ahead.points, first, first.angle);
    Edges flats{{{-first.position, 0.0}, {-first.halfAllowance, 0.0}}};
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        if (ahead.isFlat[i])
            flats.push_back({points[i], points[i + 1]});
    return flats;
}

} // namespace

std::optional<std::pair<std::size_t, std::size_t>> crossingFlats(const Blank& blank)
{
    if (blank.lines.empty())
        return std::nullopt;
    const Edges flats = finishedFlats(blank);
    for (std::size_t i = 0; i < flats.size(); ++i)
        for (std::size_t k = i + 2; k < flats.size(); ++k)
            if (properlyCross(flats[i].a, flats[i].b, flats[k].a, flats[k].b))
                return std::pair(i, k);
    return std::nullopt;
}

} // namespace lapwright::fold
