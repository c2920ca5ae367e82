#include "acts/load_words.h"
#include "acts/loading.h"
#include "command.h"
#include "storage/document_file.h"
#include "storage/shop_state.h"

namespace lapwright::command {

namespace {

Exit makeLoad(const QCommandLineParser& options, const storage::Database& database)
{
    const auto load = acts::makeLoad(database, text(options, "truck"), stampOf(options));
    if (!load) {
        print("nothing is folded and waiting to be loaded");
        return Exit::Done;
    }
    const std::string document = storage::loadDocument(database, load->id).value();
    const std::string path = text(options, "output");
    if (!path.empty()) {
        const auto written = storage::writeDocument(path, document);
        if (!written.ok()) {
            tell(written.errors());
            tell("the load is made and kept in the database; `lapwright print` writes it again");
            return Exit::CouldNot;
        }
    }
    if (path == "-")
        return Exit::Done;
    if (options.isSet("json"))
        printDocument(document);
    else
        for (const std::string& line : acts::loadInWords(*load, styleOf(options)))
            print(line);
    return Exit::Done;
}

Exit run(const QCommandLineParser& options)
{
    return inShop(options, [&](const storage::Database& database) { return makeLoad(options, database); });
}

} // namespace

Subcommand loadCommand()
{
    return {
        "load",
        "",
        "tie what is folded into bundles and make the load list",
        "All folded pieces are bundled by order, metal and profile, no bundle too heavy, and go on one truck. The load "
        "document (lapwright/load) is what the crew lead checks the delivery against.",
        {databaseOption(),
         outputOption("Write the load document to this file.", "LOAD"),
         {"truck", "Name of the truck.", "NAME"},
         stationOption(),
         personOption()},
        0,
        0,
        run};
}

} // namespace lapwright::command
