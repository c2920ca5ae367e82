#include "cutting/master_program.h"

#include <algorithm>

namespace lapwright::cutting {

MasterProgram::MasterProgram(const Instance& instance, Columns columns, std::function<bool()> stop)
    : instance_(instance), kind_(columns), program_(layRows(), std::move(stop))
{
}

std::vector<double> MasterProgram::layRows()
{
    std::vector<double> least;
    for (const Kind& kind : instance_.kinds)
        least.push_back(static_cast<double>(kind.demand));
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& stock = instance_.stocks[index];
        availabilityRow_.push_back(-1);
        if (stock.available >= 0) {
            availabilityRow_.back() = static_cast<int>(least.size());
            least.push_back(-static_cast<double>(stock.available));
        }
        stripRow_.push_back(-1);
        if (!cutWhole(static_cast<int>(index))) {
            stripRow_.back() = static_cast<int>(least.size());
            least.resize(least.size() + instance_.frameAt(static_cast<int>(index)).widths.size(), 0.0);
        }
    }
    rows_ = least.size();
    for (const StockClass& stock : instance_.stocks)
        unit_ = std::max(unit_, static_cast<double>(instance_.costOf(stock, stock.along)));
    return least;
}

void MasterProgram::addBlanks(int stock, const RawStrip& strip, std::map<int, double>& entries) const
{
    for (const auto& [placement, count] : strip.pieces)
        entries[instance_.frameAt(stock).placements[static_cast<std::size_t>(placement)].kind] += count;
}

void MasterProgram::add(double cost, const std::map<int, double>& entries, Column column)
{
    program_.addColumn(cost / unit_, {entries.begin(), entries.end()});
    columns_.push_back(std::move(column));
}

bool MasterProgram::addStrip(int stock, RawStrip strip)
{
    if (strip.pieces.empty() || cutWhole(stock))
        return false;
    const auto widest = static_cast<std::size_t>(strip.pieces.front().first);
    strip.width = instance_.frameAt(stock).widthOfPlacement[widest];
    if (!knownStrips_.try_emplace({stock, strip}, columns_.size()).second)
        return false;
    std::map<int, double> entries;
    addBlanks(stock, strip, entries);
    entries[rowOfStrip(stock, strip.width)] -= 1.0;
    add(0.0, entries, {Column::Sort::Strip, stock, std::move(strip), {}});
    return true;
}

bool MasterProgram::addSheet(int stock, const Pieces& widths)
{
    if (widths.empty() || cutWhole(stock) ||
        !knownSheets_.try_emplace({stock, widths}, columns_.size()).second)
        return false;
    const StockClass& row = instance_.stockAt(stock);
    std::map<int, double> entries;
    for (const auto& [width, count] : widths)
        entries[rowOfStrip(stock, width)] += count;
    if (const int at = availabilityRow_[static_cast<std::size_t>(stock)]; at >= 0)
        entries[at] -= row.coil ? row.along : 1.0;
    add(static_cast<double>(instance_.costOf(row, row.along)), entries, {Column::Sort::Sheet, stock, {}, {}});
    return true;
}

bool MasterProgram::addWhole(RawPattern pattern)
{
    pattern.count = 1;
    if (pattern.strips.empty() || !knownWholes_.insert(pattern).second)
        return false;
    const StockClass& row = instance_.stockAt(pattern.stock);
    std::map<int, double> entries;
    for (const RawStrip& strip : pattern.strips)
        addBlanks(pattern.stock, strip, entries);
    if (const int at = availabilityRow_[static_cast<std::size_t>(pattern.stock)]; at >= 0)
        entries[at] -= row.coil ? pattern.along : 1.0;
    const auto cost = static_cast<double>(instance_.costOf(row, pattern.along));
    const int stock = pattern.stock;
    add(cost, entries, {Column::Sort::Whole, stock, {}, std::move(pattern)});
    return true;
}

void MasterProgram::addPattern(const RawPattern& pattern)
{
    if (cutWhole(pattern.stock)) {
        addWhole(pattern);
        return;
    }
    if (instance_.stockAt(pattern.stock).coil)
        addWhole(pattern);
    std::map<int, int> widths;
    for (const RawStrip& strip : pattern.strips) {
        addStrip(pattern.stock, strip);
        ++widths[strip.width];
    }
    addSheet(pattern.stock, {widths.begin(), widths.end()});
}

