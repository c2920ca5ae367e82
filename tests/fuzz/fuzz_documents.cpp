// Any bytes as a document of any kind, or where they name none as an item of stock: refused with errors, or
// read, and then written and read again as the same.
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
#include "documents/signature.h"
#include "documents/trim.h"
#include "must.h"

#include <cstdint>
#include <string>
#include <string_view>

using namespace lapwright;
using namespace lapwright::documents;

namespace {

template <auto read, auto write>
void roundTrip(std::string_view text)
{
    const auto first = read(text);
    if (!first.ok())
        return must(!first.errors().empty(), "a refusal says why");
    const std::string written = write(*first, Layout::Readable);
    const auto second = read(written);
    must(second.ok(), "what was written reads back");
    must(write(*second, Layout::Canonical) == write(*first, Layout::Canonical), "and says the same");
}

/// In the one layout that items have.
std::string writeItem(const Document<schedule::StockItem>& item, Layout)
{
    return writeStockItem(item);
}

void readAs(const std::string& format, std::string_view text)
{
    if (format == kinds::job.format)
        roundTrip<readJob, writeJob>(text);
    else if (format == kinds::order.format)
        roundTrip<readOrder, writeOrder>(text);
    else if (format == kinds::profile.format)
        roundTrip<readProfile, writeProfile>(text);
    else if (format == kinds::trim.format)
        roundTrip<readTrim, writeTrim>(text);
    else if (format == kinds::metal.format)
        roundTrip<readMetal, writeMetal>(text);
    else if (format == kinds::machine.format)
        roundTrip<readMachine, writeMachine>(text);
    else if (format == kinds::rules.format)
        roundTrip<readRules, writeRules>(text);
    else if (format == kinds::stock.format)
        roundTrip<readStock, writeStock>(text);
    else if (format == kinds::floor.format)
        roundTrip<readFloor, writeFloor>(text);
    else if (format == kinds::schedule.format)
        roundTrip<readSchedule, writeSchedule>(text);
    else if (format == kinds::rates.format)
        roundTrip<readRates, writeRates>(text);
    else if (format == kinds::load.format)
        roundTrip<readLoad, writeLoad>(text);
    else if (format == kinds::receipt.format)
        roundTrip<readReceipt, writeReceipt>(text);
    else if (format == kinds::cutProblem.format)
        roundTrip<readCutProblem, writeCutProblem>(text);
    else if (format == kinds::cutPlan.format)
        roundTrip<readCutPlan, writeCutPlan>(text);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto format = formatOf(text);
    if (format.ok())
        readAs(*format, text);
    else
        roundTrip<readStockItem, writeItem>(text);
    const auto signature = checkSignature(text);
    must(!signature.ok() || !signature->holds || signature->key, "a signature that holds names its key");
    return 0;
}
