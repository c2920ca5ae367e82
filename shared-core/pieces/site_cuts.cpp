#include "pieces/site_cuts.h"

#include <algorithm>
#include <map>
#include <utility>

namespace lapwright::pieces {

std::vector<SiteCut> cutFromStock(std::vector<WantedCut> wanted, Length stock, std::int64_t firstStock)
{
    std::stable_sort(wanted.begin(), wanted.end(), [](const WantedCut& left, const WantedCut& right) {
        return left.length > right.length;
    });
    std::vector<SiteCut> cuts;
    cuts.reserve(wanted.size());
    std::multimap<Length, std::int64_t> offcuts;
    std::int64_t nextStock = firstStock;
    for (WantedCut& want : wanted) {
        SiteCut cut{0, std::move(want.mark), want.length, {}};
        const auto offcut = offcuts.lower_bound(want.length);
        if (offcut == offcuts.end()) {
            cut.stock = nextStock++;
            cut.left = stock - want.length;
        } else {
            cut.stock = offcut->second;
            cut.left = offcut->first - want.length;
            offcuts.erase(offcut);
        }
        if (cut.left > Length())
            offcuts.emplace(cut.left, cut.stock);
        cuts.push_back(std::move(cut));
    }
    std::stable_sort(cuts.begin(), cuts.end(),
                     [](const SiteCut& left, const SiteCut& right) { return left.stock < right.stock; });
    return cuts;
}

} // namespace lapwright::pieces
