#include "documents/rates.h"

#include "documents/codec.h"

#include <cmath>
#include <set>
#include <tuple>

namespace lapwright::documents {

namespace {

/// Minutes in files, where half a minute is 0.5; whole seconds inside.
struct Minutes {
    std::int64_t seconds = 0;

    friend bool operator==(const Minutes&, const Minutes&) = default;
};

/// The labour times as files have them.
struct LabourMinutes {
    Minutes perOrder, perProfile, perPiece, perBend;

    bool operator==(const LabourMinutes&) const = default;
};

} // namespace

template <>
struct Custom<Minutes> {
    static void get(const Json& json, Minutes& value, Reading& reading)
    {
        double minutes = 0.0;
        documents::get(json, minutes, reading);
        value.seconds = std::llround(minutes * 60.0);
    }
    static void put(const Minutes& value, Writing& out)
    {
        if (value.seconds % 60 == 0)
            documents::put(value.seconds / 60, out);
        else
            documents::put(static_cast<double>(value.seconds) / 60.0, out);
    }
};

template <class V, Like<schedule::MaterialRate> T>
void describe(V& fields, T& rate)
{
    fields("metal", rate.metal);
    fields("gauge", rate.gauge);
    fields("colour", rate.colour);
    fields("cents_per_kilogram", rate.centsPerKilogram);
    fields("cents_per_square_metre", rate.centsPerSquareMetre);
}

template <class V, Like<LabourMinutes> T>
void describe(V& fields, T& labour)
{
    fields("per_order", labour.perOrder, Minutes());
    fields("per_profile", labour.perProfile, Minutes());
    fields("per_piece", labour.perPiece, Minutes());
    fields("per_bend", labour.perBend, Minutes());
}

void get(const Json& json, schedule::LabourTimes& times, Reading& reading)
{
    LabourMinutes minutes;
    get(json, minutes, reading);
    times = {minutes.perOrder.seconds, minutes.perProfile.seconds, minutes.perPiece.seconds,
             minutes.perBend.seconds};
}

void put(const schedule::LabourTimes& times, Writing& out)
{
    put(LabourMinutes{{times.secondsPerOrder},
                      {times.secondsPerProfile},
                      {times.secondsPerPiece},
                      {times.secondsPerBend}},
        out);
}

template <class V, Like<schedule::CostRates> T>
void describe(V& fields, T& rates)
{
    fields("currency", rates.currency);
    fields("materials", rates.materials);
    fields("waste_percent", rates.wastePercent, std::int64_t{0});
    fields("labour_cents_per_hour", rates.centsPerHour, std::int64_t{0});
    fields("labour_minutes", rates.labour, schedule::LabourTimes());
    fields("tax_hundredths_of_percent", rates.taxHundredths, std::int64_t{0});
    fields("note", rates.note, std::string());
}

namespace {

void checkRates(const schedule::CostRates& rates, Errors& errors)
{
    std::set<std::tuple<std::string, std::string, std::optional<std::string>>> seen;
    for (std::size_t index = 0; index < rates.materials.size(); ++index) {
        const schedule::MaterialRate& rate = rates.materials[index];
        const std::string place = "/materials/" + std::to_string(index);
        if (!seen.insert({rate.metal, rate.gauge, rate.colour}).second)
            errors.push_back({place, rate.gauge + " " + rate.metal + " again", "each only once"});
        if (rate.centsPerKilogram.has_value() == rate.centsPerSquareMetre.has_value())
            errors.push_back({place, rate.centsPerKilogram ? "a rate by mass and one by area" : "no rate",
                              "either cents_per_kilogram or cents_per_square_metre"});
    }
}

} // namespace

Result<Document<schedule::CostRates>> readRates(std::string_view text)
{
    return readDocument<schedule::CostRates>(text, kinds::rates, checkRates);
}

std::string writeRates(const Document<schedule::CostRates>& rates, Layout layout)
{
    return writeDocument(kinds::rates, rates, layout);
}

} // namespace lapwright::documents
