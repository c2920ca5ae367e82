#include "fold/suggest.h"

#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

namespace {

/// How far two pieces that are folded apart cover each other. Common practice, no source.
constexpr Length joint = Length::inches(1);
/// With more bends each attempt takes as long as the plan itself: only what is likely to help is tried.
constexpr std::size_t fewBends = 7;

/// One thing changed at a time, and planned.
class Attempts {
public:
    Attempts(Refusal& refusal, const trim::Profile& profile, const metal::Metal& metal,
             const metal::Sheet& sheet, const Machine& machine, Length pieceLength, const Settings& settings)
        : refusal_(refusal), profile_(profile), metal_(metal), sheet_(sheet), machine_(machine),
          pieceLength_(pieceLength), settings_(settings)
    {
        settings_.findSuggestions = false;
        settings_.twoGoes = false; // each attempt would take many times as long
    }

    void tryAll()
    {
        if (refusal_.obstacle == Obstacle::BendingLength)
            return shorterPieces();
        if (refusal_.obstacle == Obstacle::Capacity)
            return thinnerGauge();
        if (refusal_.obstacle == Obstacle::TooManyBends)
            return severalPieces();
        if (settings_.beamFace)
            otherFace();
        otherHems();
        twoPieces();
    }

private:
    [[nodiscard]] bool folds(const trim::Profile& profile, const metal::Sheet& sheet, Length length,
                             const Settings& settings) const
    {
        const Result<trim::FlatPattern> flat = trim::flatPattern(profile, metal_, sheet);
        if (!flat)
            return false;
        const Result<Outcome> outcome = planFold(profile, *flat, metal_, sheet, machine_, length, settings);
        return outcome.ok() && std::holds_alternative<FoldPlan>(*outcome);
    }
    [[nodiscard]] bool folds(const trim::Profile& profile) const
    {
        return folds(profile, sheet_, pieceLength_, settings_);
    }

    void shorterPieces()
    {
        const std::int64_t most = machine_->bendingLength.inNanometres();
        if (!folds(profile_, sheet_, machine_->bendingLength, settings_))
            return;
        refusal_.suggestions.push_back(
            {"In {count} pieces or more, none longer than {most}, it can be folded here; add a lap for each.",
             {{"count", (pieceLength_.inNanometres() + most - 1) / most},
              {"most", machine_->bendingLength}}});
    }

    void thinnerGauge()
    {
        const metal::Sheet* best = nullptr;
        for (const metal::Sheet& sheet : metal_.sheets)
            if (sheet.thickness < sheet_.thickness &&
                (best == nullptr || sheet.thickness > best->thickness) &&
                folds(profile_, sheet, pieceLength_, settings_))
                best = &sheet;
        if (best != nullptr)
            refusal_.suggestions.push_back({"In {gauge} it can be folded here.", {{"gauge", best->gauge}}});
    }

    void otherFace()
    {
        Settings other = settings_;
        for (std::size_t face = 0; face < machine_->beamFaces.size(); ++face) {
            other.beamFace = face;
            if (face == *settings_.beamFace || !folds(profile_, sheet_, pieceLength_, other))
                continue;
            refusal_.suggestions.push_back({"Fit the {face} beam face: with it the profile can be folded.",
                                            {{"face", machine_->beamFaces[face].name}}});
            return;
        }
    }

    /// Whether it is a hem that cannot be made; the hem lines come first and last.
    [[nodiscard]] bool atHem() const
    {
        const std::size_t lines =
            profile_.bends.size() + (profile_.startHem ? 1U : 0U) + (profile_.endHem ? 1U : 0U);
        return refusal_.line && ((profile_.startHem && *refusal_.line == 0) ||
                                 (profile_.endHem && *refusal_.line + 1 == lines));
    }

    /// The profile with every hem it has made over.
    template <class Change>
    [[nodiscard]] trim::Profile withHems(Change change) const
    {
        trim::Profile other = profile_;
        for (std::optional<trim::Hem>* hem : {&other.startHem, &other.endHem})
            if (*hem)
                change(*hem);
        return other;
    }

    void otherHems()
    {
        if (!profile_.startHem && !profile_.endHem)
            return;
        if (!atHem() && profile_.bends.size() > fewBends)
            return;
        const Length radius = std::min(sheet_.thickness, machine_->largestOpenHem / 2);
        const trim::Profile open = withHems([radius](std::optional<trim::Hem>& hem) {
            hem->kind = trim::HemKind::Open;
            hem->insideRadius = radius;
        });
        if (radius > Length() && folds(open)) {
            refusal_.suggestions.push_back(
                {"With open hems, {gap} inside, it can be folded here.", {{"gap", 2 * radius}}});
            return;
        }
        const trim::Profile closed = withHems([](std::optional<trim::Hem>& hem) {
            hem->kind = trim::HemKind::Closed;
            hem->insideRadius = Length();
        });
        if (!metal_.brittle && folds(closed)) {
            refusal_.suggestions.push_back({"With closed hems it can be folded here.", {}});
            return;
        }
        if (folds(withHems([](std::optional<trim::Hem>& hem) { hem.reset(); })))
            refusal_.suggestions.push_back({"Without its hems it can be folded here.", {}});
    }

