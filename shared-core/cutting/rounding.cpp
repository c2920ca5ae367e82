#include "cutting/rounding.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace lapwright::cutting {

namespace {

constexpr double tiny = 1e-6;

std::vector<RawStrip> stripsOf(const MasterProgram::Column& column)
{
    if (column.sort == MasterProgram::Column::Sort::Strip)
        return {column.strip};
    return column.pattern.strips;
}

} // namespace

Rounding::Rounding(const Instance& instance)
    : instance_(&instance), used_(instance.stocks.size(), 0), strips_(instance.stocks.size()),
      chosen_(instance.stocks.size())
{
    for (const Kind& kind : instance.kinds)
        residual_.push_back(kind.demand);
}

bool Rounding::done() const
{
    return std::ranges::all_of(residual_, [](std::int64_t left) { return left <= 0; });
}

bool Rounding::empty() const
{
    return !touched_;
}

void Rounding::setRows(MasterProgram& master) const
{
    master.setRows(residual_, used_, chosen_);
}

/// How often the column can be used as it is.
std::int64_t Rounding::fits(const MasterProgram::Column& column) const
{
    std::map<int, std::int64_t> need;
    for (const RawStrip& strip : stripsOf(column))
        for (const auto& [placement, count] : strip.pieces)
            need[instance_->frameAt(column.stock).placements[static_cast<std::size_t>(placement)].kind] +=
                count;
    std::int64_t times = std::numeric_limits<std::int64_t>::max();
    for (const auto& [kind, count] : need)
        times = std::min(times, residual_[static_cast<std::size_t>(kind)] / count);
    return times;
}

void Rounding::take(const RawPattern& pattern, std::int64_t sign)
{
    for (const RawStrip& strip : pattern.strips)
        for (const auto& [placement, count] : strip.pieces) {
            const int kind =
                instance_->frameAt(pattern.stock).placements[static_cast<std::size_t>(placement)].kind;
            residual_[static_cast<std::size_t>(kind)] -= sign * count * pattern.count;
        }
}

/// The strip without what is no longer wanted, filled up with what is; takes it from the residual.
void Rounding::clipStrip(const MasterProgram& master, const RawStrip& strip, int span, Clipped& result)
{
    const Frame& frame = instance_->frameAt(result.pattern.stock);
    std::map<int, int, std::greater<>> counts;
    int left = span;
    const auto put = [&](int at, std::int64_t most) {
        const Placement& placement = frame.placements[static_cast<std::size_t>(at)];
        std::int64_t& wanted = residual_[static_cast<std::size_t>(placement.kind)];
        const int count = static_cast<int>(std::min<std::int64_t>({most, wanted, left / placement.along}));
        if (count <= 0)
            return;
        counts[at] += count;
        left -= count * placement.along;
        wanted -= count;
        result.value += count * master.worths()[static_cast<std::size_t>(placement.kind)];
    };
    for (const auto& [at, count] : strip.pieces)
        put(at, count);
    const auto width = static_cast<std::size_t>(strip.width);
    const int first = instance_->patterns == PatternClass::Exact ? frame.firstOfWidth[width] : 0;
    for (int at = frame.firstOfWidth[width + 1] - 1; at >= first && left > 0; --at)
        put(at, left);
    if (counts.empty())
        return;
    RawStrip part{frame.widthOfPlacement[static_cast<std::size_t>(counts.begin()->first)], {}};
    part.pieces.assign(counts.begin(), counts.end());
    result.pattern.strips.push_back(std::move(part));
}

Rounding::Clipped Rounding::clip(const MasterProgram& master, const MasterProgram::Column& column)
{
    const StockClass& row = instance_->stockAt(column.stock);
    const bool whole = column.sort == MasterProgram::Column::Sort::Whole;
    Clipped result{{column.stock, whole ? column.pattern.along : row.along, 1, {}}, 0.0};
    for (const RawStrip& strip : stripsOf(column))
        clipStrip(master, strip, result.pattern.along, result);
    if (row.coil && whole) {
        result.pattern.along = 0;
        for (const RawStrip& strip : result.pattern.strips)
            result.pattern.along =
                std::max(result.pattern.along, takenBy(instance_->frameAt(column.stock), strip));
    }
    return result;
}

