#include "schedule/bound.h"

#include "schedule/capacity.h"
#include "schedule/johnson.h"
#include "schedule/mandatory.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace lapwright::schedule {

namespace {

std::int64_t setupSeconds(const Problem& problem, Stage stage)
{
    std::int64_t sum = 0;
    for (const Duration setup : mandatorySetups(problem, stage))
        sum += setup.inSeconds();
    return sum;
}

/// Least folding that is still to be done when the last cut task ends: of the pieces that come last out of
/// it.
std::int64_t leastTail(const Problem& problem)
{
    std::int64_t least = std::numeric_limits<std::int64_t>::max();
    for (std::size_t task = 0; task < problem.tasks().size(); ++task) {
        if (problem.tasks()[task].stage != Stage::Cut)
            continue;
        std::int64_t tail = 0;
        for (const std::size_t index : problem.suppliesOf(task)) {
            const Supply& supply = problem.supplies()[index];
            const Task& lot = problem.tasks()[supply.lot];
            std::int64_t each = lot.ways.front().millisecondsEach;
            for (const Way& way : lot.ways)
                each = std::min(each, way.millisecondsEach);
            tail = std::max(tail, each / 1'000);
        }
        least = std::min(least, tail);
    }
    return least == std::numeric_limits<std::int64_t>::max() ? 0 : least;
}

/// When a stage can have done all its work, each head's followers after it, its setups besides.
Moment stageDone(const Problem& problem, Stage stage, const std::vector<Moment>& begins)
{
    struct Load {
        Moment head;
        std::int64_t work;
    };
    std::vector<Load> loads;
    for (std::size_t task = 0; task < problem.tasks().size(); ++task)
        if (problem.tasks()[task].stage == stage)
            loads.push_back({begins[task], leastWork(problem.tasks()[task]).inSeconds()});
    if (loads.empty())
        return problem.begin();
    std::sort(loads.begin(), loads.end(),
              [](const Load& left, const Load& right) { return left.head > right.head; });
    const Capacity capacity(problem, stage);
    Moment done = problem.begin();
    std::int64_t work = 0;
    for (std::size_t index = 0; index < loads.size(); ++index) {
        work += loads[index].work;
        if (index + 1 == loads.size() || loads[index + 1].head != loads[index].head)
            done = std::max(done, capacity.after(loads[index].head, work));
    }
    return std::max(done, capacity.after(problem.begin(), work + setupSeconds(problem, stage)));
}

/// What each delivery needs of a stage and of nobody else's metal.
std::vector<std::int64_t> ownWork(const Problem& problem, Stage stage)
{
    std::vector<std::int64_t> work(problem.deliveries().size(), 0);
    for (std::size_t index = 0; index < problem.tasks().size(); ++index) {
        const Task& task = problem.tasks()[index];
        if (task.stage != stage)
            continue;
        std::optional<std::size_t> owner = task.delivery;
        bool shared = false;
        for (const std::size_t link :
             stage == Stage::Cut ? problem.suppliesOf(index) : std::vector<std::size_t>()) {
            const auto served = problem.tasks()[problem.supplies()[link].lot].delivery;
            shared = shared || !served || (owner && *owner != *served);
            owner = served;
        }
        if (owner && !shared)
            work[*owner] += leastWork(task).inSeconds();
    }
    return work;
}

std::int64_t lateBy(Moment end, const Delivery& delivery)
{
    if (!delivery.due || end <= *delivery.due)
        return 0;
    return delivery.weight * (end - *delivery.due).inSeconds();
}

std::int64_t aloneBound(const Problem& problem)
{
    const std::vector<Moment> ends = earliestEnds(problem);
    std::vector<Moment> done(problem.deliveries().size(), problem.begin());
    for (std::size_t task = 0; task < ends.size(); ++task)
        if (const auto delivery = problem.tasks()[task].delivery)
            done[*delivery] = std::max(done[*delivery], ends[task]);
    std::int64_t sum = 0;
    for (std::size_t delivery = 0; delivery < done.size(); ++delivery)
        sum += lateBy(done[delivery], problem.deliveries()[delivery]);
    return sum;
}

std::int64_t inTurnBound(const Problem& problem, const std::vector<std::int64_t>& work,
                         const Capacity& capacity, std::int64_t& counted)
{
    constexpr std::size_t most = 400;
    const std::size_t size = problem.deliveries().size();
    if (size == 0 || size > most)
        return 0;
    std::vector<std::int64_t> smallest = work;
    std::sort(smallest.begin(), smallest.end());
    std::vector<std::vector<std::int64_t>> cost(size);
    std::int64_t sum = 0;
    for (std::size_t place = 0; place < size; ++place) {
        sum += smallest[place];
        const Moment done = capacity.after(problem.begin(), sum);
        for (const Delivery& delivery : problem.deliveries())
            cost[place].push_back(lateBy(done, delivery));
    }
    counted += static_cast<std::int64_t>(size * size);
    return cheapestMatching(cost);
}

std::int64_t firstDueBound(const Problem& problem, const std::vector<std::int64_t>& work,
                           const Capacity& capacity)
{
    std::vector<std::size_t> order;
    for (std::size_t delivery = 0; delivery < problem.deliveries().size(); ++delivery)
        if (problem.deliveries()[delivery].due && work[delivery] > 0)
            order.push_back(delivery);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
        return *problem.deliveries()[left].due < *problem.deliveries()[right].due;
    });
    std::int64_t bound = 0, sum = 0;
    std::int64_t lightest = ProblemBuilder::highestWeight;
    for (const std::size_t index : order) {
        const Delivery& delivery = problem.deliveries()[index];
        sum += work[index];
        lightest = std::min(lightest, delivery.weight);
        const Moment done = capacity.after(problem.begin(), sum);
        if (done > *delivery.due)
            bound = std::max(bound, lightest * (done - *delivery.due).inSeconds());
    }
    return bound;
}

} // namespace

