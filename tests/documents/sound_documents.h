#pragma once

#include "documents/cut.h"
#include "documents/envelope.h"
#include "documents/job.h"
#include "documents/machine.h"
#include "documents/metal.h"
#include "documents/order.h"
#include "documents/profile.h"
#include "documents/rates.h"
#include "documents/rules.h"
#include "documents/schedule.h"
#include "documents/shop.h"
#include "documents/trim.h"
#include "shipped_orders.h"

#include <string>
#include <string_view>
#include <vector>

/// A sound document of every kind.
namespace texts {

/// One kind of document: its schema, a sound text, and how it is read.
struct Case {
    const lapwright::documents::Kind* kind;
    std::string text;
    std::vector<lapwright::Error> (*errors)(std::string_view);
};

template <auto read>
std::vector<lapwright::Error> errorsOf(std::string_view text)
{
    const auto document = read(text);
    return document.ok() ? std::vector<lapwright::Error>() : document.errors();
}

inline std::string inventedOrder()
{
    const auto job = lapwright::documents::readJob(ofCase("cottage.job.json"));
    return lapwright::documents::writeOrder(orderOf(job->value, shippedCatalogue()));
}

/// Of the shipped data in that folder.
inline std::string firstOf(const char* folder)
{
    const auto all = ofFolder(folder);
    return all.empty() ? std::string() : all.front().text;
}

inline std::vector<Case> cases()
{
    using namespace lapwright::documents;
    return {{&kinds::job, ofCase("cottage.job.json"), errorsOf<readJob>},
            {&kinds::order, inventedOrder(), errorsOf<readOrder>},
            {&kinds::profile, ofCase("gutter-hook.profile.json"), errorsOf<readProfile>},
            {&kinds::metal, firstOf("metal-library"), errorsOf<readMetal>},
            {&kinds::trim, firstOf("trim-library"), errorsOf<readTrim>},
            {&kinds::machine, firstOf("machines"), errorsOf<readMachine>},
            {&kinds::rules, firstOf("rule-sets"), errorsOf<readRules>},
            {&kinds::stock, ofCase("shelves.stock.json"), errorsOf<readStock>},
            {&kinds::floor, ofCase("tinbridge.floor.json"), errorsOf<readFloor>},
            {&kinds::schedule, ofCase("two-houses.schedule.json"), errorsOf<readSchedule>},
            {&kinds::load, ofCase("first.load.json"), errorsOf<readLoad>},
            {&kinds::receipt, ofCase("first.receipt.json"), errorsOf<readReceipt>},
            {&kinds::rates, ofCase("shop.rates.json"), errorsOf<readRates>},
            {&kinds::cutProblem, ofCase("two-girths.cut-problem.json"), errorsOf<readCutProblem>},
            {&kinds::cutPlan, read(QString::fromStdString(released() + "/two-girths.cut-plan.json")),
             errorsOf<readCutPlan>}};
}

} // namespace texts
