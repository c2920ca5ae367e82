#include "acts/catalogue.h"
#include "acts/incoming.h"
#include "acts/kept_order.h"
#include "command.h"
#include "documents/compare.h"
#include "documents/order.h"
#include "input.h"
#include "results.h"
#include "storage/document_file.h"
#include "storage/piece_events.h"
#include "storage/shop_state.h"

#include <algorithm>
#include <iterator>
#include <optional>

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
        : database_(database), catalogue_(catalogue), options_(options), style_(styleOf(options)),
          results_(options)
    {
    }

    void take(const std::string& path)
    {
        const auto received = receiveFrom(path, documents::readOrder);
        if (!received.ok())
            return refuse(received.errors());
        const documents::OrderDocument& order = received->document;
        const acts::Derived derived = acts::deriveAgain(order, catalogue_);
        tell(derived.differences, nameOf(path) + " and what the shop derives from its runs", style_);
        if (rules::anyBlocks(derived.order.findings)) {
            tell(derived.order.findings, nameOf(path), style_);
            tell(nameOf(path) + ": not taken in, because its runs have findings that block");
            return raise(Exit::Blocked);
        }
        tell(warningsOf(derived.order.findings), nameOf(path), style_);
        const std::optional<Standing> before = standingBefore(order.value);
        const Arrival arrival =
            storage::receiveOrder(database_, acts::incoming(order, received->text, derived),
                                  stampOf(options_), options_.isSet("accept"));
        results_.add(order.value.job.name + ", revision " + std::to_string(order.value.revision) + ": " +
                         words(arrival.outcome),
                     {{"order", order.value.id},
                      {"job", order.value.job.name},
                      {"revision", order.value.revision},
                      {"outcome", words(arrival.outcome)},
                      {"reasons", arrival.reasons}});
        if (before)
            tellRevision(*before, derived.order);
        for (const std::string& reason : arrival.reasons)
            tell("  " + reason);
        if (arrival.outcome == Arrival::Outcome::Waits) {
            tell("  `lapwright receive --accept` takes it all the same, where that can be done");
            raise(Exit::Blocked);
        }
    }

    [[nodiscard]] Exit finish() const
    {
        results_.finish();
        return worst_;
    }

private:
    struct Standing {
        pieces::Order order;
        schedule::PieceCounts made;
    };

    /// The revision that counts now and what is made of it, where the one that comes is a later one.
    [[nodiscard]] std::optional<Standing> standingBefore(const pieces::Order& order) const
    {
        const auto revision = storage::currentRevision(database_, order.id);
        if (!revision || *revision >= order.revision)
            return std::nullopt;
        return Standing{acts::keptOrder(database_, order.id), storage::orderCounts(database_, order.id)};
    }

    void tellRevision(const Standing& before, const pieces::Order& now) const
    {
        const rules::Findings changes = documents::compareRevisions(before.order, now);
        for (std::size_t state = static_cast<std::size_t>(schedule::PieceState::Cut);
             state < schedule::pieceStates; ++state)
            if (before.made.in[state] > 0)
                tell("  already " + std::string(schedule::name(static_cast<schedule::PieceState>(state))) +
                     ": " + std::to_string(before.made.in[state]));
        tell("  from revision " + std::to_string(before.order.revision) + " to " +
             std::to_string(now.revision) + (changes.empty() ? ": nothing that is made changes" : ":"));
        tell(changes, style_);
    }

    /// What the installer was warned of as well: the shop's last chance to ask.
    static rules::Findings warningsOf(const rules::Findings& findings)
    {
        rules::Findings warnings;
        std::copy_if(findings.begin(), findings.end(), std::back_inserter(warnings),
                     [](const rules::Finding& finding) { return finding.weight == rules::Weight::Warns; });
        return warnings;
    }

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
    const Style style_;
    Results results_;
    Exit worst_ = Exit::Done;
};

Exit receiveAll(const QCommandLineParser& options, const storage::Database& database)
{
    const auto catalogue = acts::loadCatalogue(libraryFolders(options));
    if (!catalogue.ok()) {
        tell(catalogue.errors());
        return Exit::BadInput;
    }
    Receiver receiver(database, *catalogue, options);
    for (const QString& given : options.positionalArguments()) {
        const auto paths = storage::documentsAt(given.toStdString(), ".json");
        if (!paths.ok()) {
            tell(paths.errors());
            return Exit::BadInput;
        }
        if (paths->empty())
            tell(given.toStdString() + ": found no .json file, expected orders");
        for (const std::string& path : *paths)
            receiver.take(path);
    }
    return receiver.finish();
}

Exit run(const QCommandLineParser& options)
{
    return inShop(options, [&](const storage::Database& database) { return receiveAll(options, database); });
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
        "revision never undoes a newer one. A later revision shows what it changes and what is already made; it "
        "waits for a person if it changes pieces already begun, or was made from another revision than the one "
        "that is here.",
        {databaseOption(),
         {"accept", "Take a revision that waits, although pieces already begun become scrap."},
         stationOption(),
         personOption()},
        1,
        -1,
        run};
}

} // namespace lapwright::command