Duration makespanBound(const Problem& problem)
{
    const std::vector<Moment> begins = earliestBegins(problem), ends = earliestEnds(problem);
    Moment least = problem.begin();
    for (const Moment end : ends)
        least = std::max(least, end);
    least = std::max(least, stageDone(problem, Stage::Cut, begins) + Duration::seconds(leastTail(problem)));
    least = std::max(least, stageDone(problem, Stage::Fold, begins));
    return std::max(least - problem.begin(), johnsonBound(problem).value_or(Duration()));
}

std::int64_t latenessBound(const Problem& problem, std::int64_t& work)
{
    std::int64_t bound = aloneBound(problem);
    for (const Stage stage : {Stage::Cut, Stage::Fold}) {
        const std::vector<std::int64_t> own = ownWork(problem, stage);
        const Capacity capacity(problem, stage);
        bound = std::max(bound, inTurnBound(problem, own, capacity, work));
        bound = std::max(bound, firstDueBound(problem, own, capacity));
    }
    return bound;
}

std::int64_t cheapestMatching(const std::vector<std::vector<std::int64_t>>& cost)
{
    // Row and column 0 stand for "not matched yet"; duals keep every reduced cost at 0 or more.
    const std::size_t size = cost.size();
    constexpr std::int64_t far = std::numeric_limits<std::int64_t>::max();
    std::vector<std::int64_t> rowDual(size + 1, 0), columnDual(size + 1, 0);
    std::vector<std::size_t> rowOf(size + 1, 0), cameFrom(size + 1, 0);
    for (std::size_t row = 1; row <= size; ++row) {
        rowOf[0] = row;
        std::size_t column = 0;
        std::vector<std::int64_t> slack(size + 1, far);
        std::vector<bool> done(size + 1, false);
        do {
            done[column] = true;
            std::int64_t step = far;
            std::size_t next = 0;
            for (std::size_t other = 1; other <= size; ++other) {
                if (done[other])
                    continue;
                const std::int64_t reduced =
                    cost[rowOf[column] - 1][other - 1] - rowDual[rowOf[column]] - columnDual[other];
                if (reduced < slack[other]) {
                    slack[other] = reduced;
                    cameFrom[other] = column;
                }
                if (slack[other] < step) {
                    step = slack[other];
                    next = other;
                }
            }
            for (std::size_t other = 0; other <= size; ++other)
                if (done[other]) {
                    rowDual[rowOf[other]] += step;
                    columnDual[other] -= step;
                } else if (slack[other] != far) {
                    slack[other] -= step;
                }
            column = next;
        } while (rowOf[column] != 0);
        for (; column != 0; column = cameFrom[column])
            rowOf[column] = rowOf[cameFrom[column]];
    }
    return -columnDual[0];
}

Bound boundOf(const Problem& problem, std::int64_t& work)
{
    work += static_cast<std::int64_t>(problem.tasks().size());
    return {latenessBound(problem, work), makespanBound(problem),
            Duration::seconds(setupSeconds(problem, Stage::Cut) + setupSeconds(problem, Stage::Fold))};
}

} // namespace lapwright::schedule