double Rounding::priceOf(const MasterProgram& master, const MasterProgram::Column& column,
                         const RawPattern& pattern) const
{
    const StockClass& row = instance_->stockAt(column.stock);
    if (column.sort == MasterProgram::Column::Sort::Strip)
        return master.slot(column.stock, pattern.strips.front().width);
    return static_cast<double>(instance_->costOf(row, pattern.along)) +
           master.scarcity(column.stock) * (row.coil ? pattern.along : 1.0);
}

/// Takes up a pattern whose blanks have left the residual already.
void Rounding::choose(int stock, bool whole, RawPattern pattern)
{
    const auto s = static_cast<std::size_t>(stock);
    touched_ = true;
    if (!whole) {
        RawStrip& strip = pattern.strips.front();
        chosen_[s][strip.width] += pattern.count;
        strips_[s][strip.width].emplace_back(std::move(strip), pattern.count);
        return;
    }
    const StockClass& row = instance_->stockAt(stock);
    used_[s] += pattern.count * (row.coil ? pattern.along : 1);
    costOfWholes_ += static_cast<double>(instance_->costOf(row, pattern.along) * pattern.count);
    wholes_.push_back(std::move(pattern));
}

Rounding Rounding::inPart(const Part& part) const
{
    Rounding result(part.instance);
    result.touched_ = touched_;
    result.costOfWholes_ = costOfWholes_;
    // Stock in the part is what is left of it, so none of it is used; the strips' slots are still to be paid.
    for (std::size_t stock = 0; stock < part.stocks.size(); ++stock)
        result.chosen_[stock] = chosen_[static_cast<std::size_t>(part.stocks[stock])];
    return result;
}

void Rounding::takeOver(const Rounding& other, const Part& part)
{
    for (std::size_t stock = 0; stock < part.stocks.size(); ++stock)
        for (const auto& [width, strips] : other.strips_[stock])
            for (const auto& [strip, count] : strips) {
                RawPlan plan = part.inWhole({{static_cast<int>(stock), 0, count, {strip}}}, *instance_);
                take(plan.front(), 1);
                const int at = plan.front().stock;
                choose(at, false, std::move(plan.front()));
            }
    for (RawPattern& pattern : part.inWhole(other.wholes_, *instance_)) {
        take(pattern, 1);
        const int at = pattern.stock;
        choose(at, true, std::move(pattern));
    }
    cost_ = other.cost_;
}

void Rounding::giveBack(const MasterProgram& master, std::mt19937& random)
{
    std::vector<Place> places;
    const auto consider = [&](int stock, int width, std::size_t entry, double price, double worth) {
        const double luck = std::uniform_real_distribution(0.0, 1.0)(random);
        places.push_back({stock, width, entry, luck * (0.02 * price + std::max(0.0, price - worth))});
    };
    for (std::size_t s = 0; s < strips_.size(); ++s)
        for (const auto& [width, strips] : strips_[s])
            for (std::size_t entry = 0; entry < strips.size(); ++entry) {
                const int stock = static_cast<int>(s);
                consider(stock, width, entry, master.slot(stock, width),
                         master.worthOf(stock, strips[entry].first));
            }
    for (std::size_t entry = 0; entry < wholes_.size(); ++entry) {
        const StockClass& row = instance_->stockAt(wholes_[entry].stock);
        consider(-1, 0, entry, static_cast<double>(instance_->costOf(row, wholes_[entry].along)),
                 master.worthOf(wholes_[entry]));
    }
    const std::size_t most = std::clamp<std::size_t>(places.size() / 2, 10, 100);
    const std::size_t count = std::min(most / 5 + random() % most, places.size());
    std::ranges::partial_sort(places, places.begin() + static_cast<std::ptrdiff_t>(count),
                              [](const Place& left, const Place& right) { return left.loss > right.loss; });
    places.resize(count);
    std::ranges::sort(places, [](const Place& left, const Place& right) {
        return std::tie(left.stock, left.width, left.entry) > std::tie(right.stock, right.width, right.entry);
    });
    for (const Place& place : places)
        giveBack(place);
}

