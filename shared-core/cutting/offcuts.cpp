#include "cutting/offcuts.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace lapwright::cutting {

namespace {

/// A strip of one sheet.
struct Place {
    std::size_t pattern, strip;
    int left;
};

class Gatherer {
public:
    Gatherer(const Instance& instance, RawPlan& plan, const std::function<bool()>& stop)
        : instance_(instance), plan_(plan), stop_(stop)
    {
    }

    void run()
    {
        std::map<std::tuple<int, int, int>, std::vector<Place>> alike; ///< by stock, length and width
        for (std::size_t pattern = 0; pattern < plan_.size(); ++pattern) {
            const RawPattern& entry = plan_[pattern];
            for (std::size_t strip = 0; strip < entry.strips.size(); ++strip)
                alike[{entry.stock, entry.along, entry.strips[strip].width}].push_back(
                    {pattern, strip,
                     entry.along - takenBy(instance_.frameAt(entry.stock), entry.strips[strip])});
        }
        for (auto& [key, places] : alike)
            gather(std::get<0>(key), std::get<2>(key), places);
    }

private:
    [[nodiscard]] RawStrip& strip(const Place& place) { return plan_[place.pattern].strips[place.strip]; }

    /// Emptiest first, each gives what others have room for.
    void gather(int stock, int width, std::vector<Place>& places)
    {
        std::ranges::stable_sort(places, std::greater<>(), &Place::left);
        for (std::size_t donor = 0; donor < places.size() && !stop_(); ++donor)
            for (std::size_t taker = places.size(); taker-- > donor + 1;)
                while (give(stock, width, places[donor], places[taker])) {
                }
    }

    /// Moves the largest blank that fits, if what is worth keeping grows and both strips keep their width.
    bool give(int stock, int width, Place& donor, Place& taker)
    {
        const Frame& frame = instance_.frameAt(stock);
        RawStrip& from = strip(donor);
        const std::int64_t widest = holdersOfWidth(frame, from);
        for (std::size_t at = 0; at < from.pieces.size(); ++at) {
            const int placement = from.pieces[at].first;
            const int along = frame.placements[static_cast<std::size_t>(placement)].along;
            const bool holdsWidth = frame.widthOfPlacement[static_cast<std::size_t>(placement)] == width;
            if (along > taker.left || (holdsWidth && widest < 2))
                continue;
            if (worth(stock, width, donor.left + along) + worth(stock, width, taker.left - along) <=
                worth(stock, width, donor.left) + worth(stock, width, taker.left))
                continue;
            if (--from.pieces[at].second == 0)
                from.pieces.erase(from.pieces.begin() + static_cast<std::ptrdiff_t>(at));
            auto& to = strip(taker).pieces;
            const auto place =
                std::ranges::find_if(to, [placement](const auto& piece) { return piece.first <= placement; });
            if (place != to.end() && place->first == placement)
                ++place->second;
            else
                to.insert(place, {placement, 1});
            donor.left += along;
            taker.left -= along;
            return true;
        }
        return false;
    }

    /// Area of the offcut, where the rules keep it.
    [[nodiscard]] std::int64_t worth(int stock, int width, int left) const
    {
        const Frame& frame = instance_.frameAt(stock);
        const bool crosswise = frame.order == CutOrder::LengthsFirst;
        const Length across = frame.girths[static_cast<std::size_t>(width)], along = frame.unitAlong * left;
        const Length wide = crosswise ? along : across, longOne = crosswise ? across : along;
        if (!instance_.problem->isRemnant(wide, longOne))
            return 0;
        return std::int64_t{frame.widths[static_cast<std::size_t>(width)]} * left;
    }

    const Instance& instance_;
    RawPlan& plan_;
    const std::function<bool()>& stop_;
};

} // namespace

RawPlan withLargerOffcuts(const Instance& instance, const RawPlan& plan, const std::function<bool()>& stop)
{
    constexpr std::size_t most = 20'000; // sheets taken one by one
    RawPlan result;
    for (const RawPattern& pattern : plan) {
        RawPattern one = pattern;
        one.count = 1;
        for (std::int64_t copy = 0; copy < pattern.count && result.size() <= most; ++copy)
            result.push_back(one);
    }
    if (result.size() > most)
        return plan;
    Gatherer(instance, result, stop).run();
    std::ranges::stable_sort(result);
    RawPlan merged;
    for (RawPattern& pattern : result) {
        if (!merged.empty()) {
            RawPattern& last = merged.back();
            const std::int64_t count = std::exchange(last.count, 1);
            const bool alike = last == pattern;
            last.count = alike ? count + 1 : count;
            if (alike)
                continue;
        }
        merged.push_back(std::move(pattern));
    }
    return merged;
}

} // namespace lapwright::cutting
