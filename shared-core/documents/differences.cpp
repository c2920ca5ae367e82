#include "documents/differences.h"

#include "documents/describe_order.h"

#include <map>
#include <set>
#include <tuple>

namespace lapwright::documents {
namespace {

constexpr Length lengthSlack = Length::micrometres(1);
constexpr Angle angleSlack = Angle::degrees(1e-6);

bool same(Length first, Length second)
{
    return !(lengthSlack < magnitude(first - second));
}
bool same(Angle first, Angle second)
{
    return !(angleSlack < magnitude(first - second));
}
bool same(const std::string& first, const std::string& second)
{
    return first == second;
}
bool same(std::int64_t first, std::int64_t second)
{
    return first == second;
}

std::string counted(const char* what, std::size_t number)
{
    return what + std::to_string(number + 1);
}

std::string hemKind(const std::optional<trim::Hem>& hem)
{
    if (!hem)
        return "none";
    return std::string(wordFor(hem->kind)).append(" to the ").append(wordFor(hem->side));
}

class Comparison {
public:
    Comparison(const pieces::Order& first, const pieces::Order& second) : first_(first), second_(second) {}

    PieceDifferences run()
    {
        compareMarks(first_.pieces, second_.pieces,
                     [this](const auto& first, const auto& second) { comparePiece(first, second); });
        compareMarks(first_.siteCuts, second_.siteCuts,
                     [this](const auto& first, const auto& second) { compareSiteCut(first, second); });
        compareAccessories();
        return std::move(found_);
    }

private:
    template <class T>
    void compare(const char* aspect, const std::string& what, const T& first, const T& second)
    {
        if (!same(first, second))
            found_.changed.push_back({place_, aspect, what, first, second});
    }

    /// Calls `both` for what has the same mark in both lists, and notes the rest.
    template <class Marked, class Both>
    void compareMarks(const std::vector<Marked>& first, const std::vector<Marked>& second, const Both& both)
    {
        std::map<std::string_view, const Marked*> before;
        for (const Marked& one : first)
            before.emplace(one.mark, &one);
        for (const Marked& one : second) {
            const auto found = before.find(one.mark);
            if (found == before.end()) {
                found_.onlyInSecond.push_back(one.mark);
                continue;
            }
            both(*found->second, one);
            before.erase(found);
        }
        for (const Marked& one : first)
            if (before.count(one.mark) > 0)
                found_.onlyInFirst.push_back(one.mark);
    }

    void compareSiteCut(const pieces::SiteCut& first, const pieces::SiteCut& second)
    {
        place_ = "mark " + second.mark;
        compare("site_cut", "length cut on site", first.length, second.length);
        compare("site_cut", "stock length it is cut from", first.stock, second.stock);
        compare("site_cut", "what is left of the stock length", first.left, second.left);
    }

    void comparePiece(const pieces::Piece& first, const pieces::Piece& second)
    {
        if (compared_.emplace(first.profile, second.profile).second)
            compareProfiles(first_.profiles[first.profile], second_.profiles[second.profile]);
        place_ = "mark " + second.mark;
        compare("length", "length of the blank", first.blankLength, second.blankLength);
        compare("length", "length along the run", first.length, second.length);
        compare("count", "count", first.count, second.count);
        compare("hand", "hand", std::string(wordFor(first.hand)), std::string(wordFor(second.hand)));
        compareEnds("start", first.start, second.start);
        compareEnds("end", first.end, second.end);
    }

    void compareEnds(const std::string& which, const pieces::PieceEnd& first, const pieces::PieceEnd& second)
    {
        compare("end", which, std::string(wordFor(first.kind)), std::string(wordFor(second.kind)));
        compare("end", which + " allowance", first.allowance, second.allowance);
        if (first.cut.size() != second.cut.size())
            return compare("cut", "points of the cut at the " + which,
                           static_cast<std::int64_t>(first.cut.size()),
                           static_cast<std::int64_t>(second.cut.size()));
        for (std::size_t point = 0; point < first.cut.size(); ++point)
            compare("cut", counted("point ", point) + " of the cut at the " + which, first.cut[point],
                    second.cut[point]);
    }

    void compareProfiles(const pieces::OrderedProfile& first, const pieces::OrderedProfile& second)
    {
        place_ = "profile " + second.id + ", " + second.profile.name;
        compare("material", "metal", first.material.metal, second.material.metal);
        compare("material", "gauge", first.material.gauge, second.material.gauge);
        compare("material", "colour", first.material.colour, second.material.colour);
        compare("thickness", "thickness", first.thickness, second.thickness);
        compare("girth", "girth", first.girth, second.girth);
        compareSections(first.profile, second.profile);
    }

    void compareSections(const trim::Profile& first, const trim::Profile& second)
    {
        compare("trim", "trim", first.trim, second.trim);
        compare("face", "coloured face", std::string(wordFor(first.colourFace)),
                std::string(wordFor(second.colourFace)));
        compareHems("hem at the start", first.startHem, second.startHem);
        compareHems("hem at the end", first.endHem, second.endHem);
        if (first.legs.size() != second.legs.size())
            return compare("legs", "number of legs", static_cast<std::int64_t>(first.legs.size()),
                           static_cast<std::int64_t>(second.legs.size()));
        for (std::size_t leg = 0; leg < first.legs.size(); ++leg)
            compare("leg", counted("leg ", leg), first.legs[leg].length, second.legs[leg].length);
        for (std::size_t bend = 0; bend < first.bends.size() && bend < second.bends.size(); ++bend) {
            compare("turn", counted("turn of bend ", bend), first.bends[bend].turn, second.bends[bend].turn);
            compare("radius", counted("inside radius of bend ", bend), first.bends[bend].insideRadius,
                    second.bends[bend].insideRadius);
        }
    }

    void compareHems(const std::string& which, const std::optional<trim::Hem>& first,
                     const std::optional<trim::Hem>& second)
    {
        compare("hem", which, hemKind(first), hemKind(second));
        if (!first || !second)
            return;
        compare("hem", which + ", flat", first->flat, second->flat);
        compare("hem", which + ", inside radius", first->insideRadius, second->insideRadius);
    }

    void compareAccessories()
    {
        using Key = std::tuple<std::string, std::string, std::string>;
        struct Counts {
            std::int64_t first = 0, second = 0;
            Length firstLength, secondLength;
        };
        std::map<Key, Counts> all;
        for (const pieces::Accessory& one : first_.accessories) {
            Counts& counts = all[{one.run, one.trim, one.name}];
            counts.first += one.count;
            counts.firstLength += one.length;
        }
        for (const pieces::Accessory& one : second_.accessories) {
            Counts& counts = all[{one.run, one.trim, one.name}];
            counts.second += one.count;
            counts.secondLength += one.length;
        }
        for (const auto& [key, counts] : all) {
            const auto& [run, trim, name] = key;
            place_ = "run ";
            place_.append(run).append(", ").append(trim);
            compare("accessory", name + ", count", counts.first, counts.second);
            compare("accessory", name + ", length", counts.firstLength, counts.secondLength);
        }
    }

    const pieces::Order& first_;
    const pieces::Order& second_;
    PieceDifferences found_;
    std::set<std::pair<std::size_t, std::size_t>> compared_;
    std::string place_;
};

} // namespace

PieceDifferences comparePieces(const pieces::Order& first, const pieces::Order& second)
{
    return Comparison(first, second).run();
}

} // namespace lapwright::documents
