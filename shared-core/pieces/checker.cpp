#include "pieces/checker.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace lapwright::pieces {

namespace {

struct Mark {
    std::string_view prefix;
    std::int64_t ordinal = 0;
};

std::optional<Mark> readMark(std::string_view text)
{
    const std::size_t point = text.rfind('.');
    if (point == std::string_view::npos || point == 0)
        return std::nullopt;
    Mark mark{text.substr(0, point), 0};
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data() + point + 1, end, mark.ordinal);
    if (error != std::errc() || stop != end || mark.ordinal < 1 || mark.ordinal > 1'000'000'000)
        return std::nullopt;
    return mark;
}

/// What the site cuts for one run add up to.
struct CutRun {
    Length sum;
    std::int64_t count = 0;
    std::int64_t ordinalSum = 0;
    Length longest;
    Length shortest;
    /// Of the stock lengths they are cut from.
    std::set<std::size_t> profiles;
};

class PieceCheck {
public:
    PieceCheck(const Order& checked, const Catalogue& known) : order(checked), catalogue(known)
    {
        for (const site::Chain& chain : order.job.chains)
            for (const site::Run& run : chain.runs)
                runs.emplace(run.id, &run);
        const site::PieceLimits& limits = order.job.limits;
        limit = limits.foldingLength;
        for (const std::optional<Length>& other : {limits.stockLength, limits.transportLength})
            if (other && *other < limit)
                limit = *other;
    }

    rules::Findings check()
    {
        checkMarks();
        checkSiteCuts();
        for (const RunTakeoff& takeoff : order.runs)
            checkRun(takeoff);
        checkNoneIsMissing();
        checkLoosePieces();
        return std::move(findings);
    }

private:
    void disagree(const char* code, const std::string& place, Phrase statement)
    {
        findings.push_back({rules::Weight::Blocks,
                            std::string("check.") + code,
                            place,
                            std::move(statement),
                            {"take the job off again; if this stays, the program is at fault", {}},
                            std::nullopt});
    }

    void checkMarks()
    {
        struct Range {
            std::string_view prefix;
            std::int64_t first = 0;
            std::int64_t last = 0;
        };
        std::vector<Range> ranges;
        ranges.reserve(order.pieces.size() + order.siteCuts.size());
        const auto add = [&](const std::string& text, std::int64_t count) {
            const std::optional<Mark> mark = readMark(text);
            if (!mark || count < 1)
                disagree("marks", text, {"{mark} is no mark", {{"mark", text}}});
            else
                ranges.push_back({mark->prefix, mark->ordinal, mark->ordinal + count - 1});
        };
        for (const Piece& piece : order.pieces)
            add(piece.mark, piece.count);
        for (const SiteCut& cut : order.siteCuts)
            add(cut.mark, 1);
        std::sort(ranges.begin(), ranges.end(), [](const Range& left, const Range& right) {
            return std::pair(left.prefix, left.first) < std::pair(right.prefix, right.first);
        });
        for (std::size_t i = 1; i < ranges.size(); ++i)
            if (ranges[i].prefix == ranges[i - 1].prefix && ranges[i].first <= ranges[i - 1].last)
                disagree("marks", std::string(ranges[i].prefix),
                         {"the mark {mark} is there twice",
                          {{"mark", std::string(ranges[i].prefix) + "." + std::to_string(ranges[i].first)}}});
    }

