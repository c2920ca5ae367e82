#include "acts/shop_rates.h"

#include "acts/standing_document.h"
#include "documents/rates.h"
#include "schedule/civil.h"
#include "schedule/cost.h"
#include "storage/shop_state.h"

#include <algorithm>

namespace lapwright::acts {

namespace {

void addTime(std::string& words, const std::string& what, std::int64_t seconds)
{
    if (seconds > 0)
        words += what + ": " + schedule::inWords(schedule::Duration::seconds(seconds)) + "\n";
}

/// "8.25 %".
std::string percentOf(std::int64_t hundredths)
{
    const std::string part = std::to_string(100 + hundredths % 100).substr(1);
    return std::to_string(hundredths / 100) + (hundredths % 100 == 0 ? "" : "." + part) + " %";
}

} // namespace

Result<std::optional<RatesDocument>> standingRates(const storage::Database& database)
{
    return standingDocument(storage::ratesDocument(database), documents::readRates, "rates in the database");
}

RatesDocument ratesToFillIn(const schedule::ShopStock& stock)
{
    RatesDocument document;
    document.value.currency = "USD";
    std::vector<schedule::MaterialRate>& materials = document.value.materials;
    for (const schedule::StockItem& item : stock.items) {
        schedule::MaterialRate rate{item.material.metal, item.material.gauge, std::nullopt, 0, std::nullopt};
        if (std::find(materials.begin(), materials.end(), rate) == materials.end())
            materials.push_back(std::move(rate));
    }
    return document;
}

std::string priceInWords(const schedule::MaterialRate& rate, const std::string& currency)
{
    if (rate.centsPerKilogram)
        return schedule::writeMoney(*rate.centsPerKilogram, currency) + " a kilogram";
    return schedule::writeMoney(rate.centsPerSquareMetre.value_or(0), currency) + " a square metre";
}

std::string chargesInWords(const schedule::CostRates& rates)
{
    std::string words = "Waste: " + std::to_string(rates.wastePercent) + " % of the blanks' metal\n" +
                        "Labour: " + schedule::writeMoney(rates.centsPerHour, rates.currency) + " an hour\n";
    addTime(words, "For an order", rates.labour.secondsPerOrder);
    addTime(words, "For a profile", rates.labour.secondsPerProfile);
    addTime(words, "For a piece", rates.labour.secondsPerPiece);
    addTime(words, "For a bend", rates.labour.secondsPerBend);
    if (rates.taxHundredths > 0)
        words += "Tax: " + percentOf(rates.taxHundredths) + "\n";
    return words;
}

} // namespace lapwright::acts
