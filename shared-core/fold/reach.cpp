#include "fold/reach.h"

#include <algorithm>
#include <bit>

namespace lapwright::fold {

Reach::Reach(StepChecker& steps) : steps_(steps), known_(std::size_t{1} << steps.lineCount(), Answer::Unknown)
{
    known_[0] = Answer::Yes;
    for (std::size_t line = 0; line < steps.lineCount(); ++line)
        if (std::any_of(allPlacements.begin(), allPlacements.end(),
                        [&](Placement placement) { return steps.allowedAtAll(line, placement); }))
            allowed_ |= Made{1} << line;
}

bool Reach::canFold(Made made, std::size_t line)
{
    return std::any_of(allPlacements.begin(), allPlacements.end(),
                       [&](Placement placement) { return !steps_.obstacle(made, line, placement); });
}

bool Reach::comesTo(Made made)
{
    if ((made & ~allowed_) != 0U)
        return false;
    if (known_[made] != Answer::Unknown)
        return known_[made] == Answer::Yes;
    bool comes = false;
    for (std::size_t line = 0; line < steps_.lineCount() && !comes; ++line) {
        const Made before = made & ~(Made{1} << line);
        comes = before != made && known_[before] != Answer::No && canFold(before, line) && comesTo(before);
    }
    known_[made] = comes ? Answer::Yes : Answer::No;
    return comes;
}

std::vector<Made> Reach::furthest(std::size_t most)
{
    std::vector<Made> sets;
    for (int bends = static_cast<int>(steps_.lineCount()); sets.empty(); --bends)
        for (Made made = 0; made <= whole() && sets.size() < most; ++made)
            if (std::popcount(made) == bends && comesTo(made))
                sets.push_back(made);
    return sets;
}

std::vector<std::size_t> Reach::orderTo(Made made)
{
    std::vector<std::size_t> order;
    while (made != 0)
        for (std::size_t line = 0; line < steps_.lineCount(); ++line) {
            const Made before = made & ~(Made{1} << line);
            if (before == made || !comesTo(before) || !canFold(before, line))
                continue;
            order.push_back(line);
            made = before;
            break;
        }
    std::reverse(order.begin(), order.end());
    return order;
}

std::vector<bool> Reach::finishable()
{
    std::vector<bool> sets(known_.size(), false);
    std::vector<Made> open{whole()};
    sets[whole()] = true;
    while (!open.empty()) {
        const Made after = open.back();
        open.pop_back();
        for (std::size_t line = 0; line < steps_.lineCount(); ++line) {
            const Made before = after & ~(Made{1} << line);
            if (sets[before] || !canFold(before, line))
                continue;
            sets[before] = true;
            open.push_back(before);
        }
    }
    return sets;
}

} // namespace lapwright::fold
