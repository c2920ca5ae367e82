#include "cutting/nested_patterns.h"

#include "cutting/knapsack.h"
#include "cutting/linear_program.h"
#include "cutting/one_dimension.h"
#include "cutting/strip_table.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <set>

namespace lapwright::cutting {

namespace {

constexpr double tolerance = 1e-7;

struct Column {
    enum class Sort { Strip, Sheet, Whole };
    Sort sort = Sort::Strip;
    int stock = 0;
    RawStrip strip;     ///< Strip
    RawPattern pattern; ///< Whole
};

struct FixedStrip {
    RawStrip strip;
    std::int64_t count = 0;
};

} // namespace

class NestedPatterns::Search {
public:
    Search(const Instance& instance, const RawPlan& start, std::uint64_t seed, Listener listener)
        : instance_(instance), listener_(std::move(listener)),
          random_(static_cast<std::mt19937::result_type>(seed))
    {
        layRows();
        for (const RawPattern& pattern : start)
            addPattern(pattern);
    }

    void run()
    {
        if (!generate(rootRounds, true) || done_)
            return;
        constexpr int attempts = 400;
        for (int attempt = 0; attempt < attempts && !stopped(); ++attempt)
            dive(attempt);
    }

private:
    static constexpr int rootRounds = 2'000;

    [[nodiscard]] const StockClass& stock(int index) const
    {
        return instance_.stocks[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] const Frame& frame(int stockIndex) const
    {
        return instance_.frames[static_cast<std::size_t>(stock(stockIndex).frame)];
    }
    /// Remnants and coils are cut by whole patterns; sheets by strips that any sheet of their kind may hold.
    [[nodiscard]] bool whole(int index) const { return stock(index).coil || stock(index).available == 1; }

    bool stopped()
    {
        if (!done_ && listener_.stop(std::exchange(work_, 0)))
            done_ = true;
        return done_;
    }

    void layRows()
    {
        std::vector<double> least;
        for (const Kind& kind : instance_.kinds)
            least.push_back(static_cast<double>(kind.demand));
        for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
            availabilityRow_.push_back(-1);
            if (instance_.stocks[index].available >= 0) {
                availabilityRow_.back() = static_cast<int>(least.size());
                least.push_back(-static_cast<double>(instance_.stocks[index].available));
            }
        }
        std::vector<int> longest(instance_.frames.size(), 0);
        for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
            const StockClass& row = instance_.stocks[index];
            int& span = longest[static_cast<std::size_t>(row.frame)];
            span = std::max(span, row.along);
            stripRow_.push_back(-1);
            if (!whole(static_cast<int>(index))) {
                stripRow_.back() = static_cast<int>(least.size());
                least.resize(least.size() + frame(static_cast<int>(index)).widths.size(), 0.0);
            }
            BarProblem across{row.across, frame(static_cast<int>(index)).widths, {}, 0};
            across.demands.assign(across.sizes.size(), row.across);
            across.mostPieces = std::max(1, std::min(instance_.mostStrips, row.across));
            for (std::size_t width = across.sizes.size(); width-- > 0 && across.sizes[width] > row.across;) {
                across.sizes.pop_back();
                across.demands.pop_back();
            }
            acrossProblems_.push_back(std::move(across));
        }
        for (std::size_t index = 0; index < instance_.frames.size(); ++index)
            tables_.emplace_back(instance_, static_cast<int>(index), longest[index]);
        least_ = least;
        program_ = std::make_unique<LinearProgram>(least, [this] { return stopped(); });
    }

    [[nodiscard]] int rowOfStrip(int stockIndex, int width) const
    {
        return stripRow_[static_cast<std::size_t>(stockIndex)] + width;
    }

    void addEntries(int stockIndex, const RawStrip& strip, std::map<int, double>& entries) const
    {
        for (const auto& [placement, count] : strip.pieces)
            entries[frame(stockIndex).placements[static_cast<std::size_t>(placement)].kind] += count;
    }

    void add(double cost, const std::map<int, double>& entries, Column column)
    {
        program_->addColumn(cost, {entries.begin(), entries.end()});
        columns_.push_back(std::move(column));
    }

