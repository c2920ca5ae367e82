#include "catalogue.h"
#include "command.h"
#include "documents/order.h"
#include "incoming.h"
#include "storage/document_file.h"

namespace lapwright::command {

namespace {

using storage::Arrival;

const char* words(Arrival::Outcome outcome)
{
    switch (outcome) {
    case Arrival::Outcome::Taken:
        return "taken in";
    case Arrival::Outcome::AlreadyHere:
        return "already here";
    case Arrival::Outcome::Superseded:
        return "kept; a later revision counts";
    case Arrival::Outcome::Waits:
        return "waits for a person";
    }
    return "";
}

class Receiver {
public:
    Receiver(const storage::Database& database, const pieces::Catalogue& catalogue,
             const QCommandLineParser& options)
        : database_(database), catalogue_(catalogue), options_(options)
    {
    }

    void take(const std::string& path)
    {
        const auto text = storage::readDocument(path);
        if (!text.ok())
            return refuse(text.errors());
        const auto order = documents::readOrder(*text);
        if (!order.ok())
            return refuse(order.errorsWithin(path));
        Derived derived = deriveAgain(*order, catalogue_);
        tell(derived.differences, styleOf(options_));
        if (rules::anyBlocks(derived.order.findings)) {
            tell(path + ": the runs of this order have findings that block; it is not taken in:");
            tell(derived.order.findings, styleOf(options_));
            return raise(Exit::Blocked);
        }
        const storage::Stamp stamp = stampOf(options_);
        const Arrival arrival = storage::receiveOrder(database_, incoming(*order, *text, derived), stamp,
                                                      options_.isSet("accept"));
        print(order->value.job.name + ", revision " + std::to_string(order->value.revision) + ": " +
              words(arrival.outcome));
        for (const std::string& reason : arrival.reasons)
            tell("  " + reason);
        if (arrival.outcome == Arrival::Outcome::Waits) {
            tell("  `lapwright receive --accept` takes it all the same, where that can be done");
            raise(Exit::Blocked);
        }
    }

    [[nodiscard]] Exit worst() const { return worst_; }

private:
    void refuse(const std::vector<Error>& errors)
    {
        tell(errors);
        raise(Exit::BadInput);
    }
    void raise(Exit exit)
    {
        if (static_cast<int>(exit) > static_cast<int>(worst_))
            worst_ = exit;
    }

    const storage::Database& database_;
    const pieces::Catalogue& catalogue_;
    const QCommandLineParser& options_;
    Exit worst_ = Exit::Done;
};

Exit run(const QCommandLineParser& options)
{
    const auto database = openShop(options);
    const auto catalogue = loadCatalogue(libraryFolders(options));
    if (!database.ok() || !catalogue.ok()) {
        tell(database.ok() ? catalogue.errors() : database.errors());
        return database.ok() ? Exit::BadInput : Exit::CouldNot;
    }
    Receiver receiver(*database, *catalogue, options);
    for (const QString& given : options.positionalArguments()) {
        const auto paths = storage::documentsAt(given.toStdString(), ".json");
        if (!paths.ok()) {
            tell(paths.errors());
            return Exit::BadInput;
        }
        for (const std::string& path : *paths)
            receiver.take(path);
    }
    return receiver.worst();
}

} // namespace

Subcommand receiveCommand()
{
    return {
        "receive",
        "ORDER...",
        "take orders into the shop's database, in any sequence, as often as you like",
        "ORDER is an order document (lapwright/order), a folder of them, or - for standard input. The shop derives "
        "every number again from the runs and shows what differs. The same order twice changes nothing; a late "
        "revision never undoes a newer one; a revision that changes pieces already begun waits for a person.",
        {databaseOption(),
         {"accept", "Take a revision although pieces already begun become scrap."},
         stationOption(),
         personOption()},
        1,
        -1,
        run};
}

} // namespace lapwright::command
