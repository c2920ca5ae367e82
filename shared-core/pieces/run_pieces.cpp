#include "pieces/run_pieces.h"

#include "pieces/counts.h"
#include "pieces/split.h"

#include <utility>

namespace lapwright::pieces {

namespace {

const char* wordsFor(PieceEnd::Kind kind)
{
    switch (kind) {
    case PieceEnd::Kind::Square:
        return "square";
    case PieceEnd::Kind::Lap:
        return "lap";
    case PieceEnd::Kind::Butt:
        return "butt, less the clearance";
    case PieceEnd::Kind::Mitre:
        return "mitre, to the longest point of the cut";
    case PieceEnd::Kind::WrapTab:
        return "wrap tab";
    case PieceEnd::Kind::Closed:
        return "closed end";
    case PieceEnd::Kind::TurnUp:
        return "turn-up";
    }
    return "";
}

Derivation explainEnd(const char* which, const RunEnd& runEnd)
{
    const PieceEnd& end = runEnd.end;
    Derivation derivation{{"{which}: {kind}, {allowance}",
                           {{"which", std::string(which)},
                            {"kind", std::string(wordsFor(end.kind))},
                            {"allowance", end.allowance}}},
                          {},
                          {}};
    if (runEnd.derivation)
        derivation.because.push_back(*runEnd.derivation);
    return derivation;
}

Derivation asMeasured(const RunWork& work, Length usable)
{
    return {{"{usable} to cover", {{"usable", usable}, {"measured", work.measured}}},
            {},
            work.measuredDerivation.because};
}

Derivation explainUsable(const RunWork& work, Length usable)
{
    Derivation derivation = asMeasured(work, usable);
    const bool startAdds = work.start.end.allowance != Length();
    const bool endAdds = work.end.end.allowance != Length();
    if (startAdds || endAdds)
        derivation.statement.text += ": measured {measured} with what the ends add or take away";
    if (startAdds)
        derivation.because.push_back(explainEnd("start", work.start));
    if (endAdds)
        derivation.because.push_back(explainEnd("end", work.end));
    return derivation;
}

Hand handFor(const RunWork& work)
{
    return work.trim->handed ? handOf(work.laying.from) : Hand::None;
}

/// Piece number `k` of `count`, in installing order.
Piece pieceAt(const RunWork& work, std::size_t k, std::size_t count, Length blankLength)
{
    Piece piece;
    piece.mark = markOf(work.mark, static_cast<std::int64_t>(k) + 1);
    piece.run = work.run->id;
    piece.profile = work.profile;
    piece.hand = handFor(work);
    piece.blankLength = blankLength;
    piece.length = blankLength;
    const bool fromStart = work.laying.from == LaidFrom::Start;
    const PieceEnd lap{PieceEnd::Kind::Lap, work.lap, {}};
    if (k > 0)
        (fromStart ? piece.start : piece.end) = lap;
    if (k == (fromStart ? 0 : count - 1)) {
        piece.start = work.start.end;
        piece.length -= work.start.end.allowance - work.start.alongLine;
    }
    if (k == (fromStart ? count - 1 : 0)) {
        piece.end = work.end.end;
        piece.length -= work.end.end.allowance - work.end.alongLine;
    }
    return piece;
}

RunPieces coursesOf(const RunWork& work, RunPieces made)
{
    const Length headLap = *work.trim->installation.courseHeadLap;
    const std::optional<Length> exposure = work.run->courseExposure;
    if (!exposure || *exposure <= Length()) {
        made.findings.push_back({rules::Weight::Blocks,
                                 "pieces.course.exposure",
                                 {},
                                 {"{trim} goes by courses, but the exposure of the roofing is not given",
                                  {{"trim", work.trim->name}}},
                                 {"measure what one course of the roofing shows", {}},
                                 std::nullopt});
        return made;
    }
    Piece piece;
    piece.mark = markOf(work.mark, 1);
    piece.run = work.run->id;
    piece.profile = work.profile;
    piece.hand = handFor(work);
    piece.count = courseCount(work.measured, *exposure);
    piece.length = piece.blankLength = *exposure + headLap;
    made.takeoff.usableLength = work.measured;
    made.takeoff.derivations.push_back(asMeasured(work, work.measured)); // courses go past the ends
    made.takeoff.derivations.push_back(
        {{"{count} pieces: one for each course of {exposure} over {length}, and "
          "one for the starter course",
          {{"count", piece.count}, {"exposure", *exposure}, {"length", work.measured}}},
         "IRC R905.2.8.3; starter course: common practice",
         {}});
    made.takeoff.derivations.push_back(
        {{"each {length} long: exposure {exposure} and head lap {lap}",
          {{"length", piece.length}, {"exposure", *exposure}, {"lap", headLap}}},
         {},
         {}});
    made.pieces.push_back(std::move(piece));
    return made;
}

void warnOfShortRun(const RunWork& work, Length usable, rules::Findings& findings)
{
    if (usable >= work.shortest)
        return;
    findings.push_back({rules::Weight::Warns,
                        "pieces.split.short_run",
                        {},
                        {"the run makes one piece of {length}, under the shortest piece, {shortest}",
                         {{"length", usable}, {"shortest", work.shortest}}},
                        {"check that the shop can fold it and that the measure is right", {}},
                        std::nullopt});
}

} // namespace

PieceLimit pieceLimitOf(const site::PieceLimits& limits)
{
    Length least = limits.foldingLength;
    std::string reason = "the bending length of the folder";
    const auto take = [&](const std::optional<Length>& other, const char* what) {
        if (other && *other < least) {
            least = *other;
            reason = what;
        }
    };
    take(limits.stockLength, "the stock length");
    take(limits.transportLength, "what can be carried");
    return {least,
            {{"longest piece {limit}: {reason}", {{"limit", least}, {"reason", std::move(reason)}}}, {}, {}}};
}

RunPieces piecesOf(const RunWork& work)
{
    RunPieces made;
    made.takeoff.run = work.run->id;
    made.takeoff.trim = work.trim->id;
    made.takeoff.mark = work.mark;
    made.takeoff.profile = work.profile;
    made.takeoff.pieceLimit = work.limit.length;
    if (work.trim->installation.courseHeadLap)
        return coursesOf(work, std::move(made));
    const Length usable = work.measured + work.start.end.allowance + work.end.end.allowance;
    made.takeoff.usableLength = usable;
    const SplitProblem problem{usable, work.limit.length, work.lap, work.shortest, work.policy};
    SplitOutcome outcome = split(problem);
    if (rules::Finding* refusal = std::get_if<rules::Finding>(&outcome)) {
        made.findings.push_back(std::move(*refusal));
        return made;
    }
    const auto& lengths = std::get<std::vector<Length>>(outcome);
    made.takeoff.derivations.push_back(explainUsable(work, usable));
    made.takeoff.derivations.push_back(explainSplit(problem, lengths));
    if (work.limit.ofRunAlone)
        made.takeoff.derivations.back().because.push_back(work.limit.derivation);
    if (lengths.size() == 1)
        warnOfShortRun(work, usable, made.findings);
    for (std::size_t k = 0; k < lengths.size(); ++k) {
        Piece piece = pieceAt(work, k, lengths.size(), lengths[k]);
        if (work.policy == site::PiecePolicy::StockLengths)
            made.cuts.push_back({std::move(piece.mark), piece.blankLength});
        else
            made.pieces.push_back(std::move(piece));
    }
    return made;
}

} // namespace lapwright::pieces
