#include "command.h"
#include "measure/reading.h"
#include "measure/rounding.h"
#include "metal/find_gauge.h"
#include "results.h"
#include "storage/catalogue.h"

/// `gauge`: which sheet people mean, and how thick it is.
namespace lapwright::command {

namespace {

using metal::SheetChoice;

/// The sheet of a named metal that was measured with callipers.
Result<SheetChoice> measured(const std::string& metal, const std::string& thickness,
                             const pieces::Catalogue& catalogue)
{
    const auto found = catalogue.metals.find(metal);
    if (found == catalogue.metals.end())
        return Error{"metal", metal, "the id of one in the library, like galvanised-steel"};
    const auto length = readLength(thickness, {}).result("--thickness");
    if (!length.ok())
        return length.errors();
    auto sheet = metal::gaugeOfThickness(found->second, *length).result("--thickness");
    if (!sheet.ok())
        return sheet.errors();
    return SheetChoice{metal, *std::move(sheet)};
}

Exit gauge(const QCommandLineParser& options)
{
    const auto catalogue = storage::loadCatalogue(libraryFolders(options));
    if (!catalogue.ok()) {
        tell(catalogue.errors());
        return Exit::BadInput;
    }
    const auto choice = options.isSet("thickness")
                            ? measured(argument(options), text(options, "thickness"), *catalogue)
                            : metal::findGauge(argument(options), catalogue->metals).result("gauge");
    if (!choice.ok()) {
        tell(choice.errors());
        return Exit::BadInput;
    }
    const metal::Sheet& sheet = choice->sheet;
    Results results(options);
    results.add(choice->metal + ", " + sheet.gauge + ": " +
                    writeThickness(sheet.thickness, styleOf(options)) + " thick",
                {{"metal", choice->metal},
                 {"gauge", sheet.gauge},
                 {"thickness_mm", inMillimetres(sheet.thickness)},
                 {"kilograms_per_square_metre", sheet.kilogramsPerSquareMetre}});
    results.finish();
    return Exit::Done;
}

} // namespace

Subcommand gaugeCommand()
{
    return {
        "gauge",
        "SHEET",
        "say which sheet is meant, and how thick it is",
        "SHEET is what people call it: \"26 ga galvanised\", \"16 oz copper\", \"0.7 mm zinc\". A gauge number "
        "without a metal has no thickness: then the metals it can be of are named. With --thickness SHEET is "
        "the id of a metal, and the gauge is the one that was measured.",
        {libraryOption(), {"thickness", "What was measured.", "LENGTH"}},
        1,
        1,
        gauge};
}

} // namespace lapwright::command
