#include "pieces/ends.h"

#include <algorithm>
#include <string>
#include <utility>

namespace lapwright::pieces {

namespace {

RunEnd plain(PieceEnd::Kind kind, Length allowance)
{
    return {{kind, allowance, {}}, allowance, std::nullopt, {}};
}

rules::Finding noMeasure(const std::string& what)
{
    return {
        rules::Weight::Warns,
        "pieces.end.no_measure",
        {},
        {"the run ends in a {what}, but the trim gives no measure for one: the end is cut to the measured "
         "length",
         {{"what", what}}},
        {"choose another trim or another end", {}},
        std::nullopt};
}

RunEnd longer(PieceEnd::Kind kind, Length by, const std::string& what)
{
    RunEnd end = plain(kind, by);
    if (by == Length())
        end.findings.push_back(noMeasure(what));
    return end;
}

RunEnd mitred(Length clearance, const std::optional<std::vector<Length>>& reach)
{
    RunEnd end = plain(PieceEnd::Kind::Mitre, -clearance);
    if (!reach || reach->empty()) {
        end.findings.push_back(
            {rules::Weight::Blocks,
             "pieces.end.no_corner",
             {},
             {"A mitre is asked for where the run meets no other: there is no corner to cut "
              "it to",
              {}},
             {"choose another end, or put the runs that meet into one chain", {}},
             std::nullopt});
        return end;
    }
    end.end.cut = *reach;
    for (Length& line : end.end.cut)
        line -= clearance;
    end.end.allowance = *std::max_element(end.end.cut.begin(), end.end.cut.end());
    return end;
}

} // namespace

RunEnd endOf(site::EndKind kind, const trim::Installation& installation,
             const std::optional<std::vector<Length>>& mitreReach)
{
    switch (kind) {
    case site::EndKind::Free:
        break;
    case site::EndKind::Butt:
        return plain(PieceEnd::Kind::Butt, -installation.mitreClearance);
    case site::EndKind::Mitre:
        return mitred(installation.mitreClearance, mitreReach);
    case site::EndKind::WrapTab:
        return longer(PieceEnd::Kind::WrapTab, installation.wrapTab, "wrap tab");
    case site::EndKind::Closed:
        return plain(PieceEnd::Kind::Closed, installation.closedEnd);
    case site::EndKind::TurnUp:
        return longer(PieceEnd::Kind::TurnUp, installation.turnUp, "turn-up");
    }
    return plain(PieceEnd::Kind::Square, Length());
}

} // namespace lapwright::pieces