void Rounding::giveBack(const Place& place)
{
    if (place.stock < 0) {
        RawPattern& pattern = wholes_[place.entry];
        const StockClass& row = instance_->stockAt(pattern.stock);
        const std::int64_t count = std::exchange(pattern.count, 1);
        take(pattern, -1);
        used_[static_cast<std::size_t>(pattern.stock)] -= row.coil ? pattern.along : 1;
        costOfWholes_ -= static_cast<double>(instance_->costOf(row, pattern.along));
        pattern.count = count - 1;
        if (pattern.count == 0)
            wholes_.erase(wholes_.begin() + static_cast<std::ptrdiff_t>(place.entry));
        return;
    }
    auto& strips = strips_[static_cast<std::size_t>(place.stock)][place.width];
    auto& [strip, copies] = strips[place.entry];
    take({place.stock, 0, 1, {strip}}, -1);
    --chosen_[static_cast<std::size_t>(place.stock)][place.width];
    if (--copies == 0)
        strips.erase(strips.begin() + static_cast<std::ptrdiff_t>(place.entry));
}

bool Rounding::fixWhole(const MasterProgram& master)
{
    const std::vector<double> values = master.values();
    bool moved = false;
    for (std::size_t index = 0; index < values.size(); ++index) {
        const MasterProgram::Column& column = master.columns()[index];
        if (values[index] < 1.0 - tiny || !column.cutsBlanks())
            continue;
        const std::int64_t times =
            std::min(static_cast<std::int64_t>(std::floor(values[index] + tiny)), fits(column));
        if (times <= 0)
            continue;
        const bool whole = column.sort == MasterProgram::Column::Sort::Whole;
        RawPattern pattern{column.stock,
                           whole ? column.pattern.along : instance_->stockAt(column.stock).along, times,
                           stripsOf(column)};
        take(pattern, 1);
        choose(column.stock, whole, std::move(pattern));
        moved = true;
    }
    return moved;
}

bool Rounding::fix(const MasterProgram& master, double share, double noise, std::mt19937& random)
{
    const std::vector<double> values = master.values();
    std::vector<Candidate> candidates;
    for (std::size_t index = 0; index < values.size(); ++index) {
        if (values[index] < tiny || !master.columns()[index].cutsBlanks())
            continue;
        const double blur = noise > 0.0 ? std::uniform_real_distribution(0.0, noise)(random) : 0.0;
        const auto whole =
            std::min(std::floor(values[index] + tiny), static_cast<double>(fits(master.columns()[index])));
        if (values[index] - whole > tiny)
            candidates.push_back({whole - values[index] - blur, index});
    }
    const bool moved = fixWhole(master);
    std::ranges::sort(candidates, [](const Candidate& left, const Candidate& right) {
        return std::tie(left.order, left.column) < std::tie(right.order, right.column);
    });
    const auto most = 1 + static_cast<std::size_t>(share * static_cast<double>(candidates.size()));
    // Lossless ones first; where there are none, the least loss there is.
    double allowed = 1e-6;
    for (std::size_t fixed = 0; fixed == 0 && !done(); allowed *= 8.0) {
        bool any = false;
        for (const Candidate& candidate : candidates) {
            if (fixed >= most)
                break;
            const MasterProgram::Column& column = master.columns()[candidate.column];
            Clipped part = clip(master, column);
            if (part.pattern.strips.empty())
                continue;
            any = true;
            const double price = priceOf(master, column, part.pattern);
            if (price - part.value > allowed * price) {
                take(part.pattern, -1);
                continue;
            }
            choose(column.stock, column.sort == MasterProgram::Column::Sort::Whole, std::move(part.pattern));
            ++fixed;
        }
        if (!any)
            return moved;
    }
    return true;
}

} // namespace lapwright::cutting
