#include "acts/catalogue.h"
#include "command.h"
#include "drawing/svg.h"
#include "measure/rounding.h"
#include "pictures.h"
#include "pieces/why.h"
#include "storage/catalogue.h"
#include "storage/document_file.h"
#include "unfold.h"

#include <nlohmann/json.hpp>

/// `girth`: one computation on one profile document.
namespace lapwright::command {

namespace {

/// The section as a drawing, in the file named with --svg.
Result<bool> draw(const Unfolded& unfolded, const std::string& path, const Style& style)
{
    pieces::OrderedProfile profile;
    profile.profile = unfolded.profile.profile;
    profile.material = unfolded.profile.material;
    profile.thickness = unfolded.stuff.sheet.thickness;
    profile.girth = unfolded.flat.girth;
    const Pictures pictures({}, style, drawing::AngleShown::Fold);
    return storage::writeDocument(path, drawing::toSvg(pictures.profile(profile, unfolded.stuff.metal)));
}

Exit girth(const QCommandLineParser& options)
{
    const auto catalogue = storage::loadCatalogue(libraryFolders(options));
    const auto unfolded =
        catalogue.ok() ? unfold(argument(options), *catalogue) : Result<Unfolded>(catalogue.errors());
    if (!unfolded.ok()) {
        tell(unfolded.errors());
        return Exit::BadInput;
    }
    const Style style = styleOf(options);
    const trim::FlatPattern& flat = unfolded->flat;
    if (options.isSet("svg")) {
        const auto drawn = draw(*unfolded, text(options, "svg"), style);
        if (!drawn.ok()) {
            tell(drawn.errors());
            return Exit::CouldNot;
        }
    }
    if (options.isSet("json")) {
        nlohmann::json lines = nlohmann::json::array();
        for (const trim::BendLine& line : flat.lines)
            lines.push_back({{"position_mm", inMillimetres(line.position)},
                             {"turn_degrees", line.turn.inDegrees()},
                             {"deduction_mm", inMillimetres(line.deduction)}});
        printDocument(nlohmann::json{{"girth_mm", inMillimetres(flat.girth)}, {"lines", lines}}.dump(2));
        return Exit::Done;
    }
    printLines(pieces::writeDerivation(flat.derivation, style));
    print("girth " + write(flat.girth, style));
    for (const trim::BendLine& line : flat.lines)
        print("  bend line at " + write(line.position, style) + ", " + write(magnitude(line.turn)));
    return Exit::Done;
}

} // namespace

Subcommand girthCommand()
{
    return {
        "girth",
        "PROFILE",
        "unfold one profile: girth, bend lines, and how they come about",
        "PROFILE is a profile document (lapwright/profile) that names its metal and gauge, or - for standard input.",
        {libraryOption(), {"svg", "Draw the section to this file, as SVG.", "FILE"}},
        1,
        1,
        girth};
}

} // namespace lapwright::command