    bool addStrip(int stockIndex, const RawStrip& strip)
    {
        if (strip.pieces.empty() || !knownStrips_.emplace(stockIndex, strip).second)
            return false;
        std::map<int, double> entries;
        addEntries(stockIndex, strip, entries);
        entries[rowOfStrip(stockIndex, strip.width)] -= 1.0;
        add(0.0, entries, {Column::Sort::Strip, stockIndex, strip, {}});
        return true;
    }

    bool addSheet(int stockIndex, const Pieces& widths)
    {
        if (widths.empty() || !knownSheets_.emplace(stockIndex, widths).second)
            return false;
        std::map<int, double> entries;
        for (const auto& [width, count] : widths)
            entries[rowOfStrip(stockIndex, width)] += count;
        if (const int row = availabilityRow_[static_cast<std::size_t>(stockIndex)]; row >= 0)
            entries[row] -= 1.0;
        add(static_cast<double>(stock(stockIndex).cost), entries, {Column::Sort::Sheet, stockIndex, {}, {}});
        return true;
    }

    bool addWhole(RawPattern pattern)
    {
        pattern.count = 1;
        if (pattern.strips.empty() || !knownWholes_.insert(pattern).second)
            return false;
        std::map<int, double> entries;
        for (const RawStrip& strip : pattern.strips)
            addEntries(pattern.stock, strip, entries);
        if (const int row = availabilityRow_[static_cast<std::size_t>(pattern.stock)]; row >= 0)
            entries[row] -= stock(pattern.stock).coil ? pattern.along : 1.0;
        const auto cost = static_cast<double>(instance_.costOf(stock(pattern.stock), pattern.along));
        const int stockIndex = pattern.stock;
        add(cost, entries, {Column::Sort::Whole, stockIndex, {}, std::move(pattern)});
        return true;
    }

    void addPattern(const RawPattern& pattern)
    {
        if (whole(pattern.stock)) {
            addWhole(pattern);
            return;
        }
        std::map<int, int> widths;
        for (const RawStrip& strip : pattern.strips) {
            addStrip(pattern.stock, strip);
            ++widths[strip.width];
        }
        addSheet(pattern.stock, {widths.begin(), widths.end()});
    }

    bool generate(int rounds, bool root)
    {
        for (int round = 0; round < rounds; ++round) {
            if (stopped() || !program_->solve())
                return false;
            const std::vector<double> duals = program_->duals();
            const std::vector<double> values(
                duals.begin(), duals.begin() + static_cast<std::ptrdiff_t>(instance_.kinds.size()));
            work_ += 1 + static_cast<std::int64_t>(least_.size()) / 100;
            for (StripTable& table : tables_) {
                table.fill(values);
                work_ += table.cellsFilled() / 500'000;
            }
            if (root && round % 10 == 9 && (certify(values) || boundIsTight()))
                return true;
            bool any = false;
            for (std::size_t index = 0; index < instance_.stocks.size(); ++index)
                any = price(static_cast<int>(index), duals) || any;
            if (!any) {
                if (root)
                    certify(values);
                return true;
            }
        }
        return true;
    }

    /// Whether more columns could hardly move the bound: no further whole sheet, or less than a
    /// ten-thousandth.
    [[nodiscard]] bool boundIsTight() const
    {
        const double least = program_->objective();
        const auto bound = static_cast<double>(listener_.bound());
        if (instance_.measure == Measure::Sheets)
            return bound >= std::ceil(least - 1e-6);
        return bound >= least * (1.0 - 1e-4);
    }

    /// True once the listener wants nothing more.
    bool certify(const std::vector<double>& values)
    {
        const double dearest = *std::ranges::max_element(values);
        if (dearest <= 0.0)
            return false;
        double cheapest = 1.0;
        for (const StockClass& row : instance_.stocks)
            cheapest = std::max(cheapest, static_cast<double>(row.coil ? 1 : row.cost));
        const double scale = std::max(1.0, std::floor(std::min(1e7, 1e10 / std::max(dearest, cheapest))));
        Certificate certificate;
        certificate.method = Certificate::Method::Patterns;
        certificate.patterns = instance_.patterns;
        certificate.perCost = static_cast<std::int64_t>(scale);
        certificate.blankValues.assign(instance_.problem->blanks().size(), 0);
        for (std::size_t kind = 0; kind < values.size(); ++kind)
            for (const std::size_t blank : instance_.kinds[kind].blanks)
                certificate.blankValues[blank] = static_cast<std::int64_t>(std::floor(values[kind] * scale));
        done_ = listener_.certificate(certificate) || done_;
        return done_;
    }

