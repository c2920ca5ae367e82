#include "fold/suggest.h"

#include "fold/refuse.h"
#include "measure/rounding.h"

#include <algorithm>
#include <cmath>

namespace lapwright::fold {

namespace {

/// How far two pieces that are folded apart cover each other. Common practice, no source.
constexpr Length joint = Length::inches(1);

/// One thing changed at a time, and planned.
class Attempts {
public:
    Attempts(Refusal& refusal, const trim::Profile& profile, const metal::Metal& metal,
             const metal::Sheet& sheet, const Machine& machine, Length pieceLength, const Settings& settings)
        : refusal_(refusal), profile_(profile), metal_(metal), sheet_(sheet), machine_(machine),
          pieceLength_(pieceLength), settings_(settings)
    {
    }

    void tryAll()
    {
        if (refusal_.obstacle == Obstacle::BendingLength)
            return shorterPieces();
        if (refusal_.obstacle == Obstacle::Capacity)
            return thinnerGauge();
        if (refusal_.obstacle == Obstacle::Itself)
            return;
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
        return flat.ok() && canBeFolded(profile, *flat, metal_, sheet, machine_, length, settings);
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
        for (const std::size_t leg : legs) {
            const trim::Profile first = partOf({0, leg, false, true});
            const trim::Profile second = partOf({leg, profile_.legs.size() - 1, true, false});
            const bool eachBends =
                (!first.bends.empty() || first.startHem) && (!second.bends.empty() || second.endHem);
            if (!eachBends || !folds(first) || !folds(second))
                continue;
            refusal_.suggestions.push_back(
                {"Split in {leg} into two pieces that lap by {lap}: both can be folded here.",
                 {{"leg", legName(profile_, leg)}, {"lap", joint}}});
            return;
        }
    }

    /// Legs of the profile; the first and the last may be cut in their middles.
    struct Part {
        std::size_t first;
        std::size_t last;
        bool cutBefore;
        bool cutAfter;
    };

    /// Each cut leg half the joint longer.
    [[nodiscard]] trim::Profile partOf(const Part& wanted) const
    {
        const auto from = static_cast<std::ptrdiff_t>(wanted.first);
        const auto to = static_cast<std::ptrdiff_t>(wanted.last);
        trim::Profile part = profile_;
        part.legs.assign(profile_.legs.begin() + from, profile_.legs.begin() + to + 1);
        part.bends.assign(profile_.bends.begin() + from, profile_.bends.begin() + to);
        const auto cut = [](trim::Leg& leg, std::optional<trim::Hem>& hem) {
            leg.length = leg.length / 2 + joint / 2;
            hem.reset();
        };
        if (wanted.cutBefore)
            cut(part.legs.front(), part.startHem);
        if (wanted.cutAfter)
            cut(part.legs.back(), part.endHem);
        return part;
    }

    /// Pieces of about as many bends each, none of more than with its hems are sure to be ordered; fewer
    /// bends where a piece cannot be made.
    void severalPieces()
    {
        constexpr std::size_t mostBends = 12;
        const std::size_t bends = profile_.bends.size(), pieces = (bends + mostBends - 1) / mostBends;
        const std::size_t each = (bends + pieces - 1) / pieces;
        std::string cuts;
        std::int64_t count = 1;
        for (std::size_t first = 0;;) {
            std::size_t last = std::min(first + each, profile_.legs.size() - 1);
            while (last > first && !folds(partOf({first, last, first > 0, last + 1 < profile_.legs.size()})))
                --last;
            if (last == first)
                return;
            if (last + 1 == profile_.legs.size())
                break;
            cuts += (cuts.empty() ? "" : ", ") + legName(profile_, last);
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