    void checkSiteCuts()
    {
        std::unordered_map<std::int64_t, Length> stockLengths;
        std::unordered_map<std::int64_t, std::size_t> profiles;
        for (const Piece& piece : order.pieces)
            if (const std::optional<Mark> mark = readMark(piece.mark);
                mark && piece.run.empty() && !piece.spare)
                for (std::int64_t i = 0; i < std::min(piece.count, mostStocks); ++i) {
                    stockLengths.emplace(mark->ordinal + i, piece.blankLength);
                    profiles.emplace(mark->ordinal + i, piece.profile);
                }
        std::unordered_map<std::int64_t, Length> left = stockLengths;
        for (const SiteCut& cut : order.siteCuts) {
            const auto stock = left.find(cut.stock);
            if (stock == left.end() || cut.length <= Length() || cut.left < Length() ||
                stock->second - cut.length != cut.left) {
                disagree(
                    "site_cuts", cut.mark,
                    {"{mark} cannot be cut from stock length {stock}: {length} and {left} left do not add "
                     "up to what was there",
                     {{"mark", cut.mark}, {"stock", cut.stock}, {"length", cut.length}, {"left", cut.left}}});
                continue;
            }
            stock->second = cut.left;
            addToRun(cut, profiles[cut.stock]);
        }
        for (const auto& [number, length] : stockLengths)
            if (left[number] == length)
                disagree("site_cuts", {}, {"nothing is cut from stock length {stock}", {{"stock", number}}});
    }

    void addToRun(const SiteCut& cut, std::size_t profile)
    {
        const std::optional<Mark> mark = readMark(cut.mark);
        if (!mark)
            return;
        CutRun& sum = cutRuns[mark->prefix];
        sum.longest = std::max(sum.longest, cut.length);
        sum.shortest = sum.count == 0 ? cut.length : std::min(sum.shortest, cut.length);
        sum.sum += cut.length;
        ++sum.count;
        sum.ordinalSum += mark->ordinal;
        sum.profiles.insert(profile);
    }

    /// The length that was measured; nothing where it was only derived from a drawing.
    static std::optional<Length> measured(const site::Run& run)
    {
        if (run.counts < run.lengths.size())
            return run.lengths[run.counts].value;
        return std::nullopt;
    }

    void checkRun(const RunTakeoff& takeoff)
    {
        const auto run = runs.find(takeoff.run);
        const auto trim = catalogue.trims.find(takeoff.trim);
        const site::TrimChoice* choice = run == runs.end() ? nullptr : choiceOf(*run->second, takeoff);
        if (choice == nullptr || trim == catalogue.trims.end() || !taken.insert(choice).second ||
            takeoff.profile >= order.profiles.size() || takeoff.firstPiece > order.pieces.size() ||
            takeoff.pieceCount > order.pieces.size() - takeoff.firstPiece) {
            disagree("run", takeoff.mark,
                     {"{mark} names a run, a trim, a profile or pieces that are not there",
                      {{"mark", takeoff.mark}}});
            return;
        }
        const trim::Installation& how = trim->second.installation;
        const Length lap = choice->lap.value_or(how.lap);
        if (takeoff.pieceCount == 0)
            checkCutRun(takeoff, *run->second, lap);
        else if (how.courseHeadLap)
            checkCourses(takeoff, *run->second, *how.courseHeadLap);
        else
            checkPiecesOf(takeoff, *run->second, lap);
    }

    /// The choice whose pieces these are: where a run has several trims, the one whose letter ends the mark.
    /// Nullptr if there is none, or if it is of another trim.
    static const site::TrimChoice* choiceOf(const site::Run& run, const RunTakeoff& takeoff)
    {
        std::string_view letter = takeoff.mark;
        if (letter.substr(0, run.id.size()) != run.id)
            return nullptr;
        letter.remove_prefix(run.id.size());
        letter.remove_prefix(std::min(letter.find_first_not_of('-'), letter.size()));
        // a is the first, z the 26th, aa the 27th.
        std::size_t number = letter.empty() && run.trims.size() == 1 ? 1 : 0;
        for (const char each : letter) {
            if (each < 'a' || each > 'z' || number > run.trims.size())
                return nullptr;
            number = 26 * number + static_cast<std::size_t>(each - 'a') + 1;
        }
        if (number < 1 || number > run.trims.size() || (run.trims.size() == 1 && !letter.empty()))
            return nullptr;
        const site::TrimChoice& choice = run.trims[number - 1];
        return choice.trim == takeoff.trim ? &choice : nullptr;
    }

