#include "cutting/pattern_certificate.h"

#include <algorithm>
#include <cmath>

namespace lapwright::cutting {

std::int64_t wholeWorth(double worth, double scale)
{
    constexpr double safely = 1.0 - 1e-10;
    return static_cast<std::int64_t>(std::floor(worth * safely * scale));
}

std::optional<Certificate> patternCertificate(const Instance& instance, const std::vector<double>& worths,
                                              double dearest)
{
    if (std::ranges::none_of(worths, [](double worth) { return worth > 0.0; }))
        return std::nullopt;
    dearest = std::max(dearest, *std::ranges::max_element(worths));
    // The checker counts whole sheets in whole costs, and refuses worths above 10^12.
    std::int64_t unit = instance.costScale;
    double cost = 1.0;
    for (const StockClass& row : instance.stocks) {
        cost = std::max(cost, static_cast<double>(row.coil ? 1 : row.cost));
        unit = row.coil ? 1 : unit;
    }
    const double scale =
        std::max(1.0, std::floor(std::min(1e7, 5e11 / std::max(dearest, cost) * static_cast<double>(unit))));
    Certificate certificate;
    certificate.method = Certificate::Method::Patterns;
    certificate.patterns = instance.patterns;
    certificate.perCost = static_cast<std::int64_t>(scale);
    certificate.blankValues.assign(instance.problem->blanks().size(), 0);
    for (std::size_t kind = 0; kind < worths.size(); ++kind)
        for (const std::size_t blank : instance.kinds[kind].blanks)
            certificate.blankValues[blank] = wholeWorth(worths[kind], scale / static_cast<double>(unit));
    return certificate;
}

} // namespace lapwright::cutting
