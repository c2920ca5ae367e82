#include "schedule/cost.h"

#include "measure/rounding.h"
#include "pieces/summary.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::schedule {

namespace {

/// amount × rate ÷ unit to the nearest whole number, halves up, none negative. The whole units are taken
/// first, so that the product fits for any amount there can be.
std::int64_t portion(std::int64_t amount, std::int64_t rate, std::int64_t unit)
{
    return amount / unit * rate + (amount % unit * rate + unit / 2) / unit;
}

constexpr std::int64_t gramsPerKilogram = 1'000;
constexpr std::int64_t squareMillimetresPerSquareMetre = 1'000'000;
constexpr std::int64_t secondsPerHour = 3'600;
constexpr std::int64_t percent = 100;
constexpr std::int64_t hundredthsOfPercent = 10'000;

struct Amount {
    std::int64_t grams = 0;
    std::int64_t squareMillimetres = 0;
};

std::map<site::Material, Amount> amountsIn(const pieces::Order& order)
{
    std::map<site::Material, Amount> amounts;
    for (const pieces::Piece& piece : order.pieces) {
        const pieces::OrderedProfile& profile = order.profiles[piece.profile];
        Amount& amount = amounts[profile.material];
        amount.grams += piece.count * std::llround(pieces::kilogramsEach(order, piece) * 1000.0);
        amount.squareMillimetres +=
            piece.count * std::llround(inMillimetres(profile.girth) * inMillimetres(piece.blankLength));
    }
    return amounts;
}

/// The rate of this colour, or else the one for all colours; null where there is neither.
const MaterialRate* rateOf(const CostRates& rates, const site::Material& material)
{
    const MaterialRate* general = nullptr;
    for (const MaterialRate& rate : rates.materials) {
        if (rate.metal != material.metal || rate.gauge != material.gauge)
            continue;
        if (rate.colour == material.colour)
            return &rate;
        if (!rate.colour)
            general = &rate;
    }
    return general;
}

/// "12.34": thousandths of a unit to the nearest hundredth.
std::string hundredths(std::int64_t thousandths)
{
    const std::int64_t rounded = (thousandths + 5) / 10;
    const std::string fraction = std::to_string(100 + rounded % 100).substr(1);
    return std::to_string(rounded / 100) + "." + fraction;
}

CostLine materialLine(const site::Material& material, const Amount& amount, const MaterialRate& rate,
                      const CostRates& rates)
{
    CostLine line;
    std::string metal = material.metal;
    std::replace(metal.begin(), metal.end(), '-', ' ');
    line.what.text = material.gauge + " " + metal + (material.colour.empty() ? "" : ", " + material.colour);
    const bool wasted = rates.wastePercent > 0;
    if (rate.centsPerKilogram) {
        line.cents = portion(amount.grams, *rate.centsPerKilogram, gramsPerKilogram);
        line.how = {wasted ? "{amount} kg at {price} a kg, and {waste} % waste"
                           : "{amount} kg at {price} a kg",
                    {{"amount", hundredths(amount.grams)},
                     {"price", writeMoney(*rate.centsPerKilogram, rates.currency)},
                     {"waste", rates.wastePercent}}};
    } else {
        const std::int64_t each = rate.centsPerSquareMetre.value_or(0);
        line.cents = portion(amount.squareMillimetres, each, squareMillimetresPerSquareMetre);
        line.how = {wasted ? "{amount} m\xC2\xB2 at {price} a m\xC2\xB2, and {waste} % waste"
                           : "{amount} m\xC2\xB2 at {price} a m\xC2\xB2",
                    {{"amount", hundredths(amount.squareMillimetres / 1'000)},
                     {"price", writeMoney(each, rates.currency)},
                     {"waste", rates.wastePercent}}};
    }
    if (wasted)
        line.cents += portion(line.cents, rates.wastePercent, percent);
    return line;
}

std::int64_t bendsIn(const trim::Profile& profile)
{
    return static_cast<std::int64_t>(profile.bends.size()) + (profile.startHem ? 2 : 0) +
           (profile.endHem ? 2 : 0);
}

CostLine labourLine(const pieces::Order& order, const CostRates& rates)
{
    std::int64_t seconds = rates.labour.secondsPerOrder +
                           static_cast<std::int64_t>(order.profiles.size()) * rates.labour.secondsPerProfile;
    for (const pieces::Piece& piece : order.pieces)
        seconds +=
            piece.count * (rates.labour.secondsPerPiece +
                           bendsIn(order.profiles[piece.profile].profile) * rates.labour.secondsPerBend);
    return {{"labour", {}},
            {"{minutes} minutes at {price} an hour",
             {{"minutes", (seconds + 30) / 60}, {"price", writeMoney(rates.centsPerHour, rates.currency)}}},
            portion(seconds, rates.centsPerHour, secondsPerHour)};
}

} // namespace

Result<Cost> costOf(const pieces::Order& order, const CostRates& rates)
{
    Cost cost{rates.currency, {}, 0, rates.note};
    std::vector<Error> errors;
    for (const auto& [material, amount] : amountsIn(order)) {
        const MaterialRate* rate = rateOf(rates, material);
        if (rate == nullptr)
            errors.push_back({material.gauge + " " + material.metal + ", " + material.colour, "no rate",
                              "one in the rates, for this colour or for all"});
        else
            cost.lines.push_back(materialLine(material, amount, *rate, rates));
    }
    if (!errors.empty())
        return errors;
    cost.lines.push_back(labourLine(order, rates));
    for (const CostLine& line : cost.lines)
        cost.cents += line.cents;
    if (rates.taxHundredths > 0) {
        const std::int64_t tax = portion(cost.cents, rates.taxHundredths, hundredthsOfPercent);
        cost.lines.push_back({{"tax", {}}, {hundredths(rates.taxHundredths * 10) + " %", {}}, tax});
        cost.cents += tax;
    }
    return cost;
}

std::string writeMoney(std::int64_t cents, const std::string& currency)
{
    std::string whole = std::to_string(cents / 100);
    for (auto at = static_cast<std::ptrdiff_t>(whole.size()) - 3; at > 0; at -= 3)
        whole.insert(static_cast<std::size_t>(at), " ");
    const std::string rest = std::to_string(100 + cents % 100).substr(1);
    return whole + "." + rest + (currency.empty() ? "" : " " + currency);
}

} // namespace lapwright::schedule
