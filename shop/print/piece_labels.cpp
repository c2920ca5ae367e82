#include "print/piece_labels.h"

#include "pieces/summary.h"
#include "print/order_words.h"
#include "print/words.h"
#include "schedule/label_text.h"
#include "speech/spoken.h"

#include <utility>

namespace lapwright::print {

namespace {

Label labelOf(const pieces::Order& order, const pieces::Piece& piece,
              const std::map<std::string, std::string>& places, const Style& style)
{
    const pieces::OrderedProfile& profile = order.profiles[piece.profile];
    Label label;
    label.mark = piece.mark;
    label.beside = piece.count > 1 ? spoken(counted(piece.count, "piece")) : write(piece.blankLength, style);
    label.where = placeOf(piece, places);
    const std::string hand = handInWords(piece.hand), ends = endsInWords(piece);
    label.lines.push_back(spoken(profile.profile.name) + (hand.empty() ? "" : ", " + hand));
    label.lines.push_back(
        (piece.count > 1 ? spoken("each") + " " + write(piece.blankLength, style) + ", " : "") +
        spoken("girth") + " " + write(profile.girth, style) + ", " +
        writeBothMasses(static_cast<double>(piece.count) * pieces::kilogramsEach(order, piece), style));
    if (!ends.empty())
        label.lines.push_back(ends);
    label.material = materialInWords(profile.material);
    label.job = order.job.name + (order.job.customer.empty() ? "" : " \xC2\xB7 " + order.job.customer);
    label.profile = profile.profile;
    label.thickness = profile.thickness;
    label.twoPeople =
        isForTwo(static_cast<double>(piece.count) * pieces::kilogramsEach(order, piece), piece.blankLength);
    const auto code = schedule::labelText({order.id, order.revision, piece.mark, "", piece.count});
    if (code.ok())
        label.code = *code;
    return label;
}

} // namespace

std::vector<Label> pieceLabels(const pieces::Order& order, const Printing& printing, const Style& style)
{
    const auto places = placesOf(order.job);
    std::vector<Label> labels;
    for (const pieces::Piece& piece : order.pieces) {
        labels.push_back(labelOf(order, piece, places, style));
        labels.back().foot = labelFoot(order.revision, printing, labels.size(), order.pieces.size());
    }
    return labels;
}

std::vector<KeptRemnant> keptRemnants(const cutting::Plan& plan, const site::Material& material,
                                      std::optional<std::size_t> pattern)
{
    std::vector<KeptRemnant> kept;
    for (const cutting::NewRemnant& remnant : plan.remnants)
        if (!pattern || remnant.pattern == *pattern)
            for (std::string& key : cutting::keysOf(remnant))
                kept.push_back({std::move(key), remnant.width, remnant.length, material});
    return kept;
}

std::vector<Label> remnantLabels(const std::vector<KeptRemnant>& remnants, const Printing& printing,
                                 const Style& style)
{
    std::vector<Label> labels;
    for (const KeptRemnant& remnant : remnants) {
        Label label;
        label.mark = remnant.label;
        label.beside = spoken("remnant");
        label.where = write(remnant.width, style) + " \xC3\x97 " + write(remnant.length, style);
        label.lines = {spoken("keep: back to the rack")};
        label.material = materialInWords(remnant.material);
        label.foot = labelFoot(0, printing, labels.size() + 1, remnants.size());
        labels.push_back(std::move(label));
    }
    return labels;
}

std::string labelFoot(std::int64_t revision, const Printing& printing, std::size_t number, std::size_t count)
{
    Printing withoutShop = printing;
    withoutShop.shop.clear();
    const Phrase place{
        "label {number} of {count}",
        {{"number", static_cast<std::int64_t>(number)}, {"count", static_cast<std::int64_t>(count)}}};
    const std::string which = say(spoken(place), {});
    const std::string foot = footOf("", revision, withoutShop);
    return foot.empty() ? which : foot + " \xC2\xB7 " + which;
}

} // namespace lapwright::print
