#include "labels.h"

#include "acts/incoming.h"
#include "command.h"
#include "pieces/summary.h"

#include <QString>

#include <initializer_list>
#include <map>

namespace lapwright::command {

namespace {

std::string line(std::initializer_list<std::string> cells)
{
    std::string text;
    for (const std::string& cell : cells) {
        QString quoted = QString::fromStdString(cell);
        quoted.replace('"', "\"\"");
        text += (text.empty() ? "" : ",") + ('"' + quoted.toStdString() + '"');
    }
    return text + "\r\n";
}

} // namespace

std::string labelHeader()
{
    return line({"job", "mark", "number", "of", "trim", "run", "place", "metal", "gauge", "colour", "length",
                 "girth", "kilograms"});
}

std::string labelLines(const pieces::Order& order, const Style& style)
{
    std::map<std::string, std::string> places;
    for (const site::Chain& chain : order.job.chains)
        for (const site::Run& run : chain.runs)
            places[run.id] = chain.name;
    std::string text;
    for (const pieces::Piece& piece : order.pieces) {
        const pieces::OrderedProfile& profile = order.profiles[piece.profile];
        const auto place = places.find(piece.run);
        for (std::int64_t number = 1; number <= piece.count; ++number)
            text += line({order.job.name, piece.mark, std::to_string(number), std::to_string(piece.count),
                          profile.profile.name, piece.run, place == places.end() ? "" : place->second,
                          profile.material.metal, profile.material.gauge, profile.material.colour,
                          lapwright::write(piece.blankLength, style), lapwright::write(profile.girth, style),
                          QString::number(pieces::kilogramsEach(order, piece), 'f', 2).toStdString()});
    }
    return text;
}

} // namespace lapwright::command