    /// The profile cut in the middle of leg `leg`, each part half the joint longer.
    [[nodiscard]] std::pair<trim::Profile, trim::Profile> splitIn(std::size_t leg) const
    {
        trim::Profile first = profile_, second = profile_;
        const auto at = static_cast<std::ptrdiff_t>(leg);
        first.legs.resize(leg + 1);
        first.bends.resize(leg);
        first.endHem.reset();
        second.legs.erase(second.legs.begin(), second.legs.begin() + at);
        second.bends.erase(second.bends.begin(), second.bends.begin() + at);
        second.startHem.reset();
        const Length half = profile_.legs[leg].length / 2;
        first.legs.back().length = half + joint / 2;
        second.legs.front().length = profile_.legs[leg].length - half + joint / 2;
        return {std::move(first), std::move(second)};
    }

    void twoPieces()
    {
        // From the middle outwards: two parts of about as many bends each.
        std::vector<std::size_t> legs;
        for (std::size_t leg = 0; leg < profile_.legs.size(); ++leg)
            legs.push_back(leg);
        const double middle = static_cast<double>(profile_.legs.size() - 1) / 2.0;
        std::stable_sort(legs.begin(), legs.end(), [middle](std::size_t a, std::size_t b) {
            return std::abs(static_cast<double>(a) - middle) < std::abs(static_cast<double>(b) - middle);
        });
        if (profile_.bends.size() > fewBends)
            legs.resize(5);
        for (const std::size_t leg : legs) {
            const auto [first, second] = splitIn(leg);
            const bool eachBends =
                (!first.bends.empty() || first.startHem) && (!second.bends.empty() || second.endHem);
            if (!eachBends || !folds(first) || !folds(second))
                continue;
            refusal_.suggestions.push_back(
                {"Split in {leg} into two pieces that lap by {lap}: both can be folded here.",
                 {{"leg", profile_.legs[leg].name}, {"lap", joint}}});
            return;
        }
    }

    /// Legs `first` to `last`, cut in their middles where the profile goes on, each cut half the joint
    /// longer.
    [[nodiscard]] trim::Profile partOf(std::size_t first, std::size_t last) const
    {
        const auto from = static_cast<std::ptrdiff_t>(first), to = static_cast<std::ptrdiff_t>(last);
        trim::Profile part = profile_;
        part.legs.assign(profile_.legs.begin() + from, profile_.legs.begin() + to + 1);
        part.bends.assign(profile_.bends.begin() + from, profile_.bends.begin() + to);
        const auto cut = [](trim::Leg& leg, std::optional<trim::Hem>& hem) {
            leg.length = leg.length / 2 + joint / 2;
            hem.reset();
        };
        if (first > 0)
            cut(part.legs.front(), part.startHem);
        if (last + 1 < profile_.legs.size())
            cut(part.legs.back(), part.endHem);
        return part;
    }

    /// As few pieces as each going as far as it can makes, none of more bends than are quickly ordered.
    void severalPieces()
    {
        constexpr std::size_t mostBends = 10;
        std::string cuts;
        std::int64_t count = 1;
        for (std::size_t first = 0;;) {
            std::size_t last = std::min(first + mostBends, profile_.legs.size() - 1);
            while (last > first && !folds(partOf(first, last)))
                --last;
            if (last == first)
                return;
            if (last + 1 == profile_.legs.size())
                break;
            cuts += (cuts.empty() ? "" : ", ") + profile_.legs[last].name;
            ++count;
            first = last;
        }
        refusal_.suggestions.push_back(
            {"Split into {count} pieces, in {legs}, that lap by {lap}: each can be folded here.",
             {{"count", count}, {"legs", cuts}, {"lap", joint}}});
    }

    Refusal& refusal_;
    const trim::Profile& profile_;
    const metal::Metal& metal_;
    const metal::Sheet& sheet_;
    const Machine& machine_;
    Length pieceLength_;
    Settings settings_;
};

} // namespace

void suggest(Refusal& refusal, const trim::Profile& profile, const metal::Metal& metal,
             const metal::Sheet& sheet, const Machine& machine, Length pieceLength, const Settings& settings)
{
    Attempts(refusal, profile, metal, sheet, machine, pieceLength, settings).tryAll();
}

void suggestMachines(std::vector<MachineOutcome>& outcomes, const std::vector<Machine>& machines)
{
    if (outcomes.empty() || !std::holds_alternative<FoldPlan>(outcomes.front().outcome))
        return;
    const std::string& best = machines[outcomes.front().machine]->name;
    for (MachineOutcome& outcome : outcomes)
        if (Refusal* refusal = std::get_if<Refusal>(&outcome.outcome))
            refusal->suggestions.push_back({"{machine} can fold it.", {{"machine", best}}});
}

} // namespace lapwright::fold