    bool price(int index, const std::vector<double>& duals)
    {
        const StockClass& row = stock(index);
        const int availability = availabilityRow_[static_cast<std::size_t>(index)];
        const double scarcity = availability >= 0 ? duals[static_cast<std::size_t>(availability)] : 0.0;
        if (row.coil)
            return priceLevels(index, scarcity);
        const double cost = static_cast<double>(row.cost) + scarcity;
        const double needed = cost * (1.0 + tolerance);
        const StripTable& table = tables_[static_cast<std::size_t>(row.frame)];
        const BarProblem& across = acrossProblems_[static_cast<std::size_t>(index)];
        if (across.sizes.empty())
            return false;
        std::vector<double> worth;
        for (std::size_t width = 0; width < across.sizes.size(); ++width)
            worth.push_back(table.best(static_cast<int>(width), row.along));
        Knapsack<double> knapsack(across);
        knapsack.fill(worth);
        const bool better = knapsack.best(row.across, false) > needed;
        const Pieces widths = better ? knapsack.pieces(row.across, false) : Pieces();
        if (whole(index))
            return better && addWhole(patternOf(index, row.along, widths));
        bool any = better && addSheet(index, widths);
        std::vector<double> stripDuals;
        for (std::size_t width = 0; width < across.sizes.size(); ++width)
            stripDuals.push_back(duals[static_cast<std::size_t>(rowOfStrip(index, static_cast<int>(width)))]);
        knapsack.fill(stripDuals);
        if (knapsack.best(row.across, false) > needed)
            any = addSheet(index, knapsack.pieces(row.across, false)) || any;
        return priceStrips(index, duals, stripDuals) || any;
    }

    /// The best strip of each width, and for the most attractive blanks the best strip that holds one.
    bool priceStrips(int index, const std::vector<double>& duals, const std::vector<double>& stripDuals)
    {
        const StockClass& row = stock(index);
        const StripTable& table = tables_[static_cast<std::size_t>(row.frame)];
        const double small = tolerance * static_cast<double>(row.cost);
        bool any = false;
        for (std::size_t width = 0; width < stripDuals.size(); ++width) {
            const int w = static_cast<int>(width);
            if (table.best(w, row.along) <= stripDuals[width] + small)
                continue;
            any = addStrip(index, table.strip(w, row.along)) || any;
            std::vector<std::pair<double, int>> offers;
            for (int at = frame(index).firstOfWidth[width]; at < frame(index).firstOfWidth[width + 1]; ++at) {
                const Placement& placement = frame(index).placements[static_cast<std::size_t>(at)];
                if (placement.along > row.along)
                    continue;
                const double value = duals[static_cast<std::size_t>(placement.kind)] +
                                     table.best(w, row.along - placement.along);
                if (value > stripDuals[width] + small)
                    offers.emplace_back(-value, at);
            }
            std::ranges::sort(offers);
            const std::size_t most = 4 + static_cast<std::size_t>(frame(index).firstOfWidth[width + 1] -
                                                                  frame(index).firstOfWidth[width]) /
                                             8;
            for (std::size_t offer = 0; offer < std::min(most, offers.size()); ++offer)
                any = addStripWith(index, w, offers[offer].second) || any;
        }
        return any;
    }

    bool addStripWith(int index, int width, int placement)
    {
        const StockClass& row = stock(index);
        const Placement& extra = frame(index).placements[static_cast<std::size_t>(placement)];
        RawStrip strip = tables_[static_cast<std::size_t>(row.frame)].strip(width, row.along - extra.along);
        const auto at =
            std::ranges::find_if(strip.pieces, [placement](const auto& e) { return e.first <= placement; });
        if (at != strip.pieces.end() && at->first == placement) {
            if (++at->second > instance_.kinds[static_cast<std::size_t>(extra.kind)].demand)
                return false;
        } else {
            strip.pieces.insert(at, {placement, 1});
        }
        return addStrip(index, strip);
    }