    /// Where nothing blocks, every trim of every run has been taken off.
    void checkNoneIsMissing()
    {
        if (rules::anyBlocks(order.findings))
            return;
        for (const auto& [id, run] : runs)
            for (const site::TrimChoice& choice : run->trims)
                if (taken.count(&choice) == 0)
                    disagree("run", std::string(id),
                             {"run {run} has no pieces of {trim}",
                              {{"run", std::string(id)}, {"trim", choice.trim}}});
    }

    void checkBelonging(const RunTakeoff& takeoff)
    {
        for (std::size_t i = 0; i < takeoff.pieceCount; ++i) {
            const Piece& piece = order.pieces[takeoff.firstPiece + i];
            const std::optional<Mark> mark = readMark(piece.mark);
            if (piece.run != takeoff.run || piece.profile != takeoff.profile || piece.spare || !mark ||
                mark->prefix != takeoff.mark || mark->ordinal != static_cast<std::int64_t>(i) + 1)
                disagree("run", piece.mark,
                         {"{piece} does not stand in its place in {mark}",
                          {{"piece", piece.mark}, {"mark", takeoff.mark}}});
        }
    }

    void checkPiecesOf(const RunTakeoff& takeoff, const site::Run& run, Length lap)
    {
        checkBelonging(takeoff);
        const auto first = order.pieces.begin() + static_cast<std::ptrdiff_t>(takeoff.firstPiece);
        const auto last = first + static_cast<std::ptrdiff_t>(takeoff.pieceCount);
        const bool fromEnd = takeoff.pieceCount > 1 && (last - 1)->end.kind == PieceEnd::Kind::Lap;
        Length reached, outer;
        for (auto piece = first; piece != last; ++piece) {
            const PieceEnd& near = fromEnd ? piece->end : piece->start;
            const PieceEnd& far = fromEnd ? piece->start : piece->end;
            if (piece == first)
                outer += near.allowance;
            else if (near.kind != PieceEnd::Kind::Lap || near.allowance != lap)
                disagree("lap", piece->mark,
                         {"{mark} does not cover the piece before it by {lap}",
                          {{"mark", piece->mark}, {"lap", lap}}});
            if (piece + 1 == last)
                outer += far.allowance;
            else if (far.kind != PieceEnd::Kind::Square || far.allowance != Length())
                disagree("lap", piece->mark,
                         {"{mark} is not square where the next piece covers it", {{"mark", piece->mark}}});
            if (piece != first)
                reached -= lap;
            reached += piece->blankLength;
            checkSize(piece->mark, piece->blankLength, piece->blankLength, takeoff.pieceCount);
            if (piece->count != 1)
                disagree("run", piece->mark, {"{mark} stands for several", {{"mark", piece->mark}}});
        }
        checkReach(takeoff, run, reached, outer);
        checkCount(takeoff, static_cast<std::int64_t>(takeoff.pieceCount), lap);
    }

    void checkReach(const RunTakeoff& takeoff, const site::Run& run, Length reached,
                    std::optional<Length> outer)
    {
        const std::optional<Length> asMeasured = measured(run);
        const bool fits = !asMeasured || !outer || takeoff.usableLength == *asMeasured + *outer;
        if (reached != takeoff.usableLength || !fits)
            disagree("coverage", takeoff.mark,
                     {"the pieces of {mark} cover {reached}, the run with its ends is {usable}",
                      {{"mark", takeoff.mark},
                       {"reached", reached},
                       {"usable", asMeasured && outer ? *asMeasured + *outer : takeoff.usableLength}}});
    }

    void checkSize(const std::string& mark, Length longest, Length shortest, std::size_t count)
    {
        if (longest > limit)
            disagree("limit", mark,
                     {"{mark} is {length} long, over the longest piece, {limit}",
                      {{"mark", mark}, {"length", longest}, {"limit", limit}}});
        if (shortest <= Length() || (count > 1 && shortest < order.job.limits.shortestPiece))
            disagree("limit", mark,
                     {"{mark} is {length} long, under the shortest piece, {limit}",
                      {{"mark", mark}, {"length", shortest}, {"limit", order.job.limits.shortestPiece}}});
    }

