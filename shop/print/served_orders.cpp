#include "print/served_orders.h"

#include "schedule/batch.h"

#include <utility>

namespace lapwright::print {

namespace {

/// A to Z, AA to ZZ…
std::string letterOf(std::size_t place)
{
    std::string letters;
    for (std::size_t number = place + 1; number > 0; number = (number - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
    return letters;
}

} // namespace

ServedOrders::ServedOrders(const std::vector<cutting::Blank>& blanks)
{
    for (const cutting::Blank& blank : blanks)
        blanks_[schedule::orderOfBlank(blank.key)] += blank.count;
}

void ServedOrders::add(const std::string& id, ServedOrder order)
{
    const auto count = blanks_.find(id);
    if (count == blanks_.end())
        return;
    place_[id] = orders_.size();
    order.letter = letterOf(orders_.size());
    order.blanks = count->second;
    orders_.push_back(std::move(order));
}

std::vector<std::string> ServedOrders::names(const std::vector<cutting::Blank>& blanks) const
{
    std::vector<std::string> names;
    for (const cutting::Blank& blank : blanks) {
        const std::string mark = schedule::markOfBlank(blank.key);
        const auto place = place_.find(schedule::orderOfBlank(blank.key));
        names.push_back(
            place == place_.end() || orders_.size() == 1 ? mark : orders_[place->second].letter + " " + mark);
    }
    return names;
}

} // namespace lapwright::print
