#include "print/order_words.h"

#include "measure/rounding.h"
#include "site/run_kind.h"
#include "speech/spoken.h"

namespace lapwright::print {

namespace {

const char* endInWords(pieces::PieceEnd::Kind kind)
{
    switch (kind) {
    case pieces::PieceEnd::Kind::Square:
        return "square";
    case pieces::PieceEnd::Kind::Lap:
        return "lap";
    case pieces::PieceEnd::Kind::Butt:
        return "butt";
    case pieces::PieceEnd::Kind::Mitre:
        return "mitre";
    case pieces::PieceEnd::Kind::WrapTab:
        return "wrap tab";
    case pieces::PieceEnd::Kind::Closed:
        return "closed";
    case pieces::PieceEnd::Kind::TurnUp:
        return "turn-up";
    }
    return "";
}

} // namespace

std::map<std::string, std::string> placesOf(const site::Job& job)
{
    std::map<std::string, std::string> places;
    for (const site::Chain& chain : job.chains)
        for (const site::Run& run : chain.runs)
            places[run.id] = spoken(site::wordsFor(run.kind)) + " " + run.id +
                             (chain.name.empty() ? "" : ", " + chain.name);
    return places;
}

std::string placeOf(const pieces::Piece& piece, const std::map<std::string, std::string>& places)
{
    if (piece.run.empty())
        return spoken(piece.spare ? "spare" : "stock length, to be cut on site");
    const auto place = places.find(piece.run);
    return place == places.end() ? spoken("run") + " " + piece.run : place->second;
}

std::string handInWords(pieces::Hand hand)
{
    switch (hand) {
    case pieces::Hand::None:
        return "";
    case pieces::Hand::Left:
        return spoken("left hand");
    case pieces::Hand::Right:
        return spoken("right hand");
    }
    return "";
}

std::string endsInWords(const pieces::Piece& piece)
{
    using Kind = pieces::PieceEnd::Kind;
    if (piece.start.kind == Kind::Square && piece.end.kind == Kind::Square)
        return "";
    const Phrase ends{"left end {start}, right end {end}",
                      {{"start", std::string(endInWords(piece.start.kind))},
                       {"end", std::string(endInWords(piece.end.kind))}}};
    return say(spoken(ends), {});
}

} // namespace lapwright::print
