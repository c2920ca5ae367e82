#include "cutting/plan.h"

#include "measure/rounding.h"

#include <algorithm>

namespace lapwright::cutting {

Lying lyingIn(CutOrder order, const Blank& blank, bool turned)
{
    if ((order == CutOrder::StripsFirst) != turned)
        return {blank.girth, blank.length};
    return {blank.length, blank.girth};
}

double metalTaken(const Stock& stock, Length kerf, const Pattern& pattern)
{
    return inSquareMetres(stock.width,
                          stock.kind == StockKind::Coil ? pattern.length + kerf : pattern.length);
}

std::vector<std::string> keysOf(const NewRemnant& remnant)
{
    if (remnant.count == 1)
        return {remnant.label};
    std::vector<std::string> keys;
    for (std::int64_t each = 1; each <= remnant.count; ++each)
        keys.push_back(remnant.label + "." + std::to_string(each));
    return keys;
}

std::string keysInWords(const NewRemnant& remnant)
{
    const std::vector<std::string> keys = keysOf(remnant);
    return keys.size() == 1 ? keys.front() : keys.front() + " \xE2\x80\x93 " + keys.back();
}

bool Feasibility::cuttable() const
{
    return nothingCutTwice && stockSuffices && stripsFit && crosscutsFit && girthsFit && turnsAllowed &&
           stripCountKept && stripWidthKept && crosscutLimitKept && remnantsRight && wasteAddsUp &&
           valueRight && boundCertified && dueStagesRight;
}

double Plan::gap() const
{
    if (bound <= 0)
        return value > 0 ? 1.0 : 0.0;
    return static_cast<double>(value - bound) / static_cast<double>(bound);
}

double Plan::saving() const
{
    return value > 0 ? static_cast<double>(value - std::min(bound, value)) / static_cast<double>(value) : 0.0;
}

} // namespace lapwright::cutting
