#include "pieces/why.h"

#include "measure/general_tolerance.h"
#include "measure/rounding.h"
#include "pieces/laying.h"
#include "pieces/run_pieces.h"
#include "site/run_geometry.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string_view>
#include <utility>

namespace lapwright::pieces {

namespace {

/// "S1.7" as prefix and ordinal; ordinal 0 if it is none.
std::pair<std::string_view, std::int64_t> parts(std::string_view mark)
{
    const std::size_t point = mark.rfind('.');
    if (point == std::string_view::npos)
        return {mark, 0};
    std::int64_t ordinal = 0;
    const char* const end = mark.data() + mark.size();
    const auto [stop, error] = std::from_chars(mark.data() + point + 1, end, ordinal);
    return {mark.substr(0, point), error == std::errc() && stop == end ? ordinal : 0};
}

/// Whether `piece`, or one of the several it stands for, has the mark.
bool answersTo(const Piece& piece, std::string_view prefix, std::int64_t ordinal)
{
    const auto [ownPrefix, first] = parts(piece.mark);
    return ownPrefix == prefix && first <= ordinal && ordinal - first < piece.count;
}

const RunTakeoff* takeoffOf(const Order& order, std::string_view prefix)
{
    const auto found = std::find_if(order.runs.begin(), order.runs.end(),
                                    [&](const RunTakeoff& run) { return run.mark == prefix; });
    return found == order.runs.end() ? nullptr : &*found;
}

/// Where laying the run begins; nothing if the job has no such run.
std::optional<Derivation> layingOfRun(const Order& order, const std::string& id)
{
    for (const site::Chain& chain : order.job.chains)
        for (std::size_t i = 0; i < chain.runs.size(); ++i)
            if (chain.runs[i].id == id)
                return layingOf(chain, i).derivation;
    return std::nullopt;
}

/// How far off the piece may be when it comes from the shop; nothing beyond what the standard covers.
std::optional<Derivation> toleranceOf(Length length)
{
    const std::optional<Length> allowed = generalTolerance(ToleranceClass::Coarse, length);
    if (!allowed)
        return std::nullopt;
    return Derivation{{"as made it may be up to {allowed} longer or shorter", {{"allowed", *allowed}}},
                      "ISO 2768-1, class c",
                      {}};
}

/// "3 of 10' 6" and 1 of 9' 0"": the pieces of a run as they follow one another. Nothing for a single piece.
std::optional<Derivation> sharesOf(const Order& order, const RunTakeoff& takeoff)
{
    if (takeoff.pieceCount < 2)
        return std::nullopt;
    Derivation shares{{"in installing order:", {}}, {}, {}};
    std::int64_t number = 0, alike = 0;
    for (std::size_t i = 0; i < takeoff.pieceCount; ++i) {
        const Length length = order.pieces[takeoff.firstPiece + i].blankLength;
        ++alike;
        const bool goesOn =
            i + 1 < takeoff.pieceCount && order.pieces[takeoff.firstPiece + i + 1].blankLength == length;
        if (goesOn)
            continue;
        const std::string index = std::to_string(++number);
        shares.statement.text +=
            (number > 1 ? ", then {count" : " {count") + index + "} of {length" + index + "}";
        shares.statement.values.emplace_back("count" + index, alike);
        shares.statement.values.emplace_back("length" + index, length);
        alike = 0;
    }
    return shares;
}

Derivation lengthOf(const Order& order, Length length, const RunTakeoff* takeoff)
{
    Derivation derivation{{"length {length}", {{"length", length}}}, {}, {}};
    if (takeoff) {
        derivation.because = takeoff->derivations;
        if (std::optional<Derivation> shares = sharesOf(order, *takeoff))
            derivation.because.push_back(*std::move(shares));
        const PieceLimit limit = pieceLimitOf(order.job.limits);
        if (takeoff->pieceLimit == limit.length)
            derivation.because.push_back(limit.derivation);
        if (std::optional<Derivation> laying = layingOfRun(order, takeoff->run))
            derivation.because.push_back(*std::move(laying));
    }
    if (std::optional<Derivation> tolerance = toleranceOf(length))
        derivation.because.push_back(*std::move(tolerance));
    return derivation;
}

/// What the run's own roof or wall says about the turns of its profile; nothing if there is no such run.
std::optional<Derivation> turnOfRun(const Order& order, const std::string& id)
{
    for (const site::Chain& chain : order.job.chains)
        for (std::size_t i = 0; i < chain.runs.size(); ++i)
            if (chain.runs[i].id == id) {
                const std::optional<site::RunGeometry> geometry = site::runGeometry(chain, i);
                return geometry ? geometry->turnDerivation : std::nullopt;
            }
    return std::nullopt;
}

Derivation profileOf(const Order& order, const OrderedProfile& profile, const RunTakeoff* takeoff)
{
    Derivation derivation{{"profile {id}, {name}: girth {girth}, {gauge} {metal}, {colour}",
                           {{"id", profile.id},
                            {"name", profile.profile.name},
                            {"girth", profile.girth},
                            {"gauge", profile.material.gauge},
                            {"metal", profile.material.metal},
                            {"colour", profile.material.colour}}},
                          {},
                          profile.derivations};
    if (profile.material.colour.empty())
        derivation.statement.text = "profile {id}, {name}: girth {girth}, {gauge} {metal}";
    if (!takeoff)
        return derivation;
    if (std::optional<Derivation> turn = turnOfRun(order, takeoff->run))
        derivation.because.push_back(*std::move(turn));
    return derivation;
}

double toHundredths(double value)
{
    return std::round(value * 100.0) / 100.0;
}

Derivation massOf(Length length, const OrderedProfile& profile)
{
    const double kilograms = inMetres(length) * profile.kilogramsPerMetre;
    return {{"mass {kilograms} kg ({pounds} lb): {length} at {each} kg per metre",
             {{"kilograms", toHundredths(kilograms)},
              {"pounds", toHundredths(kilograms / kilogramsPerPound)},
              {"length", length},
              {"each", std::round(profile.kilogramsPerMetre * 1'000.0) / 1'000.0}}},
            {},
            {}};
}

void addAccessories(const Order& order, const RunTakeoff& takeoff, Derivation& derivation)
{
    Derivation along{{"along with the run", {}}, {}, {}};
    for (const Accessory& accessory : order.accessories)
        if (accessory.run == takeoff.run && accessory.trim == takeoff.trim)
            along.because.push_back(accessory.derivation);
    if (!along.because.empty())
        derivation.because.push_back(std::move(along));
}

Derivation explainLength(const Order& order, Phrase statement, Length length, std::size_t profile,
                         const RunTakeoff* takeoff)
{
    Derivation derivation{std::move(statement), {}, {lengthOf(order, length, takeoff)}};
    if (profile < order.profiles.size()) {
        derivation.because.push_back(profileOf(order, order.profiles[profile], takeoff));
        derivation.because.push_back(massOf(length, order.profiles[profile]));
    }
    if (takeoff)
        addAccessories(order, *takeoff, derivation);
    return derivation;
}

Derivation explainPiece(const Order& order, const std::string& mark, const Piece& piece,
                        const RunTakeoff* takeoff)
{
    Phrase statement{"{mark}: {length} long", {{"mark", mark}, {"length", piece.blankLength}}};
    if (takeoff) {
        statement.text = "{mark}: piece {ordinal} of {count} on run {run}, {length} long";
        const bool several = takeoff->pieceCount == 1 && piece.count > 1;
        statement.values.emplace_back("ordinal", parts(mark).second);
        statement.values.emplace_back("count",
                                      several ? piece.count : static_cast<std::int64_t>(takeoff->pieceCount));
        statement.values.emplace_back("run", piece.run);
    } else {
        statement.text += piece.spare ? ", spare" : ", a stock length to cut on site";
    }
    Derivation derivation =
        explainLength(order, std::move(statement), piece.blankLength, piece.profile, takeoff);
    if (!takeoff) {
        Derivation reason = piece.spare
                                ? Derivation{{"as long as the longest piece of its profile", {}}, {}, {}}
                                : pieceLimitOf(order.job.limits).derivation;
        std::vector<Derivation>& because = derivation.because.front().because;
        because.insert(because.begin(), std::move(reason));
    }
    return derivation;
}

Derivation explainCut(const Order& order, const SiteCut& cut, const RunTakeoff& takeoff)
{
    return explainLength(
        order,
        {"{mark}: {length} for run {run}, cut on site from stock length {stock}",
         {{"mark", cut.mark}, {"length", cut.length}, {"run", takeoff.run}, {"stock", cut.stock}}},
        cut.length, takeoff.profile, &takeoff);
}

void writeInto(const Derivation& derivation, const Style& style, std::size_t depth, std::string& text)
{
    text.append(depth * 2, ' ');
    text += say(derivation.statement, style);
    if (!derivation.source.empty())
        text += " [" + derivation.source + "]";
    text += '\n';
    for (const Derivation& reason : derivation.because)
        writeInto(reason, style, depth + 1, text);
}

} // namespace

std::optional<Derivation> explain(const Order& order, const std::string& mark)
{
    const auto [prefix, ordinal] = parts(mark);
    const RunTakeoff* takeoff = takeoffOf(order, prefix);
    for (const Piece& piece : order.pieces)
        if (answersTo(piece, prefix, ordinal))
            return explainPiece(order, mark, piece, piece.run.empty() ? nullptr : takeoff);
    if (takeoff)
        for (const SiteCut& cut : order.siteCuts)
            if (cut.mark == mark)
                return explainCut(order, cut, *takeoff);
    return std::nullopt;
}

std::string writeDerivation(const Derivation& derivation, const Style& style)
{
    std::string text;
    writeInto(derivation, style, 0, text);
    return text;
}

} // namespace lapwright::pieces