/// Of each kind whether stock without limit takes it.
std::vector<bool> MasterProgram::plentiful() const
{
    std::vector<bool> taken(instance_.kinds.size(), false);
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const StockClass& row = instance_.stocks[index];
        if (row.available >= 0)
            continue;
        for (const Placement& placement : instance_.frameAt(static_cast<int>(index)).placements)
            if (placement.across <= row.across && placement.along <= row.along)
                taken[static_cast<std::size_t>(placement.kind)] = true;
    }
    return taken;
}

void MasterProgram::addSingles()
{
    const std::vector<bool> elsewhere = plentiful();
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        const StockClass& row = instance_.stockAt(stock);
        const Frame& frame = instance_.frameAt(stock);
        for (std::size_t at = 0; at < frame.placements.size(); ++at) {
            const Placement& placement = frame.placements[at];
            const auto count =
                std::min<std::int64_t>(row.along / placement.along,
                                       instance_.kinds[static_cast<std::size_t>(placement.kind)].demand);
            const bool needless = row.single && elsewhere[static_cast<std::size_t>(placement.kind)];
            if (count <= 0 || placement.across > row.across || needless)
                continue;
            RawStrip strip{frame.widthOfPlacement[at], {{static_cast<int>(at), static_cast<int>(count)}}};
            if (!cutWhole(stock)) {
                addStrip(stock, std::move(strip));
                continue;
            }
            const int along = row.coil ? takenBy(frame, strip) : row.along;
            addWhole({stock, along, 1, {std::move(strip)}});
        }
        for (std::size_t width = 0; !cutWhole(stock) && width < frame.widths.size(); ++width)
            if (const int count = std::min(instance_.mostStrips, row.across / frame.widths[width]); count > 0)
                addSheet(stock, {{static_cast<int>(width), count}});
    }
}

void MasterProgram::addFrom(const MasterProgram& whole, const Part& part)
{
    std::vector<int> stocks(whole.instance_.stocks.size(), -1);
    for (std::size_t stock = 0; stock < part.stocks.size(); ++stock)
        stocks[static_cast<std::size_t>(part.stocks[stock])] = static_cast<int>(stock);
    for (const Column& column : whole.columns_) {
        const int stock = stocks[static_cast<std::size_t>(column.stock)];
        if (stock < 0 || !column.cutsBlanks())
            continue;
        const bool strip = column.sort == Column::Sort::Strip;
        const auto& back = part.placements[static_cast<std::size_t>(instance_.stockAt(stock).frame)];
        const auto belongs = [&back](const RawStrip& entry) {
            return std::ranges::all_of(entry.pieces, [&back](const auto& piece) {
                return std::ranges::binary_search(back, piece.first);
            });
        };
        if (strip ? !belongs(column.strip) : !std::ranges::all_of(column.pattern.strips, belongs))
            continue;
        RawPlan plan =
            cutting::inPart(part, {strip ? RawPattern{column.stock, 0, 1, {column.strip}} : column.pattern});
        if (strip)
            addStrip(stock, std::move(plan.front().strips.front()));
        else
            addWhole(std::move(plan.front()));
    }
    for (const auto& [sheet, index] : whole.knownSheets_)
        if (const int stock = stocks[static_cast<std::size_t>(sheet.first)]; stock >= 0 && !cutWhole(stock))
            addSheet(stock, sheet.second);
}

void MasterProgram::addExchanges()
{
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        if (cutWhole(stock))
            continue;
        for (std::size_t width = 1; width < instance_.frameAt(stock).widths.size(); ++width) {
            const int wide = rowOfStrip(stock, static_cast<int>(width));
            add(0.0, {{wide - 1, 1.0}, {wide, -1.0}}, {Column::Sort::Exchange, stock, {}, {}});
        }
    }
    const bool turned =
        instance_.frames.size() != 1 || instance_.frames.front().placements.size() != instance_.kinds.size();
    // In small batches the exchange could use a blank more often than it is wanted and cost the bound a
    // sheet.
    constexpr std::size_t fewKinds = 150;
    if (!turned && instance_.kinds.size() >= fewKinds)
        exchangeKinds();
}

