#include "schedule/dispatch.h"

#include "schedule/construct.h"

#include <algorithm>
#include <limits>

namespace lapwright::schedule {

namespace {

class Foreman {
public:
    Foreman(Timing& timing, Stage stage, std::int64_t care, const Times& cut)
        : timing_(timing), problem_(timing.problem()), stage_(stage), care_(care), cut_(cut)
    {
        for (std::size_t machine = 0; machine < problem_.machines().size(); ++machine)
            if (problem_.machines()[machine].stage == stage)
                machines_.push_back(
                    {machine,
                     problem_.calendar(machine).workedBy(problem_.machines()[machine].freeFrom).inSeconds(),
                     timing.standing(machine)});
    }

    void assign(const std::vector<std::size_t>& order, Sequences& sequences)
    {
        for (const std::size_t task : order)
            if (problem_.tasks()[task].stage == stage_ && !standsByPin(problem_, task))
                left_.push_back({task, rank_++});
        while (!left_.empty() && !machines_.empty()) {
            const auto free =
                std::min_element(machines_.begin(), machines_.end(), [&](const Free& one, const Free& other) {
                    return wallOf(one) < wallOf(other);
                });
            const auto next = cheapest(*free);
            if (next == left_.end()) {
                machines_.erase(free);
                continue;
            }
            const Timing::WayNumbers& way = timing_.way(next->task, free->machine);
            free->at = beginOf(*free, next->task, way) + way.work;
            (void)Timing::makeReady(free->standing, way);
            sequences[free->machine].push_back(static_cast<std::uint32_t>(next->task));
            left_.erase(next);
        }
    }

private:
    struct Free {
        std::size_t machine = 0;
        std::int64_t at = 0;
        Timing::Standing standing;
    };
    struct Left {
        std::size_t task = 0;
        std::int64_t rank = 0;
    };

    [[nodiscard]] Moment wallOf(const Free& free) const
    {
        return problem_.calendar(free.machine).endsAt(Duration::seconds(free.at));
    }

    [[nodiscard]] std::int64_t beginOf(const Free& free, std::size_t task,
                                       const Timing::WayNumbers& way) const
    {
        Timing::Standing standing = free.standing;
        const std::int64_t ready = free.at + Timing::makeReady(standing, way);
        const std::int64_t metal =
            stage_ == Stage::Cut ? 0 : cut_.metal[task][timing_.wayIndex(task, free.machine)];
        return std::max({ready, way.earliest, metal});
    }

    [[nodiscard]] std::vector<Left>::iterator cheapest(const Free& free)
    {
        auto best = left_.end();
        std::int64_t least = std::numeric_limits<std::int64_t>::max();
        for (auto one = left_.begin(); one != left_.end(); ++one) {
            if (wayOn(problem_.tasks()[one->task], free.machine) == nullptr)
                continue;
            const Timing::WayNumbers& way = timing_.way(one->task, free.machine);
            Timing::Standing standing = free.standing;
            const std::int64_t setup = Timing::makeReady(standing, way);
            const std::int64_t wait = beginOf(free, one->task, way) - free.at - setup;
            const std::int64_t cost = one->rank * 100 + setup * care_ + wait * 50;
            if (cost < least) {
                least = cost;
                best = one;
            }
        }
        return best;
    }

    Timing& timing_;
    const Problem& problem_;
    Stage stage_;
    std::int64_t care_;
    const Times& cut_;
    std::vector<Free> machines_;
    std::vector<Left> left_;
    std::int64_t rank_ = 0;
};

} // namespace

Sequences dispatched(Timing& timing, const std::vector<std::size_t>& order, const SetupCare& care)
{
    Sequences sequences(timing.problem().machines().size());
    Times cut;
    Foreman(timing, Stage::Cut, care.cutting, cut).assign(order, sequences);
    addPinned(timing, Stage::Cut, sequences);
    cut = timing.time(sequences);
    Foreman(timing, Stage::Fold, care.folding, cut).assign(order, sequences);
    addPinned(timing, Stage::Fold, sequences);
    return sequences;
}

} // namespace lapwright::schedule