    /// A thermal limit may ask for more pieces than the other limits do; then the longest piece is the limit.
    void checkCount(const RunTakeoff& takeoff, std::int64_t count, Length lap)
    {
        Length longest = limit;
        if (count > 1 && takeoff.pieceLimit < longest)
            longest = takeoff.pieceLimit;
        const std::int64_t fewer = count - 1;
        if (fewer > 0 && longest * fewer - lap * (fewer - 1) >= takeoff.usableLength)
            disagree("count", takeoff.mark,
                     {"{mark} has {count} pieces where {fewer} would reach",
                      {{"mark", takeoff.mark}, {"count", count}, {"fewer", fewer}}});
    }

    void checkCourses(const RunTakeoff& takeoff, const site::Run& run, Length headLap)
    {
        checkBelonging(takeoff);
        const Piece& piece = order.pieces[takeoff.firstPiece];
        const Length exposure = run.courseExposure.value_or(Length());
        const Length covered = exposure * (piece.count - 1);
        if (takeoff.pieceCount != 1 || piece.blankLength != exposure + headLap || exposure <= Length() ||
            covered < takeoff.usableLength || covered - exposure >= takeoff.usableLength)
            disagree("courses", takeoff.mark,
                     {"{count} pieces do not flash the courses of {mark}",
                      {{"count", piece.count}, {"mark", takeoff.mark}}});
        checkSize(piece.mark, piece.blankLength, piece.blankLength, 1);
        checkReach(takeoff, run, takeoff.usableLength, Length());
    }

    void checkCutRun(const RunTakeoff& takeoff, const site::Run& run, Length lap)
    {
        const CutRun cuts = cutRuns[takeoff.mark];
        if (cuts.count == 0 || cuts.ordinalSum != cuts.count * (cuts.count + 1) / 2)
            disagree("run", takeoff.mark, {"{mark} has not all its pieces", {{"mark", takeoff.mark}}});
        else if (cuts.profiles != std::set{takeoff.profile})
            disagree("site_cuts", takeoff.mark,
                     {"{mark} is cut from stock lengths of another profile", {{"mark", takeoff.mark}}});
        checkReach(takeoff, run, cuts.sum - lap * (cuts.count - 1), std::nullopt);
        checkSize(takeoff.mark, cuts.longest, cuts.shortest, static_cast<std::size_t>(cuts.count));
        checkCount(takeoff, cuts.count, lap);
    }

    void checkLoosePieces()
    {
        std::size_t inRuns = 0, loose = 0;
        std::vector<std::int64_t> spares(order.profiles.size());
        for (const RunTakeoff& takeoff : order.runs)
            inRuns += takeoff.pieceCount;
        for (const Piece& piece : order.pieces) {
            loose += piece.run.empty() ? 1 : 0;
            if (piece.profile >= order.profiles.size())
                disagree("run", piece.mark, {"{mark} has no profile", {{"mark", piece.mark}}});
            else if (piece.spare)
                spares[piece.profile] += piece.count;
        }
        if (inRuns + loose != order.pieces.size())
            disagree("count", {}, {"pieces are listed that belong to no run, or to two", {}});
        for (std::size_t i = 0; i < spares.size(); ++i)
            if (spares[i] != std::max<std::int64_t>(order.job.spares, 0))
                disagree("spares", order.profiles[i].id,
                         {"{profile} has {count} spare pieces, {wanted} are wanted",
                          {{"profile", order.profiles[i].id},
                           {"count", spares[i]},
                           {"wanted", order.job.spares}}});
    }

    static constexpr std::int64_t mostStocks = 10'000'000;

    const Order& order;
    const Catalogue& catalogue;
    rules::Findings findings;
    std::map<std::string_view, const site::Run*> runs;
    std::map<std::string_view, CutRun> cutRuns;
    std::set<const site::TrimChoice*> taken;
    Length limit;
};

} // namespace

rules::Findings checkPieces(const Order& order, const Catalogue& catalogue)
{
    return PieceCheck(order, catalogue).check();
}

} // namespace lapwright::pieces
