#include "acts/floor_words.h"

namespace lapwright::acts {

namespace {

std::string shiftsInWords(const std::vector<schedule::Shift>& shifts)
{
    std::string words;
    for (const schedule::Shift& shift : shifts)
        words += (words.empty() ? "" : ", ") + schedule::writeTimeOfDay(shift.from) + "-" +
                 schedule::writeTimeOfDay(shift.to);
    return words;
}

void addRate(std::string& words, const std::string& what, const std::string& rate, bool measured)
{
    words += what + ": " + rate + (measured ? "\n" : " (usual)\n");
}

} // namespace

std::string hoursInWords(const schedule::Hours& hours)
{
    const auto& names = schedule::weekdayNames();
    std::string words;
    for (std::size_t day = 0; day < hours.week.size();) {
        std::size_t last = day;
        while (last + 1 < hours.week.size() && hours.week[last + 1] == hours.week[day])
            ++last;
        if (!hours.week[day].empty())
            words += (words.empty() ? "" : "; ") + std::string(names[day]) +
                     (last > day ? std::string(" to ") + names[last] : "") + " " +
                     shiftsInWords(hours.week[day]);
        day = last + 1;
    }
    return words;
}

std::string ratesInWords(const schedule::Floor& floor, const schedule::FloorMachine& machine)
{
    const schedule::Rates rates = schedule::ratesOf(floor, machine);
    std::string words;
    const auto time = [&](const char* what, std::optional<schedule::Duration> schedule::Rates::*rate) {
        if (rates.*rate)
            addRate(words, what, schedule::inWords(*(rates.*rate)),
                    (machine.measured.*rate).has_value() || (floor.rates.*rate).has_value());
    };
    if (machine.stage == schedule::Stage::Cut) {
        time("A sheet laid in and taken away", &schedule::Rates::sheet);
        time("A slit", &schedule::Rates::slit);
        time("A crosscut", &schedule::Rates::crosscut);
        addRate(words, "Another coil", schedule::inWords(floor.setups.coilChange), true);
        addRate(words, "The slitter set", schedule::inWords(floor.setups.slitterSetup), true);
    } else {
        time("A blank taken up and laid aside", &schedule::Rates::piece);
        if (rates.foldPercent)
            addRate(words, "Folding, of the time the fold plan says",
                    std::to_string(*rates.foldPercent) + " %",
                    machine.measured.foldPercent.has_value() || floor.rates.foldPercent.has_value());
        addRate(words, "Another program", schedule::inWords(floor.setups.programChange), true);
        addRate(words, "Another beam face", schedule::inWords(floor.setups.beamFaceChange), true);
    }
    return words;
}

} // namespace lapwright::acts
