#include "acts/arrivals.h"
#include "acts/catalogue.h"
#include "command.h"
#include "input.h"
#include "results.h"
#include "storage/document_file.h"

#include <algorithm>
#include <iterator>

namespace lapwright::command {

namespace {

using storage::Arrival;

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
        const auto text = storage::readDocument(path);
        if (!text.ok())
            return refuse(text.errors());
        const auto arrived =
            acts::receiveOrder(database_, catalogue_, *text, stampOf(options_), options_.isSet("accept"));
        if (!arrived.ok())
            return refuse(arrived.errorsWithin(nameOf(path)));
        tell(arrived->differences, nameOf(path) + " and what the shop derives from its runs", style_);
        if (!arrived->arrival) {
            tell(arrived->findings, nameOf(path), style_);
            tell(nameOf(path) + ": not taken in, because its runs have findings that block");
            return raise(Exit::Blocked);
        }
        tell(warningsOf(arrived->findings), nameOf(path), style_);
        report(*arrived, *arrived->arrival);
    }

    [[nodiscard]] Exit finish() const
    {
        results_.finish();
        return worst_;
    }

private:
    void report(const acts::Arrived& arrived, const Arrival& arrival)
    {
        const std::string outcome(acts::inWords(arrival.outcome));
        results_.add(arrived.job + ", revision " + std::to_string(arrived.revision) + ": " + outcome,
                     {{"order", arrived.order},
                      {"job", arrived.job},
                      {"revision", arrived.revision},
                      {"outcome", outcome},
                      {"reasons", arrival.reasons}});
        if (arrived.news)
            tellNews(*arrived.news, arrived.revision);
        for (const std::string& reason : arrival.reasons)
            tell("  " + reason);
        if (arrival.outcome == Arrival::Outcome::Waits) {
            tell("  `lapwright receive --accept` takes it all the same, where that can be done");
            raise(Exit::Blocked);
        }
    }

    void tellNews(const acts::RevisionNews& news, std::int64_t to) const
    {
        for (std::size_t state = static_cast<std::size_t>(schedule::PieceState::Cut);
             state < schedule::pieceStates; ++state)
            if (news.made.in[state] > 0)
                tell("  already " + std::string(schedule::name(static_cast<schedule::PieceState>(state))) +
                     ": " + std::to_string(news.made.in[state]));
        tell("  from revision " + std::to_string(news.from) + " to " + std::to_string(to) +
             (news.changes.empty() ? ": nothing that is made changes" : ":"));
        tell(news.changes, style_);
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
