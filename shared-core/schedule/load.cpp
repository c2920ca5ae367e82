#include "schedule/load.h"

#include "pieces/laying.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <tuple>

namespace lapwright::schedule {

namespace {

using Key = std::tuple<std::string, std::string, site::Material, std::string>;

class Bundler {
public:
    explicit Bundler(const BundleLimits& limits) : limits_(limits) {}

    void add(const ReadyPiece& ready)
    {
        std::int64_t left = ready.piece.count;
        while (left > 0) {
            Bundle& bundle = open(ready);
            const double room = limits_.mostKilograms - bundle.kilograms;
            const auto fits =
                ready.kilogramsEach > 0.0 ? static_cast<std::int64_t>(room / ready.kilogramsEach) : left;
            const std::int64_t taken = bundle.pieces.empty() ? std::clamp<std::int64_t>(fits, 1, left)
                                       : room > 0.0          ? std::min(left, fits)
                                                             : 0;
            if (taken == 0) {
                current_.erase(keyOf(ready));
                continue;
            }
            LoadedPiece piece = ready.piece;
            piece.count = taken;
            bundle.pieces.push_back(piece);
            bundle.kilograms += static_cast<double>(taken) * ready.kilogramsEach;
            bundle.twoPeople = bundle.twoPeople || bundle.kilograms > limits_.onePersonKilograms ||
                               piece.length > limits_.onePersonLength;
            left -= taken;
        }
    }
    std::vector<Bundle> take() { return std::move(bundles_); }

private:
    static Key keyOf(const ReadyPiece& ready)
    {
        return {ready.order, ready.area, ready.material, ready.piece.profile};
    }

    Bundle& open(const ReadyPiece& ready)
    {
        const auto [at, added] = current_.try_emplace(keyOf(ready), bundles_.size());
        if (added)
            bundles_.push_back({"B" + std::to_string(bundles_.size() + 1),
                                ready.order,
                                ready.job,
                                ready.material,
                                {},
                                0.0,
                                false,
                                ready.area});
        return bundles_[at->second];
    }

    BundleLimits limits_;
    std::map<Key, std::size_t> current_;
    std::vector<Bundle> bundles_;
};

/// Whether `mark` stands behind `before` on its run: E1.10 behind E1.9.
bool follows(std::string_view before, std::string_view mark)
{
    const auto one = pieces::partsOf(before), other = pieces::partsOf(mark);
    return one && other && one->prefix == other->prefix && other->ordinal == one->ordinal + 1;
}

} // namespace

std::vector<Bundle> bundle(const std::vector<ReadyPiece>& ready, const BundleLimits& limits)
{
    Bundler bundler(limits);
    for (const ReadyPiece& piece : ready)
        bundler.add(piece);
    return bundler.take();
}

LoadTotals totalsOf(const Load& load)
{
    LoadTotals totals;
    totals.bundles = static_cast<std::int64_t>(load.bundles.size());
    for (const Bundle& bundle : load.bundles) {
        totals.forTwo += bundle.twoPeople ? 1 : 0;
        totals.pieces += piecesIn(bundle);
        totals.kilograms += bundle.kilograms;
        totals.longest = std::max(totals.longest, longestIn(bundle));
    }
    return totals;
}

std::int64_t piecesIn(const Bundle& bundle)
{
    std::int64_t pieces = 0;
    for (const LoadedPiece& piece : bundle.pieces)
        pieces += piece.count;
    return pieces;
}

Length longestIn(const Bundle& bundle)
{
    Length longest;
    for (const LoadedPiece& piece : bundle.pieces)
        longest = std::max(longest, piece.length);
    return longest;
}

std::vector<MarkRange> markRanges(const Bundle& bundle)
{
    std::vector<MarkRange> ranges;
    for (const LoadedPiece& piece : bundle.pieces) {
        if (!ranges.empty() && ranges.back().each == piece.count && follows(ranges.back().last, piece.mark))
            ranges.back().last = piece.mark;
        else
            ranges.push_back({piece.mark, piece.mark, piece.count});
    }
    return ranges;
}

} // namespace lapwright::schedule
