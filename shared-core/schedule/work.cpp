#include "schedule/work.h"

#include "schedule/batch.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::schedule {

namespace {

std::string tenthsOfMillimetre(Length length)
{
    const std::int64_t tenths = (length.inNanometres() + 50'000) / 100'000;
    return std::to_string(tenths / 10) + (tenths % 10 == 0 ? "" : "." + std::to_string(tenths % 10));
}

std::string describe(const site::Material& material)
{
    return material.gauge + " " + material.metal + " " + material.colour;
}

/// What the knives are set to: the widths of the strips in their order, "2 strips of 434.2 mm, 1 of 200 mm".
std::string knivesOf(const cutting::Pattern& pattern)
{
    const bool strips = pattern.order == cutting::CutOrder::StripsFirst;
    std::string knives;
    for (auto from = pattern.strips.begin(); from != pattern.strips.end();) {
        const auto to = std::find_if(from, pattern.strips.end(),
                                     [&](const cutting::Strip& strip) { return strip.width != from->width; });
        const bool one = to - from == 1;
        const char* what = one      ? (strips ? " strip of " : " length of ")
                           : strips ? " strips of "
                                    : " lengths of ";
        knives += (knives.empty() ? "" : ", ") + std::to_string(to - from) +
                  (knives.empty() ? what : " of ") + tenthsOfMillimetre(from->width) + " mm";
        from = to;
    }
    return knives;
}

std::string fittingOf(const cutting::Stock& stock, const site::Material& material)
{
    switch (stock.kind) {
    case cutting::StockKind::Coil:
        return "coil " + stock.key;
    case cutting::StockKind::Sheet:
        return "rack " + stock.key;
    case cutting::StockKind::Remnant:
        break;
    }
    return "remnants " + describe(material);
}

class Assembler {
public:
    Assembler(const ShopWork& work, const Floor& floor, Moment begin)
        : work_(work), floor_(floor), builder_(begin)
    {
        builder_.transferPieces(floor.transferPieces);
        for (const FloorMachine& machine : floor.machines)
            machines_[machine.id] = builder_.machine(
                {machine.id, machine.name, machine.stage, machine.hours.value_or(floor.hours), {}, Moment()});
        for (std::size_t lot = 0; lot < work.lots.size(); ++lot)
            for (const std::string& mark : work.lots[lot].marks)
                lotOf_[blankKey(work.lots[lot].order, mark)] = lot;
        units_.assign(work.lots.size(), 0);
        for (std::size_t lot = 0; lot < work.lots.size(); ++lot)
            units_[lot] = work.lots[lot].cutAlready;
    }

    Result<Assembly> assemble(const std::vector<NamedPin>& pins)
    {
        for (const PlannedCut& cut : work_.cuts)
            for (std::size_t pattern = 0; pattern < cut.patterns.size(); ++pattern)
                addCut(cut, pattern);
        for (std::size_t lot = 0; lot < work_.lots.size(); ++lot)
            addLot(lot);
        for (const Yield& yield : yields_)
            if (const auto task = lotTask_.find(yield.lot); task != lotTask_.end())
                builder_.supply({yield.cut, task->second, yield.pieces});
        for (const NamedPin& pin : pins)
            addPin(pin);
        if (tasks_.empty())
            return Assembly{std::nullopt, std::move(findings_), {}};
        auto problem = builder_.build();
        if (!problem.ok())
            return problem.errors();
        return Assembly{*std::move(problem), std::move(findings_), std::move(cuts_)};
    }

private:
    struct Yield {
        std::size_t cut = 0;
        std::size_t lot = 0;
        std::int64_t pieces = 0;
    };

    void tell(rules::Weight weight, const char* code, const std::string& place, Phrase statement,
              const char* remedy)
    {
        findings_.push_back({weight, code, place, std::move(statement), {remedy, {}}, std::nullopt});
    }

    [[nodiscard]] bool takes(const FloorMachine& machine, const cutting::Stock& stock,
                             const cutting::Pattern& pattern) const
    {
        const bool kind = stock.kind == cutting::StockKind::Coil ? machine.coils : machine.sheets;
        return machine.stage == Stage::Cut && kind &&
               pattern.length <= machine.longest.value_or(pattern.length) &&
               stock.width <= machine.widest.value_or(stock.width);
    }

    void addCut(const PlannedCut& cut, std::size_t index)
    {
        const cutting::Pattern& pattern = cut.patterns[index];
        const cutting::Stock& stock = cut.stocks[pattern.stock];
        Task task;
        task.stage = Stage::Cut;
        task.units = pattern.count;
        task.key = "cut, " + describe(cut.material) + ", map " + std::to_string(index + 1);
        // The same metal in two batches by coil width: numbered on.
        for (int more = 2; tasks_.count(task.key) != 0; ++more)
            task.key = "cut, " + describe(cut.material) + ", map " + std::to_string(index + 1) +
                       " of batch " + std::to_string(more);
        task.name = cut.material.colour + " " + cut.material.gauge + ", map " + std::to_string(index + 1);
        const Duration change =
            stock.kind == cutting::StockKind::Coil ? floor_.setups.coilChange : floor_.setups.rackChange;
        for (const FloorMachine& machine : floor_.machines)
            if (takes(machine, stock, pattern))
                task.ways.push_back({machines_[machine.id],
                                     cuttingTime(cut.blanks, pattern, ratesOf(floor_, machine)),
                                     {fittingOf(stock, cut.material), knivesOf(pattern)},
                                     change,
                                     floor_.setups.slitterSetup});
        if (task.ways.empty()) {
            tell(rules::Weight::Blocks, "schedule.no_cutter", task.name,
                 {"no machine of the floor cuts {stock}, {length} long",
                  {{"stock", stock.key}, {"length", pattern.length}}},
                 "put a machine on the floor that does, or take the stock away");
            return;
        }
        const std::string key = task.key;
        cuts_[key] = {cut.plan, index};
        tasks_[key] = builder_.task(std::move(task));
        collectYield(cut, pattern, tasks_[key]);
    }

    void collectYield(const PlannedCut& cut, const cutting::Pattern& pattern, std::size_t task)
    {
        std::map<std::size_t, std::int64_t> pieces;
        for (const cutting::Strip& strip : pattern.strips)
            for (const cutting::Crosscut& crosscut : strip.crosscuts)
                if (const auto lot = lotOf_.find(cut.blanks[crosscut.blank].key); lot != lotOf_.end())
                    pieces[lot->second] += crosscut.count * pattern.count;
        for (const auto& [lot, count] : pieces) {
            yields_.push_back({task, lot, count});
            units_[lot] += count;
        }
    }

    void addLot(std::size_t index)
    {
        const LotWork& lot = work_.lots[index];
        if (units_[index] == 0)
            return;
        Task task;
        task.key = lot.order + "/" + lot.profile;
        task.name = lot.name;
        task.stage = Stage::Fold;
        task.units = units_[index];
        for (const FloorMachine& machine : floor_.machines)
            for (const FoldWay& way : lot.ways)
                if (machine.stage == Stage::Fold && machine.model == way.model)
                    task.ways.push_back(foldWay(machine, way));
        if (task.ways.empty()) {
            tell(rules::Weight::Blocks, "schedule.no_folder", lot.name,
                 {"no folding machine of the floor makes it", {}},
                 "change the profile, or the floor's machines");
            return;
        }
        task.delivery = deliveryOf(lot.order);
        const std::string key = task.key;
        tasks_[key] = builder_.task(std::move(task));
        lotTask_[index] = tasks_[key];
    }

    [[nodiscard]] Way foldWay(const FloorMachine& machine, const FoldWay& way)
    {
        const Rates rates = ratesOf(floor_, machine);
        return {machines_[machine.id],
                (way.millisecondsEach * *rates.foldPercent + 99) / 100 + rates.piece->inSeconds() * 1'000,
                {way.beamFace.empty() ? "" : "face " + way.beamFace, "program " + way.program},
                floor_.setups.beamFaceChange,
                floor_.setups.programChange};
    }

    std::optional<std::size_t> deliveryOf(const std::string& order)
    {
        if (const auto known = deliveries_.find(order); known != deliveries_.end())
            return known->second;
        for (const OrderDue& one : work_.orders) {
            if (one.order != order)
                continue;
            Delivery delivery{one.order, one.name, std::nullopt, latenessWeight(floor_, one.priority)};
            if (one.wantedBy)
                delivery.due = momentOf(*one.wantedBy, floor_.truckLeaves);
            deliveries_[order] = builder_.delivery(std::move(delivery));
            return deliveries_[order];
        }
        return std::nullopt;
    }

    void addPin(const NamedPin& named)
    {
        Pin pin;
        const auto task = tasks_.find(named.task);
        const auto machine = machines_.find(named.machine.value_or(""));
        const auto after = tasks_.find(named.after.value_or(""));
        if (task == tasks_.end() || (named.machine && machine == machines_.end()) ||
            (named.after && after == tasks_.end())) {
            tell(rules::Weight::Warns, "schedule.pin.gone", named.task,
                 {"a pin names a lot, cut or machine that is not there any more; it is left out", {}},
                 "take the pin away");
            return;
        }
        pin.task = task->second;
        pin.start = named.start;
        if (named.machine)
            pin.machine = machine->second;
        if (named.after)
            pin.after = after->second;
        builder_.pin(pin);
    }

    const ShopWork& work_;
    const Floor& floor_;
    ProblemBuilder builder_;
    std::map<std::string, std::size_t> machines_, tasks_, deliveries_, lotOf_;
    std::map<std::string, CutOf> cuts_;
    std::map<std::size_t, std::size_t> lotTask_;
    std::vector<std::int64_t> units_;
    std::vector<Yield> yields_;
    rules::Findings findings_;
};

} // namespace

Result<Assembly> assemble(const ShopWork& work, const Floor& floor, Moment begin,
                          const std::vector<NamedPin>& pins)
{
    return Assembler(work, floor, begin).assemble(pins);
}

std::string programOf(const fold::FoldPlan& plan)
{
    std::string program;
    for (const fold::FoldStep& step : plan.steps) {
        const auto tenths = std::llround(step.angleToSet.inDegrees() * 10.0);
        program += (program.empty() ? "" : " ") + tenthsOfMillimetre(step.gaugeSetting) +
                   (step.direction == fold::Direction::Up ? "u" : "d") + std::to_string(tenths) +
                   (step.action == fold::Action::Flatten ? "f" : "");
    }
    return program;
}

std::int64_t handlingTime(const fold::FoldPlan& plan)
{
    std::int64_t sum = 0;
    for (const fold::FoldStep& step : plan.steps)
        sum += step.milliseconds;
    return sum;
}

std::int64_t cuttingTime(const std::vector<cutting::Blank>& blanks, const cutting::Pattern& pattern,
                         const Rates& rates)
{
    const auto parts = static_cast<std::int64_t>(pattern.strips.size());
    std::int64_t inner = 0, trims = 0;
    for (const cutting::Strip& strip : pattern.strips)
        for (const cutting::Crosscut& crosscut : strip.crosscuts) {
            inner += crosscut.count;
            const cutting::Blank& blank = blanks[crosscut.blank];
            const bool girthFills = (pattern.order == cutting::CutOrder::StripsFirst) != crosscut.turned;
            trims += (girthFills ? blank.girth : blank.length) < strip.width ? crosscut.count : 0;
        }
    const bool stripsFirst = pattern.order == cutting::CutOrder::StripsFirst;
    const std::int64_t slits = stripsFirst ? parts + trims : inner;
    const std::int64_t crosscuts = stripsFirst ? inner : parts + trims;
    const Duration time = *rates.sheet + *rates.slit * slits + *rates.crosscut * crosscuts;
    return std::min(time.inSeconds() * 1'000, ProblemBuilder::longestUnit);
}

} // namespace lapwright::schedule
