#include "pieces/run_ends.h"

#include "trim/end_cut.h"

#include <optional>
#include <utility>

namespace lapwright::pieces {

namespace {

/// The run met beyond the corner at the start or end of a run. Precondition: there is a corner.
const site::Run& metRun(const site::Chain& chain, std::size_t run, bool atEnd)
{
    const std::size_t count = chain.runs.size();
    return chain.runs[(run + (atEnd ? 1 : count - 1)) % count];
}

/// The section laid over by a quarter turn, so that what stood y above the line lies y outside it.
trim::Profile laidOver(trim::Profile profile)
{
    profile.firstDirection -= quarterTurn;
    const Length outside = profile.startX;
    profile.startX = profile.startY;
    profile.startY = -outside;
    return profile;
}

/// Sum of the slopes where two rakes meet at a peak.
std::optional<Angle> peakTurn(const site::Run& run, const site::Run& met)
{
    if (run.kind != site::RunKind::Rake || met.kind != site::RunKind::Rake || !run.slope || !met.slope)
        return std::nullopt;
    return run.slope->angle() + met.slope->angle();
}

RunEnd cutOnSite(const trim::Installation& installation, const site::Run& met)
{
    RunEnd end = endOf(site::EndKind::Free, installation, std::nullopt);
    end.findings.push_back(
        {rules::Weight::Warns,
         "pieces.end.cut_on_site",
         {},
         {"the mitre of a sloping run to {met} is not computed: the end is made square, as "
          "long as measured",
          {{"met", met.id}}},
         {"measure to the longest point, and cut the mitre on site", {}},
         std::nullopt});
    return end;
}

RunEnd mitredEnd(const Result<trim::EndCut>& cut, const trim::Installation& installation)
{
    if (cut) {
        RunEnd end = endOf(site::EndKind::Mitre, installation, cut->reach);
        end.derivation = cut->derivation;
        return end;
    }
    RunEnd end = endOf(site::EndKind::Free, installation, std::nullopt);
    end.findings.push_back(
        {rules::Weight::Blocks,
         "pieces.end.mitre",
         {},
         {"the end cannot be mitred: {error}", {{"error", cut.errors().front().sentence()}}},
         {"check the corner, or choose another end", {}},
         std::nullopt});
    return end;
}

enum class Mitre { None, AtCorner, AtPeak, OnSite };

/// How the corner at that end is mitred, if it is to be and there is one.
Mitre mitreOf(const site::Chain& chain, std::size_t run, bool atEnd)
{
    const site::Run& own = chain.runs[run];
    const bool corner = chain.closed || (atEnd ? run + 1 < chain.runs.size() : run > 0);
    if (!corner || (atEnd ? own.end : own.start) != site::EndKind::Mitre)
        return Mitre::None;
    if (trim::mitresAtCorners(own.kind))
        return Mitre::AtCorner;
    return peakTurn(own, metRun(chain, run, atEnd)) ? Mitre::AtPeak : Mitre::OnSite;
}

} // namespace

RunEnd runEndOf(const site::Chain& chain, std::size_t run, const site::RunGeometry& geometry,
                const trim::Profile& profile, const trim::Installation& installation, bool atEnd)
{
    const site::Run& own = chain.runs[run];
    const std::optional<Angle> planTurn = atEnd ? geometry.endCornerTurn : geometry.startCornerTurn;
    switch (planTurn ? mitreOf(chain, run, atEnd) : Mitre::None) {
    case Mitre::None:
        break;
    case Mitre::AtCorner:
        return mitredEnd(trim::mitreCut(profile, *planTurn), installation);
    case Mitre::AtPeak:
        return mitredEnd(trim::mitreCut(laidOver(profile), *peakTurn(own, metRun(chain, run, atEnd))),
                         installation);
    case Mitre::OnSite:
        return cutOnSite(installation, metRun(chain, run, atEnd));
    }
    return endOf(atEnd ? own.end : own.start, installation, std::nullopt);
}

bool isMitred(const site::Chain& chain, std::size_t run, bool atEnd)
{
    const Mitre mitre = mitreOf(chain, run, atEnd);
    return mitre == Mitre::AtCorner || mitre == Mitre::AtPeak;
}

} // namespace lapwright::pieces