    RawPattern patternOf(int index, int along, const Pieces& widths) const
    {
        RawPattern pattern{index, stock(index).coil ? 0 : along, 1, {}};
        const StripTable& table = tables_[static_cast<std::size_t>(stock(index).frame)];
        for (auto entry = widths.rbegin(); entry != widths.rend(); ++entry) {
            for (int copy = 0; copy < entry->second; ++copy) {
                pattern.strips.push_back(table.strip(entry->first, along));
                if (pattern.strips.back().pieces.empty())
                    pattern.strips.pop_back();
            }
        }
        shrink(pattern);
        return pattern;
    }

    void shrink(RawPattern& pattern) const
    {
        if (!stock(pattern.stock).coil)
            return;
        pattern.along = 0;
        for (const RawStrip& strip : pattern.strips)
            pattern.along = std::max(pattern.along, taken(pattern.stock, strip));
    }

    [[nodiscard]] int taken(int stockIndex, const RawStrip& strip) const
    {
        int sum = 0;
        for (const auto& [placement, count] : strip.pieces)
            sum += count * frame(stockIndex).placements[static_cast<std::size_t>(placement)].along;
        return sum;
    }

    /// Levels of every length that is worth more than it costs; the most attractive join.
    bool priceLevels(int index, double scarcity)
    {
        const StockClass& row = stock(index);
        const StripTable& table = tables_[static_cast<std::size_t>(row.frame)];
        const BarProblem& across = acrossProblems_[static_cast<std::size_t>(index)];
        if (across.sizes.empty())
            return false;
        Knapsack<double> knapsack(across);
        std::vector<double> worth(across.sizes.size());
        std::vector<std::pair<double, int>> offers;
        double before = -1.0;
        for (int along = 1; along <= row.along; ++along) {
            bool moved = false;
            for (std::size_t width = 0; width < worth.size(); ++width) {
                const double value = table.best(static_cast<int>(width), along);
                moved = moved || value != worth[width];
                worth[width] = value;
            }
            if (!moved)
                continue;
            knapsack.fill(worth);
            const double value = knapsack.best(row.across, false);
            const double cost = static_cast<double>(instance_.costOf(row, along)) + scarcity * along;
            if (value > before && value > cost * (1.0 + tolerance))
                offers.emplace_back(-value / cost, along);
            before = value;
        }
        work_ += row.along * static_cast<std::int64_t>(worth.size()) * row.across / 500'000;
        std::ranges::sort(offers);
        bool any = false;
        constexpr std::size_t most = 24;
        for (std::size_t offer = 0; offer < std::min(most, offers.size()); ++offer) {
            const int along = offers[offer].second;
            for (std::size_t width = 0; width < worth.size(); ++width)
                worth[width] = table.best(static_cast<int>(width), along);
            knapsack.fill(worth);
            any = addWhole(patternOf(index, along, knapsack.pieces(row.across, false))) || any;
        }
        return any;
    }

    struct Dive {
        std::vector<std::int64_t> residual;
        std::vector<std::int64_t> used;                             ///< of each limited stock
        std::vector<std::map<int, std::vector<FixedStrip>>> strips; ///< by stock and width
        RawPlan wholes;
    };