/// Each blank may come from the next longer one of its width and from the next of the next wider width.
void MasterProgram::exchangeKinds()
{
    const Frame& frame = instance_.frames.front();
    for (std::size_t at = 0; at < frame.placements.size(); ++at) {
        const auto width = static_cast<std::size_t>(frame.widthOfPlacement[at]);
        const auto give = [&](std::size_t from) {
            add(0.0, {{frame.placements[at].kind, 1.0}, {frame.placements[from].kind, -1.0}},
                {Column::Sort::Exchange, 0, {}, {}});
        };
        if (at + 1 < static_cast<std::size_t>(frame.firstOfWidth[width + 1]))
            give(at + 1);
        if (instance_.patterns == PatternClass::Exact || width + 1 == frame.widths.size())
            continue;
        for (int other = frame.firstOfWidth[width + 1]; other < frame.firstOfWidth[width + 2]; ++other) {
            if (frame.placements[static_cast<std::size_t>(other)].along < frame.placements[at].along)
                continue;
            give(static_cast<std::size_t>(other));
            break;
        }
    }
}

void MasterProgram::startFrom(const WarmStart& start)
{
    if (cutWhole(start.stock))
        return;
    for (const RawStrip& strip : start.strips)
        addStrip(start.stock, strip);
    for (const Pieces& sheet : start.sheets)
        addSheet(start.stock, sheet);
    LinearProgram::Basis basis{std::vector<bool>(columns_.size(), false), std::vector<bool>(rows_, false)};
    for (const RawStrip& strip : start.strips)
        basis.columns[knownStrips_.at({start.stock, strip})] = true;
    for (const Pieces& sheet : start.sheets)
        basis.columns[knownSheets_.at({start.stock, sheet})] = true;
    for (const int kind : start.slackKinds)
        basis.rows[static_cast<std::size_t>(kind)] = true;
    for (const int width : start.slackWidths)
        basis.rows[static_cast<std::size_t>(rowOfStrip(start.stock, width))] = true;
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        if (const int row = availabilityRow_[index]; row >= 0)
            basis.rows[static_cast<std::size_t>(row)] = true;
        const int stock = static_cast<int>(index);
        for (std::size_t width = 0;
             !cutWhole(stock) && stock != start.stock && width < instance_.frameAt(stock).widths.size();
             ++width)
            basis.rows[static_cast<std::size_t>(rowOfStrip(stock, static_cast<int>(width)))] = true;
    }
    program_.startFrom(basis);
}

void MasterProgram::setRows(const std::vector<std::int64_t>& residual, const std::vector<std::int64_t>& used,
                            const std::vector<std::map<int, std::int64_t>>& chosen)
{
    for (std::size_t kind = 0; kind < residual.size(); ++kind)
        program_.setLeast(static_cast<int>(kind), static_cast<double>(residual[kind]));
    for (std::size_t index = 0; index < instance_.stocks.size(); ++index) {
        const int stock = static_cast<int>(index);
        if (const int row = availabilityRow_[index]; row >= 0)
            program_.setLeast(row, static_cast<double>(used[index] - instance_.stocks[index].available));
        if (cutWhole(stock))
            continue;
        for (std::size_t width = 0; width < instance_.frameAt(stock).widths.size(); ++width) {
            const auto found = chosen[index].find(static_cast<int>(width));
            program_.setLeast(rowOfStrip(stock, static_cast<int>(width)),
                              found == chosen[index].end() ? 0.0 : static_cast<double>(found->second));
        }
    }
}

double MasterProgram::worthOf(int stock, const RawStrip& strip) const
{
    double worth = 0.0;
    for (const auto& [placement, count] : strip.pieces)
        worth += count * worths_[static_cast<std::size_t>(
                             instance_.frameAt(stock).placements[static_cast<std::size_t>(placement)].kind)];
    return worth;
}

double MasterProgram::worthOf(const RawPattern& pattern) const
{
    double worth = 0.0;
    for (const RawStrip& strip : pattern.strips)
        worth += worthOf(pattern.stock, strip);
    return worth;
}

bool MasterProgram::solve()
{
    const bool solved = program_.solve();
    ticks_ = 20 + program_.iterations() * static_cast<std::int64_t>(rows_) / 100;
    if (!solved)
        return false;
    duals_ = program_.duals();
    for (double& dual : duals_)
        dual *= unit_;
    worths_.assign(duals_.begin(), duals_.begin() + static_cast<std::ptrdiff_t>(instance_.kinds.size()));
    return true;
}

} // namespace lapwright::cutting