    void setRows(const Dive& dive)
    {
        for (std::size_t kind = 0; kind < dive.residual.size(); ++kind)
            program_->setLeast(static_cast<int>(kind), static_cast<double>(dive.residual[kind]));
        for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
            if (const int row = availabilityRow_[index]; row >= 0)
                program_->setLeast(row,
                                   static_cast<double>(dive.used[index] - instance_.stocks[index].available));
            if (whole(static_cast<int>(index)))
                continue;
            for (std::size_t width = 0; width < frame(static_cast<int>(index)).widths.size(); ++width) {
                std::int64_t fixed = 0;
                if (const auto found = dive.strips[index].find(static_cast<int>(width));
                    found != dive.strips[index].end())
                    for (const FixedStrip& strip : found->second)
                        fixed += strip.count;
                program_->setLeast(rowOfStrip(static_cast<int>(index), static_cast<int>(width)),
                                   static_cast<double>(fixed));
            }
        }
    }

    /// The strip with nothing that is no longer wanted, filled up with what is.
    RawStrip clipped(int stockIndex, int span, const RawStrip& strip,
                     std::vector<std::int64_t>& residual) const
    {
        std::map<int, int, std::greater<>> counts;
        int left = span;
        const auto put = [&](int at, std::int64_t most) {
            const Placement& placement = frame(stockIndex).placements[static_cast<std::size_t>(at)];
            std::int64_t& wanted = residual[static_cast<std::size_t>(placement.kind)];
            const int count =
                static_cast<int>(std::min<std::int64_t>({most, wanted, left / placement.along}));
            if (count <= 0)
                return;
            counts[at] += count;
            left -= count * placement.along;
            wanted -= count;
        };
        for (const auto& [at, count] : strip.pieces)
            put(at, count);
        const auto width = static_cast<std::size_t>(strip.width);
        const int first =
            instance_.patterns == PatternClass::Exact ? frame(stockIndex).firstOfWidth[width] : 0;
        for (int at = frame(stockIndex).firstOfWidth[width + 1] - 1; at >= first && left > 0; --at)
            put(at, left);
        RawStrip result{strip.width, {counts.begin(), counts.end()}};
        if (!counts.empty())
            result.width =
                frame(stockIndex).widthOfPlacement[static_cast<std::size_t>(counts.begin()->first)];
        return result;
    }

    /// Fixes one column `times` as it is, or once with what is still wanted. False where nothing of it is
    /// wanted.
    bool fix(const Column& column, std::int64_t times, Dive& dive) const
    {
        const auto s = static_cast<std::size_t>(column.stock);
        std::map<int, std::int64_t> need;
        const std::vector<RawStrip> strips =
            column.sort == Column::Sort::Strip ? std::vector<RawStrip>{column.strip} : column.pattern.strips;
        for (const RawStrip& strip : strips)
            for (const auto& [placement, count] : strip.pieces)
                need[frame(column.stock).placements[static_cast<std::size_t>(placement)].kind] += count;
        std::int64_t fits = times;
        for (const auto& [kind, count] : need)
            fits = std::min(fits, dive.residual[static_cast<std::size_t>(kind)] / count);
        RawPattern pattern{column.stock, column.pattern.along, std::max<std::int64_t>(1, fits), {}};
        const int span =
            column.sort == Column::Sort::Whole ? column.pattern.along : stock(column.stock).along;
        for (const RawStrip& strip : strips) {
            if (fits > 0) {
                pattern.strips.push_back(strip);
                continue;
            }
            RawStrip part = clipped(column.stock, span, strip, dive.residual);
            if (!part.pieces.empty())
                pattern.strips.push_back(std::move(part));
        }
        if (fits > 0)
            for (const auto& [kind, count] : need)
                dive.residual[static_cast<std::size_t>(kind)] -= count * fits;
        if (pattern.strips.empty())
            return false;
        if (column.sort == Column::Sort::Strip) {
            RawStrip& strip = pattern.strips.front();
            dive.strips[s][strip.width].push_back({strip, pattern.count});
            return true;
        }
        shrink(pattern);
        dive.used[s] += pattern.count * (stock(column.stock).coil ? pattern.along : 1);
        dive.wholes.push_back(std::move(pattern));
        return true;
    }

    void dive(int attempt)
    {
        Dive state;
        for (const Kind& kind : instance_.kinds)
            state.residual.push_back(kind.demand);
        state.used.assign(instance_.stocks.size(), 0);
        state.strips.resize(instance_.stocks.size());
        std::uniform_real_distribution<double> noise(0.0, attempt == 0 ? 0.0 : 0.4);
        while (std::ranges::any_of(state.residual, [](std::int64_t left) { return left > 0; })) {
            setRows(state);
            const int rounds = attempt % 3 == 2 ? 1 : least_.size() > 3'000 ? 2 : 8;
            if (!generate(rounds, false))
                return;
            if (!program_->solve())
                return;
            fixSome(state, noise);
        }
        finish(state);
    }

    /// Whole parts first, then the largest fractions: one at a time in small programs, a share in large ones.
    void fixSome(Dive& state, std::uniform_real_distribution<double>& noise)
    {
        const std::vector<double> values = program_->values();
        std::vector<std::pair<double, std::size_t>> fractions;
        for (std::size_t index = 0; index < values.size(); ++index) {
            const Column& column = columns_[index];
            if (column.sort == Column::Sort::Sheet || values[index] < 1e-6)
                continue;
            const auto times = static_cast<std::int64_t>(std::floor(values[index] + 1e-6));
            if (times > 0)
                fix(column, times, state);
            const double fraction = values[index] - static_cast<double>(times);
            if (fraction > 1e-6)
                fractions.emplace_back(-fraction - noise(random_), index);
        }
        std::ranges::sort(fractions);
        const std::size_t share = 1 + fractions.size() / 12;
        std::size_t fixed = 0;
        for (const auto& [key, index] : fractions) {
            if (fixed >= share)
                break;
            if (fix(columns_[index], 1, state))
                ++fixed;
        }
    }

    /// Sheets for the strips chosen: fewest by the one-dimensional solver, for each kind of sheet.
    void finish(const Dive& state)
    {
        RawPlan plan = state.wholes;
        for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
            if (state.strips[index].empty())
                continue;
            const int stockIndex = static_cast<int>(index);
            BarProblem bars{stock(stockIndex).across,
                            {},
                            {},
                            std::max(1, std::min(instance_.mostStrips, stock(stockIndex).across))};
            std::vector<std::vector<FixedStrip>> supply;
            for (const auto& [width, strips] : state.strips[index]) {
                bars.sizes.push_back(frame(stockIndex).widths[static_cast<std::size_t>(width)]);
                bars.demands.push_back(0);
                for (const FixedStrip& strip : strips)
                    bars.demands.back() += strip.count;
                supply.push_back(strips);
            }
            const BarPlan sheets = cutBars(bars, 12, random_());
            work_ += sheets.work;
            if (stock(stockIndex).available >= 0 && sheets.bars > stock(stockIndex).available)
                return;
            for (const BarPattern& pattern : sheets.patterns)
                place(stockIndex, pattern, supply, plan);
        }
        done_ = listener_.plan(plan) || done_;
    }

    void place(int stockIndex, const BarPattern& sheets, std::vector<std::vector<FixedStrip>>& supply,
               RawPlan& plan) const
    {
        for (std::int64_t left = sheets.count; left > 0;) {
            std::int64_t alike = left;
            for (const auto& [width, count] : sheets.pieces)
                alike = std::min(alike, supply[static_cast<std::size_t>(width)].back().count / count);
            alike = std::max<std::int64_t>(1, alike);
            RawPattern pattern{stockIndex, stock(stockIndex).along, alike, {}};
            for (auto entry = sheets.pieces.rbegin(); entry != sheets.pieces.rend(); ++entry) {
                auto& source = supply[static_cast<std::size_t>(entry->first)];
                for (int copy = 0; copy < entry->second; ++copy) {
                    pattern.strips.push_back(source.back().strip);
                    source.back().count -= alike;
                    if (source.back().count == 0)
                        source.pop_back();
                }
            }
            plan.push_back(std::move(pattern));
            left -= alike;
        }
    }

    const Instance& instance_;
    Listener listener_;
    std::mt19937 random_;
    std::vector<int> availabilityRow_, stripRow_;
    std::vector<BarProblem> acrossProblems_;
    std::vector<StripTable> tables_;
    std::vector<double> least_;
    std::unique_ptr<LinearProgram> program_;
    std::vector<Column> columns_;
    std::set<std::pair<int, RawStrip>> knownStrips_;
    std::set<std::pair<int, Pieces>> knownSheets_;
    std::set<RawPattern> knownWholes_;
    std::int64_t work_ = 0;
    bool done_ = false;
};

NestedPatterns::NestedPatterns(const Instance& instance, const RawPlan& start, std::uint64_t seed,
                               Listener listener)
    : search_(std::make_unique<Search>(instance, start, seed, std::move(listener)))
{
}

NestedPatterns::~NestedPatterns() = default;

bool NestedPatterns::takes(const Instance& instance)
{
    constexpr int mostUnits = 20'000;
    std::int64_t coilCells = 0;
    for (const StockClass& stock : instance.stocks) {
        if (stock.along > mostUnits || stock.across > mostUnits)
            return false;
        const auto widths =
            static_cast<std::int64_t>(instance.frames[static_cast<std::size_t>(stock.frame)].widths.size());
        coilCells += stock.coil ? std::int64_t{stock.along} * stock.across * widths : 0;
    }
    constexpr std::int64_t mostCells = 400'000'000;
    return coilCells <= mostCells;
}

void NestedPatterns::run()
{
    search_->run();
}

} // namespace lapwright::cutting
